import * as v from 'valibot';
import { LARGEST_METRES, type Point } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { type CameraKey, type Operator, type Setup, setup as setupSchema } from '../schema/setup';
import { setupFaults } from '../setupChecks';
import { editSetup } from './editRecord';
import { setLens } from './setLens';
import { kept, tidyCoordinate, tidyMetres } from './tidy';

/** How a camera is to stand and look, as what every key of its move changes by alike. */
export interface ReposeArgs {
  readonly setupId: string;
  /** A lens of the plan's kit. */
  readonly lens: string;
  /** The way of every key, metres. */
  readonly by: Point;
  /** On a track: how far along it each key stands then, metres; null off tracks. */
  readonly alongMetres: readonly number[] | null;
  /** What pan, tilt and roll grow by at every key. */
  readonly panDegrees: number;
  readonly tiltDegrees: number;
  readonly rollDegrees: number;
  /** How far in a zoom is at each key, millimetres; null leaves it. */
  readonly focalMm: readonly number[] | null;
  /** Whom the operator holds, and where; null leaves it. */
  readonly operator: Operator | null;
}

const PER_DEGREE = 1e6;
const tidyDegrees = (degrees: number): number => Math.round(degrees * PER_DEGREE) / PER_DEGREE + 0;
/** Sum of degrees; what grows by nothing keeps its digits. */
const grown = (degrees: number, by: number): number => (by === 0 ? degrees : tidyDegrees(degrees + by));

function reposed(key: CameraKey, k: number, pan: number, args: ReposeArgs): CameraKey {
  const { by, alongMetres, focalMm } = args;
  const position: Point = [
    by[0] === 0 ? key.position[0] : tidyCoordinate(key.position[0] + by[0]),
    by[1] === 0 ? key.position[1] : tidyCoordinate(key.position[1] + by[1]),
    by[2] === 0 ? key.position[2] : tidyCoordinate(key.position[2] + by[2]),
  ];
  const along = alongMetres?.[k];
  const focal = focalMm?.[k];
  const next: CameraKey = {
    ...key,
    position,
    headingDegrees: grown(key.headingDegrees, pan),
    tiltDegrees: grown(key.tiltDegrees, args.tiltDegrees),
    rollDegrees: grown(key.rollDegrees, args.rollDegrees),
    ...(along !== undefined && { alongMetres: kept(tidyMetres(along), 0, LARGEST_METRES) }),
    ...(focal !== undefined && { focalMm: tidyMetres(focal) }),
  };
  return JSON.stringify(next) === JSON.stringify(key) ? key : next;
}

/** Whole turns come off all keys together, so that a pan past north stays one pan. */
const turnsOff = (setup: Setup, pan: number): number => {
  const first = setup.move.keys[0].headingDegrees + pan;
  return Math.abs(first) > 360 ? Math.round(first / 360) * 360 : 0;
};

/**
 * Puts a setup's camera elsewhere and turns it: every key of its move alike, with another lens where one is named, and
 * another hold for the operator. A key that could not be written, of a tilt beyond the plumb line say, changes nothing,
 * nor does a lens or a performer that the plan lacks; a key beyond the 5 km that a plan may hold stops there.
 */
export function reposeCamera(plan: Plan, args: ReposeArgs): Plan {
  const { setupId, lens, panDegrees, operator } = args;
  if (!plan.kit.lenses.some(({ id }) => id === lens)) return plan;
  let refused = false;
  const moved = editSetup(plan, setupId, (setup) => {
    const pan = panDegrees === 0 ? 0 : panDegrees - turnsOff(setup, panDegrees);
    const keys = setup.move.keys.map((key, k) => reposed(key, k, pan, args));
    const isHeld = operator === null || JSON.stringify(operator) === JSON.stringify(setup.operator);
    if (isHeld && keys.every((key, k) => key === setup.move.keys[k])) return setup;
    const next: Setup = {
      ...setup,
      ...(operator !== null && !isHeld && { operator }),
      move: { ...setup.move, keys },
    };
    refused = !v.is(setupSchema, next);
    return refused ? setup : next;
  });
  if (refused || (moved !== plan && setupFaults(moved).length > 0)) return plan;
  return setLens(moved, { setupId, lens });
}
