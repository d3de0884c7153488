import { areaOf } from '../../../core/plan/areas';
import type { ChartFace, Material, Mesh, Piece } from '../../../core/plan/schema/pieces';
import type { LengthSystem } from '../../../core/units/lengths';
import { areaText } from './areaText';
import { choice, countOf, lengthOf, named, reshaped, sizeFields, tiltField } from './build';
import type { FieldGroup, FieldSpec } from './types';

const MATERIALS = named<Material>(['brick', 'render', 'timber', 'metal', 'concrete']);

const materialField = (id: string, material: Material): FieldSpec =>
  choice('material', material, MATERIALS, (plan, value) => reshaped(plan, id, { material: value }));

const meshFields = (id: string, mesh: Mesh): FieldSpec[] => [
  {
    form: 'length',
    label: 'mesh',
    small: true,
    metres: mesh.cellMetres,
    change: (plan, cellMetres) => reshaped(plan, id, { mesh: { ...mesh, cellMetres } }),
  },
  {
    form: 'length',
    label: 'wire',
    small: true,
    metres: mesh.wireMetres,
    change: (plan, wireMetres) => reshaped(plan, id, { mesh: { ...mesh, wireMetres } }),
  },
];

/** What a fence gets when its mesh is put back: chain link. Source: common practice, no source */
const NEW_MESH: Mesh = { cellMetres: 0.06, wireMetres: 0.003 };

function fenceFields(fence: Extract<Piece, { kind: 'fence' }>): FieldSpec[] {
  const { id, mesh } = fence;
  return [
    lengthOf(id, 'heightMetres', 'height', fence.heightMetres),
    lengthOf(id, 'postEveryMetres', 'posts every', fence.postEveryMetres),
    ...(mesh ? meshFields(id, mesh) : []),
    lengthOf(id, 'postMetres', 'post', fence.postMetres, true),
    lengthOf(id, 'baseMetres', 'off the deck', fence.baseMetres),
    countOf(id, 'rails', 'rails', fence.rails),
    choice('filled with', mesh ? 'wire mesh' : 'nothing', named(['wire mesh', 'nothing']), (plan, value) =>
      reshaped(plan, id, { mesh: value === 'nothing' ? null : (mesh ?? NEW_MESH) }),
    ),
  ];
}

/** What a chart gets when its squares are put back. Source: common practice, no source */
const NEW_SQUARES: Extract<ChartFace, { kind: 'squares' }> = { kind: 'squares', columns: 10, rows: 7 };

function chartFields(chart: Extract<Piece, { kind: 'chart' }>): FieldSpec[] {
  const { id, face } = chart;
  const count = (key: 'columns' | 'rows', squares: typeof NEW_SQUARES): FieldSpec => ({
    form: 'number',
    label: key,
    value: squares[key],
    change: (plan, value) => reshaped(plan, id, { face: { ...squares, [key]: value } }),
  });
  return [
    lengthOf(id, 'widthMetres', 'width', chart.widthMetres),
    lengthOf(id, 'heightMetres', 'height', chart.heightMetres),
    lengthOf(id, 'middleMetres', 'middle at', chart.middleMetres),
    tiltField(id, chart.tiltDegrees),
    choice('face', face.kind, named(['squares', 'grey card']), (plan, kind) =>
      kind === face.kind ? plan : reshaped(plan, id, { face: kind === 'squares' ? NEW_SQUARES : { kind } }),
    ),
    ...(face.kind === 'squares' ? [count('columns', face), count('rows', face)] : []),
  ];
}

function ownFields(piece: Piece, lengths: LengthSystem): FieldSpec[] {
  const { id } = piece;
  switch (piece.kind) {
    case 'deck':
      return [
        lengthOf(id, 'topMetres', 'top at', piece.topMetres),
        lengthOf(id, 'dropMetres', 'walls below', piece.dropMetres),
        {
          form: 'shown',
          label: 'area',
          text: areaText(
            (piece.holes ?? []).reduce((left, hole) => left - areaOf(hole.outline), areaOf(piece.outline)),
            lengths,
          ),
        },
      ];
    case 'parapet':
      return [
        lengthOf(id, 'heightMetres', 'height', piece.heightMetres),
        lengthOf(id, 'thicknessMetres', 'thickness', piece.thicknessMetres),
        lengthOf(id, 'copingMetres', 'coping', piece.copingMetres),
        lengthOf(id, 'baseMetres', 'off the deck', piece.baseMetres),
        materialField(id, piece.material),
      ];
    case 'wall':
      return [
        lengthOf(id, 'heightMetres', 'height', piece.heightMetres),
        lengthOf(id, 'thicknessMetres', 'thickness', piece.thicknessMetres),
        lengthOf(id, 'baseMetres', 'off the deck', piece.baseMetres),
        materialField(id, piece.material),
      ];
    case 'fence':
      return fenceFields(piece);
    case 'stair house':
      return [
        ...sizeFields(id, piece.size),
        lengthOf(id, 'overhangMetres', 'overhang', piece.overhangMetres),
        materialField(id, piece.material),
      ];
    case 'shed':
      return [
        ...sizeFields(id, piece.size),
        lengthOf(id, 'overhangMetres', 'overhang', piece.overhangMetres),
        choice('front', piece.front, named(['mesh', 'boards', 'open']), (plan, front) =>
          reshaped(plan, id, { front }),
        ),
        countOf(id, 'shelves', 'shelves', piece.shelves),
        ...(piece.front === 'mesh' ? meshFields(id, piece.mesh) : []),
      ];
    case 'tank':
      return [
        lengthOf(id, 'diameterMetres', 'diameter', piece.diameterMetres),
        lengthOf(id, 'drumMetres', 'drum', piece.drumMetres),
        lengthOf(id, 'legMetres', 'legs', piece.legMetres),
      ];
    case 'post':
      return [
        lengthOf(id, 'heightMetres', 'height', piece.heightMetres),
        lengthOf(id, 'diameterMetres', 'diameter', piece.diameterMetres, true),
        lengthOf(id, 'armMetres', 'crossbar', piece.armMetres),
      ];
    case 'line':
      return [
        lengthOf(id, 'sagMetres', 'sag', piece.sagMetres),
        lengthOf(id, 'diameterMetres', 'diameter', piece.diameterMetres, true),
        countOf(id, 'cloths', 'cloths on it', piece.cloths),
      ];
    case 'chimney':
      return [...sizeFields(id, piece.size), countOf(id, 'pots', 'pots', piece.pots)];
    case 'box':
      return [...sizeFields(id, piece.size), materialField(id, piece.material)];
    case 'riser':
      return sizeFields(id, piece.size);
    case 'pane':
      return [
        lengthOf(id, 'widthMetres', 'width', piece.widthMetres),
        lengthOf(id, 'heightMetres', 'height', piece.heightMetres),
        choice('finish', piece.finish, named(['glass', 'mirror']), (plan, finish) =>
          reshaped(plan, id, { finish }),
        ),
      ];
    case 'chart':
      return chartFields(piece);
    case 'skyline block':
      return [
        ...sizeFields(id, piece.size),
        {
          form: 'share',
          label: 'windows lit',
          share: piece.windows.litShare,
          change: (plan, litShare) => reshaped(plan, id, { windows: { ...piece.windows, litShare } }),
        },
        {
          form: 'number',
          label: 'which windows',
          value: piece.windows.seed,
          change: (plan, seed) => reshaped(plan, id, { windows: { ...piece.windows, seed } }),
        },
      ];
    case 'model':
      return [];
  }
}

function doorFields({ id, door }: Extract<Piece, { kind: 'stair house' }>): FieldSpec[] {
  const field = (key: keyof typeof door, label: string): FieldSpec => ({
    form: 'length',
    label,
    metres: door[key],
    change: (plan, metres) => reshaped(plan, id, { door: { ...door, [key]: metres } }),
  });
  return [
    field('widthMetres', 'door width'),
    field('heightMetres', 'door height'),
    field('alongMetres', 'door from the middle'),
  ];
}

/** What a set piece is made of, for its panel: the fields of its own kind. */
export function pieceFields(piece: Piece, lengths: LengthSystem): FieldGroup[] {
  const own = ownFields(piece, lengths);
  const groups: FieldGroup[] = own.length === 0 ? [] : [{ heading: 'Size and make', fields: own }];
  if (piece.kind === 'stair house') groups.push({ heading: 'The door', fields: doorFields(piece) });
  return groups;
}
