import type { Page } from 'playwright-core';

/** Where a finger is, in CSS pixels of the window. */
export interface Touch {
  readonly x: number;
  readonly y: number;
}

/**
 * Sends what fingers do: places of all that are down, again and again, then none. It does not wait for each step to be
 * answered: on a busy machine the fingers would come to rest meanwhile, which asks for something else.
 */
export async function fingers(page: Page, steps: readonly (readonly Touch[])[]): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Touch[]) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: points.map(({ x, y }, id) => ({ x, y, id })),
    });
  await Promise.all([
    ...steps.map((points, place) => send(place === 0 ? 'touchStart' : 'touchMove', points)),
    send('touchEnd', []),
  ]);
  await session.detach();
}

/** Where fingers are on their way from some places to others, step by step. */
export const between = (from: readonly Touch[], to: readonly Touch[]): readonly (readonly Touch[])[] =>
  [0, 0.15, 0.3, 0.5, 0.7, 0.85, 1].map((share) =>
    from.map(({ x, y }, id) => ({
      x: x + ((to[id]?.x ?? x) - x) * share,
      y: y + ((to[id]?.y ?? y) - y) * share,
    })),
  );
