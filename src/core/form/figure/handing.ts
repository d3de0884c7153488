import type { Performer } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import { carriedAt, type HandOver, handOversOf } from './carrying';
import type { Prop } from './shape/props';
import { smooth } from './turning';

/** What a performer has in hand round an instant, and how far the change of hands has gone. */
export interface Carry {
  /** In hand at this instant. */
  readonly prop: Prop | null;
  /** What they hold themselves for: from the one to the other as a thing comes or goes. */
  readonly from: Prop | null;
  readonly to: Prop | null;
  readonly share: number;
  /** The change of hands that they reach for, and how much; null for none. */
  readonly meeting: Meeting | null;
}

/** Two people whose hands meet. */
export interface Meeting {
  readonly otherId: string;
  readonly prop: Prop;
  /** 1 at the beat itself. */
  readonly share: number;
  /** Whether the thing has come from the other already. */
  readonly hasCome: boolean;
}

/** Before the beat and after it, the time in which hands come together and part; common practice, no source. */
const REACH_SECONDS = 0.5;

/** One performer's change of hands: what they had before and have from then on. */
interface Change {
  readonly atSeconds: number;
  /** As long before and after it as the hands are busy with it. */
  readonly within: number;
  readonly other: string | null;
  readonly before: Prop | null;
  readonly after: Prop | null;
}

function changesOf(plan: Plan, id: string): readonly Change[] {
  const own = handOversOf(plan).filter(({ fromId, toId }) => fromId === id || toId === id);
  const times = [...new Set(own.map(({ atSeconds }) => atSeconds))];
  const propBefore = (seconds: number) => {
    const earlier = times.filter((time) => time < seconds);
    return carriedAt(plan, id, earlier.length > 0 ? earlier[earlier.length - 1] : Number.NEGATIVE_INFINITY);
  };
  return times.map((atSeconds, k) => {
    const others = new Set(
      own
        .filter((handOver: HandOver) => handOver.atSeconds === atSeconds)
        .map(({ fromId, toId }) => (fromId === id ? toId : fromId)),
    );
    const gaps = [times[k - 1], times[k + 1]].flatMap((time) =>
      time === undefined ? [] : [Math.abs(time - atSeconds) / 2],
    );
    const [other] = others;
    return {
      atSeconds,
      within: Math.min(REACH_SECONDS, ...gaps),
      // Between two at one beat there is no time to reach for either.
      other: others.size === 1 ? other : null,
      before: propBefore(atSeconds),
      after: carriedAt(plan, id, atSeconds),
    };
  });
}

interface Kept {
  readonly handOvers: readonly HandOver[];
  readonly changes: readonly Change[];
}

const kept = new WeakMap<Performer, Kept>();

function changesFor(performer: Performer, plan: Plan): readonly Change[] {
  const handOvers = handOversOf(plan);
  const known = kept.get(performer);
  if (known && known.handOvers === handOvers) return known.changes;
  const changes = changesOf(plan, performer.id);
  kept.set(performer, { handOvers, changes });
  return changes;
}

/** What a performer carries at an instant of the action's clock, and how their hands come by it or part with it. */
export function carryAt(performer: Performer, plan: Plan, seconds: number): Carry {
  const change = changesFor(performer, plan).find(
    ({ atSeconds, within }) => Math.abs(seconds - atSeconds) <= within && within > 0,
  );
  if (!change) {
    const prop = carriedAt(plan, performer.id, seconds);
    return { prop, from: prop, to: prop, share: 0, meeting: null };
  }
  const { atSeconds, within, before, after, other } = change;
  const late = (seconds - atSeconds) / within;
  // Empty hands get ready before the beat, hands that gave relax after it.
  const done = before === null ? late + 1 : after === null ? late : (late + 1) / 2;
  const prop = seconds < atSeconds ? before : after;
  const handed = after ?? before;
  return {
    prop,
    from: before,
    to: after,
    share: smooth(done),
    meeting:
      other !== null && handed !== null
        ? {
            otherId: other,
            prop: handed,
            share: smooth(1 - Math.abs(late)),
            hasCome: seconds >= atSeconds && after !== null,
          }
        : null,
  };
}
