import { describe, expect, test } from 'vitest';
import { freeId } from '../../../../../src/core/plan/edits/freeId';
import { moveSetup } from '../../../../../src/core/plan/edits/moveSetup';
import { placeCamera } from '../../../../../src/core/plan/edits/placeCamera';
import { removeSetup } from '../../../../../src/core/plan/edits/removeSetup';
import { renameSetup } from '../../../../../src/core/plan/edits/renameSetup';
import { setKeyPosition } from '../../../../../src/core/plan/edits/setKeyPosition';
import { setLens } from '../../../../../src/core/plan/edits/setLens';
import { setStop } from '../../../../../src/core/plan/edits/setStop';
import { turnSetup } from '../../../../../src/core/plan/edits/turnSetup';
import { parsePlan } from '../../../../../src/core/plan/parse';
import { rooftop } from './rooftop';

test('setLens changes the lens, and a stop that it lacks to its nearest', () => {
  const after = setLens(rooftop(), { setupId: 'a', lens: 'l75' });
  expect(after.setups[0]).toMatchObject({ lens: 'l75', stop: 4 });
  const plan = rooftop();
  expect(setLens(plan, { setupId: 'a', lens: 'none' })).toBe(plan);
  expect(setLens(plan, { setupId: 'a', lens: 'l50' })).toBe(plan);
});

test('renameSetup changes the label and keeps the id', () => {
  const plan = rooftop();
  const after = renameSetup(plan, { setupId: 'a', label: 'Wider' });
  expect(after.setups[0]).toEqual({ ...plan.setups[0], label: 'Wider' });
  expect(parsePlan(after)).toEqual({ ok: true, value: after });
  expect(plan.setups[0]?.label).toBe('Wide');
  expect(renameSetup(plan, { setupId: 'a', label: 'Wide' })).toBe(plan);
  expect(renameSetup(plan, { setupId: 'none', label: 'Wider' })).toBe(plan);
});

test('removeSetup takes one setup out and leaves the others the same objects', () => {
  const [first] = rooftop().setups;
  if (!first) throw new Error('the rooftop has a setup');
  const plan = { ...rooftop(), setups: [first, { ...first, id: 'b', label: 'Close' }] };
  const after = removeSetup(plan, { setupId: 'a' });
  expect(after.setups).toEqual([plan.setups[1]]);
  expect(after.setups[0]).toBe(plan.setups[1]);
  expect(parsePlan(after)).toEqual({ ok: true, value: after });
  expect(plan.setups).toHaveLength(2);
  expect(removeSetup(plan, { setupId: 'none' })).toBe(plan);
});

test('setStop sets the stop', () => {
  expect(setStop(rooftop(), { setupId: 'a', stop: 5.6 }).setups[0]?.stop).toBe(5.6);
});

test('setKeyPosition moves one key and leaves the other', () => {
  const plan = rooftop();
  const after = setKeyPosition(plan, { setupId: 'a', keyIndex: 1, position: [0, 1.5, 6] });
  expect(after.setups[0]?.move.keys.map((key) => key.position)).toEqual([
    [0, 1.2, 7],
    [0, 1.5, 6],
  ]);
  expect(setKeyPosition(plan, { setupId: 'a', keyIndex: 7, position: [0, 0, 0] })).toBe(plan);
});

test('moveSetup moves the whole move, there and back', () => {
  const plan = rooftop();
  const after = moveSetup(plan, { setupId: 'a', to: [1.1, 6.1] });
  expect(after.setups[0]?.move.keys.map((key) => key.position)).toEqual([
    [1.1, 1.2, 6.1],
    [-0.5, 1.2, 6.1],
  ]);
  expect(moveSetup(after, { setupId: 'a', to: [0, 7] })).toEqual(plan);
});

test('turnSetup turns every key, and keeps a pan past north one pan', () => {
  const plan = rooftop();
  const turned = (byDegrees: number) =>
    turnSetup(plan, { setupId: 'a', byDegrees }).setups[0]?.move.keys.map((key) => key.headingDegrees);
  expect(turned(5)).toEqual([-5, 15]);
  expect(turned(-160)).toEqual([-170, -150]);
  expect(turnSetup(plan, { setupId: 'a', byDegrees: 0 })).toBe(plan);
});

describe('placeCamera', () => {
  const [body] = rooftop().kit.bodies;
  const [lens] = rooftop().kit.lenses;
  if (!body || !lens) throw new Error('the rooftop has a body and a lens');
  const args = {
    label: 'New',
    body,
    lens,
    position: [0, 1.5, 5] as [number, number, number],
    headingDegrees: 0,
  };

  test('adds a setup over the whole action, following the first performer', () => {
    const after = placeCamera(rooftop(), args);
    expect(parsePlan(after).ok).toBe(true);
    expect(after.setups).toHaveLength(2);
    expect(after.setups[1]).toMatchObject({
      id: 'setup-1',
      span: { from: 'begin', to: 'end' },
      focus: { follow: 'abel' },
    });
    expect(after.kit).toEqual(rooftop().kit);
  });

  test('brings its kit and the beats that an empty plan lacks', () => {
    const empty = {
      ...rooftop(),
      cast: [],
      beats: [],
      setups: [],
      kit: { ...rooftop().kit, bodies: [], lenses: [] },
    };
    const after = placeCamera(empty, args);
    expect(parsePlan(after).ok).toBe(true);
    expect(after.kit).toMatchObject({ bodies: [body], lenses: [lens] });
    expect(after.beats.map((beat) => beat.atSeconds)).toEqual([0, 8]);
  });
});

test('freeId takes the first number that is free', () => {
  expect(freeId([{ id: 'setup-1' }, { id: 'setup-3' }], 'setup')).toBe('setup-2');
});
