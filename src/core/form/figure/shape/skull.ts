import { cos, exp, pow } from '../../../units/steadyMath';
import type { Vec3 } from '../../build/vector';
import type { Skeleton } from '../skeleton';
import { onSection, type Section, sectionAt } from './sections';

/**
 * The bare head as a surface, in millimetres of the survey's mean man: y down from the crown, x to the head's right,
 * −z ahead, z = 0 the middle of the head's length. Modelled by eye; only breadth, length and eye height are measures.
 */
const HAIR_MILLIMETRES = 5;
/** Depth of the eyes below the crown, in the units of this table. */
const EYE_DEPTH = 114.2;

const MALE: readonly Section[] = [
  { y: 8, half: 27, front: 31, back: 38 },
  { y: 16, half: 45, front: 51, back: 62 },
  { y: 30, half: 60.5, front: 69, back: 81 },
  { y: 50, half: 71, front: 82, back: 93 },
  { y: 72, half: 76, front: 90.5, back: 98.5 },
  { y: 92, half: 77, front: 95, back: 99.5 },
  { y: 104, half: 76, front: 97, back: 98, square: 2.1 },
  { y: 114, half: 74.5, front: 95, back: 95, square: 2.15 },
  { y: 126, half: 73, front: 94, back: 90, square: 2.15 },
  { y: 140, half: 71, front: 94, back: 83, square: 2.1 },
  { y: 154, half: 68, front: 94, back: 76, square: 2.05 },
  { y: 167, half: 65, front: 94, back: 68 },
  { y: 179, half: 62.5, front: 95, back: 61 },
  { y: 190, half: 59.5, front: 94, back: 54 },
  { y: 201, half: 55, front: 92, back: 47 },
  { y: 213, half: 48, front: 91, back: 40 },
  { y: 224, half: 39, front: 88, back: 30 },
  { y: 231, half: 27, front: 80, back: 18 },
];
const FEMALE: readonly Section[] = MALE.map((section) =>
  section.y < 150 ? section : { ...section, half: section.half * (1 - (section.y - 150) * 0.0016) },
);

/** A swelling (negative: towards the front) or hollow of the face around a point seen from ahead. */
interface Swell {
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly tall: number;
  readonly by: number;
}
const swells = (feminine: boolean): readonly Swell[] => [
  { x: 31, y: 116, wide: 13, tall: 9, by: 8 },
  { x: 22, y: 101, wide: 20, tall: 6, by: feminine ? -1.5 : -4 },
  { x: 0, y: 150, wide: 14, tall: 18, by: -5 },
  { x: 0, y: 185, wide: 24, tall: 14, by: -5 },
  { x: 0, y: 202, wide: 16, tall: 5, by: 4 },
  { x: 0, y: 217, wide: feminine ? 13 : 18, tall: 9, by: feminine ? -4 : -6 },
  { x: 46, y: 142, wide: 16, tall: 13, by: feminine ? -5 : -4 },
  { x: 47, y: 177, wide: 14, tall: 16, by: feminine ? 4 : 2 },
];
/** How far the underside of the jaw rises towards the neck, by the depth on the chin's side. */
const JAW_RISE: readonly (readonly [number, number])[] = [
  [172, 0],
  [200, 14],
  [216, 30],
  [231, 44],
];

function jawRise(y: number): number {
  for (let k = 1; k < JAW_RISE.length; k += 1) {
    const [fromY, from] = JAW_RISE[k - 1];
    const [toY, to] = JAW_RISE[k];
    if (y <= toY) return y <= fromY ? from : from + ((to - from) * (y - fromY)) / (toY - fromY);
  }
  return JAW_RISE[JAW_RISE.length - 1][1];
}

/** A head's own scale, from the table's millimetres to metres in the frame of the head's joint. */
export interface Skull {
  readonly feminine: boolean;
  readonly rows: readonly Section[];
  /** The surface of the skin at a depth and a bearing (degrees clockwise from the front), table millimetres. */
  skin(depth: number, bearingDegrees: number): Vec3;
  /** Table millimetres to metres in the head's frame. */
  place(p: Vec3): Vec3;
  /** How far ahead the face lies at a place seen from the front, table millimetres (negative ahead). */
  faceAt(x: number, depth: number): number;
}

/** The skull of a skeleton; a feminine one has the softer profile. */
export function skullOf(skeleton: Skeleton, feminine: boolean): Skull {
  const rows = feminine ? FEMALE : MALE;
  const lumps = swells(feminine);
  const { measures } = skeleton;
  const wide = measures.headBreadthMetres / 154;
  const long = measures.headLengthMetres / 199.5;
  const tall = (measures.statureMetres - measures.eyeMetres) / EYE_DEPTH;
  const middle = -0.006 * measures.statureMetres;

  const swell = (x: number, y: number): number => {
    let by = 0;
    for (const lump of lumps) {
      const dx = (Math.abs(x) - lump.x) / lump.wide;
      const dy = (y - lump.y) / lump.tall;
      by += lump.by * exp(-(dx * dx + dy * dy));
    }
    return by;
  };
  const skin = (depth: number, bearingDegrees: number): Vec3 => {
    const [x, , z] = onSection(sectionAt(rows, depth), (bearingDegrees * Math.PI) / 180);
    const facing = Math.max(0, cos((bearingDegrees * Math.PI) / 180));
    const back = Math.min(1.3, Math.max(0, (z + 85) / 85));
    return [x, depth - jawRise(depth) * back, z + swell(x, depth) * Math.min(1, facing * 1.6)];
  };
  const faceAt = (x: number, depth: number): number => {
    const section = sectionAt(rows, depth);
    const across = pow(Math.min(1, Math.abs(x) / section.half), section.square ?? 2);
    return -section.front * pow(1 - across, 1 / (section.square ?? 2)) + swell(x, depth);
  };
  return {
    feminine,
    rows,
    skin,
    faceAt,
    place: ([x, y, z]) => [x * wide, skeleton.crown - y * tall, middle + z * long],
  };
}

/** The middle of an eye in the table: aside of the nose, and depth below the crown. */
export const EYE = { aside: 31, depth: 114.5 } as const;

/** How far the crown lies below the stature that is measured over hair, table millimetres. */
export const SKULL_TOP = HAIR_MILLIMETRES;
