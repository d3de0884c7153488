import type { Pass } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import type { Prop } from './shape/props';

/** Who holds a prop from when until when; null for to the end. */
export interface PropHold {
  readonly performerId: string;
  readonly fromSeconds: number;
  readonly untilSeconds: number | null;
}

/** One prop, and through whose hands it goes in the order of the clock. */
export interface PropLane {
  readonly prop: Prop;
  readonly holds: readonly PropHold[];
}

/** A pass that hands something over. */
export interface HandOver {
  readonly passId: string;
  readonly fromId: string;
  readonly toId: string;
  readonly atSeconds: number;
}

/** All that goes from hand to hand in a plan. */
interface Carrying {
  readonly lanes: readonly PropLane[];
  readonly handOvers: readonly HandOver[];
}

interface Lane {
  readonly prop: Prop;
  readonly holds: PropHold[];
}

/** The passes of each instant together, in the order of the clock; passes at beats that are not there are left out. */
function passesByTime(plan: Plan): [number, Pass[]][] {
  const beatTime = new Map(plan.beats.map((beat) => [beat.id, beat.atSeconds]));
  const groups = new Map<number, Pass[]>();
  for (const pass of plan.passes ?? []) {
    const seconds = beatTime.get(pass.beat);
    if (seconds === undefined || pass.from === pass.to) continue;
    groups.set(seconds, [...(groups.get(seconds) ?? []), pass]);
  }
  return [...groups].sort(([a], [b]) => a - b);
}

/**
 * Takes from the passes of one instant those that can be done next: one whose giver has something and whose taker has
 * empty hands, else two people who swap. None when nothing more can be done.
 */
function nextOf(waiting: readonly Pass[], held: ReadonlyMap<string, Lane>): readonly Pass[] {
  const free = waiting.find(({ from, to }) => held.has(from) && !held.has(to));
  if (free) return [free];
  for (const pass of waiting) {
    const back = waiting.find(({ from, to }) => from === pass.to && to === pass.from);
    if (back && held.has(pass.from) && held.has(pass.to)) return [pass, back];
  }
  return [];
}

function carryingIn(plan: Plan): Carrying {
  const ids = new Set(plan.cast.map(({ id }) => id));
  const held = new Map<string, Lane>();
  const lanes: Lane[] = [];
  for (const { id, prop } of plan.cast) {
    if (!prop) continue;
    const lane: Lane = {
      prop,
      holds: [{ performerId: id, fromSeconds: 0, untilSeconds: null }],
    };
    lanes.push(lane);
    held.set(id, lane);
  }
  const handOvers: HandOver[] = [];
  for (const [seconds, passes] of passesByTime(plan)) {
    let waiting = passes.filter(({ from, to }) => ids.has(from) && ids.has(to));
    for (let done = nextOf(waiting, held); done.length > 0; done = nextOf(waiting, held)) {
      const moving = done.flatMap((pass) => {
        const lane = held.get(pass.from);
        return lane ? [{ pass, lane }] : [];
      });
      for (const { pass } of moving) held.delete(pass.from);
      for (const { pass, lane } of moving) {
        const last = lane.holds.length - 1;
        lane.holds[last] = { ...lane.holds[last], untilSeconds: seconds };
        lane.holds.push({ performerId: pass.to, fromSeconds: seconds, untilSeconds: null });
        held.set(pass.to, lane);
        handOvers.push({ passId: pass.id, fromId: pass.from, toId: pass.to, atSeconds: seconds });
      }
      waiting = waiting.filter((pass) => !done.includes(pass));
    }
  }
  return { lanes, handOvers };
}

interface Kept {
  readonly beats: Plan['beats'];
  readonly passes: Plan['passes'];
  readonly carrying: Carrying;
}

const kept = new WeakMap<Plan['cast'], Kept>();

function carryingOf(plan: Plan): Carrying {
  const known = kept.get(plan.cast);
  if (known && known.beats === plan.beats && known.passes === plan.passes) return known.carrying;
  const carrying = carryingIn(plan);
  kept.set(plan.cast, { beats: plan.beats, passes: plan.passes, carrying });
  return carrying;
}

/**
 * Every prop of a plan with who holds it when, in the order of the cast; the first holds begin at 0. Passes
 * count in the order of their beats and, at one beat, as they can be done: who carries nothing gives nothing, and
 * nothing goes into hands that are full, unless two people swap.
 */
export const propLanes = (plan: Plan): readonly PropLane[] => carryingOf(plan).lanes;

/** The passes that hand something over, in the order of the clock. */
export const handOversOf = (plan: Plan): readonly HandOver[] => carryingOf(plan).handOvers;

const holderAt = ({ holds }: PropLane, seconds: number): string | undefined =>
  holds.find(({ untilSeconds }) => untilSeconds === null || seconds < untilSeconds)?.performerId;

/** What a performer has in hand at an instant of the action's clock; at the beat of a pass the taker has it. */
export function carriedAt(plan: Plan, performerId: string, seconds: number): Prop | null {
  return carryingOf(plan).lanes.find((lane) => holderAt(lane, seconds) === performerId)?.prop ?? null;
}
