import { type CameraReading, cameraReading } from '../../core/continuity/cameraReading';
import { framingOf, type ShotSize } from '../../core/continuity/framing';
import { turnBetween } from '../../core/form/figure/turning';
import { cameraAt, spanOf, stateAt } from '../../core/optics/camera';
import { dimAt, isLamp } from '../../core/plan/cues';
import { played } from '../../core/plan/played';
import { alongOf, metresBetween, spotAlong } from '../../core/plan/runs';
import type { Spot } from '../../core/plan/schema/numbers';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';

/** Somebody who is in a setup's frame at some time, with the sizes in which they are first and last in it. */
export interface Framed {
  readonly performerId: string;
  readonly label: string;
  /** Null where they are in frame without their head. */
  readonly first: ShotSize | null;
  readonly last: ShotSize | null;
}

/** A lamp that burns in a setup, and the shares of its full output between which it is dimmed there. */
export interface Burning {
  readonly itemId: string;
  readonly label: string;
  readonly fromDim: number;
  readonly untilDim: number;
}

/** How a camera gets from one end of its move to the other, as its operator sees it at the beginning. Metres and degrees. */
export interface CameraWay {
  /** Along its way, not across. */
  readonly metres: number;
  readonly right: number;
  readonly up: number;
  readonly ahead: number;
  readonly panDegrees: number;
  readonly tiltDegrees: number;
}

/** What a crew has to know to put a camera up. */
export interface SetupSheet {
  readonly setupId: string;
  /** On the action's clock, [from, until]. */
  readonly seconds: readonly [number, number];
  readonly start: CameraReading;
  readonly end: CameraReading;
  /** Null where the camera stays as it is. */
  readonly way: CameraWay | null;
  /** How far the lens is, seen from above, from the face of the nearest parapet; null without any. */
  readonly parapet: { readonly label: string; readonly metres: number } | null;
  readonly cast: readonly Framed[];
  readonly burning: readonly Burning[];
}

/** Who is in frame is asked so often, seconds; in a long setup less often. */
const LOOK_SECONDS = 0.25;
const MOST_LOOKS = 60;
/** Less than this is no move: metres, and degrees. */
const STILL_METRES = 0.005;
const STILL_DEGREES = 0.05;
const RADIANS = Math.PI / 180;

/** Moments of a span at which it is looked at, both ends among them. */
function looksOf([from, until]: readonly [number, number]): readonly number[] {
  const steps = Math.min(MOST_LOOKS, Math.max(1, Math.ceil((until - from) / LOOK_SECONDS)));
  return Array.from({ length: steps + 1 }, (_, k) => from + ((until - from) * k) / steps);
}

function wayOf(plan: Plan, setup: Setup, moments: readonly number[]): CameraWay | null {
  const states = moments.map((seconds) => stateAt(plan, setup, seconds));
  const [first, last] = [states[0], states[states.length - 1]];
  const apart = first.position.map((value, axis) => last.position[axis] - value);
  const heading = first.headingDegrees * RADIANS;
  const metres = states
    .slice(1)
    .reduce(
      (sum, { position }, k) =>
        sum + Math.hypot(...position.map((value, axis) => value - states[k].position[axis])),
      0,
    );
  // Keys turn as far as they are written. What an operator holds comes round at ±180, which is no turn of the camera.
  const panDegrees = setup.operator
    ? states
        .slice(1)
        .reduce(
          (sum, { headingDegrees }, k) => sum + turnBetween(states[k].headingDegrees, headingDegrees),
          0,
        )
    : last.headingDegrees - first.headingDegrees;
  const tiltDegrees = last.tiltDegrees - first.tiltDegrees;
  const turns = states.some(
    (state) =>
      Math.abs(turnBetween(first.headingDegrees, state.headingDegrees)) > STILL_DEGREES ||
      Math.abs(state.tiltDegrees - first.tiltDegrees) > STILL_DEGREES,
  );
  if (metres < STILL_METRES && !turns) return null;
  return {
    metres,
    right: apart[0] * Math.cos(heading) + apart[2] * Math.sin(heading),
    up: apart[1],
    ahead: apart[0] * Math.sin(heading) - apart[2] * Math.cos(heading),
    panDegrees,
    tiltDegrees,
  };
}

function parapetNear({ pieces }: Plan, at: Spot): SetupSheet['parapet'] {
  const found = pieces.flatMap((piece) => {
    if (piece.kind !== 'parapet') return [];
    const { path, closed, label, thicknessMetres } = piece;
    const { spot } = spotAlong(path, closed, alongOf(path, closed, at));
    return [{ label, metres: Math.max(0, metresBetween(at, spot) - thicknessMetres / 2) }];
  });
  return found.toSorted((a, b) => a.metres - b.metres)[0] ?? null;
}

function castOf(plan: Plan, setup: Setup, moments: readonly number[]): readonly Framed[] {
  const scene = played(plan, setup);
  const views = moments.map((seconds) => ({ seconds, camera: cameraAt(plan, setup, seconds) }));
  return scene.cast.flatMap((performer): Framed[] => {
    const sizes = views.flatMap(({ seconds, camera }) => {
      const framing = framingOf(camera, scene, performer, seconds);
      return framing?.inFrame ? [framing.size] : [];
    });
    if (sizes.length === 0) return [];
    const known = sizes.filter((size) => size !== null);
    return [
      {
        performerId: performer.id,
        label: performer.label,
        first: known[0] ?? null,
        last: known.at(-1) ?? null,
      },
    ];
  });
}

function burningIn(plan: Plan, moments: readonly number[]): readonly Burning[] {
  return plan.gear.filter(isLamp).flatMap((lamp): Burning[] => {
    const dims = moments.map((seconds) => dimAt(lamp, plan, seconds));
    if (dims.every((dim) => dim === 0)) return [];
    return [{ itemId: lamp.id, label: lamp.label, fromDim: dims[0], untilDim: dims.at(-1) ?? dims[0] }];
  });
}

/** What a crew has to know of a setup, read off its camera at both ends of its span and on the way between. */
export function setupSheet(plan: Plan, setup: Setup): SetupSheet {
  const [from, until] = spanOf(plan, setup);
  const moments = looksOf([from, until]);
  const { position } = stateAt(plan, setup, from);
  return {
    setupId: setup.id,
    seconds: [from, until],
    start: cameraReading(plan, setup, from),
    end: cameraReading(plan, setup, until),
    way: wayOf(plan, setup, moments),
    parapet: parapetNear(plan, [position[0], position[2]]),
    cast: castOf(plan, setup, moments),
    burning: burningIn(plan, moments),
  };
}
