import { Matrix4, Mesh, SkinnedMesh, Vector3 } from 'three';
import { expect, test } from 'vitest';
import { ShapeBuilder } from '../../../src/core/form/build/shapeBuilder';
import { formsAt } from '../../../src/core/form/formsAt';
import { mirrorHeightUnder } from '../../../src/scene/drive/mirrorHeight';
import { MaterialLibrary } from '../../../src/scene/materials/library';
import { WET_SHARES, wetMaskOf } from '../../../src/scene/materials/wetMask';
import { batchesOf } from '../../../src/scene/roof/batches';
import { Geometries } from '../../../src/scene/roof/geometries';
import { facetsOf } from '../../../src/scene/roof/normals';
import { RoofSet } from '../../../src/scene/roof/roofSet';
import { lanternPlan } from '../../plans/lantern';
import { DEMO, readPlan } from '../../plans/readPlan';

const column = (smooth: boolean) =>
  new ShapeBuilder().cone([0, 0, 0], [0, 2, 0], 0.5, 0.5, 8).finish({ substance: 'metal', smooth });

test('a round column is shaded round about, and its caps stay flat', () => {
  const { positions, normals } = facetsOf(column(true));
  for (let k = 0; k < positions.length; k += 3) {
    const [x, y, z] = [normals[k], normals[k + 1], normals[k + 2]];
    expect(Math.hypot(x, y, z)).toBeCloseTo(1, 5);
    if (Math.abs(y) > 0.01) expect(Math.abs(y)).toBeCloseTo(1, 5);
    // Away from the axis; the two triangles of a side pull it a little to the side of their shared diagonal.
    else expect((x * positions[k] + z * positions[k + 2]) / 0.5).toBeGreaterThan(0.98);
  }
});

test('an edged column keeps its facets', () => {
  const { positions, normals } = facetsOf(column(false));
  for (let t = 0; t < positions.length; t += 9)
    expect([...normals.slice(t, t + 3)]).toEqual([...normals.slice(t + 6, t + 9)]);
});

test('the same shapes have one geometry, and a sweep gives back what is no longer drawn', () => {
  const geometries = new Geometries();
  const [first, second] = [column(true), column(false)];
  const kept = geometries.of([first]);
  const both = geometries.of([first, second]);
  expect(geometries.of([first])).toBe(kept);
  expect(geometries.of([first, second])).toBe(both);
  const corners = kept.getAttribute('position').count;
  expect(both.getAttribute('position').count).toBe(2 * corners);
  geometries.sweep(new Set([kept]));
  expect(geometries.count).toBe(1);
  expect(geometries.of([first])).toBe(kept);
});

test('parts that look alike and move as one are drawn in one go, the others apart', () => {
  const turned = [1, 0, 0, 2, 0, 1, 0, 0, 0, 0, 1, 0];
  const part = (name: string, smooth: boolean, worldFromPart: number[] | null) => ({
    name,
    shape: column(smooth),
    worldFromPart,
  });
  const parts = [
    part('a', true, null),
    part('b', true, null),
    part('c', false, null),
    part('d', true, turned),
  ];
  const batches = batchesOf(parts);
  expect(batches.map(({ shapes }) => shapes.length)).toEqual([2, 1, 1]);
  expect(batches[2].worldFromPart).toBe(turned);
  expect(batchesOf(parts)).toBe(batches);
});

test('the demo at two instants: what stands still keeps its shapes, so its geometries are kept too', () => {
  const plan = readPlan(DEMO);
  const [early, late] = [formsAt(plan, 0), formsAt(plan, 8)];
  const shapes = new Set(early.flatMap(({ parts }) => parts.map(({ shape }) => shape)));
  const standing = late.filter(({ section }) => section === 'piece');
  for (const { parts } of standing) for (const { shape } of parts) expect(shapes.has(shape)).toBe(true);
});

test('another plan on another ground takes the first one away whole', () => {
  const roof = new RoofSet(new MaterialLibrary());
  const demo = readPlan(DEMO);
  const lantern = lanternPlan(null);
  roof.pose(demo, formsAt(demo, 0));
  roof.pose(lantern, formsAt(lantern, 0));
  const items = new Set(roof.group.children.map(({ name }) => name.split('/')[0]));
  expect([...items].sort()).toEqual(['deck', 'lantern']);
  expect(roof.pose(lantern, formsAt(lantern, 0))).toBe(false);
  expect(roof.pose(demo, formsAt(demo, 0))).toBe(true);
  expect(roof.group.children.some(({ name }) => name.startsWith('lantern/'))).toBe(false);
});

test('a camera mirrors in the deck that it stands over, and in none when the deck is dry', () => {
  const demo = readPlan(DEMO);
  const low = demo.pieces.find(({ kind }) => kind === 'deck');
  if (low?.kind !== 'deck') throw new Error('the demo has a deck');
  const corner = (x: number, z: number): [number, number] => [x, z];
  const high = {
    ...low,
    id: 'terrace',
    topMetres: 2,
    outline: [corner(100, 100), corner(104, 100), corner(104, 104), corner(100, 104)],
  };
  const plan = { ...demo, ground: { ...demo.ground, wetness: 'puddled' as const }, pieces: [low, high] };
  const [x, z] = [0, 1].map(
    (axis) => low.outline.reduce((sum, spot) => sum + spot[axis], 0) / low.outline.length,
  );
  expect(mirrorHeightUnder(plan, [x, 5, z])).toBe(low.topMetres);
  expect(mirrorHeightUnder(plan, [102, 5, 102])).toBe(2);
  expect(mirrorHeightUnder(plan, [102, 1.5, 102])).toBe(low.topMetres);
  const damp = { ...plan.ground, wetness: 'damp' as const };
  expect(mirrorHeightUnder({ ...plan, ground: damp }, [x, 5, z])).toBeNull();
  // Wet in a part of the terrace alone, which is what a camera over it mirrors in.
  const areas = [
    { id: 'a', wetness: 'puddled' as const, outline: [corner(101, 101), corner(103, 101), corner(103, 103)] },
  ];
  expect(mirrorHeightUnder({ ...plan, ground: { ...damp, areas } }, [x, 5, z])).toBe(2);
});

test('a deck that is wet in parts hides all of its top from its mirror, and is pictured as its areas say', () => {
  const lantern = lanternPlan(null);
  const areas = [
    {
      id: 'a',
      wetness: 'puddled' as const,
      outline: [
        [-1, -1],
        [1, -1],
        [1, 1],
        [-1, 1],
      ] as [number, number][],
    },
  ];
  const plan = { ...lantern, ground: { ...lantern.ground, areas } };
  const materials = new MaterialLibrary();
  const roof = new RoofSet(materials);
  roof.pose(lantern, formsAt(lantern, 0));
  expect(roof.decks.size).toBe(0);
  expect(materials.deckView.wetPlace.value.z).toBe(0);
  roof.pose(plan, formsAt(plan, 0));
  expect(roof.decks.size).toBe(2);
  const mask = wetMaskOf(plan);
  if (!mask) throw new Error('areas over a deck have a picture');
  const byteAt = (x: number, z: number): number => {
    const column = Math.floor(((x - mask.from[0]) / mask.size[0]) * mask.width);
    const row = Math.floor(((z - mask.from[1]) / mask.size[1]) * mask.height);
    return mask.texels[2 * (row * mask.width + column)];
  };
  expect(byteAt(0, 0)).toBe(Math.round(WET_SHARES.puddled[0] * 255));
  expect([byteAt(0.95, 0.95), byteAt(1.1, 0)].map((byte) => byte > 0)).toEqual([true, false]);
  expect(1 / materials.deckView.wetPlace.value.z).toBeCloseTo(3, 6);
});

/** The cell of a millimetre that a place is in, and those beside it, where rounding may have put it. */
const cellsOf = ({ x, y, z }: Vector3): string[] => {
  const steps = [0, -1, 1];
  const [a, b, c] = [x, y, z].map((value) => Math.round(value * 1000));
  return steps.flatMap((i) => steps.flatMap((j) => steps.map((k) => `${a + i} ${b + j} ${c + k}`)));
};

/** Where the shader takes a corner from: its part's motion, or the mesh's own. */
function motionOf(mesh: Mesh, corner: number): Matrix4 {
  if (!(mesh instanceof SkinnedMesh)) return mesh.matrix;
  const part = mesh.geometry.attributes.skinIndex.getX(corner);
  return new Matrix4().fromArray(mesh.skeleton.boneMatrices ?? [], part * 16);
}

test('who acts is drawn by materials, every corner where its part has it, through a walk', () => {
  const plan = readPlan(DEMO);
  const materials = new MaterialLibrary();
  const roof = new RoofSet(materials);
  const [who] = plan.cast;
  for (const seconds of [2, 9.3]) {
    const forms = formsAt(plan, seconds);
    expect(roof.pose(plan, forms)).toBe(true);
    expect(roof.pose(plan, forms)).toBe(false);
    const drawn = roof.group.children.filter(
      (mesh): mesh is Mesh => mesh instanceof Mesh && mesh.name.startsWith(`${who.id}/`),
    );
    const parts = forms.find(({ id }) => id === who.id)?.parts ?? [];
    expect(drawn.length).toBeLessThan(parts.length / 1.9);
    const places = drawn.flatMap((mesh) =>
      Array.from({ length: mesh.geometry.attributes.position.count }, (_, corner) => {
        const place = new Vector3().fromBufferAttribute(mesh.geometry.attributes.position, corner);
        place.applyMatrix4(motionOf(mesh, corner));
        const sphere = mesh instanceof SkinnedMesh ? mesh.boundingSphere : null;
        if (sphere) expect(sphere.center.distanceTo(place)).toBeLessThan(sphere.radius + 1e-4);
        return place;
      }),
    );
    const wanted = batchesOf(parts).flatMap(({ shapes, worldFromPart }) =>
      shapes.flatMap((shape) => {
        const { positions } = facetsOf(shape);
        const [a, b, c, x, d, e, f, y, g, h, i, z] = worldFromPart ?? [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0];
        return Array.from({ length: positions.length / 3 }, (_, corner) => {
          const [u, v, w] = positions.subarray(corner * 3, corner * 3 + 3);
          return new Vector3(a * u + b * v + c * w + x, d * u + e * v + f * w + y, g * u + h * v + i * w + z);
        });
      }),
    );
    expect(places.length).toBe(wanted.length);
    const near = new Set(wanted.flatMap(cellsOf));
    for (const place of places) expect(near.has(cellsOf(place)[0])).toBe(true);
  }
  roof.dispose();
  materials.dispose();
});

/** Corners that are drawn, whoever draws them. */
const drawnCorners = (roof: RoofSet): number =>
  roof.group.children.reduce(
    (sum, child) =>
      child instanceof Mesh && child.visible ? sum + child.geometry.attributes.position.count : sum,
    0,
  );
const drawCalls = (roof: RoofSet): number => roof.group.children.filter(({ visible }) => visible).length;

test('what keeps still is drawn together, with the same corners, and apart again once it moves', () => {
  const plan = readPlan(DEMO);
  const materials = new MaterialLibrary();
  const roof = new RoofSet(materials);
  const forms = formsAt(plan, 10);
  roof.pose(plan, forms);
  const [calls, corners] = [drawCalls(roof), drawnCorners(roof)];
  for (let frame = 0; frame < 60; frame += 1) roof.settle();
  expect(drawnCorners(roof)).toBe(corners);
  expect(drawCalls(roof)).toBeLessThan(calls - 60);
  const together = drawCalls(roof);

  const stand = plan.gear.find(({ kind }) => kind === 'stand');
  const moved = {
    ...plan,
    gear: plan.gear.map((each) =>
      each === stand ? { ...stand, at: [2, 0, 2] as [number, number, number] } : each,
    ),
  };
  roof.pose(moved, formsAt(moved, 10));
  expect(drawnCorners(roof)).toBe(corners);
  expect(drawCalls(roof)).toBeGreaterThan(together);
  for (let frame = 0; frame < 60; frame += 1) roof.settle();
  expect(drawnCorners(roof)).toBe(corners);

  const hidden = new Set([stand?.id ?? '']);
  for (let frame = 0; frame < 60; frame += 1) {
    roof.settle();
    roof.without(hidden, () => {
      const ofStand = roof.group.children.filter(({ name }) => name.startsWith(`${stand?.id}/`));
      expect(ofStand.length).toBeGreaterThan(0);
      for (const mesh of ofStand) expect(mesh.visible).toBe(true);
    });
  }
  roof.pose(plan, []);
  expect(drawnCorners(roof)).toBe(0);
  roof.dispose();
  materials.dispose();
});
