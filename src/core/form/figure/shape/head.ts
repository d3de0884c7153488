import { cos, sin } from '../../../units/steadyMath';
import { ShapeBuilder } from '../../build/shapeBuilder';
import type { Vec3 } from '../../build/vector';
import type { PartShape } from '../../types';
import { SIDES } from '../skeleton';
import { loft, type Ring } from './loft';
import { strand } from './sections';
import { EYE, SKULL_TOP, type Skull } from './skull';

/** Bearings of the head's corners on one side: close together where the face is. */
const BEARINGS = [0, 9, 19, 29, 40, 55, 76, 108, 145];
const AROUND = [
  ...BEARINGS,
  180,
  ...BEARINGS.slice(1)
    .map((bearing) => 360 - bearing)
    .reverse(),
];

/** Depths of the rings: close together where the face is, few under the hair. */
const DEPTHS = [30, 60, 88, 104, 114, 126, 140, 154, 167, 179, 190, 201, 213, 224, 231];

/** Nose as level sections: depth below the crown, half its width, how far ahead of the head's middle it reaches. */
const NOSE: readonly (readonly [number, number, number])[] = [
  [106, 6, 97],
  [120, 7, 102],
  [134, 8.5, 108],
  [147, 12, 115],
  [156, 16, 118.5],
  [162, 16.5, 115],
  [167, 12, 106],
];

function addNose(builder: ShapeBuilder, skull: Skull): void {
  const reach = skull.feminine ? 0.8 : 1;
  const rings = NOSE.map(([depth, half, ahead]): Ring => {
    const root = -78;
    return [-140, -85, -38, 0, 38, 85, 140].map((degrees): Vec3 => {
      const turn = (degrees * Math.PI) / 180;
      const front = 97 + (ahead - 97) * reach + root;
      const forward = cos(turn) * (cos(turn) > 0 ? front : 6);
      return skull.place([half * (skull.feminine ? 0.88 : 1) * sin(turn), depth, root - forward]);
    });
  });
  loft(builder, rings);
}

function addEars(builder: ShapeBuilder, skull: Skull): void {
  for (const side of SIDES) {
    const rings: Ring[] = [
      [106, 6, 10],
      [117, 9, 17],
      [136, 7.5, 15.5],
      [160, 5, 6.5],
    ].map(([depth, thick, long]) =>
      Array.from({ length: 6 }, (_, k): Vec3 => {
        const turn = (2 * Math.PI * k) / 6;
        const back = sin(turn) * long;
        const out = 71.5 + cos(turn) * thick + Math.max(0, back) * 0.4;
        return skull.place([side * out, depth, 10 + back + (133 - depth) * 0.2]);
      }),
    );
    loft(builder, rings);
  }
}

/** The head of skin: skull, jaw, nose and ears, in the head's frame. */
export function headShape(skull: Skull, colour: string): PartShape {
  const builder = new ShapeBuilder();
  loft(builder, [
    [skull.place([0, SKULL_TOP, 0])],
    ...DEPTHS.map((depth) => AROUND.map((bearing) => skull.place(skull.skin(depth, bearing)))),
    [skull.place([0, 214, -40])],
  ]);
  addNose(builder, skull);
  addEars(builder, skull);
  for (const side of SIDES) addLid(builder, skull, side);
  return builder.finish({ substance: 'skin', colour, smooth: true });
}

/** The upper lid overhangs the eye and gives it its shape. */
function addLid(builder: ShapeBuilder, skull: Skull, side: number): void {
  const points = [-1, -0.55, 0, 0.55, 1].map((share) => {
    const x = EYE.aside + 16 * share;
    const depth = 108.5 + 5 * share * share;
    const radius = 5 * Math.sqrt(1 - 0.9 * share * share);
    return {
      at: skull.place([side * x, depth, skull.faceAt(x, depth) - 0.5 + 2.5 * share * share]),
      radii: [radius * 0.0009, radius * 0.0009] as const,
    };
  });
  strand(builder, points, [0, 1, 0], 4);
}

/** The whites of both eyes. */
export function eyeShape(skull: Skull): PartShape {
  const builder = new ShapeBuilder();
  for (const side of SIDES) addEyeball(builder, skull, side, [13.5, 6.2, 9], -74.5);
  return builder.finish({ substance: 'paint', colour: '#cbc3b8', smooth: true });
}

/** The drawn iris: half its width, half its height and how far it bulges, and where its middle lies, table millimetres. */
const IRIS = { radii: [5.6, 5.8, 5], ahead: -79.2 } as const;
/** How far ahead the drawn iris reaches, table millimetres (negative ahead). */
export const IRIS_FRONT = IRIS.ahead - IRIS.radii[2];

/** Iris and pupil in one dark disc: from a few metres no more can be told. */
export function irisShape(skull: Skull): PartShape {
  const builder = new ShapeBuilder();
  for (const side of SIDES) addEyeball(builder, skull, side, IRIS.radii, IRIS.ahead);
  return builder.finish({ substance: 'paint', colour: '#1d1511', smooth: true });
}

function addEyeball(builder: ShapeBuilder, skull: Skull, side: number, radii: Vec3, ahead: number): void {
  const rings: Ring[] = [1, 0.72, 0.1].map((share) => {
    const ring = Math.sqrt(1 - share * share);
    if (ring === 0) return [skull.place([side * EYE.aside, EYE.depth, ahead - radii[2]])];
    return Array.from({ length: 7 }, (_, k): Vec3 => {
      const turn = (2 * Math.PI * k) / 7;
      return skull.place([
        side * (EYE.aside + radii[0] * ring * cos(turn)),
        EYE.depth + radii[1] * ring * sin(turn),
        ahead - radii[2] * share,
      ]);
    });
  });
  loft(builder, rings);
}

/** Eyebrows, of the hair's colour. */
export function browShape(skull: Skull, colour: string): PartShape {
  const builder = new ShapeBuilder();
  const thick = skull.feminine ? 2.2 : 3.4;
  for (const side of SIDES) {
    const points = [
      [13, 101, 0.8],
      [24, 98, 1],
      [36, 96.5, 0.9],
      [47, 100.5, 0.25],
    ].map(([x, depth, share]) => ({
      at: skull.place([side * x, depth, skull.faceAt(x, depth) + 0.6]),
      radii: [thick * share * 0.001, 0.0022] as const,
    }));
    strand(builder, points, [0, 1, 0], 4);
  }
  return builder.finish({ substance: 'hair', colour, smooth: true });
}

/** Both lips. */
export function lipShape(skull: Skull, colour: string): PartShape {
  const builder = new ShapeBuilder();
  const full = skull.feminine ? 1.25 : 1;
  for (const [depth, half, thick] of [
    [184, 24, 2.7],
    [189.5, 20, 3.4],
  ]) {
    const points = [-1, -0.6, 0, 0.6, 1].map((share) => {
      const radius = (share * share === 1 ? 0.4 : thick * (1 - 0.45 * share * share)) * full;
      const x = half * share;
      return {
        at: skull.place([
          x,
          depth + 1.5 * share * share * (depth > 186 ? -1 : 1),
          skull.faceAt(x, depth) + 0.4,
        ]),
        radii: [radius * 0.001, 0.0028] as const,
      };
    });
    strand(builder, points, [0, 1, 0], 5);
  }
  return builder.finish({ substance: 'skin', colour, smooth: true });
}
