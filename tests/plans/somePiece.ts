import type { Point, Spot } from '../../src/core/plan/schema/numbers';
import type { Opening, Piece } from '../../src/core/plan/schema/pieces';
import { cos, sin } from '../../src/core/units/steadyMath';
import type { Draw } from './draw';

/** Where things may stand: half the width and half the depth of the roof, metres. */
export interface Roof {
  readonly halfX: number;
  readonly halfZ: number;
}

export const PIECE_KINDS = [
  'wall',
  'fence',
  'stair house',
  'shed',
  'tank',
  'post',
  'line',
  'chimney',
  'box',
  'riser',
  'pane',
  'chart',
  'skyline block',
] as const satisfies readonly Piece['kind'][];
export type PieceKind = (typeof PIECE_KINDS)[number];

export const spotOn = ({ halfX, halfZ }: Roof, draw: Draw): Spot => [
  draw.between(-halfX, halfX),
  draw.between(-halfZ, halfZ),
];
export const placeOn = (roof: Roof, draw: Draw, height = 0): Point => {
  const [x, z] = spotOn(roof, draw);
  return [x, height, z];
};
export const pathOn = (roof: Roof, draw: Draw, corners: number, legMetres: number): Spot[] => {
  const path: Spot[] = [spotOn(roof, draw)];
  for (let k = 1; k < corners; k += 1) {
    const [x, z] = path[k - 1];
    path.push([x + draw.between(0.2, legMetres), z + draw.between(-legMetres, legMetres)]);
  }
  return path;
};

/** Ways through a run, some of them over others or over a corner; few runs have any. */
const someOpenings = (id: string, draw: Draw): Opening[] =>
  Array.from({ length: draw.chance(0.4) ? draw.whole(1, 4) : 0 }, (_, k) => ({
    id: `${id}-${k}`,
    alongMetres: draw.between(0, 12),
    widthMetres: draw.between(0.3, 1.8),
    sillMetres: draw.chance(0.5) ? 0 : draw.between(0.2, 1.2),
    heightMetres: draw.between(0.4, 2.2),
  }));

/** A roof deck and the parapet around it; with a draw, some have a light well and gaps in the parapet. */
export function roofPieces({ halfX, halfZ }: Roof, draw?: Draw): Piece[] {
  const outline: Spot[] = [
    [-halfX, -halfZ],
    [halfX, -halfZ],
    [halfX, halfZ],
    [-halfX, halfZ],
  ];
  return [
    {
      id: 'deck',
      label: 'Deck',
      kind: 'deck',
      outline,
      ...(draw?.chance(0.5) && { holes: [{ id: 'well', outline: wellOn({ halfX, halfZ }, draw) }] }),
      topMetres: 0,
      dropMetres: 12,
    },
    {
      id: 'parapet',
      label: 'Parapet',
      kind: 'parapet',
      path: outline,
      closed: true,
      baseMetres: 0,
      heightMetres: 0.9,
      thicknessMetres: 0.3,
      copingMetres: 0.06,
      material: 'brick',
      ...(draw && { openings: someOpenings('gap', draw) }),
    },
  ];
}

/** A four-sided hole somewhere in the middle of a roof. */
function wellOn({ halfX, halfZ }: Roof, draw: Draw): Spot[] {
  const [x, z] = [draw.between(-halfX * 0.5, halfX * 0.3), draw.between(-halfZ * 0.5, halfZ * 0.3)];
  const [width, depth] = [draw.between(0.8, 3), draw.between(0.8, 2.4)];
  return [
    [x, z],
    [x + width, z + draw.between(-0.3, 0.3)],
    [x + width, z + depth],
    [x + draw.between(-0.3, 0.3), z + depth],
  ];
}

/** A set piece of a kind, its place and sizes drawn within what such things have. */
export function somePiece(id: string, kind: PieceKind, roof: Roof, draw: Draw): Piece {
  const common = { id, label: `${kind} ${id}` };
  const standing = { at: placeOn(roof, draw), headingDegrees: draw.between(0, 360) };
  const material = draw.pick(['brick', 'render', 'timber', 'metal', 'concrete'] as const);
  const mesh = { cellMetres: draw.between(0.02, 0.08), wireMetres: draw.between(0.001, 0.004) };
  const run = () => ({
    path: pathOn(roof, draw, draw.whole(2, 4), 4),
    closed: draw.chance(0.2),
    baseMetres: 0,
    heightMetres: draw.between(0.6, 2.4),
    openings: someOpenings(id, draw),
  });
  switch (kind) {
    case 'wall':
      return { ...common, ...run(), kind, thicknessMetres: draw.between(0.08, 0.35), material };
    case 'fence':
      return {
        ...common,
        ...run(),
        kind,
        postEveryMetres: draw.between(1, 3),
        postMetres: draw.between(0.03, 0.08),
        rails: draw.whole(0, 3),
        mesh: draw.chance(0.8) ? mesh : null,
      };
    case 'stair house':
      return {
        ...common,
        ...standing,
        kind,
        size: [draw.between(2.2, 4), draw.between(2.3, 3), draw.between(2.2, 4)],
        door: { widthMetres: 0.9, heightMetres: 2, alongMetres: draw.between(-0.5, 0.5) },
        overhangMetres: draw.between(0, 0.3),
        material,
      };
    case 'shed':
      return {
        ...common,
        ...standing,
        kind,
        size: [draw.between(2, 5), draw.between(1.9, 2.6), draw.between(1.2, 2.4)],
        front: draw.pick(['mesh', 'boards', 'open'] as const),
        shelves: draw.whole(0, 5),
        overhangMetres: draw.between(0, 0.3),
        mesh,
      };
    case 'tank':
      return {
        ...common,
        ...standing,
        kind,
        diameterMetres: draw.between(1.2, 3),
        drumMetres: draw.between(1, 2.5),
        legMetres: draw.between(0, 2.5),
      };
    case 'post':
      return {
        ...common,
        ...standing,
        kind,
        heightMetres: draw.between(1, 3.5),
        diameterMetres: draw.between(0.03, 0.12),
        armMetres: draw.chance(0.5) ? draw.between(0.4, 1.4) : 0,
      };
    case 'line':
      return {
        ...common,
        kind,
        from: placeOn(roof, draw, draw.between(1.8, 3)),
        to: placeOn(roof, draw, draw.between(1.8, 3)),
        sagMetres: draw.between(0, 0.5),
        diameterMetres: draw.between(0.003, 0.01),
        cloths: draw.whole(0, 6),
      };
    case 'chimney':
      return {
        ...common,
        ...standing,
        kind,
        size: [draw.between(0.6, 2), draw.between(1, 2.4), draw.between(0.5, 0.9)],
        pots: draw.whole(0, 4),
      };
    case 'box':
      return {
        ...common,
        ...standing,
        kind,
        size: [draw.between(0.2, 1.2), draw.between(0.2, 1.2), draw.between(0.2, 1.2)],
        material,
      };
    case 'riser':
      return {
        ...common,
        ...standing,
        kind,
        size: [draw.between(0.6, 3), draw.between(0.15, 1.2), draw.between(0.6, 2.4)],
      };
    case 'pane':
      return {
        ...common,
        ...standing,
        kind,
        widthMetres: draw.between(0.5, 2),
        heightMetres: draw.between(0.5, 2.2),
        finish: draw.pick(['glass', 'mirror'] as const),
      };
    case 'chart':
      return {
        ...common,
        ...standing,
        kind,
        widthMetres: draw.between(0.3, 1.6),
        heightMetres: draw.between(0.2, 1.2),
        middleMetres: draw.between(0, 2),
        tiltDegrees: draw.between(-60, 60),
        face: draw.chance(0.7)
          ? { kind: 'squares', columns: draw.whole(2, 12), rows: draw.whole(2, 9) }
          : { kind: 'grey card' },
      };
    case 'skyline block': {
      const bearing = draw.between(0, 2 * Math.PI);
      const metres = draw.between(30, 160);
      return {
        ...common,
        kind,
        at: [sin(bearing) * metres, -20, -cos(bearing) * metres],
        headingDegrees: draw.between(-10, 10),
        size: [draw.between(10, 24), draw.between(14, 42), draw.between(10, 24)],
        windows: { litShare: draw.between(0.05, 0.25), seed: draw.whole(0, 99999) },
      };
    }
  }
}
