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

test('undo does not lead from one plan into another, and a plan that comes back has its own history', () => {
  const first = state();
  state().edit('Move the tank', (plan) => moveItem(plan, { id: 'tank', to: [1, 1] }));
  const moved = state().plan;
  state().openPlan(rooftop(), 'other.plan.json', 'other');
  expect(state()).toMatchObject({ planId: 'other', fileName: 'other.plan.json' });
  expect(state().documentNumber).not.toBe(first.documentNumber);
  expect(past()).toBe(0);
  state().undo();
  expect(state().planId).toBe('other');

  // As it comes from the shelf: the same, in other objects.
  state().openPlan(structuredClone(moved), first.fileName, first.planId);
  expect(state().plan).toBe(moved);
  expect(state().documentNumber).toBe(first.documentNumber);
  state().undo();
  expect(state().plan).toBe(first.plan);
  state().redo();
  expect(state().plan).toBe(moved);
});

test('what was changed elsewhere while a plan was away is one step of its history', () => {
  const first = state();
  state().openPlan(rooftop(), 'other.plan.json');
  const elsewhere = moveItem(structuredClone(first.plan), { id: 'tank', to: [2, 2] });
  state().openPlan(elsewhere, first.fileName, first.planId);
  expect(state().plan).toEqual(elsewhere);
  // What did not change is what it was.
  expect(state().plan.gear[0]).toBe(first.plan.gear[0]);
  state().undo();
  expect(state().plan).toBe(first.plan);
});

test('a plan that goes on under another id takes its history along, all of it under the new title', () => {
  state().edit('Move the tank', (plan) => moveItem(plan, { id: 'tank', to: [1, 1] }));
  state().branchOff('beside', 'Another title');
  expect(state()).toMatchObject({ planId: 'beside', plan: { title: 'Another title' } });
  state().undo();
  expect(state().plan).toEqual({ ...rooftop(), title: 'Another title' });
});

test('a file name is no step of the history', () => {
  state().setFileName('saved.plan.json');
  expect(past()).toBe(0);
});
