import type { Page } from 'playwright-core';

/** Turns the roof into the one to walk round, and waits until a hand can work there: its script may still be coming. */
export async function walkRound(page: Page): Promise<void> {
  await page.getByText('walk round', { exact: true }).click();
  await page.locator('.walk-hands').waitFor({ state: 'attached' });
}
