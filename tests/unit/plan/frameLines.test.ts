import { expect, test } from 'vitest';
import { changeSetup } from '../../../src/core/plan/edits/changeSetup';
import { removeFrameLine } from '../../../src/core/plan/edits/removeFrameLine';
import { setFrameLine } from '../../../src/core/plan/edits/setFrameLine';
import { parsePlan } from '../../../src/core/plan/parse';
import type { FrameLine } from '../../../src/core/plan/schema/drawing';
import { smallRoof, smallRoofDocument } from '../smallRoof';

const line: FrameLine = { id: 'line-1', label: 'Line', rect: [0.1, 0.2, 0.3, 0.4] };
const sentences = (document: unknown): readonly string[] => {
  const read = parsePlan(document);
  return read.ok ? [] : read.faults.map(({ sentence }) => sentence);
};

test('own lines are laid, changed and taken away, and a plan without any says nothing of them', () => {
  const plan = smallRoof();
  const laid = setFrameLine(plan, { line });
  expect(laid.frameLines).toEqual([line]);
  expect(setFrameLine(laid, { line })).toBe(laid);
  expect(setFrameLine(laid, { line: { ...line, rect: [0.3, 0.2, 0.1, 0.4] } })).toBe(laid);
  expect(setFrameLine(laid, { line: { ...line, rect: [1 / 3, 0, 1, 1] } }).frameLines?.[0].rect[0]).toBe(
    0.3333,
  );
  expect(removeFrameLine(laid, { id: 'line-1' })).toEqual(plan);
});

test('a line that is none is refused with its place', () => {
  const document = smallRoofDocument();
  expect(sentences({ ...document, frameLines: [{ ...line, rect: [0.3, 0.2, 0.3, 0.4] }] })).toEqual([
    'frameLines[0].rect of "Line": found a list of 4, expected a rectangle whose right is right of its left and whose bottom is below its top.',
  ]);
  expect(sentences({ ...document, frameLines: [line, line] })[0]).toContain('Frame line "Line"');
});

test('a second delivery is set and left out again', () => {
  const plan = smallRoof();
  const { id } = plan.setups[0];
  const set = changeSetup(plan, { setupId: id, patch: { secondDelivery: 9 / 16 } });
  expect(set.setups[0].secondDelivery).toBe(0.5625);
  expect(changeSetup(set, { setupId: id, patch: { secondDelivery: 9 } })).toBe(set);
  expect(changeSetup(set, { setupId: id, patch: { secondDelivery: undefined } })).toEqual(plan);
});
