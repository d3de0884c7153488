import { beforeEach, expect, test } from 'vitest';
import { itemOf } from '../../../src/core/plan/items';
import { livePlan, liveStore } from '../../../src/desk/liveStore';
import { planStore } from '../../../src/desk/planStore';
import { sessionStore } from '../../../src/desk/sessionStore';
import { moveCrosshair } from '../../../src/desk/tools/crosshair';
import {
  dropStroke,
  endStroke,
  pickTool,
  pointAt,
  press,
  pressDown,
  pressUp,
  putDown,
  stepBack,
  takeBackCorner,
  typeBearing,
  typeFields,
  typeLength,
} from '../../../src/desk/tools/drawing';
import { toolStore } from '../../../src/desk/tools/toolStore';
import { beginEntry, changeEntry, finishEntry, switchEntry } from '../../../src/desk/tools/typing';
import { rooftop } from '../core/plan/edits/rooftop';

const plan = () => planStore.getState().plan;
const past = () => planStore.temporal.getState().pastStates.length;
const tool = () => toolStore.getState();
const FREE = { reachMetres: 0.2, free: true, straight: false };
const CATCHING = { reachMetres: 0.2, free: false, straight: false };
const at = (x: number, z: number, aim = FREE): void => pointAt([x, z], aim);
const pressAt = (x: number, z: number, aim = FREE): void => {
  at(x, z, aim);
  press();
};
const added = () => plan().pieces.filter(({ id }) => itemOf(rooftop(), id) === null);
const pathOf = (index = 0): unknown => {
  const piece = added()[index];
  return piece && 'path' in piece ? piece.path : piece && 'outline' in piece ? piece.outline : null;
};

beforeEach(() => {
  putDown();
  planStore.getState().startWith(rooftop(), 'rooftop.plan.json');
  sessionStore.getState().setSelectedId(null);
});

test('a run goes from press to press, shows as a draft, and ends as one step of the history', () => {
  pickTool({ type: 'draw', entryId: 'fence' });
  pressAt(-8, 2);
  pressAt(-3, 2);
  at(-3, 5);
  expect(past()).toBe(0);
  const draft = livePlan().pieces.at(-1);
  expect(draft && 'path' in draft ? draft.path : null).toEqual([
    [-8, 2],
    [-3, 2],
    [-3, 5],
  ]);
  endStroke();
  // What was only pointed at is no corner.
  expect(pathOf()).toEqual([
    [-8, 2],
    [-3, 2],
  ]);
  expect(past()).toBe(1);
  expect(liveStore.getState().gesture).toBeNull();
  expect(sessionStore.getState().selectedId).toBe(added()[0]?.id);
  // The tool stays for the next one.
  expect(tool().tool).toEqual({ type: 'draw', entryId: 'fence' });
  expect(tool().stroke?.corners).toEqual([]);
});

test('a press on the first corner closes', () => {
  pickTool({ type: 'draw', entryId: 'wall' });
  pressAt(-8, 0);
  pressAt(-4, 0);
  pressAt(-4, 3);
  at(-7.9, 0.1, CATCHING);
  expect(tool().stroke?.why.map(({ word }) => word)).toEqual(['closes it']);
  press();
  expect(added()[0]).toMatchObject({ closed: true });
  expect(pathOf()).toHaveLength(3);
});

test('a typed length holds the leg to it, whatever the hand does; a bearing too', () => {
  pickTool({ type: 'draw', entryId: 'fence' });
  pressAt(-8, 2);
  at(-5, 2.01, CATCHING);
  typeLength(4.8);
  expect(tool().stroke?.next).toEqual([-3.2, 2]);
  at(-7, 2, FREE);
  expect(tool().stroke?.next).toEqual([-3.2, 2]);
  typeBearing(180);
  expect(tool().stroke?.next).toEqual([-8, 6.8]);
  press();
  expect(tool().stroke?.corners).toEqual([
    [-8, 2],
    [-8, 6.8],
  ]);
  // Typed numbers are for one leg.
  expect(tool().stroke).toMatchObject({ typedLengthMetres: null, typedBearingDegrees: null });
});

test('digits open the entry; Enter takes the corner at exactly what is typed', () => {
  pickTool({ type: 'draw', entryId: 'fence' });
  pressAt(-8, 2);
  at(-5, 2, FREE);
  beginEntry('4');
  changeEntry('4.8 m');
  expect(tool().stroke?.next).toEqual([-3.2, 2]);
  switchEntry();
  expect(tool().entry).toMatchObject({ field: 'bearing', text: '' });
  changeEntry('90');
  finishEntry();
  expect(tool().entry).toBeNull();
  expect(tool().stroke?.corners.at(-1)).toEqual([-3.2, 2]);
  at(0, 2, FREE);
  beginEntry(`10'6"`);
  finishEntry();
  expect(tool().stroke?.corners.at(-1)).toEqual([0.0004, 2]);
});

test.each([
  ['abc', /metres, such as/],
  ['1e9 m', /metres, such as/],
  ['0', /more than nothing/],
  ['-2', /more than nothing/],
  ['501 m', /at most 500 m/],
])('%s is no length: a sentence says so, and nothing changes', (text, sentence) => {
  pickTool({ type: 'draw', entryId: 'fence' });
  pressAt(-8, 2);
  at(-5, 2, FREE);
  beginEntry(text);
  expect(tool().stroke?.next).toEqual([-5, 2]);
  finishEntry();
  expect(tool().entry?.fault).toMatch(sentence);
  expect(tool().stroke?.corners).toEqual([[-8, 2]]);
  stepBack();
  expect(tool().entry).toBeNull();
  expect(tool().stroke?.corners).toEqual([[-8, 2]]);
});

test('a leg of no length, a run of one corner and an outline that crosses itself say why and stay', () => {
  pickTool({ type: 'draw', entryId: 'fence' });
  pressAt(-8, 2);
  press();
  pressAt(-8, 2);
  expect(tool().refusal).toMatch(/where the last one is/);
  endStroke();
  expect(tool().refusal).toBe('A mesh fence needs two corners, and has one.');
  expect(tool().stroke?.corners).toEqual([[-8, 2]]);

  pickTool({ type: 'draw', entryId: 'deck' });
  for (const [x, z] of [
    [-8, 0],
    [-4, 4],
    [-4, 0],
    [-8, 4],
  ] as const) {
    pressAt(x, z);
  }
  endStroke();
  expect(tool().refusal).toMatch(/would cross itself/);
  expect(tool().stroke?.corners).toHaveLength(4);
  expect(past()).toBe(0);
  takeBackCorner();
  expect(tool().stroke?.corners).toHaveLength(3);
  endStroke();
  expect(pathOf()).toHaveLength(3);
});

test('a hand that has hardly left the last corner has not left it, however things catch around it', () => {
  pickTool({ type: 'draw', entryId: 'fence' });
  pressAt(-8, 2, CATCHING);
  // Until the hand moves again nothing is meant by it.
  expect(tool().stroke?.next).toBeNull();
  press();
  expect(tool().refusal).toBeNull();
  pressAt(-7.95, 2.05, CATCHING);
  expect(tool().refusal).toMatch(/where the last one is/);
  expect(tool().stroke?.corners).toEqual([[-8, 2]]);
});

test('Escape gives up what is drawn, then the tool', () => {
  pickTool({ type: 'draw', entryId: 'fence' });
  pressAt(-8, 2);
  at(-5, 2);
  stepBack();
  expect(tool()).toMatchObject({ tool: { type: 'draw' }, stroke: null });
  expect(liveStore.getState().gesture).toBeNull();
  stepBack();
  expect(tool().tool).toEqual({ type: 'hand' });
  expect(dropStroke()).toBe(false);
});

test('a thing is put where it is pressed, once for each press; a drag of the press turns it', () => {
  pickTool({ type: 'put', entryId: 'box' });
  at(3, 3);
  expect(livePlan().pieces).toHaveLength(plan().pieces.length + 1);
  press();
  at(5, 3);
  pressDown();
  at(7, 3);
  pressUp(true);
  const [first, second] = added();
  expect(first).toMatchObject({ at: [3, expect.any(Number), 3], headingDegrees: 0 });
  expect(second).toMatchObject({ at: [5, expect.any(Number), 3], headingDegrees: 90 });
  expect(past()).toBe(2);
});

test('a drag draws a leg from where it begins to where it ends', () => {
  pickTool({ type: 'tape' });
  at(0, 0);
  pressDown();
  at(3, 4);
  pressUp(true);
  expect(plan().tapes).toEqual([{ id: 'tape-1', from: [0, 0], to: [3, 4] }]);
  expect(past()).toBe(1);
});

test('two points wait for the distance between them', () => {
  pickTool({ type: 'two points', purpose: { type: 'underlay' } });
  pressAt(0, 0);
  pressAt(3, 4);
  expect(tool().asksDistance).toEqual({ purpose: { type: 'underlay' }, from: [0, 0], to: [3, 4] });
  expect(past()).toBe(0);
  // The hand does not go on until it is answered.
  at(9, 9);
  expect(tool().stroke).toBeNull();
  expect(dropStroke()).toBe(true);
});

test('the distance that is typed scales the picture under the roof, once, and the tool is put down', () => {
  const underlay = {
    asset: { sha256: 'a'.repeat(64), name: 'roof.png', bytes: 1000 },
    pixels: [1000, 800] as [number, number],
    at: [0, 0] as [number, number],
    headingDegrees: 0,
    metresPerPixel: 0.01,
    strength: 1,
  };
  planStore.getState().startWith({ ...rooftop(), underlay }, 'rooftop.plan.json');
  pickTool({ type: 'two points', purpose: { type: 'underlay' } });
  pressAt(0, 0);
  pressAt(3, 4);
  expect(tool().entry).toMatchObject({ field: 'distance', text: '' });
  changeEntry('nothing');
  finishEntry();
  expect(tool().entry?.fault).toMatch(/metres, such as/);
  expect(past()).toBe(0);
  changeEntry('10 m');
  finishEntry();
  expect(plan().underlay?.metresPerPixel).toBeCloseTo(0.02, 9);
  expect(past()).toBe(1);
  expect(tool().tool).toEqual({ type: 'hand' });
});

test('fields that are typed while it is drawn are those of what is made', () => {
  pickTool({ type: 'draw', entryId: 'fence' });
  typeFields({ heightMetres: 2.4 });
  pressAt(-8, 2);
  pressAt(-3, 2);
  endStroke();
  expect(added()[0]).toMatchObject({ kind: 'fence', heightMetres: 2.4 });
});

test('an opening is as wide as a door, as it is typed, or as it is dragged; what does not fit says so', () => {
  pickTool({ type: 'opening', itemId: 'fence' });
  pressAt(-1, -5.8);
  const openings = () => {
    const fence = plan().pieces.find(({ id }) => id === 'fence');
    return fence?.kind === 'fence' ? (fence.openings ?? []) : [];
  };
  expect(openings()).toMatchObject([{ alongMetres: 3, widthMetres: 0.9, sillMetres: 0, heightMetres: 1.8 }]);
  at(1, -6);
  typeLength(1.2);
  press();
  expect(openings()[1]).toMatchObject({ alongMetres: 5, widthMetres: 1.2 });
  at(2, -5.5);
  pressDown();
  at(2, -4.5);
  pressUp(true);
  expect(openings()[2]).toMatchObject({ alongMetres: 7, widthMetres: 1 });
  at(1, -6);
  typeLength(40);
  press();
  expect(tool().refusal).toMatch(/has to fit/);
  expect(openings()).toHaveLength(3);
});

test('the keys move the crosshair by the step of the grid, ten of them with Shift, a centimetre with Alt', () => {
  pickTool({ type: 'draw', entryId: 'wall' });
  const move = (right: number, down: number, coarse = false, fine = false): void =>
    moveCrosshair(right, down, { coarse, fine, start: [-6, 1] });
  move(1, 0);
  expect(tool().stroke?.next).toEqual([-5.9, 1]);
  move(0, 1, true);
  expect(tool().stroke?.next).toEqual([-5.9, 2]);
  move(0, -1, false, true);
  expect(tool().stroke?.next).toEqual([-5.9, 1.99]);
  press();
  expect(tool().stroke?.corners).toEqual([[-5.9, 1.99]]);
});

test('by keys alone a typed leg goes on the way of the one before', () => {
  pickTool({ type: 'draw', entryId: 'wall' });
  moveCrosshair(1, 0, { coarse: false, fine: false, start: [-6.1, 1] });
  press();
  beginEntry('2');
  finishEntry();
  beginEntry('1');
  finishEntry();
  expect(tool().stroke?.corners).toEqual([
    [-6, 1],
    [-4, 1],
    [-3, 1],
  ]);
});

test('the keys get past what they catch on', () => {
  pickTool({ type: 'draw', entryId: 'wall' });
  // Along the fence's end at z = -6 from above it to below it.
  const seen: number[] = [];
  for (let step = 0; step < 8; step += 1) {
    moveCrosshair(0, 1, { coarse: false, fine: false, start: [-1, -6.34] });
    seen.push(tool().stroke?.next?.[1] ?? Number.NaN);
  }
  expect(seen).toContain(-6);
  expect(Math.max(...seen)).toBeGreaterThan(-5.7);
});
