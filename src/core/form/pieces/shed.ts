import { tan } from '../../units/steadyMath';
import { standingAt } from '../build/placement';
import { ShapeBuilder, type ShapeLook } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { opennessOf } from './making/mesh';
import { fixed, type PieceOf } from './making/placed';
import { ACROSS, prism } from './making/prism';

/** Sizes of common timber work; common practice, no source. */
const FALL = tan((5 * Math.PI) / 180);
const ROOF_METRES = 0.05;
const POST_METRES = 0.07;
const RAIL_METRES = 0.05;
const BOARD_METRES = 0.02;
/** How far boards stand back from the faces of the posts, so that no two parts have faces in one plane. */
const BOARD_BACK_METRES = 0.004;
/** How far the mesh stands back from the front of the posts; it lies on the front of the rails. */
const MESH_BACK_METRES = 0.005;
const FLOOR_METRES = 0.45;
const BAY_METRES = 1.5;
const NEST_METRES = 0.6;

/** Measures in the shed's own frame: it stands at the origin and faces −z. */
interface Measures {
  readonly width: number;
  readonly depth: number;
  readonly overhang: number;
  /** Thickness of posts, boards and roof: the common ones, less in a small shed. */
  readonly post: number;
  readonly board: number;
  readonly boardBack: number;
  readonly meshBack: number;
  readonly roof: number;
  readonly floor: number;
  /** Height of the roof's underside at a depth z: it falls from front to back. */
  readonly under: (z: number) => number;
}

function measure(shed: PieceOf<'shed'>): Measures {
  const [width, height, depth] = shed.size;
  const overhang = shed.overhangMetres;
  const small = Math.min(width, height, depth);
  const roof = Math.min(ROOF_METRES, height * 0.05);
  const front = -depth / 2 - overhang;
  const slope = Math.min(FALL, (height * 0.25) / (depth + 2 * overhang));
  return {
    width,
    depth,
    overhang,
    post: Math.min(POST_METRES, small * 0.1),
    board: Math.min(BOARD_METRES, small * 0.03),
    boardBack: Math.min(BOARD_BACK_METRES, small * 0.006),
    meshBack: Math.min(MESH_BACK_METRES, small * 0.007),
    roof,
    floor: Math.min(FLOOR_METRES, height * 0.2),
    under: (z) => height - roof - slope * (z - front),
  };
}

/**
 * A timber shed, such as a pigeon loft, its floor raised: `frame` of posts and rails, `boards` (floor, sides,
 * back, and the front where it is boarded), `mesh` across the front where it has one, `shelves` and `nest boxes`
 * along the back, and a `roof` that falls to the back. The record's width and depth are those of the frame, in which
 * boards and mesh stand back a few millimetres; its height reaches to the roof's front edge.
 */
export function shedParts(shed: PieceOf<'shed'>): readonly PlacedPart[] {
  const m = measure(shed);
  const placement = standingAt(shed.at, shed.headingDegrees);
  const make = (
    name: string,
    look: ShapeLook,
    build: (builder: ShapeBuilder) => void,
  ): readonly PlacedPart[] => {
    const builder = new ShapeBuilder();
    build(builder);
    return builder.isEmpty ? [] : [fixed(name, builder.finish(look, placement))];
  };
  const isMesh = shed.front === 'mesh';
  return [
    ...make('frame', { substance: 'timber' }, (builder) => buildFrame(builder, m, isMesh)),
    ...make('boards', { substance: 'boards' }, (builder) => buildBoards(builder, m, shed.front === 'boards')),
    ...make('shelves', { substance: 'timber' }, (builder) => buildShelves(builder, m, shed.shelves)),
    ...make('nest boxes', { substance: 'boards' }, (builder) => buildNestBoxes(builder, m, shed.shelves)),
    ...make('roof', { substance: 'felt' }, (builder) => buildRoof(builder, m)),
    ...(isMesh
      ? make('mesh', { substance: 'wire mesh', openness: opennessOf(shed.mesh) }, (builder) =>
          buildMesh(builder, m),
        )
      : []),
  ];
}

function buildFrame(builder: ShapeBuilder, m: Measures, isMesh: boolean): void {
  const { post } = m;
  const [x, z] = [m.width / 2 - post / 2, m.depth / 2 - post / 2];
  const upright = (atX: number, atZ: number) => {
    const [front, back] = [atZ - post / 2, atZ + post / 2];
    // Cut along the roof, which they carry without reaching into it.
    const outline = [
      [front, 0],
      [back, 0],
      [back, m.under(back)],
      [front, m.under(front)],
    ] as const;
    prism(builder, outline, atX - post / 2, atX + post / 2, ACROSS);
  };
  for (const side of [-x, x]) for (const end of [-z, z]) upright(side, end);
  const rail = post * (RAIL_METRES / POST_METRES);
  const across = (y: number, atZ: number) => builder.box([0, y, atZ], [m.width - post * 1.5, rail, rail]);
  across(m.floor - rail, -z);
  across(m.floor - rail, z);
  across(m.under(-z) - rail, -z);
  across(m.under(z) - rail, z);
  if (!isMesh) return;
  const bays = Math.max(1, Math.ceil(m.width / BAY_METRES));
  for (let bay = 1; bay < bays; bay += 1) upright(-x + (2 * x * bay) / bays, -z);
  across((m.floor + m.under(-z)) / 2, -z);
}

function buildBoards(builder: ShapeBuilder, m: Measures, isBoarded: boolean): void {
  const { board, boardBack, floor } = m;
  const [halfWidth, halfDepth] = [m.width / 2 - boardBack, m.depth / 2 - boardBack];
  // Boards end inside the roof, where the posts do not reach.
  const boardTop = (z: number) => m.under(z) + m.roof / 2;
  const sides = [
    [-halfDepth, floor],
    [halfDepth, floor],
    [halfDepth, boardTop(halfDepth)],
    [-halfDepth, boardTop(-halfDepth)],
  ] as const;
  prism(builder, sides, -halfWidth, board - halfWidth, ACROSS);
  prism(builder, sides, halfWidth - board, halfWidth, ACROSS);
  // Back, front and floor end inside the side boards, so that no light leaks and no edge is shared.
  const inner = 2 * halfWidth - board;
  const panel = (z: number) => {
    const low = floor - board * 0.5;
    const high = boardTop(z);
    builder.box([0, (low + high) / 2, z], [inner, high - low, board]);
  };
  // Far enough out to cover the rails.
  const middle = halfDepth - boardBack - board / 2;
  panel(middle);
  if (isBoarded) panel(-middle);
  builder.box([0, floor - board * 0.4, 0], [inner * 0.999, board, m.depth - 2 * board]);
}

/** Depth of the shelves, and the z of their middle: they stand along the back. */
const shelving = (m: Measures) => {
  const deep = Math.min(0.45, m.depth * 0.35);
  return { deep, middle: m.depth / 2 - m.board - deep / 2 };
};

/** Heights of the shelves, evenly between the floor and the roof. */
function shelfHeights(m: Measures, count: number): readonly number[] {
  const room = m.under(m.depth / 2) - m.floor;
  return Array.from({ length: count }, (_, k) => m.floor + (room * (k + 1)) / (count + 1));
}

function buildShelves(builder: ShapeBuilder, m: Measures, count: number): void {
  const { deep, middle } = shelving(m);
  for (const height of shelfHeights(m, count))
    builder.box([0, height, middle], [m.width - 2 * m.board, m.board, deep]);
}

/** Upright dividers through all shelves, from the floor up to a nest's height above the highest shelf. */
function buildNestBoxes(builder: ShapeBuilder, m: Measures, count: number): void {
  const heights = shelfHeights(m, count);
  if (heights.length === 0) return;
  const { deep, middle } = shelving(m);
  const high = heights[heights.length - 1];
  const boxes = Math.min(40, Math.max(1, Math.round(m.width / NEST_METRES)));
  const inner = m.width - 2 * m.board;
  for (let k = 1; k < boxes; k += 1) {
    const x = inner * (k / boxes - 0.5);
    builder.box([x, (m.floor + high) / 2, middle + deep * 0.04], [m.board, high - m.floor, deep * 0.9]);
  }
}

function buildRoof(builder: ShapeBuilder, m: Measures): void {
  const [halfWidth, halfDepth] = [m.width / 2 + m.overhang, m.depth / 2 + m.overhang];
  const outline = [
    [-halfDepth, m.under(-halfDepth)],
    [halfDepth, m.under(halfDepth)],
    [halfDepth, m.under(halfDepth) + m.roof],
    [-halfDepth, m.under(-halfDepth) + m.roof],
  ] as const;
  prism(builder, outline, -halfWidth, halfWidth, ACROSS);
}

function buildMesh(builder: ShapeBuilder, m: Measures): void {
  const z = m.meshBack - m.depth / 2;
  // Its edges are inside the corner posts.
  const [half, high] = [m.width / 2 - m.post / 2, m.under(z)];
  builder.quad([half, m.floor, z], [-half, m.floor, z], [-half, high, z], [half, high, z]);
}
