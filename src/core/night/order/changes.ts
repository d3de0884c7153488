import { signedDegrees } from '../../continuity/continuityShots';
import { spanOf, stateAt } from '../../optics/camera';
import { dimAt, isLamp } from '../../plan/cues';
import { NIGHT_COSTS, type NightCost } from '../../plan/schema/night';
import type { Plan } from '../../plan/schema/plan';
import type { Filter, Setup } from '../../plan/schema/setup';
import { hypot } from '../../units/steadyMath';
import { costsOf, needsOf } from '../times/takes';

/** One thing that is otherwise in the next setup, and what changing it costs. */
export interface Change {
  readonly kind: NightCost;
  readonly minutes: number;
}

/** What is otherwise in the next setup. */
export interface Changes {
  readonly list: readonly Change[];
  /** How far the camera is turned, 0..180 degrees, and carried, metres, from where it begins to where it begins. */
  readonly turnDegrees: number;
  readonly carriedMetres: number;
  /** Lamps that begin at another level. */
  readonly lampIds: readonly string[];
  /** All of it together. */
  readonly minutes: number;
}

/** Levels nearer than this are one. */
const SAME_LEVEL = 0.005;
const HALF_TURN = 180;

/** What of a setup is otherwise in another by what it says itself. */
type Equipped = Pick<
  Setup,
  'lens' | 'body' | 'mode' | 'filter' | 'ndStops' | 'filterLossStops' | 'support' | 'track'
>;

/** How a setup begins: where its camera is, where it looks, at which levels its lamps are. */
export interface Beginning {
  readonly setup: Equipped;
  readonly headingDegrees: number;
  readonly at: readonly [x: number, z: number];
  /** Of the plan's lamps, in their order; the same list for setups that begin at the same instant. */
  readonly levels: readonly number[];
  readonly lighting: string | null;
  readonly isWet: boolean;
}

/** How all setups begin, and what changing from one to another costs: of a plan of many setups only few changes are asked. */
export interface Beginnings {
  readonly setups: readonly Beginning[];
  readonly lampIds: readonly string[];
  readonly costs: Readonly<Record<NightCost, number>>;
}

/** How the setups of a plan begin, in its order. */
export function beginningsOf(plan: Plan): Beginnings {
  const lamps = plan.gear.filter(isLamp);
  const levelsAt = new Map<number, readonly number[]>();
  const setups = plan.setups.map((setup): Beginning => {
    const [from] = spanOf(plan, setup);
    const { position, headingDegrees } = stateAt(plan, setup, from);
    const { lighting, ground } = needsOf(plan, setup.id);
    const levels = levelsAt.get(from) ?? lamps.map((lamp) => dimAt(lamp, plan, from));
    levelsAt.set(from, levels);
    return {
      setup,
      headingDegrees,
      at: [position[0], position[2]],
      levels,
      lighting: lighting ?? null,
      isWet: ground === 'wet',
    };
  });
  return { setups, lampIds: lamps.map(({ id }) => id), costs: costsOf(plan) };
}

const sameFilter = (a: Filter | undefined, b: Filter | undefined): boolean =>
  a?.kind === b?.kind && a?.strength === b?.strength;

/** Whether the glass before two lenses is another: a filter, neutral density, or what else takes light. */
const changesFilter = (a: Equipped, b: Equipped): boolean =>
  !sameFilter(a.filter, b.filter) ||
  a.ndStops !== b.ndStops ||
  (a.filterLossStops ?? 0) !== (b.filterLossStops ?? 0);

const turnBetween = (from: Beginning, to: Beginning): number =>
  Math.abs(signedDegrees(to.headingDegrees - from.headingDegrees));

const metresBetween = (from: Beginning, to: Beginning): number =>
  hypot(to.at[0] - from.at[0], to.at[1] - from.at[1]);

const isOtherLevel = (from: Beginning, to: Beginning, lamp: number): boolean =>
  Math.abs(to.levels[lamp] - from.levels[lamp]) > SAME_LEVEL;

function lampsBetween(from: Beginning, to: Beginning): number {
  if (from.levels === to.levels) return 0;
  let count = 0;
  for (let lamp = 0; lamp < to.levels.length; lamp += 1) if (isOtherLevel(from, to, lamp)) count += 1;
  return count;
}

/** How often each thing is to be changed from one setup to the next. */
const timesBetween = (from: Beginning, to: Beginning): Readonly<Record<NightCost, number>> => {
  const [a, b] = [from.setup, to.setup];
  return {
    lens: a.lens === b.lens ? 0 : 1,
    body: a.body === b.body && a.mode === b.mode ? 0 : 1,
    filter: changesFilter(a, b) ? 1 : 0,
    support: a.support === b.support && a.track === b.track ? 0 : 1,
    lighting: from.lighting === to.lighting ? 0 : 1,
    head: lampsBetween(from, to),
    halfTurn: turnBetween(from, to) / HALF_TURN,
    tenMetres: metresBetween(from, to) / 10,
    wetDown: to.isWet && !from.isWet ? 1 : 0,
  };
};

/**
 * What changes from one setup to the next and what it costs, whole minutes. The lights count as another state where the
 * night calls it by another word, and every lamp whose level is another as the action begins counts by itself. Whoever
 * comes to a wet setup from one that is not has to wet the ground.
 * @param from place of the setup before among the plan's setups
 */
export function changesBetween({ setups, lampIds, costs }: Beginnings, from: number, to: number): Changes {
  const [before, after] = [setups[from], setups[to]];
  const times = timesBetween(before, after);
  const list = NIGHT_COSTS.map(
    (kind): Change => ({ kind, minutes: Math.round(costs[kind] * times[kind]) }),
  ).filter(({ kind, minutes }) =>
    kind === 'halfTurn' || kind === 'tenMetres' ? minutes > 0 : times[kind] > 0,
  );
  return {
    list,
    turnDegrees: turnBetween(before, after),
    carriedMetres: metresBetween(before, after),
    lampIds:
      before.levels === after.levels ? [] : lampIds.filter((_, lamp) => isOtherLevel(before, after, lamp)),
    minutes: list.reduce((sum, change) => sum + change.minutes, 0),
  };
}

/** The minutes of all changes but a wet-down from one setup to each, in the plan's order. */
export function dryMinutesFrom({ setups, costs }: Beginnings, from: number): number[] {
  return setups.map((to) => {
    const times = timesBetween(setups[from], to);
    let minutes = 0;
    for (const kind of NIGHT_COSTS) if (kind !== 'wetDown') minutes += Math.round(costs[kind] * times[kind]);
    return minutes;
  });
}
