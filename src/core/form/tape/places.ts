import { itemOf } from '../../plan/items';
import type { Gear } from '../../plan/schema/gear';
import type { Spot } from '../../plan/schema/numbers';
import type { Piece } from '../../plan/schema/pieces';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { surfaceUnder } from '../../plan/surfaces';
import { trackPointAt } from '../../plan/trackLine';

/** A place that is chalked on a floor by two tapes. */
export interface TapedPlace {
  /** Unique within its thing: `foot`, a mark's id, a key's number, an end of a track. */
  readonly key: string;
  /** What the tapes end at, in words: `the column`, `the mark`, `under the lens`. */
  readonly to: string;
  readonly at: Spot;
  /** The floor that it is on, metres. */
  readonly levelMetres: number;
}

type At = readonly [number, number, number];

/** Camera keys nearer to each other than this are one place to set, metres. */
const SAME_METRES = 0.01;
/** A lens is no lower than this over what its legs stand on, metres. */
const LOWEST_LENS_METRES = 0.3;

/**
 * The places of an item or a setup that are set by a tape, in the order in which they come: where a thing has its foot,
 * the two ends of a track, the marks of a performer, where a camera begins and ends. None for what a stand carries, what
 * lies along a path, what belongs to the place, and an unknown id.
 */
export function tapedPlaces(plan: Plan, id: string): readonly TapedPlace[] {
  const item = itemOf(plan, id);
  if (item?.section === 'cast') {
    return item.record.marks.map(({ id: key, at, floorMetres = 0 }) => ({
      key,
      to: 'the mark',
      at,
      levelMetres: floorMetres,
    }));
  }
  if (item?.section === 'gear') return gearPlaces(plan, item.record);
  if (item) return piecePlaces(plan, item.record);
  const setup = plan.setups.find((each) => each.id === id);
  return setup ? cameraPlaces(plan, setup) : [];
}

function gearPlaces(plan: Plan, gear: Gear): readonly TapedPlace[] {
  switch (gear.kind) {
    case 'stand':
      return [footAt(plan, gear.at, 'the column')];
    case 'head':
    case 'flag':
    case 'frame':
    case 'bounce':
    case 'monitor':
      return 'at' in gear.place ? [footAt(plan, gear.place.at, 'its middle')] : [];
    case 'track':
      return [0, gear.lengthMetres].map((along, end) => ({
        ...footAt(
          plan,
          trackPointAt(gear, along).at,
          `the middle of its ${end === 0 ? 'rear' : 'front'} end`,
        ),
        key: end === 0 ? 'rear' : 'front',
      }));
    case 'dolly':
      return gear.rides === undefined ? [footAt(plan, gear.at, 'its middle')] : [];
    case 'ladder':
      return [footAt(plan, gear.at, 'the middle of its foot')];
    case 'generator':
    case 'distro':
    case 'battery':
    case 'appliance':
    case 'cart':
      return [footAt(plan, gear.at, 'its middle')];
    default:
      return [];
  }
}

/** Of set pieces only what is carried in. */
function piecePlaces(plan: Plan, piece: Piece): readonly TapedPlace[] {
  switch (piece.kind) {
    case 'box':
    case 'riser':
    case 'pane':
    case 'chart': {
      const place = footAt(plan, piece.at, piece.kind === 'chart' ? 'its pole' : 'its middle');
      return [{ ...place, levelMetres: piece.at[1] }];
    }
    default:
      return [];
  }
}

const footAt = (plan: Plan, at: At, to: string): TapedPlace => {
  const spot: Spot = [at[0], at[2]];
  const level = surfaceUnder(plan, spot, { belowMetres: at[1] + SAME_METRES * 2 }).metres;
  return {
    key: 'foot',
    to: at[1] - level > 0.1 && to === 'its middle' ? 'under its middle' : to,
    at: spot,
    levelMetres: level,
  };
};

/** Where a camera is first and last, and at each key where it changes its way in between. */
function cameraPlaces(plan: Plan, setup: Setup): readonly TapedPlace[] {
  const track = plan.gear.find((gear) => gear.id === setup.track);
  const spots = setup.move.keys.map(({ position, alongMetres }): At => {
    if (alongMetres === undefined || track?.kind !== 'track') return position;
    const { at } = trackPointAt(track, alongMetres);
    return [at[0], position[1], at[2]];
  });
  const moved = spots.filter((spot, k) => k === 0 || !isSame(spot, spots[k - 1]));
  return moved.map(([x, y, z], k) => ({
    key: String(k),
    to: `under the lens${placeInMove(k, moved.length)}`,
    at: [x, z],
    levelMetres: surfaceUnder(plan, [x, z], { belowMetres: y - LOWEST_LENS_METRES }).metres,
  }));
}

const isSame = (a: At, b: At): boolean =>
  Math.abs(a[0] - b[0]) < SAME_METRES && Math.abs(a[2] - b[2]) < SAME_METRES;

function placeInMove(index: number, count: number): string {
  if (count === 1) return '';
  if (index === 0) return ' where it begins';
  return index === count - 1 ? ' where it ends' : ` at its stop ${index}`;
}
