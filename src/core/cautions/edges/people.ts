import { walksOf } from '../../form/figure/walks';
import { stateAt } from '../../optics/camera';
import { keysOf } from '../../optics/cameraKey';
import { named } from '../../plan/named';
import { played } from '../../plan/played';
import { metresBetween } from '../../plan/runs';
import type { Performer } from '../../plan/schema/cast';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { surfaceUnder } from '../../plan/surfaces';
import { between } from '../../plan/walkWays/planar';

/** A walk is looked at at places so far apart, metres. */
const STEP_METRES = 0.25;
/** Whoever looks through a camera has it about so high over their feet, metres. Source: common practice, no source */
const EYE_METRES = 1.5;

/** Somewhere that somebody is: where their feet are, and how much above the floor. */
export interface Stand {
  readonly at: Spot;
  readonly floorMetres: number;
  /** How high they stand above that floor, as on a ladder. */
  readonly raisedMetres: number;
  /** Whether they only pass. */
  readonly walks: boolean;
}

const alongPath = (path: readonly Spot[]): readonly Spot[] =>
  path.flatMap((to, k): readonly Spot[] => {
    const from = path[k - 1];
    if (!from) return [to];
    const steps = Math.max(1, Math.ceil(metresBetween(from, to) / STEP_METRES));
    return Array.from({ length: steps }, (_, step) => between(from, to, (step + 1) / steps));
  });

/** Where a performer is over the whole action: at marks, and along walks. */
export function placesOf(plan: Plan, performer: Performer): readonly Stand[] {
  const floorAt = (id: string): number => performer.marks.find((mark) => mark.id === id)?.floorMetres ?? 0;
  return [
    ...performer.marks.map(({ at, floorMetres = 0 }) => ({ at, floorMetres, raisedMetres: 0, walks: false })),
    ...walksOf(performer, plan).flatMap(({ path, fromMark, toMark }) =>
      alongPath(path).map((at) => ({
        at,
        floorMetres: Math.max(floorAt(fromMark), floorAt(toMark)),
        raisedMetres: 0,
        walks: true,
      })),
    ),
  ];
}

const kept = new WeakMap<Plan, Map<Setup, readonly Stand[]>>();

/** Where the operator of a setup is, at each key of its move: under the camera; on a ladder as high as it needs. */
export function operatorOf(plan: Plan, setup: Setup): readonly Stand[] {
  const bySetup = kept.get(plan) ?? new Map<Setup, readonly Stand[]>();
  kept.set(plan, bySetup);
  const known = bySetup.get(setup);
  if (known) return known;
  const keys = keysOf(plan, setup);
  const found = keys.map(({ atSeconds }): Stand => {
    const [x, y, z] = stateAt(played(plan, setup), setup, atSeconds).position;
    const floorMetres = surfaceUnder(plan, [x, z], { belowMetres: y }).metres;
    const raisedMetres = setup.support === 'ladder' ? Math.max(0, y - floorMetres - EYE_METRES) : 0;
    return { at: [x, z], floorMetres, raisedMetres, walks: keys.length > 1 };
  });
  bySetup.set(setup, found);
  return found;
}

/** Somebody who works on the roof, at a mark or a camera. */
export interface Person {
  readonly itemIds: readonly string[];
  readonly setupIds: readonly string[];
  readonly name: string;
  readonly at: Spot;
  readonly floorMetres: number;
}

/** Everybody at their marks, and whoever works a camera at each key of its move. */
export function peopleOf(plan: Plan): readonly Person[] {
  return [
    ...plan.cast.flatMap((performer) =>
      performer.marks.map(({ at, floorMetres = 0 }) => ({
        itemIds: [performer.id],
        setupIds: [],
        name: named(performer.label),
        at,
        floorMetres,
      })),
    ),
    ...plan.setups.flatMap((setup) =>
      operatorOf(plan, setup).map(({ at, floorMetres }) => ({
        itemIds: [],
        setupIds: [setup.id],
        name: `the camera of ${named(setup.label)}`,
        at,
        floorMetres,
      })),
    ),
  ];
}
