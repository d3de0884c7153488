import type { Vec3 } from '../form/build/vector';
import { whereabouts } from '../form/figure/whereabouts';
import { frameShapeOf, glassOf, stateAt } from '../optics/camera';
import { panTiltToHold } from '../optics/operator';
import { poseOf } from '../optics/pose';
import type { FrameShape } from '../optics/types';
import { played } from '../plan/played';
import type { Lens } from '../plan/schema/kit';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import type { LengthSystem } from '../units/lengths';
import { cos, sin } from '../units/steadyMath';
import { framingOf } from './framing';
import { gazeDegrees, type InFrame, inFrameAt, mainOf, offEyes } from './pairs';
import { type Reposing, reposing } from './reposing';

/** What is kept of the model where two bodies differ: how far the lens is from the eyes, or how high the head is in frame. */
export type MatchBy = 'distance' | 'head';

/** The camera that frames its subject as another setup frames its own. */
export interface MatchingSetup extends Reposing {
  readonly setupId: string;
  readonly modelId: string;
  readonly performerId: string;
  readonly modelPerformerId: string;
  readonly lensId: string;
  /** Whether the lens gives the model's angle of view. */
  readonly sameField: boolean;
  /** Straight from the lens to the eyes, metres. */
  readonly distanceMetres: number;
}

/** Angles of view that differ by less than this share are the same. */
const SAME_FIELD = 1e-6;
/** Steps towards the same height of head; each leaves a small share of the error before it. */
const HEAD_STEPS = 12;

interface Glass {
  readonly lens: Lens;
  readonly focalMm: number;
  /** How many times as wide as wanted the field is, or as narrow; 1 for the same. */
  readonly times: number;
}

/** A lens of the kit that gives a setup the field that is wanted, or comes nearest to it, of the squeeze that it has. */
function glassFor(plan: Plan, setup: Setup, model: Setup, tanHalfWidth: number): Glass {
  const own = glassOf(plan, setup).lens;
  const { lenses } = plan.kit;
  const rank = ({ id }: Lens): number => (id === model.lens ? 0 : id === setup.lens ? 1 : 2);
  const found = lenses
    .filter(({ squeeze }) => squeeze === own.squeeze)
    .map((lens): Glass & { readonly rank: number } => {
      const shape = frameShapeOf(plan, { ...setup, lens: lens.id }, lens.focalMm);
      const asked = (lens.focalMm * shape.tanHalfWidth) / tanHalfWidth;
      const focalMm = Math.min(lens.longestMm ?? lens.focalMm, Math.max(lens.focalMm, asked));
      return {
        lens,
        focalMm,
        times: Math.max(asked / focalMm, focalMm / asked),
        rank: rank(lens),
      };
    })
    .toSorted((a, b) => (Math.abs(a.times - b.times) < SAME_FIELD ? a.rank - b.rank : a.times - b.times));
  return found[0];
}

/** How high somebody's head is in a frame whose camera stands so far off, looking so. */
function headFrom(
  plan: Plan,
  setup: Setup,
  seconds: number,
  args: {
    readonly performerId: string;
    readonly position: Vec3;
    readonly eyes: Vec3;
    readonly at: readonly [number, number];
    readonly rollDegrees: number;
    readonly frame: FrameShape;
  },
): number | null {
  const { performerId, position, eyes, at, rollDegrees, frame } = args;
  const scene = played(plan, setup);
  const performer = scene.cast.find(({ id }) => id === performerId);
  const aim = panTiltToHold(position, eyes, at, rollDegrees, frame);
  const pose = poseOf(position, aim.headingDegrees, aim.tiltDegrees, rollDegrees);
  return (performer && framingOf({ pose, frame }, scene, performer, seconds)?.headHeight) ?? null;
}

/** Whom a setup is about, or the one who is asked for, at an instant. */
function subjectOf(
  plan: Plan,
  setup: Setup,
  seconds: number,
  performerId: string | undefined,
): InFrame | null {
  const seen = inFrameAt(plan, setup, seconds);
  return performerId === undefined
    ? mainOf(seen)
    : (seen.find((each) => each.performerId === performerId) ?? null);
}

/**
 * The camera of one setup that frames its subject as a model frames its own at an instant of the action's clock,
 * mirrored: as far off and as high over the eyes, as far off the eyeline to the other side, the eyes as far from the
 * other edge of the frame. Its squeeze and delivery stay; the lens is the kit's that gives the model's angle of view, or
 * the nearest. `by: 'head'` goes nearer or farther on the same line until the head is as high in frame. Null where
 * either is about nobody. A performer of one's choice is framed even if the setup does not see them yet.
 */
export function matchSetup(
  plan: Plan,
  args: {
    readonly setupId: string;
    readonly modelId: string;
    readonly seconds: number;
    readonly by?: MatchBy;
    readonly performerId?: string;
    readonly modelPerformerId?: string;
    readonly lengths?: LengthSystem;
  },
): MatchingSetup | null {
  const { seconds, by = 'distance', lengths = 'm' } = args;
  const setup = plan.setups.find(({ id }) => id === args.setupId);
  const model = plan.setups.find(({ id }) => id === args.modelId);
  if (!setup || !model || setup === model) return null;
  const theirs = subjectOf(plan, model, seconds, args.modelPerformerId);
  const performerId = args.performerId ?? subjectOf(plan, setup, seconds, undefined)?.performerId;
  const scene = played(plan, setup);
  const performer = scene.cast.find(({ id }) => id === performerId);
  const place = performer && whereabouts(performer, scene, seconds);
  if (!theirs || !place || theirs.performerId === performer.id) return null;

  const state = stateAt(plan, model, seconds);
  const field = frameShapeOf(plan, model, state.focalMm).tanHalfWidth;
  const glass = glassFor(plan, setup, model, field);
  const off = offEyes(state.position, theirs.place.eyes);
  const heading = ((gazeDegrees(place) - theirs.offLensDegrees) * Math.PI) / 180;
  const positionAt = (times: number): Vec3 => [
    place.eyes[0] + times * off.levelMetres * sin(heading),
    place.eyes[1] + times * off.aboveMetres,
    place.eyes[2] - times * off.levelMetres * cos(heading),
  ];
  const at: readonly [number, number] = [1 - theirs.framing.eyes[0], theirs.framing.eyes[1]];
  const rollDegrees = state.rollDegrees === 0 ? 0 : -state.rollDegrees;
  const frame = frameShapeOf(plan, { ...setup, lens: glass.lens.id }, glass.focalMm);
  let times = 1;
  for (let step = 0; by === 'head' && step < HEAD_STEPS; step += 1) {
    const position = positionAt(times);
    const head = headFrom(plan, setup, seconds, {
      performerId: performer.id,
      position,
      eyes: place.eyes,
      at,
      rollDegrees,
      frame,
    });
    if (head === null) break;
    times *= head / theirs.framing.headHeight;
  }
  const wanted = {
    position: positionAt(times),
    rollDegrees,
    lens: glass.lens,
    focalMm: glass.focalMm,
    performerId: performer.id,
    eyes: place.eyes,
    at,
  };
  return {
    ...reposing(plan, setup, seconds, wanted, lengths),
    setupId: setup.id,
    modelId: model.id,
    performerId: performer.id,
    modelPerformerId: theirs.performerId,
    lensId: glass.lens.id,
    sameField: glass.times - 1 < SAME_FIELD,
    distanceMetres: times * off.straightMetres,
  };
}
