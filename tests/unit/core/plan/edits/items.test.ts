import { describe, expect, test } from 'vitest';
import { anchorOf, carrierOf } from '../../../../../src/core/plan/edits/anchorOf';
import { moveItem } from '../../../../../src/core/plan/edits/moveItem';
import { moveMark } from '../../../../../src/core/plan/edits/moveMark';
import { removeItems } from '../../../../../src/core/plan/edits/removeItems';
import { renameItem } from '../../../../../src/core/plan/edits/renameItem';
import { setBaseHeight } from '../../../../../src/core/plan/edits/setBaseHeight';
import { setStandHeight, standReach } from '../../../../../src/core/plan/edits/setStandHeight';
import { setWish } from '../../../../../src/core/plan/edits/setWish';
import { turnItem } from '../../../../../src/core/plan/edits/turnItem';
import { itemOf, itemsOf, wishOf } from '../../../../../src/core/plan/items';
import { parsePlan } from '../../../../../src/core/plan/parse';
import type { Spot } from '../../../../../src/core/plan/schema/numbers';
import { rooftop } from './rooftop';

const IDS = itemsOf(rooftop()).map((item) => item.record.id);

describe('moveItem', () => {
  test.each(IDS)('%s comes to where it was sent, and back to what it was', (id) => {
    const plan = rooftop();
    const before = JSON.stringify(plan);
    const from = anchorOf(plan, id);
    if (!from) throw new Error(`${id} has no anchor`);
    const to: Spot = [5.3, -2.7];
    const after = moveItem(plan, { id, to });
    expect(anchorOf(after, id)).toEqual(to);
    expect(parsePlan(after)).toEqual({ ok: true, value: after });
    expect(JSON.stringify(plan), 'the plan that went in is as it was').toBe(before);
    expect(moveItem(after, { id, to: from })).toEqual(plan);
  });

  test.each(IDS)('%s sent to where it is leaves the plan the same object', (id) => {
    const plan = rooftop();
    expect(moveItem(plan, { id, to: anchorOf(plan, id) ?? [0, 0] })).toBe(plan);
  });

  test('a run moves whole, without the noise of sums', () => {
    const fence = moveItem(rooftop(), { id: 'fence', to: [-3.9, -5.9] }).pieces[0];
    expect(fence).toMatchObject({
      path: [
        [-3.9, -5.9],
        [2.1, -5.9],
        [2.1, -2.9],
      ],
    });
  });

  test('what a stand carries takes the stand along, and its aim stays', () => {
    const plan = rooftop();
    expect(carrierOf(plan, 'lamp')).toBe('stand');
    const after = moveItem(plan, { id: 'lamp', to: [1, 1] });
    expect(itemOf(after, 'stand')?.record).toMatchObject({ at: [1, 0, 1] });
    expect(itemOf(after, 'lamp')?.record).toBe(itemOf(plan, 'lamp')?.record);
  });

  test('records that did not move stay the same objects', () => {
    const plan = rooftop();
    const after = moveItem(plan, { id: 'tank', to: [1, 1] });
    expect(after.gear).toBe(plan.gear);
    expect(after.pieces[0]).toBe(plan.pieces[0]);
  });

  test('an id that the plan lacks changes nothing', () => {
    const plan = rooftop();
    expect(moveItem(plan, { id: 'nobody', to: [0, 0] })).toBe(plan);
  });
});

test('moveMark moves one mark and leaves the others', () => {
  const after = moveMark(rooftop(), { performerId: 'abel', markId: 'm2', to: [3, 3] });
  expect(after.cast[0]?.marks.map((mark) => mark.at)).toEqual([
    [0, 0],
    [3, 3],
  ]);
  const plan = rooftop();
  expect(moveMark(plan, { performerId: 'abel', markId: 'none', to: [3, 3] })).toBe(plan);
});

test.each([
  [-90, 270],
  [360, 0],
  [719.5, 359.5],
  [30, 30],
])('turnItem takes a heading of %d° as %d°', (asked, got) => {
  const after = turnItem(rooftop(), { id: 'stand', headingDegrees: asked });
  expect(itemOf(after, 'stand')?.record).toMatchObject({ headingDegrees: got });
});

test('turnItem leaves what has no heading', () => {
  const plan = rooftop();
  for (const id of ['fence', 'line', 'lamp', 'cable', 'abel']) {
    expect(turnItem(plan, { id, headingDegrees: 12 })).toBe(plan);
  }
});

test('setStandHeight raises a stand, and only a stand', () => {
  const plan = rooftop();
  expect(itemOf(setStandHeight(plan, { id: 'stand', heightMetres: 4 }), 'stand')?.record).toMatchObject({
    heightMetres: 4,
  });
  expect(setStandHeight(plan, { id: 'tank', heightMetres: 4 })).toBe(plan);
  expect(standReach(plan, 'stand')).toMatchObject({ lowestMetres: 1.2, highestMetres: 4.5 });
  expect(standReach(plan, 'tank')).toBeNull();
});

test.each(IDS)('setWish and renameItem reach %s', (id) => {
  const after = renameItem(setWish(rooftop(), { id, wish: 'must show' }), { id, label: 'Other' });
  const item = itemOf(after, id);
  expect(item && wishOf(item)).toBe('must show');
  expect(item?.record.label).toBe('Other');
  expect(parsePlan(after).ok).toBe(true);
  expect(renameItem(after, { id, label: 'Other' })).toBe(after);
});

describe('removeItems', () => {
  test.each(IDS)('%s leaves a plan whose references all lead somewhere', (id) => {
    const after = removeItems(rooftop(), { ids: [id] });
    expect(itemOf(after, id)).toBeNull();
    expect(parsePlan(after).ok).toBe(true);
  });

  test('a stand goes with what it carries', () => {
    expect(removeItems(rooftop(), { ids: ['stand'] }).gear.map((gear) => gear.id)).toEqual(['cable', 'flag']);
  });

  test('a setup that followed a performer keeps focus at their first mark', () => {
    expect(removeItems(rooftop(), { ids: ['abel'] }).setups[0]?.focus).toEqual({ metres: 7 });
  });
});

describe('setBaseHeight', () => {
  test('raises the foot of what stands and the middle of what hangs, and nothing else', () => {
    const plan = rooftop();
    const before = JSON.stringify(plan);
    const tank = setBaseHeight(plan, { id: 'tank', metres: 0.4 });
    expect(tank.pieces[1]).toMatchObject({ at: [8, 0.4, 4] });
    expect(tank.pieces[0]).toBe(plan.pieces[0]);
    const stand = setBaseHeight(plan, { id: 'stand', metres: 0.15 });
    expect(itemOf(stand, 'stand')?.record).toMatchObject({ at: [3, 0.15, -4] });
    const flag = setBaseHeight(plan, { id: 'flag', metres: 2.6 });
    expect(itemOf(flag, 'flag')?.record).toMatchObject({ place: { at: [4, 2.6, 1] } });
    for (const after of [tank, stand, flag]) expect(parsePlan(after)).toEqual({ ok: true, value: after });
    expect(JSON.stringify(plan), 'the plan that went in is as it was').toBe(before);
  });

  test.each(['fence', 'line', 'abel', 'cable', 'lamp', 'nobody'])(
    'leaves %s, whose height another thing decides',
    (id) => {
      const plan = rooftop();
      expect(setBaseHeight(plan, { id, metres: 1 })).toBe(plan);
    },
  );

  test('the height that it has leaves the plan the same object', () => {
    const plan = rooftop();
    expect(setBaseHeight(plan, { id: 'tank', metres: 0 })).toBe(plan);
    expect(setBaseHeight(plan, { id: 'stand', metres: 0 })).toBe(plan);
    expect(setBaseHeight(plan, { id: 'flag', metres: 2 })).toBe(plan);
  });
});
