import { beforeEach, expect, test } from 'vitest';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import { renameItem } from '../../../src/core/plan/edits/renameItem';
import { livePlan, liveStore } from '../../../src/desk/liveStore';
import { planStore } from '../../../src/desk/planStore';
import { rooftop } from '../core/plan/edits/rooftop';

const state = () => planStore.getState();
const past = () => planStore.temporal.getState().pastStates.length;

beforeEach(() => state().startWith(rooftop(), 'rooftop.plan.json'));

test('an edit is one step of the history, there and back', () => {
  const before = state().plan;
  expect(state().edit('Move the tank', (plan) => moveItem(plan, { id: 'tank', to: [1, 1] }))).toEqual([]);
  const after = state().plan;
  expect(past()).toBe(1);
  state().undo();
  expect(state().plan).toBe(before);
  state().redo();
  expect(state().plan).toBe(after);
});

test('an edit that changes nothing is no step', () => {
  state().edit('Nothing', (plan) => plan);
  expect(past()).toBe(0);
});

test('what the schema refuses is not done, and the faults come back', () => {
  const before = state().plan;
  const faults = state().edit('Rename', (plan) => renameItem(plan, { id: 'tank', label: '' }));
  expect(faults[0]?.sentence).toContain('a name of at least one character');
  expect(state().plan).toBe(before);
  expect(past()).toBe(0);
});

test('a gesture shows its draft and commits once', () => {
  const before = state().plan;
  const live = liveStore.getState();
  live.beginGesture('tank');
  for (const x of [1, 2, 3]) live.moveGesture(moveItem(before, { id: 'tank', to: [x, 0] }));
  expect(livePlan()).not.toBe(before);
  expect(state().plan).toBe(before);
  live.commitGesture('Move the tank');
  expect(livePlan()).toBe(state().plan);
  expect(past()).toBe(1);
});

test('a dropped gesture leaves the plan and the history', () => {
  const before = state().plan;
  const live = liveStore.getState();
  live.beginGesture('tank');
  live.moveGesture(moveItem(before, { id: 'tank', to: [3, 0] }));
  live.dropGesture();
  expect(livePlan()).toBe(before);
  expect(past()).toBe(0);
});

test('opening a file can be undone, and the document is told apart', () => {
  const { plan, documentNumber } = state();
  state().openPlan(rooftop(), 'other.plan.json');
  expect(state().documentNumber).not.toBe(documentNumber);
  state().undo();
  expect(state()).toMatchObject({ plan, documentNumber, fileName: 'rooftop.plan.json' });
});

test('a file name is no step of the history', () => {
  state().setFileName('saved.plan.json');
  expect(past()).toBe(0);
});
