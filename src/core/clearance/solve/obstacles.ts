import { spanOf } from '../../optics/camera';
import { itemOf, wishOf } from '../../plan/items';
import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import { listed } from '../../report/listed';
import { FRAMES_PER_SECOND } from '../../sight/frames';
import { NBSP } from '../../units/numbers';
import { formatSeconds } from '../../units/seconds';
import { isUnwanted, type Known } from '../remedies/known';
import { letterOf } from '../remedies/words';
import type { Stuck } from './arrange';
import { smallestHitting } from './conflict';
import type { Mover } from './movers';
import type { Placement, Places, Refusal } from './places';
import type { Obstacle } from './types';

/** The pieces of a span that are worth cutting are no longer than this share of it. */
const MOST_TRIMMED = 0.75;

const obstacle = (
  { id, label }: Pick<Mover, 'id' | 'label'>,
  sentence: string,
  setupIds: readonly string[] = [],
  trim: Obstacle['trim'] = null,
): Obstacle => ({ itemId: id, label, setupIds, trim, sentence });

/** What keeps out by its wish and is seen, and is not among what may move. */
export function fixedObstacles(known: Known, movers: readonly Mover[]): readonly Obstacle[] {
  const { plan, setups } = known;
  const moved = new Set(movers.flatMap(({ members }) => [...members]));
  const seenIn = new Map<string, string[]>();
  for (const { setup, items } of setups)
    for (const item of items.values())
      if (!moved.has(item.id) && isUnwanted(item))
        seenIn.set(item.id, [...(seenIn.get(item.id) ?? []), setup.id]);
  return [...seenIn].map(([id, setupIds]) => {
    const item = itemOf(plan, id);
    const label = item?.record.label ?? id;
    const letters = listed(setupIds.map((setupId) => letterOf(plan, setupId)));
    const why =
      item?.section === 'cast' ? 'acts' : item?.record.locked ? 'is locked' : 'is not among what may move';
    return obstacle({ id, label }, `${named(label)} can be seen in ${letters}, and ${why}.`, setupIds);
  });
}

/** The shortest piece at an end of a setup's span without which one of some places is clear. */
function shortestTrim(
  known: Known,
  places: Places,
  refusals: readonly Refusal[],
  among: readonly number[],
): Obstacle['trim'] {
  let best: NonNullable<Obstacle['trim']> | null = null;
  const take = (setupId: string, end: 'first' | 'last', seconds: number, most: number): void => {
    if (seconds > 0 && seconds < most && (!best || seconds < best.seconds - 1e-9))
      best = { setupId, end, seconds };
  };
  for (const { by, setups } of refusals) {
    const [setup] = setups;
    if (setups.length !== 1 || !among.includes(setup)) continue;
    const one = known.setups[setup];
    const [from, to] = spanOf(known.plan, one.setup);
    const against = new Set(places.camerasAgainst(setup, by));
    const first = one.watches.findIndex((watch) => against.has(watch));
    if (first < 0) continue;
    const last = one.watches.findLastIndex((watch) => against.has(watch));
    const most = MOST_TRIMMED * (to - from);
    // The last frame that may stay is the one before what is cut.
    const cut = to - one.watches[first].seconds + 1 / FRAMES_PER_SECOND;
    if (first > 0) take(one.setup.id, 'last', cut, most);
    if (last + 1 < one.watches.length)
      take(one.setup.id, 'first', one.watches[last + 1].seconds - from, most);
  }
  return best;
}

/** Why there is no place for a thing that has to move. */
export function* obstacleFor(
  known: Known,
  places: Places,
  mostMetres: number,
): Generator<unknown, Obstacle, void> {
  const { plan, setups } = known;
  const { mover } = places;
  const { label } = mover;
  const must = [...mover.members]
    .flatMap((id) => itemOf(plan, id) ?? [])
    .find((item) => item.record.id !== mover.id && wishOf(item) === 'must show');
  if (must)
    return obstacle(
      mover,
      `${named(must.record.label)} must show, and what goes along with it should keep out: no place of ${named(label)} does both.`,
    );
  const refusals = yield* places.refusals();
  const within = `within ${mostMetres}${NBSP}m`;
  if (refusals.length === 0)
    return obstacle(mover, `There is no other place ${within} where ${named(label)} could stand.`);
  const clear = refusals.filter((each) => each.setups.length === 0);
  if (clear.length > 0)
    return obstacle(
      mover,
      `Every place ${within} that is clear for ${named(label)} takes a lamp out of its tolerance on whom it lights.`,
    );
  const kept = refusals.filter(({ losesLight }) => !losesLight);
  const asked = kept.length > 0 ? kept : refusals;
  const against = smallestHitting(asked.map((each) => each.setups)) ?? [];
  const setupIds = against.map((k) => setups[k].setup.id);
  const trim = shortestTrim(known, places, asked, against);
  return obstacle(mover, conflictWords(plan, label, setupIds, trim, within), setupIds, trim);
}

function conflictWords(
  plan: Plan,
  label: string,
  setupIds: readonly string[],
  trim: Obstacle['trim'],
  within: string,
): string {
  const letters = listed(setupIds.map((id) => letterOf(plan, id)));
  const leave = setupIds.length > 1 ? 'together leave' : 'leaves';
  const without = trim
    ? `; without the ${trim.end} ${formatSeconds(Math.ceil(trim.seconds * 10 - 1e-6) / 10)} of ${letterOf(plan, trim.setupId)} there is`
    : '';
  return `${letters} ${leave} no clear ground for ${named(label)} ${within}${without}.`;
}

/** That some things have places each, and none together, or none that was found in the time that there is. */
export function crowdObstacle({ movers, isCertain }: Stuck): Obstacle {
  const labels = listed(movers.map(({ label }) => named(label)));
  const why = isCertain
    ? 'are in each other’s way on all of it'
    : 'no way was found to have all of them on it at once';
  return obstacle(movers[0], `${labels} each have clear ground, and ${why}.`);
}

/** That each of some things keeps lamps within their tolerance by itself, and not all together. */
export function lightObstacle(picks: readonly Placement[]): Obstacle {
  const movers = picks.filter(({ edits }) => edits.length > 0).map(({ mover }) => mover);
  const labels = listed(movers.map(({ label }) => named(label)));
  return obstacle(movers[0], `With ${labels} put there, a lamp leaves its tolerance on whom it lights.`);
}

/** What has not moved, and comes to light as something else goes. */
export function uncoveredObstacles(
  plan: Plan,
  news: readonly { readonly setupId: string; readonly itemId: string }[],
  picks: readonly Placement[],
): readonly Obstacle[] {
  const labels = listed(picks.filter(({ edits }) => edits.length > 0).map(({ mover }) => named(mover.label)));
  const byItem = new Map<string, string[]>();
  for (const { itemId, setupId } of news) byItem.set(itemId, [...(byItem.get(itemId) ?? []), setupId]);
  return [...byItem].map(([id, setupIds]) => {
    const label = itemOf(plan, id)?.record.label ?? id;
    const letters = listed(setupIds.map((setupId) => letterOf(plan, setupId)));
    return obstacle({ id, label }, `Moving ${labels} uncovers ${named(label)} in ${letters}.`, setupIds);
  });
}
