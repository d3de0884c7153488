import { standingAt } from '../build/placement';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { PartShape, PlacedPart } from '../types';
import { facing, lining, lying, rim, turnedOver } from './making/holed';
import { fixed, type PieceOf } from './making/placed';
import { run, uprightSection } from './making/run';
import { substanceOf } from './making/substances';

/** Sizes of a common stair house; common practice, no source. */
const WALL_METRES = 0.2;
const SLAB_METRES = 0.16;
const COPING_METRES = 0.08;
const SILL_METRES = 0.15;
const STEP_DEPTH_METRES = 0.32;
const LEAF_METRES = 0.045;

type Range = readonly [number, number];

/** Measures that follow from the record, in the house's own frame: it stands at the origin and faces −z. */
interface Measures {
  readonly x: Range;
  readonly z: Range;
  readonly wallTop: number;
  readonly slabTop: number;
  readonly height: number;
  readonly wall: number;
  readonly doorX: Range;
  readonly doorY: Range;
}

function measure({ size, door }: PieceOf<'stair house'>): Measures {
  const [width, height, depth] = size;
  const slabTop = height - Math.min(COPING_METRES, height * 0.04);
  const wallTop = slabTop - Math.min(SLAB_METRES, height * 0.08);
  const wall = Math.min(WALL_METRES, Math.min(width, depth) * 0.2);
  const room = (width / 2 - wall) * 0.98;
  const half = Math.min(door.widthMetres / 2, room * 0.98);
  // To the right as one faces the front is −x.
  const middle = Math.max(half - room, Math.min(room - half, -door.alongMetres));
  const tall = Math.min(door.heightMetres, wallTop * 0.95);
  const sill = Math.min(SILL_METRES, (wallTop - tall) / 2);
  return {
    x: [-width / 2, width / 2],
    z: [-depth / 2, depth / 2],
    wallTop,
    slabTop,
    height,
    wall,
    doorX: [middle - half, middle + half],
    doorY: [sill, sill + tall],
  };
}

/**
 * The head house of a stair: hollow `walls` with a door opening in the front, the `door` leaf set back in it, its
 * `handle`, a `step` before it, and the `roof` slab with a raised `coping` around its edge. The record's width and
 * depth are those of the walls, its height reaches to the top of the coping. A door that does not fit is made to.
 */
export function stairHouseParts(house: PieceOf<'stair house'>): readonly PlacedPart[] {
  const m = measure(house);
  const placement = standingAt(house.at, house.headingDegrees);
  const place = (build: (builder: ShapeBuilder) => void, substance: PartShape['substance']): PartShape => {
    const builder = new ShapeBuilder();
    build(builder);
    return builder.finish({ substance }, placement);
  };
  return [
    fixed(
      'walls',
      place((builder) => buildWalls(builder, m), substanceOf(house.material)),
    ),
    fixed(
      'door',
      place((builder) => buildLeaf(builder, m), 'metal'),
    ),
    fixed(
      'handle',
      place((builder) => buildHandle(builder, m), 'galvanised'),
    ),
    fixed(
      'step',
      place((builder) => buildStep(builder, m), 'concrete'),
    ),
    fixed(
      'roof',
      place((builder) => buildSlab(builder, m, house.overhangMetres), 'felt'),
    ),
    fixed(
      'coping',
      place((builder) => buildCoping(builder, m, house.overhangMetres), 'metal'),
    ),
  ];
}

const inset = ([low, high]: Range, by: number): Range => [low + by, high - by];

function buildWalls(builder: ShapeBuilder, m: Measures): void {
  const [outerX, outerZ] = [m.x, m.z];
  const [innerX, innerZ] = [inset(m.x, m.wall), inset(m.z, m.wall)];
  const [outerLow, outerHigh] = [0, m.wallTop].map((y) => lying(outerX, outerZ, y));
  const [innerLow, innerHigh] = [0, m.wallTop].map((y) => lying(innerX, innerZ, y));
  rim(builder, outerHigh, innerHigh);
  rim(builder, turnedOver(outerLow), turnedOver(innerLow));
  // All sides but the front, which is the third edge of a lying rectangle.
  for (const k of [0, 1, 3]) {
    const next = (k + 1) % 4;
    builder.quad(outerLow[k], outerLow[next], outerHigh[next], outerHigh[k]);
    builder.quad(innerLow[next], innerLow[k], innerHigh[k], innerHigh[next]);
  }
  const holeFront = facing(m.doorX, m.doorY, outerZ[0]);
  const holeBack = facing(m.doorX, m.doorY, innerZ[0]);
  rim(builder, facing(outerX, [0, m.wallTop], outerZ[0]), holeFront);
  rim(builder, turnedOver(facing(innerX, [0, m.wallTop], innerZ[0])), turnedOver(holeBack));
  lining(builder, holeFront, holeBack);
}

const leafDepth = (m: Measures): Range => {
  const front = m.z[0] + m.wall * 0.55;
  return [front, front + Math.min(LEAF_METRES, m.wall * 0.4)];
};

function buildLeaf(builder: ShapeBuilder, m: Measures): void {
  const z = leafDepth(m);
  builder.box(
    [(m.doorX[0] + m.doorX[1]) / 2, (m.doorY[0] + m.doorY[1]) / 2, (z[0] + z[1]) / 2],
    [m.doorX[1] - m.doorX[0], m.doorY[1] - m.doorY[0], z[1] - z[0]],
  );
}

function buildHandle(builder: ShapeBuilder, m: Measures): void {
  const [width, tall] = [m.doorX[1] - m.doorX[0], m.doorY[1] - m.doorY[0]];
  const [x, y] = [m.doorX[0] + width * 0.1, m.doorY[0] + tall * 0.48];
  const z = leafDepth(m)[0] - m.wall * 0.2;
  builder.tube([x, y, z], [x + Math.min(0.13, width * 0.4), y, z], Math.min(0.011, width * 0.05));
}

function buildStep(builder: ShapeBuilder, m: Measures): void {
  const height = m.doorY[0];
  const width = m.doorX[1] - m.doorX[0] + 0.3;
  builder.box(
    [(m.doorX[0] + m.doorX[1]) / 2, height / 2, m.z[0] - STEP_DEPTH_METRES / 2],
    [width, height, STEP_DEPTH_METRES],
  );
}

function buildSlab(builder: ShapeBuilder, m: Measures, overhang: number): void {
  builder.box(
    [0, (m.wallTop + m.slabTop) / 2, 0],
    [m.x[1] - m.x[0] + 2 * overhang, m.slabTop - m.wallTop, m.z[1] - m.z[0] + 2 * overhang],
  );
}

function buildCoping(builder: ShapeBuilder, m: Measures, overhang: number): void {
  const half = Math.min(0.06, m.wall / 2);
  const [x, z] = [m.x, m.z].map((range) => inset(range, half - overhang));
  const corners = [
    [x[0], z[0]],
    [x[1], z[0]],
    [x[1], z[1]],
    [x[0], z[1]],
  ] as const;
  run(
    builder,
    corners.map(([u, v]): [number, number] => [u, v]),
    true,
    uprightSection(half * 2, m.slabTop, m.height),
  );
}
