import type { Performer } from '../../../plan/schema/cast';
import { exp, pow } from '../../../units/steadyMath';
import type { Section } from './sections';

/** Corners around the trunk, alike above and below the waist so that the two meet cleanly. */
export const TRUNK_SIDES = 15;

type Upper = Performer['clothes']['upper'];

/**
 * The trunk as level sections, in shares of stature: heights above the floor, breadths of a medium build.
 * Modelled by eye between the survey's heights; common practice, no source.
 */
const MALE_CHEST: readonly Section[] = [
  { y: 0.558, half: 0.076, front: 0.054, back: 0.046 },
  { y: 0.566, half: 0.088, front: 0.067, back: 0.06 },
  { y: 0.6, half: 0.085, front: 0.064, back: 0.056 },
  { y: 0.645, half: 0.088, front: 0.066, back: 0.061 },
  { y: 0.695, half: 0.095, front: 0.071, back: 0.069, square: 2.2 },
  { y: 0.735, half: 0.101, front: 0.076, back: 0.074, square: 2.4 },
  { y: 0.765, half: 0.104, front: 0.074, back: 0.077, square: 2.4 },
  { y: 0.788, half: 0.108, front: 0.066, back: 0.076, square: 2.3 },
  { y: 0.803, half: 0.108, front: 0.057, back: 0.069, square: 2.2 },
  { y: 0.816, half: 0.098, front: 0.047, back: 0.06, square: 2.1 },
  { y: 0.828, half: 0.077, front: 0.039, back: 0.053, z: 0.002 },
  { y: 0.84, half: 0.054, front: 0.035, back: 0.046, z: 0.004 },
  { y: 0.852, half: 0.038, front: 0.031, back: 0.037, z: 0.006 },
];
const FEMALE_CHEST: readonly Section[] = [
  { y: 0.558, half: 0.077, front: 0.052, back: 0.046 },
  { y: 0.566, half: 0.089, front: 0.065, back: 0.062 },
  { y: 0.605, half: 0.079, front: 0.058, back: 0.052 },
  { y: 0.645, half: 0.08, front: 0.059, back: 0.056 },
  { y: 0.685, half: 0.086, front: 0.068, back: 0.063, square: 2.1 },
  { y: 0.725, half: 0.092, front: 0.083, back: 0.067, square: 2.3 },
  { y: 0.76, half: 0.094, front: 0.074, back: 0.07, square: 2.3 },
  { y: 0.788, half: 0.099, front: 0.06, back: 0.069, square: 2.2 },
  { y: 0.803, half: 0.1, front: 0.051, back: 0.063, square: 2.1 },
  { y: 0.816, half: 0.09, front: 0.043, back: 0.055 },
  { y: 0.828, half: 0.069, front: 0.037, back: 0.048, z: 0.002 },
  { y: 0.84, half: 0.048, front: 0.033, back: 0.041, z: 0.004 },
  { y: 0.852, half: 0.035, front: 0.029, back: 0.034, z: 0.006 },
];
const MALE_HIPS: readonly Section[] = [
  { y: 0.462, half: 0.05, front: 0.03, back: 0.042 },
  { y: 0.474, half: 0.082, front: 0.05, back: 0.062 },
  { y: 0.495, half: 0.094, front: 0.06, back: 0.074, square: 2.3 },
  { y: 0.52, half: 0.097, front: 0.065, back: 0.077, square: 2.3 },
  { y: 0.55, half: 0.093, front: 0.066, back: 0.069, square: 2.2 },
  { y: 0.575, half: 0.087, front: 0.064, back: 0.06 },
  { y: 0.6, half: 0.08, front: 0.058, back: 0.053 },
];
const FEMALE_HIPS: readonly Section[] = [
  { y: 0.46, half: 0.05, front: 0.03, back: 0.042 },
  { y: 0.474, half: 0.088, front: 0.05, back: 0.064 },
  { y: 0.495, half: 0.102, front: 0.06, back: 0.078, square: 2.3 },
  { y: 0.52, half: 0.104, front: 0.064, back: 0.08, square: 2.3 },
  { y: 0.55, half: 0.097, front: 0.064, back: 0.07, square: 2.2 },
  { y: 0.58, half: 0.084, front: 0.06, back: 0.058 },
  { y: 0.605, half: 0.075, front: 0.053, back: 0.048 },
];

/** Cloth between skin and outline, share of stature, where the garment hangs fullest. */
const EASE: Readonly<Record<Upper, number>> = { coat: 0.013, jacket: 0.01, jersey: 0.005, shirt: 0.003 };

/** A section made fuller by build and by cloth; the neck end keeps closer to the body. */
function clothed(section: Section, girth: number, ease: number, belly: number): Section {
  const snug = Math.min(1, Math.max(0, (0.845 - section.y) / 0.04));
  const around = ease * (0.25 + 0.75 * snug);
  // Weight shows most at the belly.
  const fuller = girth > 1 ? 1 + (girth - 1) * belly * exp(-pow(Math.abs(section.y - 0.62) / 0.09, 2)) : 1;
  return {
    ...section,
    half: section.half * girth * Math.sqrt(fuller) + around,
    front: section.front * girth * pow(fuller, 1.6) + around,
    back: section.back * girth + around,
  };
}

const scaledBy = (sections: readonly Section[], stature: number): Section[] =>
  sections.map((section) => ({
    ...section,
    y: section.y * stature,
    half: section.half * stature,
    front: section.front * stature,
    back: section.back * stature,
    z: (section.z ?? 0) * stature,
  }));

/** What the shape of a clothed trunk follows from. */
export interface TrunkLook {
  readonly feminine: boolean;
  readonly girth: number;
  readonly stature: number;
  readonly upper: Upper;
}

/** The clothed chest from below the waist to the foot of the neck, metres above the floor. */
export function chestSections({ feminine, girth, stature, upper }: TrunkLook): Section[] {
  const table = feminine ? FEMALE_CHEST : MALE_CHEST;
  return scaledBy(
    table.map((section) => clothed(section, girth, EASE[upper], 1.2)),
    stature,
  );
}

/** Hips in trousers, metres above the floor; their waistband keeps well inside the garment over it. */
export function hipSections({ feminine, girth, stature }: TrunkLook): Section[] {
  const table = feminine ? FEMALE_HIPS : MALE_HIPS;
  const below = table.slice(0, -2).map((section) => clothed(section, girth, 0.002, 0.8));
  const waistband = clothed(table[table.length - 2], girth, -0.024, 0.5);
  return scaledBy([...below, { ...waistband, y: 0.567 }], stature);
}

/** Height of a garment's lower edge, share of stature; a coat goes on as skirts. */
const HEM: Readonly<Record<Upper, number>> = {
  coat: 0.515,
  jacket: 0.497,
  jersey: 0.522,
  shirt: 0.503,
};

/** What of the upper garment hangs about the hips, from its hem up to below the waist, metres above the floor. */
export function hemSections(look: TrunkLook): Section[] {
  const hips = look.feminine ? FEMALE_HIPS : MALE_HIPS;
  const ease = EASE[look.upper];
  const flare = look.upper === 'jersey' ? 0.001 : 0.007;
  const hem = HEM[look.upper];
  const about = (y: number, more: number): Section => {
    const k = Math.max(
      1,
      hips.findIndex((section) => section.y >= y),
    );
    const [a, b] = [hips[k - 1], hips[k]];
    const share = (y - a.y) / (b.y - a.y);
    const between = (from: number, to: number) => from + (to - from) * share;
    const section = {
      y,
      half: between(a.half, b.half),
      front: between(a.front, b.front),
      back: between(a.back, b.back),
      square: 2.25,
    };
    const full = clothed(section, look.girth, ease, 1);
    return { ...full, half: full.half + more, front: full.front + more, back: full.back + more };
  };
  if (look.upper === 'coat') {
    // Under the skirts and the belt only a filling.
    return scaledBy([about(hem, -0.02), about(0.56, -0.009), about(0.592, -0.004)], look.stature);
  }
  const ribbed = look.upper === 'jersey';
  const band = ribbed ? 0.022 : 0.004;
  return scaledBy(
    [
      about(hem, flare - 0.003),
      about(hem + 0.002, flare),
      about(hem + band, flare),
      ...(ribbed ? [about(hem + 0.028, flare + 0.006)] : []),
      about(0.558, flare * 0.4),
      about(0.572, -0.006),
      about(0.596, -0.012),
    ],
    look.stature,
  );
}
