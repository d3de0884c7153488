import { Mesh } from 'three';
import { expect, test } from 'vitest';
import { ShapeBuilder } from '../../../src/core/form/build/shapeBuilder';
import { formsAt } from '../../../src/core/form/formsAt';
import { mirrorHeightUnder } from '../../../src/scene/drive/mirrorHeight';
import { MaterialLibrary } from '../../../src/scene/materials/library';
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
  expect(mirrorHeightUnder({ ...plan, ground: { ...plan.ground, wetness: 'damp' } }, [x, 5, z])).toBeNull();
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
