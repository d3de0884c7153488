import { describe, expect, test } from 'vitest';
import { changeUnderlay } from '../../../src/core/plan/edits/changeUnderlay';
import { putModelOnDeck } from '../../../src/core/plan/edits/putModelOnDeck';
import { scaleModel } from '../../../src/core/plan/edits/scaleModel';
import { scaleUnderlay } from '../../../src/core/plan/edits/scaleUnderlay';
import { setModelFile, setModelUp } from '../../../src/core/plan/edits/setModelFile';
import { setUnderlay } from '../../../src/core/plan/edits/setUnderlay';
import { turnModelToNorth, turnUnderlayToNorth } from '../../../src/core/plan/edits/turnModelToNorth';
import { parsePlan } from '../../../src/core/plan/parse';
import type { Underlay } from '../../../src/core/plan/schema/drawing';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { smallRoof } from '../smallRoof';

type Model = Extract<Piece, { kind: 'model' }>;

const asset = { sha256: 'a'.repeat(64), name: 'roof.glb', bytes: 100 };
const model: Model = {
  id: 'scan',
  label: 'Roof scan',
  kind: 'model',
  at: [2, 0.5, 1],
  headingDegrees: 10,
  asset,
  up: 'y',
  metresPerUnit: 0.5,
  extent: { lowest: [-1, 0, -2], highest: [1, 3, 2] },
};
const underlay: Underlay = {
  asset: { ...asset, name: 'roof.jpg' },
  pixels: [4000, 3000],
  at: [1, 2],
  headingDegrees: 0,
  metresPerPixel: 0.01,
  strength: 0.5,
};
const roof = smallRoof();
const plan: Plan = { ...roof, pieces: [...roof.pieces, model], underlay };

const modelIn = ({ pieces }: Plan): Model => {
  const found = pieces.find((piece) => piece.kind === 'model');
  if (!found) throw new Error('no model in the plan');
  return found;
};

/** The schema still takes the plan, all but what was edited is the same object, and the plan before is as it was. */
function edited(change: (before: Plan) => Plan): Plan {
  const before = structuredClone(plan);
  const after = change(plan);
  expect(plan).toEqual(before);
  expect(parsePlan(after).ok).toBe(true);
  expect(after.gear).toBe(plan.gear);
  expect(after.pieces.slice(0, -1)).toEqual(plan.pieces.slice(0, -1));
  return after;
}

describe('by two points', () => {
  test('a model grows about the first of them, and its foot keeps its height', () => {
    const found = modelIn(
      edited((before) => scaleModel(before, { id: 'scan', from: [0, 1], to: [4, 1], metres: 6 })),
    );
    expect(found.metresPerUnit).toBe(0.75);
    expect(found.at).toEqual([3, 0.5, 1]);
  });
  test('a picture does so too', () => {
    const { underlay: found } = edited((before) =>
      scaleUnderlay(before, { from: [0, 2], to: [0, 4], metres: 1 }),
    );
    expect(found?.metresPerPixel).toBe(0.005);
    expect(found?.at).toEqual([0.5, 2]);
  });
  test('points on one another, an unknown id and the size that it has change nothing', () => {
    expect(scaleModel(plan, { id: 'scan', from: [1, 1], to: [1, 1], metres: 2 })).toBe(plan);
    expect(scaleModel(plan, { id: 'scan', from: [1, 1], to: [3, 1], metres: 2 })).toBe(plan);
    expect(scaleModel(plan, { id: 'nobody', from: [1, 1], to: [3, 1], metres: 5 })).toBe(plan);
    expect(scaleModel(plan, { id: 'scan', from: [1, 1], to: [3, 1], metres: 0 })).toBe(plan);
    expect(scaleUnderlay(roof, { from: [0, 0], to: [1, 0], metres: 3 })).toBe(roof);
  });
});

describe('to north', () => {
  test('a model turns about the first point until the second lies that way', () => {
    // From the first point the second lies to the right of the sheet, 90 degrees; it should lie at 0.
    const found = modelIn(
      edited((before) =>
        turnModelToNorth(before, { id: 'scan', from: [0, 1], to: [5, 1], bearingDegrees: 0 }),
      ),
    );
    expect(found.headingDegrees).toBe(280);
    expect(found.at).toEqual([0, 0.5, -1]);
  });
  test('a picture does so too', () => {
    const { underlay: found } = edited((before) =>
      turnUnderlayToNorth(before, { from: [1, 0], to: [2, 0], bearingDegrees: 180 }),
    );
    expect(found?.headingDegrees).toBe(90);
    expect(found?.at).toEqual([-1, 0]);
  });
  test('a bearing that it has changes nothing', () => {
    expect(turnModelToNorth(plan, { id: 'scan', from: [0, 0], to: [1, 0], bearingDegrees: 90 })).toBe(plan);
    expect(turnUnderlayToNorth(plan, { from: [0, 0], to: [0, 0], bearingDegrees: 90 })).toBe(plan);
  });
});

test('a height on a model comes to lie on the deck', () => {
  const found = modelIn(
    edited((before) => putModelOnDeck(before, { id: 'scan', foundMetres: 1.7, deckMetres: 0.2 })),
  );
  expect(found.at).toEqual([2, -1, 1]);
  expect(putModelOnDeck(plan, { id: 'scan', foundMetres: 1, deckMetres: 1 })).toBe(plan);
});

test('another file takes its place, and another axis points up', () => {
  const other = { ...asset, sha256: 'b'.repeat(64) };
  const extent: Model['extent'] = { lowest: [0, 0, 0], highest: [1, 1, 1] };
  const found = modelIn(edited((before) => setModelFile(before, { id: 'scan', asset: other, extent })));
  expect(found).toEqual({ ...model, asset: other, extent });
  expect(setModelFile(plan, { id: 'scan', asset, extent })).toBe(plan);
  expect(modelIn(edited((before) => setModelUp(before, { id: 'scan', up: 'z' }))).up).toBe('z');
  expect(setModelUp(plan, { id: 'scan', up: 'y' })).toBe(plan);
});

test('a picture is laid, changed and taken away', () => {
  expect(
    edited((before) => setUnderlay(before, { underlay: { ...underlay, strength: 1 } })).underlay?.strength,
  ).toBe(1);
  expect(edited((before) => changeUnderlay(before, { at: [3, 4] })).underlay?.at).toEqual([3, 4]);
  expect(changeUnderlay(plan, { at: [1, 2] })).toBe(plan);
  expect(edited((before) => setUnderlay(before, { underlay: null })).underlay).toBeUndefined();
  expect(setUnderlay(roof, { underlay: null })).toBe(roof);
});
