import { cos, sin } from '../../../units/steadyMath';
import { ShapeBuilder } from '../../build/shapeBuilder';
import type { Vec3 } from '../../build/vector';
import type { PartShape } from '../../types';
import { loft, type Ring } from './loft';
import { ball, strand } from './sections';

/** A slanting section of a pigeon: ahead, height, half width, half height, metres. */
type Slice = readonly [number, number, number, number];
const BODY: readonly Slice[] = [
  [0.085, 0.062, 0.02, 0.012],
  [0.06, 0.062, 0.033, 0.024],
  [0.02, 0.064, 0.047, 0.041],
  [-0.025, 0.07, 0.052, 0.05],
  [-0.06, 0.084, 0.045, 0.046],
  [-0.083, 0.104, 0.031, 0.031],
  [-0.092, 0.125, 0.022, 0.022],
  [-0.098, 0.142, 0.0195, 0.019],
  [-0.106, 0.153, 0.0185, 0.017],
  [-0.117, 0.152, 0.013, 0.013],
];
/** How far each section leans back, degrees: level bird behind, upright neck ahead. */
const LEAN = [0, 2, 8, 18, 38, 58, 74, 66, 30, 0];

const slice = ([z, y, half, tall]: Slice, lean: number, sides = 10): Ring => {
  const turn = (lean * Math.PI) / 180;
  return Array.from({ length: sides }, (_, k): Vec3 => {
    const at = (2 * Math.PI * k) / sides;
    const up = sin(at) * tall;
    return [cos(at) * half, y + up * cos(turn), z + up * sin(turn)];
  });
};

/** A pigeon at rest, about 0.32 m from beak to tail, its breast at the origin's height: body, wings and tail, beak and ring. */
export function birdShapes(): readonly PartShape[] {
  const body = new ShapeBuilder();
  loft(
    body,
    BODY.map((each, k) => slice(each, LEAN[k])),
  );
  const wings = new ShapeBuilder();
  for (const side of [1, -1]) {
    const feathers = [
      [-0.07, 0.084, 0.043, 0.003, 0.008],
      [-0.058, 0.085, 0.044, 0.008, 0.022],
      [-0.02, 0.085, 0.05, 0.012, 0.036],
      [0.04, 0.083, 0.043, 0.011, 0.032],
      [0.1, 0.078, 0.026, 0.007, 0.019],
      [0.15, 0.072, 0.012, 0.004, 0.008],
    ].map(
      ([z, y, out, thick, tall]): Ring =>
        Array.from({ length: 10 }, (_, k): Vec3 => {
          const at = (2 * Math.PI * k) / 10;
          return [side * (out + cos(at) * thick), y + sin(at) * tall, z];
        }),
    );
    loft(wings, feathers);
  }
  const tail = [
    [0.06, 0.062, 0.024, 0.014],
    [0.12, 0.058, 0.026, 0.008],
    [0.2, 0.052, 0.036, 0.004],
  ] as const;
  loft(
    wings,
    tail.map((each) => slice(each, 0, 8)),
  );
  const beak = new ShapeBuilder();
  strand(
    beak,
    [
      { at: [0, 0.151, -0.113], radii: [0.006, 0.006] },
      { at: [0, 0.148, -0.127], radii: [0.004, 0.004] },
      { at: [0, 0.143, -0.138], radii: [0.001, 0.001] },
    ],
    [1, 0, 0],
    6,
  );
  for (const side of [1, -1]) {
    ball(beak, [side * 0.0165, 0.157, -0.107], [0.003, 0.004, 0.004], 3, 6);
    // Legs tucked under the body, a ring about one.
    beak.cone([side * 0.016, 0.03, 0.02], [side * 0.016, -0.004, 0.006], 0.004, 0.003, 6);
  }
  const ring = new ShapeBuilder();
  ring.cone([0.016, 0.016, 0.0145], [0.016, 0.006, 0.0105], 0.006, 0.006, 8);
  return [
    body.finish({ substance: 'feather', colour: '#8f949c', smooth: true }),
    wings.finish({ substance: 'feather', colour: '#b9bcc0', smooth: true }),
    beak.finish({ substance: 'paint', colour: '#4a3a36', smooth: true }),
    ring.finish({ substance: 'metal', smooth: true }),
  ];
}
