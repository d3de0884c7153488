import { describe, expect, test } from 'vitest';
import { addHole } from '../../../../src/core/plan/edits/addHole';
import { addOpening } from '../../../../src/core/plan/edits/addOpening';
import { insertCorner } from '../../../../src/core/plan/edits/insertCorner';
import { removeCorner } from '../../../../src/core/plan/edits/removeCorner';
import { removeHole } from '../../../../src/core/plan/edits/removeHole';
import { removeOpening } from '../../../../src/core/plan/edits/removeOpening';
import { reshapeItem } from '../../../../src/core/plan/edits/reshapeItem';
import { setCorner } from '../../../../src/core/plan/edits/setCorner';
import { setLegLength } from '../../../../src/core/plan/edits/setLegLength';
import { setOpening } from '../../../../src/core/plan/edits/setOpening';
import type { Spot } from '../../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { EMPTY_PLAN } from '../../../../src/desk/emptyPlan';
import { rooftop } from '../../core/plan/edits/rooftop';
import { edited, recordOf } from './around';
import { put } from './putting';

const SQUARE: readonly Spot[] = [
  [-6, -6],
  [6, -6],
  [6, 6],
  [-6, 6],
];
const DOOR = { widthMetres: 1, sillMetres: 0, heightMetres: 2 };

/** A wall 8 m along x and 4 m back along z, with a door at 2 m and one at 10 m. */
function wall(): Plan {
  const plan = put(EMPTY_PLAN, 'wall', [0, 0], [8, 0], [8, 4]);
  const one = addOpening(plan, { id: 'wall-1', alongMetres: 2, ...DOOR });
  return addOpening(one, { id: 'wall-1', alongMetres: 10, ...DOOR });
}
const alongs = (plan: Plan): readonly number[] => {
  const record = plan.pieces[0];
  return record && 'openings' in record ? (record.openings ?? []).map((each) => each.alongMetres) : [];
};

describe('setCorner', () => {
  test('a corner moves, and openings keep their distance from the corner that stays', () => {
    const far = edited(wall(), (plan) => setCorner(plan, { id: 'wall-1', index: 1, to: [12, 0] }));
    expect(recordOf(far, 'wall-1')).toMatchObject({
      path: [
        [0, 0],
        [12, 0],
        [8, 4],
      ],
    });
    // The second door stood 2 m before the end of the second leg, which is now 5.657 m long.
    expect(alongs(far)).toEqual([2, 15.656854]);
    const start = edited(wall(), (plan) => setCorner(plan, { id: 'wall-1', index: 0, to: [1, 0] }));
    expect(alongs(start)).toEqual([1, 9]);
    const short = setCorner(wall(), { id: 'wall-1', index: 0, to: [7.5, 0] });
    expect(alongs(short), 'the leg has become shorter than that').toEqual([0, 2.5]);
  });

  test('ends of lines move and keep their height; a plugged end of a cable is pulled out', () => {
    const line = edited(rooftop(), (plan) => setCorner(plan, { id: 'line', index: 1, to: [-9, 6] }));
    expect(recordOf(line, 'line')).toMatchObject({ from: [-9, 2, 0], to: [-9, 2, 6] });
    const cable = put(put(EMPTY_PLAN, 'generator', [0, 0]), 'cable', [0, 0], [4, 1], [8, 0]);
    const pulled = edited(cable, (plan) => setCorner(plan, { id: 'cable-1', index: 0, to: [0, 2] }));
    expect(recordOf(pulled, 'cable-1')).toMatchObject({
      path: [
        [0, 2],
        [4, 1],
        [8, 0],
      ],
    });
    expect(recordOf(pulled, 'cable-1')).not.toHaveProperty('plugs');
    const middle = setCorner(cable, { id: 'cable-1', index: 1, to: [4, 2] });
    expect(recordOf(middle, 'cable-1')).toMatchObject({ plugs: { from: 'generator-1' } });
  });

  test('cables plugged into a bulb string go with its first end', () => {
    const strung = put(EMPTY_PLAN, 'bulb-string', [0, 0], [6, 0]);
    const plan = put(strung, 'cable', [0, 0], [0, 5]);
    const moved = edited(plan, (before) => setCorner(before, { id: 'bulb-string-1', index: 0, to: [-1, 0] }));
    expect(recordOf(moved, 'cable-1')).toMatchObject({
      path: [
        [-1, 0],
        [0, 5],
      ],
    });
  });

  test('no such corner, the same place, and what has no corners change nothing', () => {
    const plan = wall();
    expect(setCorner(plan, { id: 'wall-1', index: 3, to: [0, 0] })).toBe(plan);
    expect(setCorner(plan, { id: 'wall-1', index: -1, to: [0, 0] })).toBe(plan);
    expect(setCorner(plan, { id: 'wall-1', index: 1, to: [8, 0] })).toBe(plan);
    expect(setCorner(rooftop(), { id: 'abel', index: 0, to: [8, 0] })).toEqual(rooftop());
  });
});

test('insertCorner puts one behind another, and openings stay put', () => {
  const plan = edited(wall(), (before) => insertCorner(before, { id: 'wall-1', index: 0, at: [4, 3] }));
  expect(recordOf(plan, 'wall-1')).toMatchObject({
    path: [
      [0, 0],
      [4, 3],
      [8, 0],
      [8, 4],
    ],
  });
  // [2, 0] lies nearest to what is 1.6 m along the first leg; the second door is 2 m behind two legs of 5 m.
  expect(alongs(plan)).toEqual([1.6, 12]);
  const before = wall();
  expect(insertCorner(before, { id: 'wall-1', index: 2, at: [9, 9] }), 'behind the end').toBe(before);
  const deck = edited(put(EMPTY_PLAN, 'deck', ...SQUARE), (each) =>
    insertCorner(each, { id: 'deck-1', index: 3, at: [-8, 0] }),
  );
  expect(recordOf(deck, 'deck-1')).toMatchObject({ outline: [...SQUARE, [-8, 0]] });
});

test('removeCorner keeps two corners of a run and three of what is closed', () => {
  const plan = edited(wall(), (before) => removeCorner(before, { id: 'wall-1', index: 2 }));
  expect(recordOf(plan, 'wall-1')).toMatchObject({
    path: [
      [0, 0],
      [8, 0],
    ],
  });
  expect(alongs(plan)).toEqual([2, 8]);
  expect(removeCorner(plan, { id: 'wall-1', index: 0 })).toBe(plan);
  const deck = put(EMPTY_PLAN, 'deck', ...SQUARE);
  const three = removeCorner(deck, { id: 'deck-1', index: 0 });
  expect(recordOf(three, 'deck-1')).toMatchObject({ outline: SQUARE.slice(1) });
  expect(removeCorner(three, { id: 'deck-1', index: 0 })).toBe(three);
  const cable = put(put(EMPTY_PLAN, 'generator', [0, 0]), 'cable', [0, 0], [4, 1], [8, 0]);
  expect(recordOf(removeCorner(cable, { id: 'cable-1', index: 0 }), 'cable-1')).toEqual(
    expect.not.objectContaining({ plugs: expect.anything() }),
  );
});

describe('setLegLength', () => {
  test('in an open run all that follows goes along', () => {
    const plan = edited(wall(), (before) => setLegLength(before, { id: 'wall-1', index: 0, metres: 10 }));
    expect(recordOf(plan, 'wall-1')).toMatchObject({
      path: [
        [0, 0],
        [10, 0],
        [10, 4],
      ],
    });
  });

  test('a rectangle stays one, whichever side is set', () => {
    const deck = put(EMPTY_PLAN, 'deck', ...SQUARE);
    const wide = edited(deck, (plan) => setLegLength(plan, { id: 'deck-1', index: 0, metres: 20 }));
    expect(recordOf(wide, 'deck-1')).toMatchObject({
      outline: [
        [-6, -6],
        [14, -6],
        [14, 6],
        [-6, 6],
      ],
    });
    const last = setLegLength(deck, { id: 'deck-1', index: 3, metres: 10 });
    expect(recordOf(last, 'deck-1')).toMatchObject({
      outline: [
        [-6, -4],
        [6, -4],
        [6, 6],
        [-6, 6],
      ],
    });
  });

  test('lines, plugged cables, and legs that are none', () => {
    const line = setLegLength(rooftop(), { id: 'line', index: 0, metres: 7 });
    expect(recordOf(line, 'line')).toMatchObject({ to: [-9, 2, 7] });
    const lamp = put(put(EMPTY_PLAN, 'generator', [0, 0]), 'lamp-led-panel', [8, 0]);
    const cable = put(lamp, 'cable', [0, 0], [4, 0], [8, 0]);
    const longer = setLegLength(cable, { id: 'cable-1', index: 0, metres: 5 });
    expect(recordOf(longer, 'cable-1'), 'the plugged end stays').toMatchObject({
      path: [
        [0, 0],
        [5, 0],
        [8, 0],
      ],
    });
    expect(setLegLength(cable, { id: 'cable-1', index: 1, metres: 9 })).toBe(cable);
    expect(setLegLength(cable, { id: 'cable-1', index: 2, metres: 9 })).toBe(cable);
    expect(setLegLength(cable, { id: 'cable-1', index: 0, metres: 4 })).toBe(cable);
  });
});

describe('openings', () => {
  test('they get ids of their own and are fitted into the run', () => {
    const plan = edited(wall(), (before) =>
      addOpening(before, { id: 'wall-1', alongMetres: 99, widthMetres: 3, sillMetres: -1, heightMetres: 0 }),
    );
    expect(recordOf(plan, 'wall-1')).toMatchObject({
      openings: [
        { id: 'opening-1' },
        { id: 'opening-2' },
        { id: 'opening-3', alongMetres: 10.5, widthMetres: 3, sillMetres: 0, heightMetres: 0.001 },
      ],
    });
    const tank = rooftop();
    expect(addOpening(tank, { id: 'tank', alongMetres: 1, ...DOOR })).toBe(tank);
  });

  test('they change, and close without a trace', () => {
    const set = edited(wall(), (plan) =>
      setOpening(plan, { id: 'wall-1', openingId: 'opening-1', patch: { widthMetres: 2, alongMetres: 0 } }),
    );
    expect(recordOf(set, 'wall-1')).toMatchObject({ openings: [{ alongMetres: 1, widthMetres: 2 }, {}] });
    expect(setOpening(set, { id: 'wall-1', openingId: 'opening-1', patch: { widthMetres: 2 } })).toBe(set);
    expect(setOpening(set, { id: 'wall-1', openingId: 'none', patch: { widthMetres: 3 } })).toBe(set);
    const one = removeOpening(wall(), { id: 'wall-1', openingId: 'opening-1' });
    expect(alongs(one)).toEqual([10]);
    expect(recordOf(removeOpening(one, { id: 'wall-1', openingId: 'opening-2' }), 'wall-1')).toEqual(
      recordOf(put(EMPTY_PLAN, 'wall', [0, 0], [8, 0], [8, 4]), 'wall-1'),
    );
    expect(removeOpening(one, { id: 'wall-1', openingId: 'opening-1' })).toBe(one);
  });
});

describe('holes', () => {
  const HOLE: readonly Spot[] = [
    [0, 0],
    [2, 0],
    [2, 2],
    [0, 2],
  ];
  const holed = (): Plan => addHole(put(EMPTY_PLAN, 'deck', ...SQUARE), { id: 'deck-1', outline: HOLE });

  test.each([
    [
      'outside',
      [
        [5, 5],
        [9, 5],
        [9, 9],
      ],
    ],
    [
      'over another',
      [
        [1, 1],
        [3, 1],
        [3, 3],
      ],
    ],
    [
      'around another',
      [
        [-1, -1],
        [4, -1],
        [4, 4],
        [-1, 4],
      ],
    ],
    [
      'inside another',
      [
        [0.5, 0.5],
        [1, 0.5],
        [1, 1],
      ],
    ],
    [
      'crossing itself',
      [
        [3, 3],
        [4, 4],
        [4, 3],
        [3, 4],
      ],
    ],
    [
      'of no size',
      [
        [3, 3],
        [4, 4],
        [5, 5],
      ],
    ],
    [
      'of two corners',
      [
        [3, 3],
        [4, 4],
      ],
    ],
  ] as [string, Spot[]][])('one %s is not cut', (_, outline) => {
    const plan = holed();
    expect(addHole(plan, { id: 'deck-1', outline })).toBe(plan);
  });

  test('they are cut, moved, shaped and closed', () => {
    const plan = edited(holed(), (before) =>
      addHole(before, {
        id: 'deck-1',
        outline: [
          [3, 3],
          [4, 3],
          [4, 4],
        ],
      }),
    );
    expect(recordOf(plan, 'deck-1')).toMatchObject({ holes: [{ id: 'hole-1' }, { id: 'hole-2' }] });
    const before = holed();
    const shaped = setCorner(before, { id: 'deck-1', hole: 'hole-1', index: 2, to: [3, 3] });
    expect(recordOf(shaped, 'deck-1')).toMatchObject({
      holes: [
        {
          outline: [
            [0, 0],
            [2, 0],
            [3, 3],
            [0, 2],
          ],
        },
      ],
    });
    expect(setCorner(before, { id: 'deck-1', hole: 'hole-1', index: 2, to: [9, 9] })).toBe(before);
    expect(setCorner(before, { id: 'deck-1', index: 2, to: [1, 1] }), 'the deck would end in the hole').toBe(
      before,
    );
    const closed = removeHole(before, { id: 'deck-1', holeId: 'hole-1' });
    expect(recordOf(closed, 'deck-1')).toEqual(recordOf(put(EMPTY_PLAN, 'deck', ...SQUARE), 'deck-1'));
    expect(removeHole(closed, { id: 'deck-1', holeId: 'hole-1' })).toBe(closed);
  });
});

describe('reshapeItem', () => {
  test('fields of the kind change, the others stay', () => {
    const plan = edited(rooftop(), (before) =>
      reshapeItem(before, {
        id: 'tank',
        patch: { diameterMetres: 3, headingDegrees: -90, bulbs: 4, id: 'other', kind: 'box', label: 'Other' },
      }),
    );
    expect(recordOf(plan, 'tank')).toMatchObject({
      id: 'tank',
      label: 'Tank',
      kind: 'tank',
      diameterMetres: 3,
      headingDegrees: 270,
    });
    expect(recordOf(plan, 'tank')).not.toHaveProperty('bulbs');
  });

  test('what may not be so stays as it was', () => {
    const plan = rooftop();
    expect(reshapeItem(plan, { id: 'tank', patch: { diameterMetres: -1 } })).toBe(plan);
    expect(reshapeItem(plan, { id: 'tank', patch: { diameterMetres: undefined } })).toBe(plan);
    expect(reshapeItem(plan, { id: 'tank', patch: { diameterMetres: 2.4 } })).toBe(plan);
    expect(reshapeItem(plan, { id: 'nobody', patch: { diameterMetres: 2 } })).toBe(plan);
    const some = reshapeItem(plan, { id: 'tank', patch: { diameterMetres: 'wide', legMetres: 2 } });
    expect(recordOf(some, 'tank')).toMatchObject({ diameterMetres: 2.4, legMetres: 2 });
  });

  test('of a field with fields only what is said', () => {
    const house = put(EMPTY_PLAN, 'stair-house', [0, 0]);
    const door = edited(house, (plan) =>
      reshapeItem(plan, { id: 'stair-house-1', patch: { door: { alongMetres: 0.4 } } }),
    );
    expect(recordOf(door, 'stair-house-1')).toMatchObject({
      door: { widthMetres: 0.9, heightMetres: 2.05, alongMetres: 0.4 },
    });
    const abel = reshapeItem(rooftop(), { id: 'abel', patch: { clothes: { head: 'hood' } } });
    expect(abel.cast[0]?.clothes).toMatchObject({ upper: 'coat', head: 'hood' });
    const tinted = reshapeItem(put(EMPTY_PLAN, 'practical-shop-sign', [0, 0]), {
      id: 'practical-1',
      patch: { tint: undefined },
    });
    expect(recordOf(tinted, 'practical-1')).not.toHaveProperty('tint');
  });

  test('what stands on it stays on its top, or comes down beside it', () => {
    const riser = put(put(put(EMPTY_PLAN, 'riser', [0, 0]), 'crate', [0, 0]), 'medium-stand', [0.9, 0]);
    const bag = put(riser, 'sandbag', [0.9, 0.2]);
    const plan = put(bag, 'man', [0, 0.5]);
    const high = edited(plan, (before) =>
      reshapeItem(before, { id: 'riser-1', patch: { size: [2.44, 1, 1.22] } }),
    );
    expect(recordOf(high, 'box-1')).toMatchObject({ at: [0, 1, 0] });
    expect(recordOf(high, 'stand-1')).toMatchObject({ at: [0.9, 1, 0] });
    expect(recordOf(high, 'sandbag-1')).toMatchObject({ at: [0.9, 1, 0.2] });
    expect(high.cast[0]?.marks[0]?.floorMetres).toBe(1);
    const narrow = edited(plan, (before) =>
      reshapeItem(before, { id: 'riser-1', patch: { size: [1, 0.4, 1.22] } }),
    );
    expect(recordOf(narrow, 'stand-1')).toMatchObject({ at: [0.9, 0, 0] });
    expect(recordOf(narrow, 'box-1')).toMatchObject({ at: [0, 0.4, 0] });
  });
});
