import { movedBy } from '../../build/placement';
import { ShapeBuilder } from '../../build/shapeBuilder';
import type { Vec3 } from '../../build/vector';
import type { PartShape } from '../../types';
import { SIDES, type Skeleton } from '../skeleton';
import { loft, type Ring } from './loft';
import { limb, onSection, type Section, sectionAt } from './sections';
import { chestSections, hemSections, hipSections, type TrunkLook } from './trunk';

const below = (joint: Vec3) => movedBy([-joint[0], -joint[1], -joint[2]]);

/** A collar about the neck: sections by bearing, standing `rise` high and turned down by `fall`, open at the front. */
function addCollar(
  builder: ShapeBuilder,
  foot: Section,
  look: { readonly rise: number; readonly fall: number; readonly gap: number; readonly thick: number },
): void {
  const steps = 10;
  const closed = look.gap === 0;
  const rings = Array.from({ length: closed ? steps : steps + 1 }, (_, k): Ring => {
    const bearing = ((look.gap + (360 - 2 * look.gap) * (k / steps)) * Math.PI) / 180;
    const [x, y, z] = onSection(foot, bearing);
    const ahead = (1 + Math.cos(bearing)) / 2;
    const top = y + look.rise * (1 - 0.35 * ahead);
    const out = (by: number): Vec3 => [
      x * (1 + by / foot.half),
      0,
      z + (by * (z - (foot.z ?? 0))) / foot.front,
    ];
    const [inner, outer, edge] = [out(-look.thick), out(look.thick), out(look.thick * 2 + look.fall * 0.3)];
    return [
      [inner[0], y - look.thick, inner[2]],
      [inner[0], top, inner[2]],
      [outer[0], top, outer[2]],
      [edge[0], top - look.fall, edge[2]],
      [outer[0], y - look.thick, outer[2]],
    ];
  });
  loft(builder, rings, closed);
}

/** A strip's two edges at a share of the way up it. */
type Edges = (share: number) => readonly [from: number, to: number];

/** A strip laid on the front of the chest between two heights, `lift` proud of the cloth. */
function addStrip(
  builder: ShapeBuilder,
  chest: readonly Section[],
  [low, high]: readonly [number, number],
  edges: Edges,
  lift: number,
): void {
  // A row at each of the chest's own, so that the strip nowhere sinks into the cloth.
  const heights = [low, ...chest.map(({ y }) => y).filter((y) => y > low + 0.01 && y < high - 0.005), high];
  const rings = heights.map((y): Ring => {
    const section = sectionAt(chest, y);
    const at = (x: number, proud: number): Vec3 => {
      const across = Math.min(0.98, Math.abs(x) / section.half) ** (section.square ?? 2);
      return [x, y, (section.z ?? 0) - section.front * (1 - across) ** (1 / (section.square ?? 2)) - proud];
    };
    const [from, to] = edges((y - low) / (high - low));
    return [at(from, lift), at((from + to) / 2, lift), at(to, lift), at(to, -0.012), at(from, -0.012)];
  });
  loft(builder, rings);
}

const SIDES_AROUND = 15;

/** Down to where a coat or jacket stands open, metres above the floor. */
const opensAt = (look: TrunkLook): number => (look.upper === 'coat' ? 0.7 : 0.735) * look.stature;

/** The clothed chest with its collar, in the frame of the waist's joint. */
export function chestShape(skeleton: Skeleton, look: TrunkLook, colour: string): PartShape {
  const builder = new ShapeBuilder();
  const chest = chestSections(look);
  const s = look.stature;
  limb(builder, chest, SIDES_AROUND, { last: 0.004 * s, steps: 1 });
  const foot = sectionAt(chest, 0.843 * s);
  if (look.upper === 'jersey') {
    addCollar(builder, sectionAt(chest, 0.846 * s), {
      rise: 0.02 * s,
      fall: 0.004 * s,
      gap: 0,
      thick: 0.004 * s,
    });
  } else {
    const coat = look.upper === 'coat';
    addCollar(builder, foot, {
      rise: (coat ? 0.03 : 0.024) * s,
      fall: (coat ? 0.03 : 0.02) * s,
      gap: look.upper === 'shirt' ? 14 : 24,
      thick: (look.upper === 'shirt' ? 0.002 : 0.004) * s,
    });
  }
  if (look.upper === 'shirt') {
    addStrip(builder, chest, [0.567 * s, 0.838 * s], () => [-0.008 * s, 0.008 * s], 0.002);
  }
  if (look.upper === 'coat' || look.upper === 'jacket') {
    const lowest = opensAt(look);
    for (const side of SIDES) {
      const lapel: Edges = (share) => {
        const inner = 0.003 + 0.029 * share;
        const wide = 0.006 + 0.036 * Math.sin(Math.PI * Math.min(1, share * 0.75)) * (1 - 0.45 * share);
        return [side * inner * s, side * (inner + wide) * s];
      };
      addStrip(builder, chest, [lowest, 0.84 * s], lapel, 0.009);
    }
    addStrip(builder, chest, [0.567 * s, lowest], () => [-0.002 * s, 0.012 * s], 0.005);
  }
  return builder.finish({ substance: 'upper', colour, smooth: true }, below(skeleton.waist));
}

/** The shirt that shows in the opening of a coat or jacket. */
export function shirtFrontShape(skeleton: Skeleton, look: TrunkLook): PartShape {
  const builder = new ShapeBuilder();
  const chest = chestSections(look);
  const s = look.stature;
  const edges: Edges = (share) => [-(0.004 + 0.032 * share) * s, (0.004 + 0.032 * share) * s];
  addStrip(builder, chest, [opensAt(look), 0.852 * s], edges, 0.0065);
  return builder.finish({ substance: 'linen', colour: '#8b867d', smooth: true }, below(skeleton.waist));
}

/** Hips and seat in trousers, in the frame of the pelvis (the middle between the hip joints). */
export function hipShape(skeleton: Skeleton, look: TrunkLook, colour: string): PartShape {
  const builder = new ShapeBuilder();
  limb(builder, hipSections(look), 14, { first: -0.006 * look.stature, steps: 1 });
  return builder.finish(
    { substance: 'lower', colour, smooth: true },
    below([0, skeleton.hip[1], skeleton.hip[2]]),
  );
}

/** The belt that a coat is tied with. */
function addBelt(builder: ShapeBuilder, look: TrunkLook): void {
  const waist = sectionAt(chestSections(look), 0.59 * look.stature);
  const around = (share: number, more: number): Section => ({
    ...waist,
    y: share * look.stature,
    half: waist.half + more,
    front: waist.front + more,
    back: waist.back + more,
    square: 2.2,
  });
  limb(
    builder,
    [around(0.568, 0.008), around(0.571, 0.013), around(0.594, 0.013), around(0.597, 0.007)],
    SIDES_AROUND,
  );
}

/** The upper garment about the hips, in the frame of the pelvis. */
export function hemShape(skeleton: Skeleton, look: TrunkLook, colour: string): PartShape {
  const builder = new ShapeBuilder();
  limb(builder, hemSections(look), SIDES_AROUND);
  if (look.upper === 'coat') addBelt(builder, look);
  return builder.finish(
    { substance: 'upper', colour, smooth: true },
    below([0, skeleton.hip[1], skeleton.hip[2]]),
  );
}

/** How a coat's skirts lie: straight down, or drawn up over the thighs of somebody who sits or crouches. */
export type Drape = 'hanging' | 'gathered';

/** One half of a coat's skirts, about one thigh, in the frame of that hip joint. The two overlap in the middle. */
export function skirtShape(
  skeleton: Skeleton,
  look: TrunkLook,
  side: number,
  drape: Drape,
  colour: string,
): PartShape {
  const builder = new ShapeBuilder();
  const s = look.stature;
  const hips = hipSections(look);
  const waist = sectionAt(hips, 0.57 * s);
  const seat = sectionAt(hips, 0.52 * s);
  const hanging = [
    { y: 0.592, like: waist, more: 0.004 },
    { y: 0.555, like: waist, more: 0.015 },
    { y: 0.5, like: seat, more: 0.016 },
    { y: 0.42, like: seat, more: 0.023 },
    { y: 0.33, like: seat, more: 0.03 },
    { y: 0.264, like: seat, more: 0.035 },
    { y: 0.261, like: seat, more: 0.03 },
  ];
  const gathered = [
    { y: 0.575, like: waist, more: -0.004 },
    { y: 0.54, like: waist, more: 0.01 },
    { y: 0.48, like: seat, more: 0.012 },
    { y: 0.4, like: seat, more: 0.004 },
    { y: 0.36, like: seat, more: -0.004 },
    { y: 0.357, like: seat, more: -0.01 },
  ];
  const tails = drape === 'hanging' ? hanging : gathered;
  const inner = -0.036 * s;
  const sections = tails.map(({ y, like, more }): Section => {
    const outer = like.half + more * s;
    return {
      y: y * s,
      half: (outer - inner) / 2,
      x: (side * (outer + inner)) / 2,
      front: like.front + more * s * 0.75,
      back: like.back + more * s * 0.75,
      square: 3,
    };
  });
  limb(builder, sections, 12);
  return builder.finish(
    { substance: 'upper', colour, smooth: true },
    below([side * skeleton.hip[0], skeleton.hip[1], skeleton.hip[2]]),
  );
}

/** The neck, in the frame of its foot. */
export function neckShape(skeleton: Skeleton, feminine: boolean, girth: number, colour: string): PartShape {
  const builder = new ShapeBuilder();
  const s = skeleton.measures.statureMetres;
  const half = (feminine ? 0.0305 : 0.0345) * s * (1 + (girth - 1) * 0.7);
  const rise = skeleton.head[1] - skeleton.neck[1];
  const lean = skeleton.head[2] - skeleton.neck[2];
  const rows = [-0.2, 0.15, 0.45, 0.8, 1.25].map((share, k): Section => {
    const full = [0.86, 1, 1, 1, 0.9][k];
    return {
      y: rise * share,
      half: half * full,
      front: half * 1.02 * full,
      back: half * 1.08 * full,
      z: lean * share - 0.003 * s,
    };
  });
  limb(builder, rows, 10);
  return builder.finish({ substance: 'skin', colour, smooth: true });
}
