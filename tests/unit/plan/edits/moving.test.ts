import { describe, expect, test } from 'vitest';
import { lockItems } from '../../../../src/core/plan/edits/lockItems';
import { moveItem } from '../../../../src/core/plan/edits/moveItem';
import { moveItems } from '../../../../src/core/plan/edits/moveItems';
import { moveMark } from '../../../../src/core/plan/edits/moveMark';
import { plugCable } from '../../../../src/core/plan/edits/plugCable';
import { raiseItems } from '../../../../src/core/plan/edits/raiseItems';
import { setBaseHeight } from '../../../../src/core/plan/edits/setBaseHeight';
import { turnItem } from '../../../../src/core/plan/edits/turnItem';
import { turnItems } from '../../../../src/core/plan/edits/turnItems';
import { itemOf } from '../../../../src/core/plan/items';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { EMPTY_PLAN } from '../../../../src/desk/emptyPlan';
import { rooftop } from '../../core/plan/edits/rooftop';
import { edited, recordOf } from './around';
import { put } from './putting';

/** A riser of 2.44 by 1.22 by 0.4 at the origin; on it a crate, a lamp on its stand, a woman, a sandbag over the legs. */
function riser(): Plan {
  let plan = put(EMPTY_PLAN, 'riser', [0, 0]);
  plan = put(plan, 'crate', [-0.8, 0]);
  plan = put(plan, 'lamp-led-panel', [0.6, 0]);
  plan = put(plan, 'sandbag', [0.8, 0.1]);
  return put(plan, 'woman', [0, 0.3]);
}

describe('moveItems', () => {
  test('what stands on a riser goes along, and stays as high over it', () => {
    const plan = riser();
    const moved = edited(plan, (before) => moveItems(before, { ids: ['riser-1'], by: [10, 1] }));
    expect(recordOf(moved, 'riser-1')).toMatchObject({ at: [10, 0, 1] });
    expect(recordOf(moved, 'box-1')).toMatchObject({ at: [9.2, 0.4, 1] });
    expect(recordOf(moved, 'stand-1')).toMatchObject({ at: [10.6, 0.4, 1] });
    expect(recordOf(moved, 'sandbag-1')).toMatchObject({ at: [10.8, 0.4, 1.1] });
    expect(moved.cast[0]?.marks[0]).toMatchObject({ at: [10, 1.3], floorMetres: 0.4 });
    expect(recordOf(moved, 'head-1'), 'carried and aimed as before').toBe(itemOf(plan, 'head-1')?.record);
  });

  test('a riser that lands on a riser takes what stands on it up', () => {
    const plan = put(riser(), 'riser', [10, 0]);
    const moved = edited(plan, (before) => moveItems(before, { ids: ['box-1', 'riser-1'], by: [10, 0] }));
    expect(recordOf(moved, 'riser-1')).toMatchObject({ at: [10, 0.4, 0] });
    expect(recordOf(moved, 'box-1'), 'though it was chosen by itself too').toMatchObject({
      at: [9.2, 0.8, 0],
    });
  });

  test('what is dragged off a riser comes down, and back on it goes up', () => {
    const off = edited(riser(), (plan) => moveItems(plan, { ids: ['box-1'], by: [0, 5] }));
    expect(recordOf(off, 'box-1')).toMatchObject({ at: [-0.8, 0, 5] });
    const on = edited(off, (plan) => moveItems(plan, { ids: ['box-1'], by: [0, -5] }));
    expect(recordOf(on, 'box-1')).toMatchObject({ at: [-0.8, 0.4, 0] });
  });

  test('what hangs keeps its height', () => {
    const plan = put(riser(), 'practical-string-bulb', [5, 5]);
    expect(recordOf(moveItems(plan, { ids: ['practical-1'], by: [-5, -5] }), 'practical-1')).toMatchObject({
      at: [0, 2.3, 0],
    });
  });

  test('what stands under a riser stays under it', () => {
    const bag = put(EMPTY_PLAN, 'sandbag', [0, 0]);
    const plan = put(bag, 'riser', [0, 0]);
    const under = edited(plan, (before) => moveItems(before, { ids: ['sandbag-1'], by: [0.1, 0] }));
    expect(recordOf(under, 'sandbag-1')).toMatchObject({ at: [0.1, 0, 0] });
  });

  test('a run lands where all of it lies on one level', () => {
    const plan = put(riser(), 'fence', [-0.2, 5], [1, 5]);
    expect(recordOf(moveItems(plan, { ids: ['fence-1'], by: [0, -5] }), 'fence-1')).toMatchObject({
      baseMetres: 0.4,
    });
    expect(recordOf(moveItems(plan, { ids: ['fence-1'], by: [1, -5] }), 'fence-1')).toMatchObject({
      baseMetres: 0,
    });
  });

  test('a stand takes the bags within its foot circle, and no others', () => {
    const plan = put(
      put(put(EMPTY_PLAN, 'medium-stand', [0, 0]), 'sandbag', [0.5, 0.3]),
      'sandbag',
      [0.6, 0.3],
    );
    const moved = edited(plan, (before) => moveItems(before, { ids: ['stand-1'], by: [1, 0] }));
    // The circle through its feet has a radius of 0.6 m.
    expect(recordOf(moved, 'sandbag-1')).toMatchObject({ at: [1.5, 0, 0.3] });
    expect(recordOf(moved, 'sandbag-2')).toMatchObject({ at: [0.6, 0, 0.3] });
  });

  test('a bag over the legs of two stands goes with the nearer', () => {
    const stands = put(put(EMPTY_PLAN, 'medium-stand', [0, 0]), 'medium-stand', [1, 0]);
    const plan = put(stands, 'sandbag', [0.45, 0]);
    expect(recordOf(moveItems(plan, { ids: ['stand-2'], by: [1, 0] }), 'sandbag-1')).toMatchObject({
      at: [0.45, 0, 0],
    });
    expect(recordOf(moveItems(plan, { ids: ['stand-1'], by: [1, 0] }), 'sandbag-1')).toMatchObject({
      at: [1.45, 0, 0],
    });
  });

  test('plugged ends of a cable go with their gear, its other corners stay', () => {
    const lamp = put(put(EMPTY_PLAN, 'generator', [0, 0]), 'lamp-led-panel', [8, 0]);
    const plan = put(lamp, 'cable', [0, 0], [4, 1], [8, 0]);
    const stand = edited(plan, (before) => moveItems(before, { ids: ['stand-1'], by: [0, 3] }));
    expect(recordOf(stand, 'cable-1')).toMatchObject({
      path: [
        [0, 0],
        [4, 1],
        [8, 3],
      ],
    });
    // A locked lamp goes with its stand all the same, or its cable would come out.
    const locked = lockItems(plan, { ids: ['head-1'], locked: true });
    const carried = edited(locked, (before) => moveItems(before, { ids: ['stand-1'], by: [0, 3] }));
    expect(recordOf(carried, 'cable-1')).toEqual(recordOf(stand, 'cable-1'));
    const generator = edited(plan, (before) => moveItems(before, { ids: ['generator-1'], by: [-1, 0] }));
    expect(recordOf(generator, 'cable-1')).toMatchObject({
      path: [
        [-1, 0],
        [4, 1],
        [8, 0],
      ],
    });
    const cable = edited(plan, (before) => moveItems(before, { ids: ['cable-1'], by: [0, 1] }));
    expect(recordOf(cable, 'cable-1')).toMatchObject({
      path: [
        [0, 0],
        [4, 2],
        [8, 0],
      ],
    });
    const pulled = plugCable(plan, { id: 'cable-1', end: 'to', to: null });
    expect(recordOf(moveItems(pulled, { ids: ['stand-1'], by: [0, 3] }), 'cable-1')).toMatchObject({
      path: [
        [0, 0],
        [4, 1],
        [8, 0],
      ],
    });
    const all = edited(plan, (before) =>
      moveItems(before, { ids: ['cable-1', 'generator-1', 'stand-1'], by: [1, 1] }),
    );
    expect(recordOf(all, 'cable-1')).toMatchObject({
      path: [
        [1, 1],
        [5, 2],
        [9, 1],
      ],
    });
  });

  test('what is locked stays, with what only it would take; a typed place moves it', () => {
    const plan = lockItems(riser(), { ids: ['riser-1', 'stand-1'], locked: true });
    expect(moveItems(plan, { ids: ['riser-1', 'head-1'], by: [1, 0] })).toBe(plan);
    const moved = edited(plan, (before) => moveItem(before, { id: 'riser-1', to: [3, 0], evenLocked: true }));
    expect(recordOf(moved, 'box-1')).toMatchObject({ at: [2.2, 0.4, 0] });
  });

  test('the way ends where the plan does, and things keep their shape', () => {
    const plan = put(EMPTY_PLAN, 'fence', [0, 0], [10, 0]);
    const far = edited(plan, (before) => moveItems(before, { ids: ['fence-1'], by: [9000, 0] }));
    expect(recordOf(far, 'fence-1')).toMatchObject({
      path: [
        [4990, 0],
        [5000, 0],
      ],
    });
  });

  test('no way and nobody change nothing', () => {
    const plan = riser();
    expect(moveItems(plan, { ids: ['box-1'], by: [0, 0] })).toBe(plan);
    expect(moveItems(plan, { ids: ['nobody'], by: [1, 0] })).toBe(plan);
    expect(moveItems(plan, { ids: [], by: [1, 0] })).toBe(plan);
  });
});

test('moveMark lands on what is there', () => {
  const plan = riser();
  const off = edited(plan, (before) =>
    moveMark(before, { performerId: 'performer-1', markId: 'mark-1', to: [0, 3] }),
  );
  expect(off.cast[0]?.marks[0]).toMatchObject({ at: [0, 3] });
  expect(off.cast[0]?.marks[0]).not.toHaveProperty('floorMetres');
  const on = moveMark(off, { performerId: 'performer-1', markId: 'mark-1', to: [0.5, 0] });
  expect(on.cast[0]?.marks[0]).toMatchObject({ at: [0.5, 0], floorMetres: 0.4 });
});

describe('turnItems', () => {
  test('things turn about a place, headings and aims with them', () => {
    const turned = edited(rooftop(), (plan) =>
      turnItems(plan, { ids: ['stand', 'fence', 'abel'], byDegrees: 90, about: [0, 0] }),
    );
    expect(recordOf(turned, 'stand')).toMatchObject({ at: [4, 0, 3], headingDegrees: 120 });
    expect(recordOf(turned, 'fence')).toMatchObject({
      path: [
        [6, -4],
        [6, 2],
        [3, 2],
      ],
    });
    expect(turned.cast[0]?.marks[1]).toMatchObject({ at: [-2, 1], headingDegrees: 180 });
    expect(
      recordOf(turnItems(rooftop(), { ids: ['lamp'], byDegrees: 90, about: [3, -5.5] }), 'lamp'),
    ).toMatchObject({
      aim: [-2.5, 1.5, -8.5],
    });
  });

  test('one thing turns on its own place, and what stands on it with it', () => {
    const turned = edited(riser(), (plan) => turnItems(plan, { ids: ['riser-1'], byDegrees: 90 }));
    expect(recordOf(turned, 'riser-1')).toMatchObject({ at: [0, 0, 0], headingDegrees: 90 });
    expect(recordOf(turned, 'box-1')).toMatchObject({ at: [0, 0.4, -0.8], headingDegrees: 90 });
    expect(turned.cast[0]?.marks[0]).toMatchObject({ at: [-0.3, 0], headingDegrees: 90, floorMetres: 0.4 });
  });

  test('a stand turns its legs and its arm; its lamp stays aimed; a flag alone turns by itself', () => {
    const plan = put(put(EMPTY_PLAN, 'combo-stand-arm', [0, 0]), 'flag', [0, -1.13]);
    const turned = edited(plan, (before) => turnItems(before, { ids: ['stand-1'], byDegrees: 90 }));
    expect(recordOf(turned, 'stand-1')).toMatchObject({
      headingDegrees: 90,
      arm: { headingDegrees: 90 },
      at: [0, 0, 0],
    });
    expect(recordOf(turned, 'flag-1')).toMatchObject({ headingDegrees: 90 });
    const flag = edited(plan, (before) => turnItems(before, { ids: ['flag-1'], byDegrees: 30 }));
    expect(recordOf(flag, 'flag-1')).toMatchObject({ headingDegrees: 30 });
    expect(recordOf(flag, 'stand-1')).toBe(itemOf(plan, 'stand-1')?.record);
    const lamp = rooftop();
    expect(recordOf(turnItems(lamp, { ids: ['stand'], byDegrees: 45 }), 'lamp')).toBe(recordOf(lamp, 'lamp'));
  });

  test('locked things and whole turns stay', () => {
    const plan = lockItems(rooftop(), { ids: ['tank'], locked: true });
    expect(turnItems(plan, { ids: ['tank'], byDegrees: 30 })).toBe(plan);
    expect(turnItems(plan, { ids: ['stand'], byDegrees: -720 })).toBe(plan);
    expect(turnItem(plan, { id: 'tank', headingDegrees: 30 }), 'a typed heading').not.toBe(plan);
  });

  test('a row of three turns about the middle of the rectangle around it', () => {
    const plan = put(put(put(EMPTY_PLAN, 'crate', [0, 0]), 'crate', [2, 0]), 'crate', [6, 0]);
    const turned = turnItems(plan, { ids: ['box-1', 'box-2', 'box-3'], byDegrees: 90 });
    expect(['box-1', 'box-2', 'box-3'].map((id) => recordOf(turned, id))).toMatchObject([
      { at: [3, 0, -3] },
      { at: [3, 0, -1] },
      { at: [3, 0, 3] },
    ]);
  });
});

describe('raiseItems', () => {
  test('levels take up what stands on them, decks too', () => {
    const raised = edited(riser(), (plan) => raiseItems(plan, { ids: ['riser-1'], byMetres: 0.25 }));
    expect(recordOf(raised, 'box-1')).toMatchObject({ at: [-0.8, 0.65, 0] });
    expect(raised.cast[0]?.marks[0]?.floorMetres).toBe(0.65);
    const deck = put(put(EMPTY_PLAN, 'deck', [-5, -5], [5, -5], [5, 5], [-5, 5]), 'fence', [0, 0], [1, 0]);
    const up = edited(deck, (plan) => raiseItems(plan, { ids: ['deck-1'], byMetres: 3 }));
    expect(recordOf(up, 'deck-1')).toMatchObject({ topMetres: 3 });
    expect(recordOf(up, 'fence-1')).toMatchObject({ baseMetres: 3 });
  });

  test('lines, bare lamps and runs go up themselves', () => {
    const raised = edited(rooftop(), (plan) =>
      raiseItems(plan, { ids: ['line', 'flag', 'cable'], byMetres: 0.5 }),
    );
    expect(recordOf(raised, 'line')).toMatchObject({ from: [-9, 2.5, 0], to: [-9, 2.5, 5] });
    expect(recordOf(raised, 'flag')).toMatchObject({ place: { at: [4, 2.5, 1] } });
    expect(recordOf(raised, 'cable')).toMatchObject({ baseMetres: 0.5 });
  });

  test('a lamp on a stand raises the spigot, as far as the stand goes', () => {
    const plan = rooftop();
    expect(recordOf(raiseItems(plan, { ids: ['lamp'], byMetres: 1 }), 'stand')).toMatchObject({
      heightMetres: 4,
    });
    expect(recordOf(raiseItems(plan, { ids: ['lamp'], byMetres: 9 }), 'stand')).toMatchObject({
      heightMetres: 4.5,
    });
    expect(recordOf(raiseItems(plan, { ids: ['lamp'], byMetres: -9 }), 'stand')).toMatchObject({
      heightMetres: 1.2,
    });
    const both = raiseItems(plan, { ids: ['lamp', 'stand'], byMetres: 1 });
    expect(recordOf(both, 'stand')).toMatchObject({ heightMetres: 3, at: [3, 1, -4] });
  });

  test('locked things stay, heights end at 5 km, a typed height takes what stands on it', () => {
    const locked = lockItems(riser(), { ids: ['riser-1'], locked: true });
    expect(raiseItems(locked, { ids: ['riser-1'], byMetres: 1 })).toBe(locked);
    const high = edited(riser(), (plan) => raiseItems(plan, { ids: ['riser-1'], byMetres: 1e6 }));
    expect(recordOf(high, 'box-1')).toMatchObject({ at: [-0.8, 5000, 0] });
    expect(recordOf(setBaseHeight(locked, { id: 'riser-1', metres: 1 }), 'box-1')).toMatchObject({
      at: [-0.8, 1.4, 0],
    });
  });
});
