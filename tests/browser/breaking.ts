import type { Page } from 'playwright-core';
import { waitUntilReady } from './harness';

/** What a part throws that is broken on purpose. */
export const ON_PURPOSE = 'broken on purpose';

/** Runs in the page before its own code: what is broken on purpose is no fault of the page. */
export function breakable(): void {
  const { error } = console;
  Object.assign(window, { broken: new Set<string>() });
  console.error = (...said: unknown[]) => {
    const isMeant = said.some((each) => each instanceof Error && each.message === 'broken on purpose');
    if (!isMeant) error(...said);
  };
}

/**
 * Loads the page once more, with parts that can be broken: a part is known by the class of an element that it draws.
 * The page has to be opened with `breakable`.
 */
export async function loadBreakable(page: Page, classes: readonly string[]): Promise<void> {
  await page.context().route(/\/assets\/[^/]+\.js$/, async (route) => {
    const response = await route.fetch();
    let body = await response.text();
    for (const name of classes) {
      const fault = `(()=>{throw new Error(\`${ON_PURPOSE}\`)})()`;
      body = body.replaceAll(
        new RegExp(`className:([\`"'])${name}\\1`, 'g'),
        `className:globalThis.broken?.has(\`${name}\`)?${fault}:\`${name}\``,
      );
    }
    await route.fulfill({ response, body });
  });
  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
}

/** Breaks the part with that class: the next time it is drawn it throws. Without a class, all are whole again. */
export const breakPart = (page: Page, name: string | null): Promise<void> =>
  page.evaluate((part) => {
    const { broken } = window as unknown as { broken: Set<string> };
    broken.clear();
    if (part !== null) broken.add(part);
  }, name);
