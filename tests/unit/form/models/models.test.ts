import { afterEach, expect, test } from 'vitest';
import { formOf, formsAt } from '../../../../src/core/form/formsAt';
import type { HeldModel } from '../../../../src/core/form/models/heldModel';
import { modelHeightAt } from '../../../../src/core/form/models/modelHeight';
import { cutHeight, modelSection } from '../../../../src/core/form/models/modelSection';
import { modelSize } from '../../../../src/core/form/models/modelShapes';
import { dropModel, holdModel } from '../../../../src/core/form/models/modelShelf';
import type { PlacedPart } from '../../../../src/core/form/types';
import { moveItem } from '../../../../src/core/plan/edits/moveItem';
import { scaleModel } from '../../../../src/core/plan/edits/scaleModel';
import type { Piece } from '../../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { noticesOf } from '../../../../src/core/report/notices';
import { readModel } from '../../../../src/exchange/gltf-in/readModel';
import { makeDraco, REAL_MODELS } from '../../../plans/realModels';
import { smallRoof } from '../../smallRoof';

type Model = Extract<Piece, { kind: 'model' }>;

const SHA = 'c'.repeat(64);
const { model: bunny, extent } = await readModel(REAL_MODELS.bunny, makeDraco);
const record: Model = {
  id: 'scan',
  label: 'Roof scan',
  kind: 'model',
  at: [2, 0.25, -1],
  headingDegrees: 90,
  asset: { sha256: SHA, name: 'bunny.glb', bytes: REAL_MODELS.bunny.length },
  up: 'y',
  metresPerUnit: 2,
  extent,
};
const roof = smallRoof();
const withModel = (model: Model): Plan => ({ ...roof, pieces: [...roof.pieces, model] });
const plan = withModel(record);

afterEach(() => dropModel(SHA));

const partsIn = (of: Plan): readonly PlacedPart[] => formOf(of, 'scan', 0)?.parts ?? [];

/** The box around parts in the world, [lowest, highest]. */
function boxOf(parts: readonly PlacedPart[]): readonly [number[], number[]] {
  const [low, high] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ];
  for (const { shape, worldFromPart } of parts) {
    const m = worldFromPart ?? [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0];
    for (let k = 0; k < shape.positions.length; k += 3) {
      const [x, y, z] = shape.positions.subarray(k, k + 3);
      for (let axis = 0; axis < 3; axis += 1) {
        const [a, b, c, t] = m.slice(axis * 4, axis * 4 + 4);
        const value = a * x + b * y + c * z + t;
        low[axis] = Math.min(low[axis], value);
        high[axis] = Math.max(high[axis], value);
      }
    }
  }
  return [low, high];
}

test('a box of its size stands for a model until its file is at hand, and a notice says so', () => {
  expect(partsIn(plan).map(({ name }) => name)).toEqual(['box']);
  const sentences = () => noticesOf(plan).map(({ sentence }) => sentence);
  expect(sentences()).toContain(
    'The file of Roof scan, bunny.glb, is not here: a box of its size stands for it. Give it the file.',
  );
  holdModel(SHA, bunny);
  expect(partsIn(plan).map(({ name }) => name)).toEqual(['mesh']);
  expect(sentences().join()).not.toContain('bunny.glb');
});

test('the model fills the box that stood for it', () => {
  const box = boxOf(partsIn(plan));
  holdModel(SHA, bunny);
  const [low, high] = boxOf(partsIn(plan));
  for (let axis = 0; axis < 3; axis += 1) {
    expect(low[axis]).toBeCloseTo(box[0][axis], 4);
    expect(high[axis]).toBeCloseTo(box[1][axis], 4);
  }
  expect(low[1]).toBeCloseTo(0.25, 5);
});

test('with z up, what lay along z in the file stands upright', () => {
  const lying = { ...record, up: 'z' as const, headingDegrees: 0 };
  holdModel(SHA, bunny);
  const [width, height, depth] = modelSize(lying);
  const [low, high] = boxOf(partsIn(withModel(lying)));
  expect(high[0] - low[0]).toBeCloseTo(width, 4);
  expect(high[1] - low[1]).toBeCloseTo(height, 4);
  expect(high[2] - low[2]).toBeCloseTo(depth, 4);
  expect(height).toBeCloseTo((extent.highest[2] - extent.lowest[2]) * 2, 6);
});

test('forms are made anew when a model comes, and only then', () => {
  const before = formsAt(plan, 0);
  holdModel(SHA, bunny);
  const after = formsAt(plan, 0);
  before.forEach((form, k) => {
    if (form.id === 'scan') expect(after[k]).not.toBe(form);
    else expect(after[k]).toBe(form);
  });
  expect(formsAt(plan, 0).every((form, k) => form === after[k])).toBe(true);
});

test('moving and turning leave the shapes alone; scaling makes others', () => {
  holdModel(SHA, bunny);
  const [part] = partsIn(plan);
  const [moved] = partsIn(moveItem(plan, { id: 'scan', to: [5, 5] }));
  expect(moved.shape).toBe(part.shape);
  expect(moved.worldFromPart).not.toEqual(part.worldFromPart);
  const [scaled] = partsIn(scaleModel(plan, { id: 'scan', from: [0, 0], to: [1, 0], metres: 2 }));
  expect(scaled.shape).not.toBe(part.shape);
});

/** A table of two levels: 2 m square at 1 m, and 1 m square at 2 m in its middle. */
const square = (half: number, height: number): number[] => [
  ...[-half, height, -half, -half, height, half, half, height, half],
  ...[-half, height, -half, half, height, half, half, height, -half],
];
const table: HeldModel = {
  centre: [0, 0, 0],
  trianglesInFile: 4,
  errorUnits: 0,
  chunks: [
    {
      name: 'table',
      positions: Float32Array.from([...square(1, 1), ...square(0.5, 2)]),
      indices: Uint32Array.from({ length: 12 }, (_, k) => k),
      isCut: true,
      skin: null,
    },
  ],
};
const standing: Model = {
  ...record,
  at: [10, 1, 0],
  headingDegrees: 0,
  metresPerUnit: 1,
  extent: { lowest: [-1, 1, -1], highest: [1, 2, 1] },
};

test('the height of a model at a place is that of its topmost surface', () => {
  expect(modelHeightAt(standing, [10, 0])).toBeNull();
  holdModel(SHA, table);
  expect(modelHeightAt(standing, [10, 0])).toBeCloseTo(2, 6);
  expect(modelHeightAt(standing, [10.8, 0.8])).toBeCloseTo(1, 6);
  expect(modelHeightAt(standing, [12, 0])).toBeNull();
  // Turned by 45 degrees, the corner of the table comes to lie where there was none.
  const turned = { ...standing, headingDegrees: 45 };
  expect(modelHeightAt(turned, [11.3, 0])).toBeCloseTo(1, 6);
  expect(modelHeightAt(turned, [10.9, 0.9])).toBeNull();
});

test('the plan cuts a model at 1.1 m above the deck, and a low one half way up', () => {
  expect(cutHeight({ ...record, at: [0, 0.25, 0] })).toBeCloseTo(0.85, 6);
  expect(cutHeight({ ...record, at: [0, 2, 0] })).toBeCloseTo(modelSize(record)[1] / 2, 6);
  expect(modelSection(record)).toBeNull();
  holdModel(SHA, bunny);
  const runs = modelSection(record) ?? [];
  expect(runs.length).toBeGreaterThan(0);
  const [width, , depth] = modelSize(record);
  for (const [x, z] of runs.flat()) {
    expect(Math.abs(x)).toBeLessThanOrEqual(width / 2 + 1e-6);
    expect(Math.abs(z)).toBeLessThanOrEqual(depth / 2 + 1e-6);
  }
  // A closed surface is cut in closed runs.
  const [longest] = runs.toSorted((a, b) => b.length - a.length);
  const [first, last] = [longest[0], longest[longest.length - 1]];
  expect(Math.hypot(first[0] - last[0], first[1] - last[1])).toBeLessThan(0.02);
});

test('nobody stands inside an open surface, nor in the box of a missing one', () => {
  const around = { ...record, at: [0, -1, 0] as [number, number, number], metresPerUnit: 20 };
  const inside = () =>
    noticesOf(withModel(around)).filter(({ sentence }) => sentence.includes('stands inside'));
  expect(inside()).toEqual(noticesOf(roof).filter(({ sentence }) => sentence.includes('stands inside')));
});
