import { pow } from '../../../units/steadyMath';
import { ShapeBuilder } from '../../build/shapeBuilder';
import type { Vec3 } from '../../build/vector';
import type { PartShape, Substance } from '../../types';
import { loft, type Ring } from './loft';
import { ball, onSection, sectionAt } from './sections';
import type { Skull } from './skull';

/** A line around the head by bearing from the front (0 to 180 degrees, both sides alike): [bearing, depth or thickness]. */
export type HeadLine = readonly (readonly [number, number])[];

/** The depth or thickness of a line at a bearing, degrees, straight between its points. */
export function alongLine(line: HeadLine, bearing: number): number {
  const turned = Math.abs(((bearing + 180) % 360) - 180);
  for (let k = 1; k < line.length; k += 1) {
    const [from, start] = line[k - 1];
    const [to, end] = line[k];
    if (turned <= to) return start + ((end - start) * (turned - from)) / (to - from);
  }
  return line[line.length - 1][1];
}

/** Middle of the skull, from which shells over it are blown up, table millimetres. */
const MIDDLE: Vec3 = [0, 95, 0];

/** Where a shell over the skull ends, and how thick it is. */
export interface ShellLook {
  readonly rim: HeadLine;
  /** Thickness over the skin at the crown, half way, and at the rim, millimetres. */
  readonly thick: readonly [number, number, number];
  readonly bearings: readonly number[];
  /** Below the widest part of the skull the shell hangs instead of following the jaw, drawn in by so much. */
  readonly hangs?: { readonly drawnPerMillimetre: number };
  readonly rows?: number;
}

/** A closed shell over the skull from the crown to a rim: hair, a cap's crown, a hood. */
export function addShell(builder: ShapeBuilder, skull: Skull, look: ShellLook): void {
  const rows = look.rows ?? 5;
  const [crown, half, rim] = look.thick;
  const surface = (depth: number, bearing: number): Vec3 => {
    if (!look.hangs || depth < 100) return skull.skin(depth, bearing);
    const p = onSection(sectionAt(skull.rows, 100), (bearing * Math.PI) / 180);
    const drawn = 1 - look.hangs.drawnPerMillimetre * Math.max(0, depth - 130);
    return [p[0] * drawn, depth, p[2] * drawn];
  };
  const at = (share: number, bearing: number): Vec3 => {
    const depth = 8 + (alongLine(look.rim, bearing) - 8) * pow(share, 1.15);
    const thick =
      share < 0.5 ? crown + (half - crown) * share * 2 : half + (rim - half) * pow(share * 2 - 1, 2);
    const p = surface(depth, bearing);
    const out = 1 + thick / 90;
    const level = look.hangs ? Math.min(p[1], 130) : p[1];
    return [p[0] * out, MIDDLE[1] + (level - MIDDLE[1]) * out + (p[1] - level), p[2] * out];
  };
  const rings: Ring[] = [[skull.place([0, 5 - crown, 0])]];
  for (let k = 0; k <= rows; k += 1) {
    rings.push(look.bearings.map((bearing) => skull.place(at(k / rows, bearing))));
  }
  rings.push([skull.place(MIDDLE)]);
  loft(builder, rings);
}

/** Bearings of the right half, mirrored to go all round. */
export const bothSides = (half: readonly number[]): number[] => [
  ...half,
  ...half
    .filter((bearing) => bearing > 0 && bearing < 180)
    .map((bearing) => 360 - bearing)
    .reverse(),
];

const HAIRLINE: HeadLine = [
  [0, 47],
  [30, 46],
  [46, 58],
  [58, 84],
  [68, 104],
  [74, 140],
  [82, 138],
  [90, 104],
  [106, 106],
  [118, 150],
  [140, 172],
  [180, 178],
];
const HAIR_BEARINGS = bothSides([0, 28, 46, 59, 68, 74, 82, 91, 106, 119, 148, 180]);

/** Finishes hair or headwear in its colour. */
export const hairFinish = (builder: ShapeBuilder, colour: string, substance: Substance = 'hair'): PartShape =>
  builder.finish({ substance, colour, smooth: true });

/** Short hair, fuller on top. */
export function shortHair(skull: Skull, colour: string): PartShape {
  const builder = new ShapeBuilder();
  addShell(builder, skull, { rim: HAIRLINE, thick: [5, 9, 2.5], bearings: HAIR_BEARINGS });
  return hairFinish(builder, colour);
}

/** Hair drawn back to a bun at the back of the crown. */
export function bunHair(skull: Skull, colour: string): PartShape {
  const builder = new ShapeBuilder();
  addShell(builder, skull, { rim: HAIRLINE, thick: [5, 7, 2.5], bearings: HAIR_BEARINGS });
  const centre = skull.place([0, 58, 118]);
  const size = Math.abs(skull.place([0, 0, 0])[1] - skull.place([0, 36, 0])[1]);
  ball(builder, centre, [size, size * 0.9, size * 0.85], 6, 10);
  return hairFinish(builder, colour);
}

/** Hair that falls to the shoulders, parted over the forehead and open at the face. */
export function longHair(skull: Skull, colour: string): PartShape {
  const builder = new ShapeBuilder();
  addShell(builder, skull, {
    rim: [
      [0, 46],
      [26, 50],
      [40, 74],
      [50, 130],
      [62, 215],
      [80, 268],
      [120, 296],
      [180, 302],
    ],
    thick: [5, 15, 20],
    bearings: bothSides([0, 20, 36, 48, 56, 66, 80, 100, 125, 152, 180]),
    hangs: { drawnPerMillimetre: 0 },
    rows: 7,
  });
  return hairFinish(builder, colour);
}
