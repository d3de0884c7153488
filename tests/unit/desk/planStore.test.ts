import { beforeEach, expect, test } from 'vitest';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import { renameItem } from '../../../src/core/plan/edits/renameItem';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { livePlan, liveStore } from '../../../src/desk/liveStore';
import { beginningsOf } from '../../../src/desk/merge/beginnings';
import { HISTORY_STEPS, planStore } from '../../../src/desk/planStore';
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

/** Moves the tank so many times, each time elsewhere; the plans that this leads through, the first among them. */
function movedOften(times: number): readonly Plan[] {
  const plans = [state().plan];
  for (let k = 1; k <= times; k += 1) {
    state().edit('Move the tank', (plan) => moveItem(plan, { id: 'tank', to: [k / 1000, 0] }));
    plans.push(state().plan);
  }
  return plans;
}

const steps = (): number => past() + planStore.temporal.getState().futureStates.length;

test('a history goes back so many steps, the oldest falls off, and nothing else of it is lost', () => {
  const plans = movedOften(HISTORY_STEPS + 20);
  expect(past()).toBe(HISTORY_STEPS);
  for (let k = plans.length - 2; k >= 20; k -= 1) {
    state().undo();
    expect(state().plan).toBe(plans[k]);
    expect(steps()).toBe(HISTORY_STEPS);
  }
  // Back at the oldest that is kept: one more is none.
  state().undo();
  expect(state().plan).toBe(plans[20]);
  for (let k = 21; k < plans.length; k += 1) {
    state().redo();
    expect(state().plan).toBe(plans[k]);
    expect(steps()).toBe(HISTORY_STEPS);
  }
  state().redo();
  expect(state().plan).toBe(plans.at(-1));
});

test('an edit at the end of a full history is taken back and done again, and one after an undo drops what was undone', () => {
  const plans = movedOften(HISTORY_STEPS);
  const [last] = plans.slice(-1);
  state().edit('Rename', (plan) => renameItem(plan, { id: 'tank', label: 'Other' }));
  const renamed = state().plan;
  expect(past()).toBe(HISTORY_STEPS);
  state().undo();
  expect(state().plan).toBe(last);
  state().redo();
  expect(state().plan).toBe(renamed);
  for (let k = 0; k < 10; k += 1) state().undo();
  state().edit('Rename', (plan) => renameItem(plan, { id: 'tank', label: 'Another' }));
  expect(planStore.temporal.getState().futureStates).toEqual([]);
  expect(past()).toBe(HISTORY_STEPS - 9);
});

test('a plan that comes back changed to a full history has no longer one', () => {
  const first = state();
  movedOften(HISTORY_STEPS);
  const left = state().plan;
  state().openPlan(rooftop(), 'other.plan.json');
  const elsewhere = moveItem(structuredClone(left), { id: 'tank', to: [2, 2] });
  state().openPlan(elsewhere, first.fileName, first.planId);
  expect(past()).toBe(HISTORY_STEPS);
  state().undo();
  expect(state().plan).toBe(left);
});

test('what a plan began with is known when its step has long fallen off, and when it was away or goes on beside', async () => {
  const { plan: beganWith, planId, fileName } = state();
  expect(await beginningsOf(planId)).toEqual([]);
  movedOften(HISTORY_STEPS + 5);
  const left = state().plan;
  expect((await beginningsOf(planId)).map(({ plan }) => plan)).toEqual([beganWith]);
  state().openPlan(rooftop(), 'other.plan.json');
  expect(await beginningsOf(state().planId)).toEqual([]);
  state().openPlan(structuredClone(left), fileName, planId);
  expect((await beginningsOf(planId))[0]?.plan).toBe(beganWith);
  state().branchOff('beside', 'Another title');
  expect((await beginningsOf('beside'))[0]?.plan).toEqual({ ...beganWith, title: 'Another title' });
});

test('what goes on beside is back where it began once all is taken back', async () => {
  movedOften(2);
  state().branchOff('beside', 'Another title');
  state().undo();
  state().undo();
  expect(await beginningsOf('beside')).toEqual([]);
});
