import type { Vec3 } from '../../form/build/vector';
import type { ItemBuffer } from '../../sight/buffer';
import { sampleHeight } from '../../sight/grid';
import type { Look } from '../../sight/look';
import type { Ray } from '../../sight/rays';
import type { StagePart } from '../../sight/stage';
import { rayThrough } from '../../sight/ways';
import { hypot } from '../../units/steadyMath';

/** How many pixels are asked before it is left to other ways. */
const MOST_ASKED = 64;

/** Of a part that has more pixels than this in the picture, only some are asked. */
const MOST_KEPT = 4000;

/** Visits a part's pixels that the frame looks at, in each direction only one in so many. */
function eachOwn(
  { rect, grid }: Look,
  buffer: ItemBuffer,
  part: StagePart,
  every: number,
  visit: (column: number, row: number) => void,
): void {
  for (let column = rect.left; column < rect.right; column += every)
    for (let row = rect.top; row < rect.bottom; row += every) {
      const at = column * grid.height + row;
      if (buffer.owner[at] === part.index + 1 && grid.weights[at] > 0) visit(column, row);
    }
}

/**
 * Asks, from the middle of what a part has in a buffer outwards, the rays through its pixels, until one tells something.
 * Null where the part has no pixel, or none of them does: its edges are rounded, so that a ray may pass by.
 */
export function fromPixels<Told>(
  seen: Look,
  buffer: ItemBuffer,
  part: StagePart,
  ask: (ray: Ray, column: number, row: number) => Told | null,
): Told | null {
  let [count, x, y] = [0, 0, 0];
  eachOwn(seen, buffer, part, 1, (column, row) => {
    count += 1;
    x += column;
    y += row;
  });
  if (count === 0) return null;
  const own: { readonly column: number; readonly row: number; readonly away: number }[] = [];
  eachOwn(seen, buffer, part, Math.ceil(Math.sqrt(count / MOST_KEPT)), (column, row) => {
    own.push({ column, row, away: hypot(column - x / count, row - y / count) });
  });
  own.sort((a, b) => a.away - b.away);
  for (const { column, row } of own.slice(0, MOST_ASKED)) {
    const told = ask(rayThrough(seen, column + 0.5, row + sampleHeight(column)), column, row);
    if (told !== null) return told;
  }
  return null;
}

/** The one of some places that lies nearest to the middle of them all; null for none. */
export function mostInTheMiddle<Entry extends { readonly at: Vec3 }>(
  entries: readonly Entry[],
): Entry | null {
  const middle = [0, 1, 2].map((axis) => entries.reduce((sum, { at }) => sum + at[axis], 0) / entries.length);
  const away = ({ at }: Entry): number => hypot(at[0] - middle[0], at[1] - middle[1], at[2] - middle[2]);
  return entries.reduce<Entry | null>((best, each) => (best && away(best) <= away(each) ? best : each), null);
}
