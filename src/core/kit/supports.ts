import type { Setup } from '../plan/schema/setup';
import type { SourceKey } from '../sources';

/** What carries a camera, as its kind commonly is. */
export interface SupportClass {
  readonly support: Setup['support'];
  readonly label: string;
  /** How low and how high the lens gets above what the support stands on, metres. */
  readonly lowestMetres: number;
  readonly highestMetres: number;
  /** How far the camera gets from where the support stands without moving it, metres; null where it walks or rolls. */
  readonly travelMetres: number | null;
  readonly source: SourceKey;
}

const support = (
  kind: Setup['support'],
  label: string,
  lowestMetres: number,
  highestMetres: number,
  travelMetres: number | null,
): SupportClass => ({
  support: kind,
  label,
  lowestMetres,
  highestMetres,
  travelMetres,
  source: 'support-classes',
});

/** The supports, from still to free. */
export const SUPPORTS: readonly SupportClass[] = [
  support('sticks', 'Sticks', 0.3, 1.9, 0),
  support('slider', 'Slider', 0.3, 1.9, 1.2),
  support('dolly', 'Dolly', 0.3, 2.2, null),
  support('jib', 'Jib', 0.2, 3.6, 5),
  support('ladder', 'Ladder', 1.2, 3.6, 0),
  support('handheld', 'Handheld', 0.2, 1.9, null),
  support('body rig', 'Body rig with a spring arm', 0.4, 2, null),
];

/** The class of a support. */
export function supportOf(kind: Setup['support']): SupportClass {
  const found = SUPPORTS.find((each) => each.support === kind);
  if (!found)
    throw new Error(
      `supportOf: found "${kind}", expected one of ${SUPPORTS.map((s) => s.support).join(', ')}`,
    );
  return found;
}

/** From one end of a dolly's wheels to the other, and so what it needs of its track beyond its middle. Source: common practice, no source */
export const DOLLY_WHEELBASE_METRES = 0.9;
/** The pace of somebody who walks, metres a second: what a dolly grip keeps up with. Source: common practice, no source */
export const WALKING_PACE = 1.4;
