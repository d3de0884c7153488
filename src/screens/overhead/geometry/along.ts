import { between, distance, headingOf, minus, type Spot, standing } from './spots';

/** How long a path is, in the unit of its spots. */
export const lengthOf = (path: readonly Spot[]): number =>
  path.slice(1).reduce((sum, spot, k) => sum + distance(path[k], spot), 0);

/** The part of a path between two lengths along it. */
export function partOf(path: readonly Spot[], from: number, to: number): readonly Spot[] {
  const part: Spot[] = [];
  let before = 0;
  for (let k = 0; k + 1 < path.length; k += 1) {
    const [a, b] = [path[k], path[k + 1]];
    const length = distance(a, b);
    const [enter, leave] = [Math.max(from, before), Math.min(to, before + length)];
    if (length > 0 && enter < leave) {
      if (part.length === 0) part.push(between(a, b, (enter - before) / length));
      part.push(between(a, b, (leave - before) / length));
    }
    before += length;
  }
  return part;
}

/** How far a walk's line stays off the marks, and the size of its arrow, metres. */
const OFF_MARK = 0.28;
const ARROW = { length: 0.26, half: 0.085 };

/** A walk as it is drawn: its line short of the marks, and the arrow at its end, turned as it comes in. */
export interface WalkDrawing {
  readonly line: readonly Spot[];
  readonly arrow: readonly Spot[];
}

/** The drawing of a walk along a path in metres; null where it is too short for one. */
export function walkDrawing(path: readonly Spot[]): WalkDrawing | null {
  const length = lengthOf(path);
  if (length < 3 * OFF_MARK) return null;
  const tip = length - OFF_MARK;
  const line = partOf(path, OFF_MARK, tip - ARROW.length);
  const last = partOf(path, tip - ARROW.length, tip);
  const [from, to] = [last[0], last[last.length - 1]];
  if (!from || !to) return null;
  const heading = headingOf(minus(to, from));
  const own = (across: number, back: number): Spot => standing(to, heading, [across, back]);
  return {
    line,
    arrow: [to, own(-ARROW.half, ARROW.length), own(ARROW.half, ARROW.length)],
  };
}
