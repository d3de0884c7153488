import { ShapeBuilder } from '../../build/shapeBuilder';
import type { PartShape } from '../../types';
import type { Skeleton } from '../skeleton';
import { limb, type Section } from './sections';
import type { TrunkLook } from './trunk';

/** Each limb hangs from its joint at the origin down −y; its ends are domed so that no bend opens a gap. */
type Row = readonly [along: number, half: number, front: number, back: number, z?: number];

const toSections = (rows: readonly Row[], length: number, girth: number, stature: number): Section[] =>
  rows.map(([along, half, front, back, z]) => ({
    y: -along * length,
    half: half * girth * stature,
    front: front * girth * stature,
    back: back * girth * stature,
    z: (z ?? 0) * stature,
  }));

/** Extra about the arm for the sleeve, share of stature. */
const SLEEVE = { coat: 0.007, jacket: 0.006, jersey: 0.003, shirt: 0.003 } as const;

/** The upper arm with the cap of the shoulder; its outer side makes up the breadth over the deltoids. */
export function upperArmShape(skeleton: Skeleton, look: TrunkLook, side: number, colour: string): PartShape {
  const builder = new ShapeBuilder();
  const s = look.stature;
  const cap = skeleton.measures.bideltoidMetres / 2 - skeleton.shoulder[0];
  const more = SLEEVE[look.upper];
  const sections: Section[] = toSections(
    [
      [0.62, 0.029, 0.031, 0.031],
      [1, 0.0235, 0.0245, 0.026],
    ],
    skeleton.upperArm,
    look.girth,
    s,
  ).map((section) => ({
    ...section,
    half: section.half + more * s,
    front: section.front + more * s,
    back: section.back + more * s,
    x: side * 0.002 * s,
  }));
  const shoulder: Section[] = [
    { y: 0.004 * s, half: cap * 0.8, front: cap * 0.98, back: cap * 1.02, x: -side * 0.1 * cap },
    { y: -0.022 * s, half: cap * 0.96, front: cap * 1.02, back: cap * 1.04, x: -side * 0.02 * cap },
    { y: -0.045 * s, half: cap, front: cap * 0.99, back: cap * 1.02 },
  ];
  limb(builder, [...shoulder, ...sections], 10, { first: 0.0235 * s, last: -0.022 * s, steps: 1 });
  return builder.finish({ substance: 'upper', colour, smooth: true });
}

/** The forearm in its sleeve, with the cuff's edge at the wrist. */
export function forearmShape(skeleton: Skeleton, look: TrunkLook, colour: string): PartShape {
  const builder = new ShapeBuilder();
  const s = look.stature;
  const more = SLEEVE[look.upper];
  const cuff = look.upper === 'jersey' || look.upper === 'shirt' ? 0.001 : 0.004;
  const sections = toSections(
    [
      [0, 0.0255, 0.027, 0.0275],
      [0.22, 0.0268, 0.027, 0.027],
      [0.55, 0.0215, 0.0235, 0.0235],
      [0.86, 0.0165, 0.0195, 0.0195],
      [0.88, 0.0165 + cuff, 0.0195 + cuff, 0.0195 + cuff],
      [0.985, 0.0155 + cuff, 0.0185 + cuff, 0.0185 + cuff],
    ],
    skeleton.forearm,
    look.girth,
    s,
  ).map((section) => ({
    ...section,
    half: section.half + more * s,
    front: section.front + more * s,
    back: section.back + more * s,
  }));
  limb(builder, sections, 10, { first: 0.0255 * s, steps: 1 });
  return builder.finish({ substance: 'upper', colour, smooth: true });
}

/** The thigh in its trouser leg. */
export function thighShape(skeleton: Skeleton, look: TrunkLook, colour: string): PartShape {
  const builder = new ShapeBuilder();
  const s = look.stature;
  const wide = look.feminine ? 1.03 : 1;
  const sections = toSections(
    [
      [0, 0.044 * wide, 0.05, 0.056],
      [0.16, 0.0475 * wide, 0.053, 0.057, 0.001],
      [0.42, 0.0445 * wide, 0.05, 0.05],
      [0.72, 0.038, 0.042, 0.041],
      [1, 0.0345, 0.0368, 0.0365],
    ],
    skeleton.thigh,
    look.girth,
    s,
  );
  limb(builder, sections, 10, { first: 0.036 * s, last: -0.033 * s, steps: 1 });
  return builder.finish({ substance: 'lower', colour, smooth: true });
}

/** The lower leg in its trouser leg, its hem above the shoe. */
export function shinShape(skeleton: Skeleton, look: TrunkLook, colour: string): PartShape {
  const builder = new ShapeBuilder();
  const s = look.stature;
  const sections = toSections(
    [
      [0, 0.0325, 0.0345, 0.0345],
      [0.14, 0.0325, 0.034, 0.0375],
      [0.34, 0.033, 0.031, 0.041, 0.001],
      [0.62, 0.03, 0.029, 0.035, 0.001],
      [0.93, 0.029, 0.032, 0.033, -0.001],
      [0.99, 0.03, 0.034, 0.034, -0.002],
    ],
    skeleton.shin,
    1 + (look.girth - 1) * 0.7,
    s,
  );
  limb(builder, sections, 10, { first: 0.031 * s, steps: 1 });
  return builder.finish({ substance: 'lower', colour, smooth: true });
}
