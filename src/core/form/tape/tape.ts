import { metresBetween } from '../../plan/runs';
import type { Plan } from '../../plan/schema/plan';
import { type Anchor, isOnLevel } from './anchor';
import { anchorsOf } from './anchors';
import { NearAnchors } from './nearAnchors';
import { bestPair, type Mirror } from './pair';
import { tapedPlaces } from './places';
import { type TapeFloor, tapeFloor } from './reach';
import { type Side, sideOf } from './side';

export { anchorsOf };

/** A distance that is measured along a floor from a fixed corner. */
export interface TapeDistance {
  /** The corner, within a sentence: `the stair house’s south-east corner`. */
  readonly fromLabel: string;
  readonly from: { readonly x: number; readonly z: number };
  readonly metres: number;
  /** What the tape ends at: `the column`, `under the lens`. */
  readonly to: string;
}

/** A place and the two tapes that find it. */
export interface TapedSet {
  /** Unique within its thing: `foot`, a mark's id, a camera's stop by number, an end of a track. */
  readonly key: string;
  readonly to: string;
  readonly at: { readonly x: number; readonly z: number };
  /** Height of the floor that is measured on, metres. */
  readonly levelMetres: number;
  readonly tapes: readonly [TapeDistance, TapeDistance];
  /** The angle between them, 0 to 180 degrees. */
  readonly crossingDegrees: number;
  /** How far off the place may be where each tape is read a centimetre wrong, metres. */
  readonly withinMetres: number;
  /** What is at the other place where the two tapes would meet. */
  readonly mirror: Mirror;
  /** On which side of the line between the two corners the place is. */
  readonly side: { readonly words: string; readonly towards: { readonly x: number; readonly z: number } };
}

/** A floor with the anchors that are reached on it. */
interface MeasuredFloor {
  readonly floor: TapeFloor;
  readonly anchors: NearAnchors;
}

const kept = new WeakMap<readonly Anchor[], Map<number, MeasuredFloor>>();

/** The floor at a height, metres: the same for the same anchors, which are those of the same set pieces. */
function measuredFloor(plan: Plan, levelMetres: number): MeasuredFloor {
  const all = anchorsOf(plan);
  const floors = kept.get(all) ?? new Map<number, MeasuredFloor>();
  kept.set(all, floors);
  const known = floors.get(levelMetres);
  if (known) return known;
  const found: MeasuredFloor = {
    floor: tapeFloor(plan, levelMetres),
    anchors: new NearAnchors(
      all.filter(({ levels }) => levels.some((level) => isOnLevel(level, levelMetres))),
    ),
  };
  floors.set(levelMetres, found);
  return found;
}

/**
 * The places of an item or a setup that can be set by two tapes from fixed corners, in their order; see `tapedPlaces`.
 * A place that fewer than two corners reach, with a tape of `LONGEST_TAPE_METRES`, is left out.
 */
export function tapedSets(plan: Plan, id: string): readonly TapedSet[] {
  return tapedPlaces(plan, id).flatMap(({ key, to, at, levelMetres }): TapedSet[] => {
    const { floor, anchors } = measuredFloor(plan, levelMetres);
    const pair = bestPair(floor, at, anchors, id);
    if (!pair) return [];
    const [one, other] = pair.anchors;
    const tape = (anchor: Anchor): TapeDistance => ({
      fromLabel: anchor.label,
      from: { x: anchor.at[0], z: anchor.at[1] },
      metres: metresBetween(anchor.at, at),
      to,
    });
    return [
      {
        key,
        to,
        at: { x: at[0], z: at[1] },
        levelMetres,
        tapes: [tape(one), tape(other)],
        crossingDegrees: pair.crossingDegrees,
        withinMetres: pair.withinMetres,
        mirror: pair.mirror,
        side: sideWithPlace(sideOf(plan, at, pair.anchors)),
      },
    ];
  });
}

const sideWithPlace = ({ words, towards: [x, z] }: Side): TapedSet['side'] => ({ words, towards: { x, z } });

/**
 * The measured distances that set an item or a setup, two for each of its places in their order: one place for a stand,
 * two for a track, one for each mark of a performer. Empty where it is not set by a tape, or fewer than two corners
 * reach it with one of `LONGEST_TAPE_METRES`.
 */
export const tapesOf = (plan: Plan, id: string): readonly TapeDistance[] =>
  tapedSets(plan, id).flatMap(({ tapes }) => tapes);
