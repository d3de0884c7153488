import type { Page } from 'playwright-core';

/** Where a finger is, in CSS pixels of the window. */
export interface Touch {
  readonly x: number;
  readonly y: number;
}

/** Sends what fingers do: places of all that are down, again and again, then none. */
export async function fingers(page: Page, steps: readonly (readonly Touch[])[]): Promise<void> {
  const session = await page.context().newCDPSession(page);
  for (const [place, points] of steps.entries()) {
    const touchPoints = points.map(({ x, y }, id) => ({ x, y, id }));
    await session.send('Input.dispatchTouchEvent', {
      type: place === 0 ? 'touchStart' : 'touchMove',
      touchPoints,
    });
  }
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await session.detach();
}
