import { standingAt } from '../build/placement';
import type { Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { ownPart, placeParts } from './part';
import type { GearOf } from './references';
import { addLathe, addPipe, addRod } from './rounds';

/** Tubing of the frame: 28 mm. Source: common practice, no source */
const TUBE_RADIUS = 0.014;

/**
 * A portable generator standing on `at`, its outlets towards the heading: tube frame, engine and alternator, tank on
 * top, outlet panel, two wheels and a folding handle. `size` holds all of it but the handle.
 */
export function generatorParts(generator: GearOf<'generator'>): PlacedPart[] {
  const [width, height, depth] = generator.size;
  const tube = Math.min(TUBE_RADIUS, width / 12, height / 12);
  const wheel = Math.min(0.11, height * 0.2);
  const foot = wheel * 0.7;
  const [x, z] = [width / 2 - tube, depth / 2 - tube];
  const [low, high] = [foot + tube, height - tube];
  const hoop = (side: number): Vec3[] => [
    [side * x, low, 0],
    [side * x, low, z],
    [side * x, high, z],
    [side * x, high, -z],
    [side * x, low, -z],
    [side * x, low, 0],
  ];
  const frame = ownPart('frame', { substance: 'dark metal' }, (builder) => {
    for (const side of [-1, 1]) {
      addPipe(builder, hoop(side), tube);
      addRod(builder, [-x, low, side * z], [x, low, side * z], tube, 6);
      addRod(builder, [-x, high, side * z], [x, high, side * z], tube, 6);
      addRod(builder, [-x * 0.8, 0, side * z * 0.9], [-x * 0.8, low, side * z * 0.9], tube, 6);
    }
  });
  const body = ownPart('body', { substance: 'dark metal' }, (builder) => {
    builder.box([-width * 0.14, low + height * 0.24, 0], [width * 0.44, height * 0.44, depth * 0.62]);
    for (let fin = 0; fin < 4; fin += 1) {
      const y = low + height * (0.1 + 0.1 * fin);
      builder.box([-width * 0.14, y, 0], [width * 0.48, height * 0.02, depth * 0.68]);
    }
    addLathe(builder, { at: [width * 0.08, low + height * 0.24, 0], along: [1, 0, 0] }, [
      [0, height * 0.19],
      [width * 0.28, height * 0.19],
      [width * 0.33, height * 0.12],
    ]);
  });
  const tank = ownPart('tank', { substance: 'paint', colour: '#43525c', smooth: false }, (builder) => {
    builder.box([0, high - height * 0.13, 0], [width * 0.78, height * 0.2, depth * 0.76]);
    builder.box([0, high - height * 0.015, 0], [width * 0.1, height * 0.03, width * 0.1]);
  });
  const panel = ownPart('outlets', { substance: 'rubber' }, (builder) => {
    const face = -depth * 0.42;
    // Clear of the wheel beside it.
    const [bottom, top] = [Math.max(low + height * 0.14, wheel * 2 + height * 0.01), low + height * 0.46];
    const middle = (bottom + top) / 2;
    builder.box([width * 0.02, middle, face], [width * 0.6, top - bottom, depth * 0.1]);
    for (const share of [-0.16, 0, 0.16]) {
      addLathe(
        builder,
        { at: [width * (share + 0.02), middle, face - depth * 0.05], along: [0, 0, -1] },
        [
          [0, height * 0.07],
          [depth * 0.025, height * 0.07],
        ],
        8,
      );
    }
  });
  const wheels = ownPart('wheels', { substance: 'rubber' }, (builder) => {
    for (const side of [-1, 1]) {
      const at: Vec3 = [x * 0.7, wheel, side * (z - wheel * 0.3)];
      addLathe(
        builder,
        { at, along: [0, 0, side] },
        [
          [-wheel * 0.25, wheel],
          [wheel * 0.25, wheel],
        ],
        12,
      );
    }
  });
  const handle = ownPart('handle', { substance: 'dark metal' }, (builder) => {
    const reach = -x - Math.min(0.25, width * 0.35);
    addPipe(
      builder,
      [
        [-x, high, -z * 0.6],
        [reach, high, -z * 0.6],
        [reach, high, z * 0.6],
        [-x, high, z * 0.6],
      ],
      tube * 0.8,
    );
  });
  return placeParts(
    [frame, body, tank, panel, wheels, handle],
    standingAt(generator.at, generator.headingDegrees),
  );
}
