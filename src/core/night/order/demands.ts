import type { Plan } from '../../plan/schema/plan';
import { type Darkness, darknessOf } from '../times/darkness';
import { type NightClock, readTime } from '../times/nightClock';
import { needsOf } from '../times/takes';
import { playersBySetup } from './playing';

/** What a night asks of its order: when a setup may be shot, when its cast is there, how often the ground is wetted. */
export type DemandKind = 'before dark' | 'after dark' | 'from' | 'until' | 'in from' | 'out by' | 'wet once';

/** One of them, for one setup; `wet once` is for none, and of the whole night. */
export interface Demand {
  readonly kind: DemandKind;
  readonly setupId: string | null;
  readonly performerId: string | null;
  /** The shot begins no earlier, minutes of the night; a rehearsal with whoever is in from then. */
  readonly earliest: number;
  /** The shot has ended by then. */
  readonly latest: number;
}

const demand = (
  kind: DemandKind,
  setupId: string | null,
  bounds: { readonly earliest?: number; readonly latest?: number },
  performerId: string | null = null,
): Demand => ({ kind, setupId, performerId, earliest: -Infinity, latest: Infinity, ...bounds });

/** What asks for dark, or for the light before it. A night that never gets dark has no time for the one, one that is nothing else none for the other. Whole minutes, well inside of it. */
function ofDarkness(when: 'before dark' | 'after dark', setupId: string, { span }: Darkness): Demand {
  if (when === 'before dark')
    return demand(when, setupId, { latest: span ? Math.floor(span.from) : Infinity });
  return demand(
    when,
    setupId,
    span ? { earliest: Math.ceil(span.from), latest: Math.floor(span.until) } : { latest: -Infinity },
  );
}

/** All that a plan's night asks of its order, in the plan's order of setups. */
export function demandsOf(plan: Plan, clock: NightClock): readonly Demand[] {
  const { night } = plan;
  if (!night) return [];
  const darkness = darknessOf(plan, clock);
  const at = (time: string): number => readTime(clock, time).minutes;
  const there = new Map((night.cast ?? []).map((entry) => [entry.performer, entry]));
  const players = there.size > 0 ? playersBySetup(plan) : new Map<string, readonly string[]>();
  const ofSetups = plan.setups.flatMap(({ id }): Demand[] => {
    const { when, from, until } = needsOf(plan, id);
    const cast = (players.get(id) ?? []).flatMap((performerId): Demand[] => {
      const times = there.get(performerId);
      return [
        ...(times?.from ? [demand('in from', id, { earliest: at(times.from) }, performerId)] : []),
        ...(times?.until ? [demand('out by', id, { latest: at(times.until) }, performerId)] : []),
      ];
    });
    return [
      ...(when ? [ofDarkness(when, id, darkness)] : []),
      ...(from ? [demand('from', id, { earliest: at(from) })] : []),
      ...(until ? [demand('until', id, { latest: at(until) })] : []),
      ...cast,
    ];
  });
  return [...ofSetups, ...(night.wetOnce ? [demand('wet once', null, {})] : [])];
}
