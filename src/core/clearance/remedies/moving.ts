import { anchorOf } from '../../plan/edits/anchorOf';
import { moveItem } from '../../plan/edits/moveItem';
import { tidySpot } from '../../plan/edits/tidy';
import type { Spot } from '../../plan/schema/numbers';
import { atan2, hypot } from '../../units/steadyMath';
import { type Case, type Finding, proveThings, worstWatch } from './case';
import { changedIds } from './judge';
import { nearestMove } from './nearestSpot';
import { type Aim, keepersChanged, needsOf } from './needs';
import { standingRoom } from './standingRoom';
import type { Remedy } from './types';
import { lengthWords, wayWords } from './words';

/** Nobody looks for a place farther away than this, metres. Source: common practice, no source */
export const FARTHEST_METRES = 4;
/** How often a place is looked for anew with another camera that is in the way. */
const MOST_ROUNDS = 24;
/** A way that clears one setup only is worth saying where it is so much shorter than one that clears all, metres. */
const WORTH_METRES = 0.25;

/** Places a micrometre farther, since places in the plan are rounded. */
const ROUNDING_METRES = 2e-6;

/**
 * The shortest move on its deck, metres, after which an item, with all that goes along, keeps to an aim, lamps within
 * their tolerance; null for none within 4 m. Lamps are held to it by distance and direction from what they are aimed
 * at, or, `areLampsExact`, by what they give to whom they light, which takes longer.
 */
function shortestMove(of: Case, aim: Aim, areLampsExact = false): Spot | null {
  const { known, item, tolerance, lamps } = of;
  const { plan } = known;
  const { id } = item.record;
  const from = anchorOf(plan, id);
  if (!from) return null;
  const movedBy = ([x, z]: Spot) => moveItem(plan, { id, to: [from[0] + x, from[1] + z] });
  const tried = movedBy([0.5, 0]);
  const keepers = keepersChanged(plan, tried);
  if (!keepers) return null;
  const gone = changedIds(plan, tried);
  const canStand = standingRoom(plan, id, new Set(gone));
  const needs = needsOf(known, keepers, aim);
  const holds = (by: Spot): boolean => {
    if (!canStand([from[0] + by[0], from[1] + by[1]])) return false;
    if (!needs.holdsMoved(by)) return false;
    return areLampsExact ? lamps.keeps(movedBy(by), tolerance) : lamps.mayKeepMoved(gone, by, tolerance);
  };
  const { right } = worstWatch(of).camera.pose;
  const across = (atan2(right[0], -right[2]) * 180) / Math.PI;
  const sign = (of.report.moveOutMetres ?? 0) < 0 ? 180 : 0;
  const likely = [across + sign, across + sign + 180, across + 90, across - 90];
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const by = nearestMove(holds, FARTHEST_METRES, likely);
    if (!by) return null;
    const after = movedBy(by);
    if (keepersChanged(plan, after) && needs.holdsThroughout(after)) return by;
  }
  return null;
}

function* moveFor(of: Case, aim: Aim, shorterThan: number): Generator<number, Remedy | null, void> {
  const { known, one, item } = of;
  const from = anchorOf(known.plan, item.record.id);
  let by = shortestMove(of, aim);
  yield 0.5;
  if (!by || !from) return null;
  const moved = moveItem(known.plan, { id: item.record.id, to: [from[0] + by[0], from[1] + by[1]] });
  if (!of.lamps.keeps(moved, of.tolerance)) by = shortestMove(of, aim, true);
  if (!by) return null;
  const metres = hypot(by[0], by[1]);
  if (metres > shorterThan) return null;
  const to = tidySpot([from[0] + by[0], from[1] + by[1]]);
  const way = wayWords(known.plan, one.setup.id, worstWatch(of), from, to);
  return yield* proveThings(of, {
    kind: 'move',
    edits: [{ edit: 'moveItem', args: { id: item.record.id, to } }],
    metres: metres + ROUNDING_METRES,
    what: `${lengthWords(metres)} ${way}`,
  });
}

/** The shortest move that clears the item wherever it is seen, and a shorter one that clears this setup alone. */
export function* moves(of: Case): Finding {
  const everywhere = yield* moveFor(of, 'clear of all', FARTHEST_METRES);
  yield 0.5;
  const isAlone = of.known.setups.length < 2;
  const here = isAlone
    ? null
    : yield* moveFor(
        of,
        { clearOf: of.one.setup.id },
        everywhere ? everywhere.cost.metres - WORTH_METRES : FARTHEST_METRES,
      );
  return [everywhere, here].filter((remedy) => remedy !== null);
}
