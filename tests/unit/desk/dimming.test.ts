import { beforeEach, expect, test } from 'vitest';
import type { Plan } from '../../../src/core/plan/schema/plan';
import {
  DIM_STEPS,
  dimLive,
  dimOfStep,
  endDimming,
  stepOfDim,
  turnLamp,
} from '../../../src/desk/light/dimming';
import { livePlan, liveStore } from '../../../src/desk/liveStore';
import { planStore } from '../../../src/desk/planStore';
import { keyedFace, keyOn } from '../../plans/keyedFace';

const dimIn = (plan: Plan): number | null => {
  const lamp = plan.gear.find(({ id }) => id === 'key');
  return lamp && 'dim' in lamp ? lamp.dim : null;
};
const past = (): number => planStore.temporal.getState().pastStates.length;

beforeEach(() => {
  const plan = keyedFace({ gear: keyOn('key', [-2, 2], [0, 0], 0.25), cameras: [] });
  planStore.getState().startWith(plan, 'keyed.plan.json');
});

test('a slider comes back to the dim that it shows, and both ends are the ends', () => {
  expect([0, 1].map(stepOfDim)).toEqual([0, DIM_STEPS]);
  expect([0, DIM_STEPS].map(dimOfStep)).toEqual([0, 1]);
  expect(stepOfDim(0.25)).toBe(DIM_STEPS / 2);
  for (let step = 10; step <= DIM_STEPS; step += 5) expect(stepOfDim(dimOfStep(step))).toBe(step);
});

test('a drag is seen as it goes, and is one step that can be taken back', () => {
  dimLive('key', 0.4);
  dimLive('key', 0.6);
  expect([dimIn(livePlan()), dimIn(planStore.getState().plan)]).toEqual([0.6, 0.25]);
  endDimming('key', 'Head key');
  expect(dimIn(planStore.getState().plan)).toBe(0.6);
  expect(planStore.getState().editName).toBe('dim Head key');
  expect(past()).toBe(1);
  planStore.getState().undo();
  expect(dimIn(planStore.getState().plan)).toBe(0.25);
});

test('what is back where it was is no step, and what else is in the hand stays there', () => {
  dimLive('key', 0.4);
  dimLive('key', 0.25);
  endDimming('key', 'Head key');
  expect(past()).toBe(0);
  liveStore.getState().beginGesture('tank');
  dimLive('key', 0.9);
  endDimming('key', 'Head key');
  expect(liveStore.getState().gesture?.itemId).toBe('tank');
  expect(dimIn(livePlan())).toBe(0.25);
  liveStore.getState().dropGesture();
});

test('a lamp that is turned on again is as it was', () => {
  turnLamp('key', 'Head key', 0.25);
  expect(dimIn(planStore.getState().plan)).toBe(0);
  turnLamp('key', 'Head key', 0);
  expect(dimIn(planStore.getState().plan)).toBe(0.25);
});
