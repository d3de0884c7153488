import { moved } from '../../core/form/build/placement';
import type { Vec3 } from '../../core/form/build/vector';
import type { ItemForm, PlacedPart } from '../../core/form/types';
import { groupBy } from '../glb/groupBy';
import { trianglesOf } from '../glb/partMesh';
import { SUBSTANCE_LOOKS } from '../glb/substances';
import { UsdMaterials } from './materials';
import { CENTIMETRES } from './placement';
import { Identifiers, lengthText, metadata, numberText, prim, triples, tuple } from './text';

/** An item as a prim with a mesh for each part, and for each material where a part has several. */
export function itemLines(identifier: string, form: ItemForm, materials: UsdMaterials): string[] {
  const names = new Identifiers();
  const meshes = [...groupBy(form.parts, (each) => each.name)].flatMap(([part, placed]) =>
    [...groupBy(placed, (each) => UsdMaterials.keyOf(each.shape)).values()].flatMap((alike) =>
      meshLines(names.of(part), form, alike, materials.of(alike[0].shape)),
    ),
  );
  return prim(
    `Xform "${identifier}"`,
    metadata(form.label, { item: form.id, kind: form.kind, wish: form.wish }),
    meshes,
  );
}

interface Mesh {
  /** Metres. */
  readonly points: ArrayLike<number>;
  readonly indices: ArrayLike<number>;
  /** One to a point; null where facets show. */
  readonly normals: ArrayLike<number> | null;
}

const isRound = ({ shape }: PlacedPart): boolean => shape.smooth || Boolean(shape.skin?.normals);

/** The triangles of placed parts: with normals where something of it is round, else as few points as there are. */
function meshOf(parts: readonly PlacedPart[]): Mesh {
  if (parts.some(isRound)) {
    const { positions, normals, indices } = trianglesOf(parts);
    return { points: positions, indices, normals };
  }
  const points: number[] = [];
  const indices: number[] = [];
  for (const { shape, worldFromPart } of parts) {
    const first = points.length / 3;
    for (let k = 0; k < shape.positions.length; k += 3) {
      const at: Vec3 = [shape.positions[k], shape.positions[k + 1], shape.positions[k + 2]];
      points.push(...(worldFromPart ? moved(worldFromPart, at) : at));
    }
    for (const index of shape.indices) indices.push(first + index);
  }
  return { points, indices, normals: null };
}

function meshLines(
  identifier: string,
  form: ItemForm,
  parts: readonly PlacedPart[],
  material: string,
): string[] {
  const { points, indices, normals } = meshOf(parts);
  const { name, shape } = parts[0];
  const { openness, substance } = shape;
  const custom = {
    item: form.id,
    part: name,
    ...(openness === null ? {} : { openness }),
    ...(parts.some((each) => each.shape.mirror) ? { reflecting: true } : {}),
  };
  const [lowest, highest] = extentOf(points);
  const isSheet = SUBSTANCE_LOOKS[substance].sheet === true || openness !== null;
  return prim(`Mesh "${identifier}"`, metadata(name, custom, ['MaterialBindingAPI']), [
    `float3[] extent = [${tuple(lowest, lengthText)}, ${tuple(highest, lengthText)}]`,
    `int[] faceVertexCounts = [${Array.from({ length: indices.length / 3 }, () => 3).join(', ')}]`,
    `int[] faceVertexIndices = [${Array.from(indices).join(', ')}]`,
    `point3f[] points = ${triples(points, (metres) => lengthText(metres * CENTIMETRES))}`,
    ...(normals === null
      ? []
      : [`normal3f[] normals = ${triples(normals, shortNormal)} (`, '    interpolation = "vertex"', ')']),
    `rel material:binding = <${material}>`,
    'uniform token subdivisionScheme = "none"',
    ...(isSheet ? ['uniform bool doubleSided = 1'] : []),
  ]);
}

/** A normal's share, to a thousandth: a twentieth of a degree. */
const shortNormal = (value: number): string => numberText(Math.round(value * 1000) / 1000);

function extentOf(points: ArrayLike<number>): readonly [number[], number[]] {
  const lowest = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const highest = lowest.map((value) => -value);
  for (let k = 0; k < points.length; k += 1) {
    const value = points[k] * CENTIMETRES;
    if (value < lowest[k % 3]) lowest[k % 3] = value;
    if (value > highest[k % 3]) highest[k % 3] = value;
  }
  return [lowest, highest];
}
