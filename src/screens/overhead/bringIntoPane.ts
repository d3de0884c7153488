import type { Spot } from './geometry/spots';

/** So much of a thing is in sight, or all of it, pixels. */
const IN_SIGHT = 24;

type Side = readonly [number, number];

/** How far a stretch has to move for enough of it to lie within another: its middle comes to the other's. */
function shift([from, to]: Side, [least, most]: Side): number {
  const seen = Math.min(to, most) - Math.max(from, least);
  return seen >= Math.min(to - from, IN_SIGHT) ? 0 : (least + most) / 2 - (from + to) / 2;
}

/**
 * How far the drawing has to be pushed, pixels right and down, for what has the focus to be in sight; null where it is.
 * Both boxes are in the window's pixels.
 */
export function pushIntoPane(
  thing: Pick<DOMRect, 'left' | 'right' | 'top' | 'bottom'>,
  pane: Pick<DOMRect, 'left' | 'right' | 'top' | 'bottom'>,
): Spot | null {
  const right = shift([thing.left, thing.right], [pane.left, pane.right]);
  const down = shift([thing.top, thing.bottom], [pane.top, pane.bottom]);
  return right === 0 && down === 0 ? null : [right, down];
}
