import { walksOf } from '../../form/figure/walks';
import { spanOf, stateAt } from '../../optics/camera';
import { anchorOf, carrierOf } from '../../plan/edits/anchorOf';
import { played } from '../../plan/played';
import type { Gear } from '../../plan/schema/gear';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { footOf, STANDING_METRES, surfaceUnder } from '../../plan/surfaces';
import { SHOULDER_METRES } from '../../plan/walkWays/hits';
import { HEADROOM_METRES, obstaclesOn } from '../../plan/walkWays/obstacles';
import { boundsOf, fromOutline, fromPiece, mayMeet } from '../../plan/walkWays/planar';
import { hypot } from '../../units/steadyMath';

/** Round its foot nobody else's stands nearer than this: legs may reach between legs, metres. Source: common practice, no source */
const FOOT_METRES = 0.2;
/** A foot stays so far from where a camera is or goes, metres. Source: common practice, no source */
const CAMERA_METRES = 0.5;
/** Places of a camera's move are asked so many seconds apart. */
const CAMERA_SECONDS = 0.25;
/** What is no stand stays so far from what stands on the roof, metres. Source: common practice, no source */
const BESIDE_METRES = 0.3;

/** How far a thing reaches round its foot, metres. */
function reachOf(plan: Plan, id: string): number {
  const stand = plan.gear.find((gear) => gear.id === id);
  const piece = plan.pieces.find((each) => each.id === id);
  if (piece && 'size' in piece) return Math.max(BESIDE_METRES, hypot(piece.size[0], piece.size[2]) / 2);
  if (stand?.kind !== 'stand') return BESIDE_METRES;
  const footprint = plan.kit.stands.find((entry) => entry.id === stand.stand)?.footprintMetres;
  return (stand.spreadMetres ?? footprint ?? 2 * BESIDE_METRES) / 2;
}

/** How much room a thing takes up on the floor round its foot, metres. */
const bodyMetres = (gear: Gear): number =>
  'size' in gear && 'at' in gear ? Math.max(FOOT_METRES, hypot(gear.size[0], gear.size[2]) / 2) : FOOT_METRES;

/** How near two feet of gear may come to each other, metres. */
export const apartMetres = (one: Gear | undefined, other: Gear): number =>
  (one ? bodyMetres(one) : FOOT_METRES) + bodyMetres(other);

/** A straight piece of what is walked, or rolled by a camera, and how high that is, metres. */
interface Way {
  readonly from: Spot;
  readonly to: Spot;
  readonly metres: number;
  readonly isCamera: boolean;
}

const WAYS = new WeakMap<Plan['setups'], WeakMap<Plan['cast'], readonly Way[]>>();

/** Where people stand and walk, and where cameras are, over the whole of the action. */
function waysOf(plan: Plan): readonly Way[] {
  let known = WAYS.get(plan.setups);
  if (!known) {
    known = new WeakMap();
    WAYS.set(plan.setups, known);
  }
  const found = known.get(plan.cast) ?? eachOnce([...walkedWays(plan), ...cameraWays(plan)]);
  known.set(plan.cast, found);
  return found;
}

/** Ways without those that lie where another does: most setups play what the plan plays. */
const eachOnce = (ways: readonly Way[]): readonly Way[] => [
  ...new Map(
    ways.map((way) => [[...way.from, ...way.to, way.metres, way.isCamera].join(' '), way] as const),
  ).values(),
];

function walkedWays(plan: Plan): readonly Way[] {
  return [plan, ...plan.setups.map((setup) => played(plan, setup))].flatMap((acted) =>
    acted.cast.flatMap((performer): readonly Way[] => {
      const heights = new Map(performer.marks.map(({ id, floorMetres = 0 }) => [id, floorMetres]));
      const stood = performer.marks.map(
        ({ at, floorMetres = 0 }): Way => ({ from: at, to: at, metres: floorMetres, isCamera: false }),
      );
      const walked = walksOf(performer, acted).flatMap(({ path, fromMark }) =>
        path
          .slice(1)
          .map((to, k): Way => ({ from: path[k], to, metres: heights.get(fromMark) ?? 0, isCamera: false })),
      );
      return [...stood, ...walked];
    }),
  );
}

function cameraWays(plan: Plan): readonly Way[] {
  return plan.setups.flatMap((setup) => {
    const [from, to] = spanOf(plan, setup);
    const count = Math.max(1, Math.ceil((to - from) / CAMERA_SECONDS));
    const places = Array.from({ length: count + 1 }, (_, k) => {
      const { position } = stateAt(plan, setup, from + ((to - from) * k) / count);
      return { spot: [position[0], position[2]] as const, metres: position[1] };
    });
    return places.slice(1).map(
      ({ spot, metres }, k): Way => ({
        from: [places[k].spot[0], places[k].spot[1]],
        to: [spot[0], spot[1]],
        metres,
        isCamera: true,
      }),
    );
  });
}

/**
 * Whether a thing can stand at a spot as it stands now: on the same level, not in or against what stands on the roof,
 * not among the feet of other gear, not where somebody stands or walks or a camera is, each no nearer than it is
 * already where it is near.
 */
export function standingRoom(
  plan: Plan,
  itemId: string,
  goesAlong: ReadonlySet<string>,
): (spot: Spot) => boolean {
  const id = carrierOf(plan, itemId) ?? itemId;
  const from = anchorOf(plan, id);
  if (!from) return () => false;
  const foot = footOf(plan, id);
  const level = surfaceUnder(plan, from);
  const stands =
    foot !== null && level.id !== null && Math.abs(foot.metres - level.metres) <= STANDING_METRES;
  if (!stands) return () => true;
  const reach = reachOf(plan, id);
  const own = plan.gear.find((gear) => gear.id === id);
  const obstacles = obstaclesOn(plan, [level.metres, level.metres])
    .filter(({ pieceId, kind }) => kind === 'solid' && pieceId !== id)
    .map(({ outline }) => {
      const metres = Math.min(reach, fromOutline(outline, from, from));
      return { outline, metres, bounds: boundsOf(outline, metres) };
    });
  const feet = plan.gear.flatMap((gear) => {
    const other = goesAlong.has(gear.id) || gear.kind === 'track' ? null : footOf(plan, gear.id);
    if (!other || Math.abs(other.metres - level.metres) > STANDING_METRES) return [];
    const now = hypot(other.spot[0] - from[0], other.spot[1] - from[1]);
    return [{ spot: other.spot, metres: Math.min(apartMetres(own, gear), now) }];
  });
  const ways = waysOf(plan).flatMap((way) => {
    const isHere = way.isCamera
      ? way.metres >= level.metres && way.metres <= level.metres + 2 * HEADROOM_METRES
      : Math.abs(way.metres - level.metres) <= HEADROOM_METRES;
    if (!isHere) return [];
    const wanted = way.isCamera ? CAMERA_METRES : reach + SHOULDER_METRES;
    const metres = Math.min(wanted, fromPiece(way.from, way.to, from));
    return [{ ...way, wanted: metres, bounds: boundsOf([way.from, way.to], metres) }];
  });
  return (spot) => {
    if (feet.some(({ spot: at, metres }) => hypot(at[0] - spot[0], at[1] - spot[1]) < metres - 1e-6))
      return false;
    const isInTheWay = ways.some(
      ({ from: a, to: b, wanted, bounds }) =>
        mayMeet(spot, spot, bounds, 0) && fromPiece(a, b, spot) < wanted - 1e-6,
    );
    if (isInTheWay) return false;
    const isAgainst = obstacles.some(
      ({ outline, metres, bounds }) =>
        mayMeet(spot, spot, bounds, 0) && !(fromOutline(outline, spot, spot) >= metres - 1e-6),
    );
    if (isAgainst) return false;
    const there = surfaceUnder(plan, spot);
    return there.id !== null && Math.abs(there.metres - level.metres) <= STANDING_METRES;
  };
}
