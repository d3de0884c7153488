import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

interface Violation {
  readonly id: string;
  readonly impact?: string | null;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}

/** What a screen reader or a weak eye would trip over, one line for each place. */
export async function seriousViolations(page: Page): Promise<string[]> {
  await page.addScriptTag({ path: AXE });
  const violations = await page.evaluate(async (): Promise<readonly Violation[]> => {
    const { axe } = window as unknown as { axe: { run: () => Promise<{ violations: Violation[] }> } };
    return (await axe.run()).violations;
  });
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}\n${node.failureSummary ?? ''}`));
}
