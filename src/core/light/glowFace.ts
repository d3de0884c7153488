import { add, length, scale, subtract, unit, type Vec3 } from '../form/build/vector';
import { headClassOf } from '../form/gear/references';
import { lampFrame } from '../form/photometry/lampFrame';
import type { LampForm } from '../form/types';
import type { Lamp } from '../plan/cues';
import type { HeadClass } from '../plan/schema/kit';
import type { Plan } from '../plan/schema/plan';
import { cos, sin } from '../units/steadyMath';

/** What of a lamp glows: a flat round or square face, or a ball that is as wide from every side. */
export interface GlowFace {
  readonly outline: 'round' | 'square' | 'ball';
  readonly middle: Vec3;
  /** Unit vectors along its width and its height; of a ball they follow who looks. */
  readonly right: Vec3;
  readonly up: Vec3;
  readonly halfWidth: number;
  readonly halfHeight: number;
}

/** Forms of lamps whose face is round. */
export const ROUND_FORMS: readonly HeadClass['form'][] = ['spot', 'fresnel', 'bulkhead'];

/** The face of a lamp; `isSquare` for a softbox, whatever lamp is in it. */
function glowFaceOf(lamp: LampForm, form: HeadClass['form'], isSquare: boolean): GlowFace {
  const [width, height, depth] = lamp.sizeMetres;
  const isBall = lamp.beamDegrees >= 360;
  const { right, up } = lampFrame(lamp.direction);
  return {
    outline: isBall ? 'ball' : ROUND_FORMS.includes(form) && !isSquare ? 'round' : 'square',
    middle: lamp.position,
    right,
    up,
    halfWidth: (isBall ? Math.max(width, depth) : width) / 2,
    halfHeight: height / 2,
  };
}

/** The face of a lamp of a plan, with the gear that it belongs to. */
export const glowFaceIn = (plan: Plan, lamp: LampForm, gear: Lamp): GlowFace =>
  glowFaceOf(lamp, headClassOf(gear, plan).form, gear.kind === 'head' && gear.modifier === 'softbox');

/** The farthest that anything on a face is from its middle, metres. */
export const reachOf = ({ outline, halfWidth, halfHeight }: GlowFace): number =>
  outline === 'square' ? length([halfWidth, halfHeight, 0]) : Math.max(halfWidth, halfHeight);

type Pair = readonly [number, number];

/** The bits of a number below 16 in reverse, as a fraction. Source: [van-der-corput] */
function reversed(k: number, bits: number): number {
  let value = 0;
  for (let bit = 0; bit < bits; bit += 1) if (k & (1 << bit)) value += 1 / (2 << bit);
  return value;
}

/**
 * 2^bits places in −1..1, one in each cell of a grid and no two in a line along either side, so that a straight edge
 * that cuts the face takes them one by one. Source: [van-der-corput]
 */
function spread(bits: number): readonly Pair[] {
  const count = 1 << bits;
  return Array.from(
    { length: count },
    (_, k): Pair => [(2 * (k + 0.5)) / count - 1, 2 * (reversed(k, bits) + 0.5 / count) - 1],
  );
}

/** The same on a disc, evenly: squares round the middle become rings. */
const onDisc = (places: readonly Pair[]): readonly Pair[] =>
  places.map(([x, y]) => {
    const radius = Math.max(Math.abs(x), Math.abs(y));
    if (radius === 0) return [0, 0];
    const turn =
      Math.abs(x) >= Math.abs(y)
        ? (Math.PI / 4) * (y / x) + (x < 0 ? Math.PI : 0)
        : Math.PI / 2 - (Math.PI / 4) * (x / y) + (y < 0 ? Math.PI : 0);
    return [radius * cos(turn), radius * sin(turn)];
  });

const SQUARES = [spread(0), spread(2), spread(4)];
const DISCS = SQUARES.map(onDisc);

/** A face at least this wide as seen from a place, as a share of how far away it is, gets 16 places; 4 below. */
const WIDE = 0.02;
/** Below this it is a point. */
const TINY = 0.001;

/**
 * Fixed places on a face, evenly over its area, for the light that reaches a point: 16, 4 where it looks smaller than
 * a degree, or its middle alone. A ball gives the disc that it shows to the point.
 */
export function placesOn(face: GlowFace, point: Vec3, one = false): readonly Vec3[] {
  const towards = subtract(point, face.middle);
  const metres = length(towards);
  const share = (2 * reachOf(face)) / Math.max(metres, 1e-6);
  const rank = one || share < TINY ? 0 : share < WIDE ? 1 : 2;
  if (rank === 0) return [face.middle];
  const { right, up } = face.outline === 'ball' ? lampFrame(unit(towards)) : face;
  return (face.outline === 'square' ? SQUARES : DISCS)[rank].map(([x, y]) =>
    add(face.middle, add(scale(right, x * face.halfWidth), scale(up, y * face.halfHeight))),
  );
}
