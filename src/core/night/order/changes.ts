import { signedDegrees } from '../../continuity/continuityShots';
import { spanOf, stateAt } from '../../optics/camera';
import { dimAt, isLamp } from '../../plan/cues';
import type { NightCost } from '../../plan/schema/night';
import type { Plan } from '../../plan/schema/plan';
import type { Filter, Setup } from '../../plan/schema/setup';
import { hypot } from '../../units/steadyMath';
import { costOf, needsOf } from '../times/takes';

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

/** How a setup begins: where its camera is, where it looks, at which levels its lamps are. */
export interface Beginning {
  readonly setup: Setup;
  readonly headingDegrees: number;
  readonly at: readonly [x: number, z: number];
  readonly levels: ReadonlyMap<string, number>;
  readonly lighting: string | null;
  readonly isWet: boolean;
}

/** How a setup begins. */
export function beginningOf(plan: Plan, setup: Setup): Beginning {
  const [from] = spanOf(plan, setup);
  const { position, headingDegrees } = stateAt(plan, setup, from);
  const { lighting, ground } = needsOf(plan, setup.id);
  return {
    setup,
    headingDegrees,
    at: [position[0], position[2]],
    levels: new Map(plan.gear.filter(isLamp).map((lamp) => [lamp.id, dimAt(lamp, plan, from)])),
    lighting: lighting ?? null,
    isWet: ground === 'wet',
  };
}

const sameFilter = (a: Filter | undefined, b: Filter | undefined): boolean =>
  a?.kind === b?.kind && a?.strength === b?.strength;

/** Whether the glass before two lenses is another: a filter, neutral density, or what else takes light. */
const changesFilter = (a: Setup, b: Setup): boolean =>
  !sameFilter(a.filter, b.filter) ||
  a.ndStops !== b.ndStops ||
  (a.filterLossStops ?? 0) !== (b.filterLossStops ?? 0);

/**
 * What changes from one setup to the next and what it costs, whole minutes. The lights count as another state where the
 * night calls it by another word, and every lamp whose level is another as the action begins counts by itself. Whoever
 * comes to a wet setup from one that is not has to wet the ground.
 */
export function changesBetween(plan: Pick<Plan, 'night'>, from: Beginning, to: Beginning): Changes {
  const [a, b] = [from.setup, to.setup];
  const turnDegrees = Math.abs(signedDegrees(to.headingDegrees - from.headingDegrees));
  const carriedMetres = hypot(to.at[0] - from.at[0], to.at[1] - from.at[1]);
  const lampIds = [...to.levels]
    .filter(([id, level]) => Math.abs(level - (from.levels.get(id) ?? 0)) > SAME_LEVEL)
    .map(([id]) => id);
  const times: readonly (readonly [NightCost, number])[] = [
    ['lens', a.lens === b.lens ? 0 : 1],
    ['body', a.body === b.body && a.mode === b.mode ? 0 : 1],
    ['filter', changesFilter(a, b) ? 1 : 0],
    ['support', a.support === b.support && a.track === b.track ? 0 : 1],
    ['lighting', from.lighting === to.lighting ? 0 : 1],
    ['head', lampIds.length],
    ['halfTurn', turnDegrees / HALF_TURN],
    ['tenMetres', carriedMetres / 10],
    ['wetDown', to.isWet && !from.isWet ? 1 : 0],
  ];
  const list = times
    .map(([kind, many]): Change => ({ kind, minutes: Math.round(costOf(plan, kind) * many) }))
    .filter(({ kind, minutes }, k) =>
      kind === 'halfTurn' || kind === 'tenMetres' ? minutes > 0 : times[k][1] > 0,
    );
  return {
    list,
    turnDegrees,
    carriedMetres,
    lampIds,
    minutes: list.reduce((sum, change) => sum + change.minutes, 0),
  };
}
