import type { Known } from '../remedies/known';
import { choose, type Options } from './choose';
import type { Crowding } from './crowding';
import type { LampsKept } from './lampsKept';
import type { Mover } from './movers';
import type { Placement, Places } from './places';
import { type Proof, prove } from './prove';

/** Things that have no picks that go together; one where it has none at all. */
export interface Stuck {
  readonly movers: readonly Mover[];
  /** Whether all was tried; else only that none was found. */
  readonly isCertain: boolean;
}

/**
 * The picks that go together; who has none with the others stays as it is. What has no place at all stays, too, and has
 * to be kept clear of.
 */
function* arrange(
  able: readonly Places[],
  fixed: readonly Placement[],
  crowding: Crowding,
): Generator<unknown, { readonly picks: readonly Placement[]; readonly stuck: readonly Stuck[] }, void> {
  const stuck: Stuck[] = [];
  const staying = [...fixed];
  let left = [...able];
  for (;;) {
    const options = [...left, ...staying.map((stay): Options<Placement> => ({ at: only(stay) }))];
    const chosen = yield* choose<Placement>(options, (_, a, __, b) => crowding.fits(a, b));
    if ('picks' in chosen) {
      const picks = chosen.picks.slice(0, left.length);
      const nearer = yield* drawnIn(left, picks, staying, crowding);
      return { picks: nearer, stuck };
    }
    const group = chosen.stuck.flatMap((k) => left[k] ?? []);
    const last = group[group.length - 1];
    if (!last) return { picks: [], stuck };
    stuck.push({
      movers: chosen.stuck.flatMap((k) => (left[k] ?? staying[k - left.length])?.mover ?? []),
      isCertain: chosen.isCertain,
    });
    staying.push(last.stay);
    left = left.filter((each) => each !== last);
  }
}

/** Nothing but one pick. */
const only = (pick: Placement): Options<Placement>['at'] =>
  function* (k) {
    yield;
    return k === 0 ? pick : null;
  };

/** Picks of steps drawn in to the nearest that all others allow. */
function* drawnIn(
  places: readonly Places[],
  picks: readonly Placement[],
  staying: readonly Placement[],
  crowding: Crowding,
): Generator<unknown, readonly Placement[], void> {
  const now = [...picks];
  for (const [k, each] of places.entries()) {
    const first = each.first;
    if (!each.isExact || first === now[k]) continue;
    const others = [...now.filter((_, other) => other !== k), ...staying];
    const allowed = (placement: Placement): boolean =>
      others.every((other) => crowding.hasRoom(placement, other));
    const placement = yield* each.nearest(now[k].shape, now[k].change, allowed);
    if (!placement || placement.change >= now[k].change) continue;
    if ((yield* each.isFine(placement)) && others.every((other) => crowding.fits(placement, other)))
      now[k] = placement;
  }
  return now;
}

/** Picks that go together, who has none, and what all setups see of them. */
interface Settled {
  readonly picks: readonly Placement[];
  readonly stuck: readonly Stuck[];
  readonly proved: Proof;
}

/** How often picks are put together anew, since something that had not moved has come to light. */
const MOST_ROUNDS = 8;

/**
 * Puts picks together and asks the report's looks of the whole changed plan; what stood as it was and comes to light,
 * since what hid it has gone, has to move, too. Yields the done share, 0..1.
 */
export function* settle(
  known: Known,
  able: readonly Places[],
  fixed: readonly Placement[],
  crowding: Crowding,
  lamps: LampsKept,
): Generator<number, Settled, void> {
  for (let round = 1; ; round += 1) {
    const arranging = arrange(able, fixed, crowding);
    let step = arranging.next();
    for (; !step.done; step = arranging.next()) yield 0;
    const { picks, stuck } = step.value;
    const proving = prove(known, picks, lamps);
    let proof = proving.next();
    for (; !proof.done; proof = proving.next()) yield 0.5 + proof.value / 2;
    const proved = proof.value;
    const exposed = able.filter(
      ({ mover, first }) =>
        first?.edits.length === 0 && proved.news.some(({ itemId }) => mover.members.has(itemId)),
    );
    if (exposed.length === 0 || round === MOST_ROUNDS) return { picks, stuck, proved };
    for (const each of exposed) each.forbidStay();
  }
}
