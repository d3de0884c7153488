import { landmarksAt } from '../form/figure/landmarks';
import { type Whereabouts, whereabouts } from '../form/figure/whereabouts';
import { cameraAt, spanOf } from '../optics/camera';
import type { Camera } from '../optics/types';
import { played } from '../plan/played';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { inOneGo } from '../units/steps';
import { ByInstant } from './byInstant';
import { type Framing, framingFrom } from './framing';

/** Frames are counted like this: 24 a second. */
const FRAMES_PER_SECOND = 24;
/** How often a setup is looked at: every so many frames, a quarter of a second. */
const EVERY_FRAMES = 6;
/** A span of more looks than this is looked at less often, so that an hour costs no more than a minute. */
const MOST_LOOKS = 240;

/** A performer as a setup has them at one instant. */
export interface Seen {
  /** Where they are; null for nobody there. */
  readonly place: Whereabouts | null;
  /** How they lie in the frame; null for nobody there, or behind the camera. */
  readonly framing: Framing | null;
}

/** A setup over its span, looked at often enough for what cuts together. */
export interface Shot {
  readonly setup: Setup;
  /** Its place among the plan's setups, from 0. */
  readonly order: number;
  /** The plan with this setup's cheated marks. */
  readonly scene: Plan;
  /** Action's clock, seconds: the span's start, so many frames apart, and its end. */
  readonly instants: readonly number[];
  readonly cameras: readonly Camera[];
  /** Of every performer, by id, one for each instant. */
  readonly seen: ReadonlyMap<string, readonly Seen[]>;
}

/** The instants at which a span is looked at, seconds; one where it has no length. */
function looksIn(from: number, to: number): readonly number[] {
  const frames = Math.floor((to - from) * FRAMES_PER_SECOND + 1e-9);
  const every = Math.max(EVERY_FRAMES, Math.ceil(frames / MOST_LOOKS));
  const instants: number[] = [];
  for (let frame = 0; frame <= frames; frame += every) instants.push(from + frame / FRAMES_PER_SECOND);
  if (to - instants[instants.length - 1] > 1e-6) instants.push(to);
  return instants;
}

/** Where performers are, and where the landmarks of their bodies are, at the instants of all setups. */
interface Cast {
  readonly places: ByInstant<Whereabouts | null>;
  readonly marks: ByInstant<ReturnType<typeof landmarksAt>>;
}

function* shotOf(plan: Plan, setup: Setup, order: number, cast: Cast): Generator<number, Shot, void> {
  const scene = played(plan, setup);
  const instants = looksIn(...spanOf(plan, setup));
  const seen = new Map<string, Seen[]>(scene.cast.map(({ id }) => [id, []]));
  const cameras: Camera[] = [];
  for (const [k, seconds] of instants.entries()) {
    yield k / instants.length;
    const camera = cameraAt(plan, setup, seconds);
    for (const performer of scene.cast) {
      const place = cast.places.at(performer, scene, seconds);
      const marks = cast.marks.at(performer, scene, seconds);
      const framing = place ? framingFrom(camera, performer, marks) : null;
      seen.get(performer.id)?.push({ place, framing });
    }
    cameras.push(camera);
  }
  return { setup, order, scene, instants, cameras, seen };
}

const kept = new WeakMap<Plan, readonly Shot[]>();

/** Every setup of a plan as continuity looks at it, in the plan's order; the same list when asked again. */
export const shotsOf = (plan: Plan): readonly Shot[] => inOneGo(shotSteps(plan));

/** The same, look by look: yields the done share, 0..1. */
export function* shotSteps(plan: Plan): Generator<number, readonly Shot[], void> {
  const known = kept.get(plan);
  if (known) return known;
  const cast: Cast = { places: new ByInstant(whereabouts), marks: new ByInstant(landmarksAt) };
  const shots: Shot[] = [];
  for (const [order, setup] of plan.setups.entries()) {
    const steps = shotOf(plan, setup, order, cast);
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield (order + step.value) / plan.setups.length;
    shots.push(step.value);
  }
  kept.set(plan, shots);
  return shots;
}

/** Whether any of a performer's head is in frame at one of a shot's instants. Whoever stands behind something is not asked for. */
export const isFramed = (shot: Shot, performerId: string, k: number): boolean =>
  (shot.seen.get(performerId)?.[k]?.framing?.size ?? null) !== null;

/** Whether any of a performer's body is, down the middle of it. */
export const isInFrame = (shot: Shot, performerId: string, k: number): boolean =>
  shot.seen.get(performerId)?.[k]?.framing?.inFrame ?? false;

/**
 * How a shot frames a performer at any instant of its span; null for nobody there, or behind the camera.
 * @param landmarks of whoever asks for many instants, that setups share
 */
export function framingIn(
  { scene, setup }: Shot,
  performerId: string,
  seconds: number,
  landmarks: ByInstant<ReturnType<typeof landmarksAt>>,
): Framing | null {
  const performer = scene.cast.find(({ id }) => id === performerId);
  if (!performer) return null;
  const marks = landmarks.at(performer, scene, seconds);
  return framingFrom(cameraAt(scene, setup, seconds), performer, marks);
}

/** The places among a shot's instants at which something holds. */
export function looksWhere(shot: Shot, holds: (k: number) => boolean): readonly number[] {
  return shot.instants.flatMap((_, k) => (holds(k) ? [k] : []));
}

/** Runs of neighbouring places, as [first, last]. */
export function runsIn(places: readonly number[]): readonly (readonly [number, number])[] {
  const runs: [number, number][] = [];
  for (const place of places) {
    const last = runs[runs.length - 1];
    if (last && last[1] === place - 1) last[1] = place;
    else runs.push([place, place]);
  }
  return runs;
}

/** Runs of neighbouring looks as spans on the action's clock, seconds. */
export const spansWhere = (
  shot: Shot,
  places: readonly number[],
): readonly (readonly [from: number, to: number])[] =>
  runsIn(places).map(([first, last]) => [shot.instants[first], shot.instants[last]] as const);

/**
 * The first of the frames between two instants at which something holds that holds at the later one and not at the
 * earlier; seconds. The frames count from the earlier.
 */
export function firstFrameWhere(from: number, to: number, holds: (seconds: number) => boolean): number {
  let [no, yes] = [0, Math.ceil((to - from) * FRAMES_PER_SECOND - 1e-9)];
  const at = (frame: number): number => Math.min(to, from + frame / FRAMES_PER_SECOND);
  while (yes - no > 1) {
    const middle = Math.floor((no + yes) / 2);
    if (holds(at(middle))) yes = middle;
    else no = middle;
  }
  return at(yes);
}

/** Degrees in −180 < d ≤ 180. */
export const signedDegrees = (degrees: number): number => 180 - ((((180 - degrees) % 360) + 360) % 360);
