import { type ItemReads, isLostAt, readsInTheDark } from '../../light/readsInTheDark';
import { isEverLit, isLamp } from '../../plan/cues';
import { itemOf } from '../../plan/items';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import type { ItemReport, SetupReport, Span } from '../types';

/** Whether a plan has a lamp that is ever lit: one that has none says nothing of its light, and hides nothing in it. */
const isLit = ({ gear }: Plan): boolean => gear.some((each) => isLamp(each) && isEverLit(each));

/** Whether it is asked how something reads that shows: all gear, and what else has a wish but the cast. */
function isAsked(plan: Plan, { id, verdict, wish }: ItemReport): boolean {
  if (verdict !== 'showing' && verdict !== 'lost in the dark') return false;
  const section = itemOf(plan, id)?.section;
  return section === 'gear' || (section === 'piece' && wish !== 'either');
}

/** Items by the instant at which they are asked, so that those of one instant share its look and its light. */
function byInstant(
  questions: readonly (readonly [id: string, seconds: number])[],
): readonly (readonly [seconds: number, ids: readonly string[]])[] {
  const found = new Map<number, string[]>();
  for (const [id, seconds] of questions) {
    const ids = found.get(seconds);
    if (ids) ids.push(id);
    else found.set(seconds, [id]);
  }
  return [...found].sort((a, b) => a[0] - b[0]);
}

const instantsOf = ([from, to]: Span): readonly number[] => [...new Set([from, (from + to) / 2, to])];

/**
 * How what shows in a setup reads in the dark: each item when most of it is seen; one that is lost then also at the
 * beginning, the middle and the end of every stretch in which it shows, and where it reads at one of these, it is that
 * which is told. Nothing in a plan without a lamp that is lit. Yields the done share, 0..1.
 */
export function* readsOver(
  plan: Plan,
  setup: Setup,
  seen: SetupReport,
): Generator<number, readonly ItemReads[], void> {
  const asked = isLit(plan) ? seen.items.filter((item) => isAsked(plan, item)) : [];
  const found = new Map<string, ItemReads>();
  const first = byInstant(asked.map(({ id, worstAtSeconds }) => [id, worstAtSeconds] as const));
  for (const [k, [seconds, ids]] of first.entries()) {
    for (const reads of readsInTheDark(plan, setup, seconds, ids)) found.set(reads.itemId, reads);
    yield ((k + 1) / first.length) * 0.8;
  }
  const isLost = (id: string): boolean => found.get(id)?.verdict === 'lost in the dark';
  const again = byInstant(
    asked
      .filter(({ id }) => isLost(id))
      .flatMap(({ id, spans }) => spans.flatMap(instantsOf).map((seconds) => [id, seconds] as const)),
  );
  for (const [k, [seconds, ids]] of again.entries()) {
    for (const reads of readsInTheDark(plan, setup, seconds, ids.filter(isLost)))
      if (reads.verdict !== 'lost in the dark') found.set(reads.itemId, reads);
    yield 0.8 + ((k + 1) / again.length) * 0.2;
  }
  return asked.flatMap(({ id }) => found.get(id) ?? []);
}

/**
 * Whether what shows of an item in a setup may be lost in the dark: what `readsOver` says of it alone, asked of no more
 * than settles it, in the pixels round it.
 */
export function mayBeLost(plan: Plan, setup: Setup, item: ItemReport): boolean {
  if (!isLit(plan) || !isAsked(plan, item)) return false;
  if (isLostAt(plan, setup, item.worstAtSeconds, item.id) !== true) return false;
  const instants = [...new Set(item.spans.flatMap(instantsOf))];
  return instants.every((seconds) => isLostAt(plan, setup, seconds, item.id) !== false);
}
