import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What is moderate at most, whatever is found: it would only be left out again, and takes a fifth of the time. */
const MODERATE = [
  'heading-order',
  'landmark-banner-is-top-level',
  'landmark-contentinfo-is-top-level',
  'landmark-main-is-top-level',
  'landmark-no-duplicate-banner',
  'landmark-no-duplicate-contentinfo',
  'landmark-no-duplicate-main',
  'landmark-one-main',
  'landmark-unique',
  'page-has-heading-one',
  'region',
  'skip-link',
];

interface Violation {
  readonly id: string;
  readonly impact?: string | null;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}

/** What a screen reader or a weak eye would trip over, one line for each place. */
export async function seriousViolations(page: Page): Promise<string[]> {
  // The page's own policy lets no script in that is not its own; the browser's debugger may.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(AXE);
  const violations = await page.evaluate(async (moderate): Promise<readonly Violation[]> => {
    const { axe } = window as unknown as {
      axe: { run: (where: Document, how: object) => Promise<{ violations: Violation[] }> };
    };
    // A colour half way from one state to the next is nobody's contrast.
    await Promise.allSettled(
      document
        .getAnimations()
        .filter((animation) => animation instanceof CSSTransition)
        .map(({ finished }) => finished),
    );
    // What passes need not be told in full: it takes longer than all else.
    const rules = Object.fromEntries(moderate.map((id) => [id, { enabled: false }]));
    const how = { resultTypes: ['violations'], iframes: false, preload: false, rules };
    return (await axe.run(document, how)).violations;
  }, MODERATE);
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}\n${node.failureSummary ?? ''}`));
}
