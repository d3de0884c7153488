import type { RoofView } from '../../../desk/crew/overhead/overheadStore';
import type { Pane } from '../../overhead/geometry/sheet';
import type { Bounds, Spot } from '../../overhead/geometry/spots';

/** How the roof lies in a pane, a quarter turned clockwise or not. */
export interface Lying extends RoofView {
  readonly turned: boolean;
}

/** Pixels to the metre, farthest out and nearest. */
const FARTHEST = 0.4;
const NEAREST = 400;
/** A quarter turn has to gain so much to be worth a map that does not lie as the plan does. */
const WORTH_TURNING = 1.15;

const held = (perMetre: number): number => Math.min(NEAREST, Math.max(FARTHEST, perMetre));

/** From metres on the roof to pixels of the pane. */
export function toPane({ middle, perMetre, turned }: Lying, pane: Pane, [x, z]: Spot): Spot {
  const [dx, dz] = [(x - middle[0]) * perMetre, (z - middle[1]) * perMetre];
  return turned ? [pane.width / 2 - dz, pane.height / 2 + dx] : [pane.width / 2 + dx, pane.height / 2 + dz];
}

/** From pixels of the pane to metres on the roof. */
export function toRoof({ middle, perMetre, turned }: Lying, pane: Pane, [left, top]: Spot): Spot {
  const [dx, dy] = [(left - pane.width / 2) / perMetre, (top - pane.height / 2) / perMetre];
  return turned ? [middle[0] + dy, middle[1] - dx] : [middle[0] + dx, middle[1] + dy];
}

/** The pixels to the metre at which bounds fit a pane with a margin. */
function fitting([left, top, right, bottom]: Bounds, pane: Pane, margin: number, turned: boolean): number {
  const [width, height] = turned ? [bottom - top, right - left] : [right - left, bottom - top];
  const room = [Math.max(40, pane.width - 2 * margin), Math.max(40, pane.height - 2 * margin)];
  return held(Math.min(room[0] / Math.max(width, 0.1), room[1] / Math.max(height, 0.1)));
}

/** Whether a roof comes out so much larger when it is turned that it had better be. */
export const isBetterTurned = (bounds: Bounds, pane: Pane, margin: number): boolean =>
  fitting(bounds, pane, margin, true) > WORTH_TURNING * fitting(bounds, pane, margin, false);

/** The whole of the bounds in the middle of the pane. */
export function fitted(bounds: Bounds, pane: Pane, margin: number, turned: boolean): Lying {
  const [left, top, right, bottom] = bounds;
  return {
    middle: [(left + right) / 2, (top + bottom) / 2],
    perMetre: fitting(bounds, pane, margin, turned),
    turned,
  };
}

/** The same roof so that what lay under `from`, pixels, lies under `to`, `factor` times as large: what two fingers do. */
export function moved(lying: Lying, pane: Pane, from: Spot, to: Spot, factor: number): Lying {
  const under = toRoof(lying, pane, from);
  const next = { ...lying, perMetre: held(lying.perMetre * factor) };
  const away = toRoof(next, pane, to);
  return {
    ...next,
    middle: [next.middle[0] + under[0] - away[0], next.middle[1] + under[1] - away[1]],
  };
}

/** The transform of what is drawn in metres. */
export function toScale({ middle, perMetre, turned }: Lying, pane: Pane): string {
  const turn = turned ? ' rotate(90)' : '';
  return `translate(${pane.width / 2} ${pane.height / 2})${turn} scale(${perMetre}) translate(${-middle[0]} ${-middle[1]})`;
}
