import { describe, expect, test } from 'vitest';
import { addItem } from '../../../../src/core/plan/edits/addItem';
import { arrayItems } from '../../../../src/core/plan/edits/arrayItems';
import { duplicateItems } from '../../../../src/core/plan/edits/duplicateItems';
import { expandGroup } from '../../../../src/core/plan/edits/expandGroup';
import { groupItems } from '../../../../src/core/plan/edits/groupItems';
import { hideItems } from '../../../../src/core/plan/edits/hideItems';
import { labelItems } from '../../../../src/core/plan/edits/labelItems';
import { lockItems } from '../../../../src/core/plan/edits/lockItems';
import { mirrorItems } from '../../../../src/core/plan/edits/mirrorItems';
import { removeItems } from '../../../../src/core/plan/edits/removeItems';
import { ungroupItems } from '../../../../src/core/plan/edits/ungroupItems';
import type { Spot } from '../../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { EMPTY_PLAN } from '../../../../src/desk/emptyPlan';
import { rooftop } from '../../core/plan/edits/rooftop';
import { edited, recordOf } from './around';
import { put } from './putting';

describe('addItem', () => {
  const record = { ...rooftop().pieces[1], id: 'new', label: 'New' };
  const [panel] = rooftop().kit.heads;

  test('adds to the end of a section, with the classes that are lacking', () => {
    const plan = edited(rooftop(), (before) =>
      addItem(before, { section: 'piece', record, kit: { heads: [panel, { ...panel, id: 'other' }] } }),
    );
    expect(plan.pieces.at(-1)).toBe(record);
    expect(plan.kit.heads.map(({ id }) => id)).toEqual(['panel', 'other']);
  });

  test('an id that is taken changes nothing, nor does a full section', () => {
    const plan = rooftop();
    expect(addItem(plan, { section: 'piece', record: { ...record, id: 'abel' } })).toBe(plan);
    const pieces = Array.from({ length: 4000 }, (_, k) => ({ ...record, id: `p-${k}` }));
    const full = { ...plan, pieces };
    expect(addItem(full, { section: 'piece', record })).toBe(full);
    expect(duplicateItems(full, { ids: ['p-1'], by: [1, 0] })).toEqual({ plan: full, ids: [] });
  });
});

describe('mirrorItems', () => {
  const NORTH = { at: [1, 0] as Spot, bearingDegrees: 0 };

  test('places, headings, arms, aims, paths, marks and doors', () => {
    let plan = put(rooftop(), 'combo-stand-arm', [3, 3], [4, 3]);
    plan = put(plan, 'curved-track', [-3, 2], [0, 2]);
    plan = put(plan, 'stair-house', [-6, 3]);
    const door = plan.pieces.map((piece) =>
      piece.kind === 'stair house' ? { ...piece, door: { ...piece.door, alongMetres: 0.5 } } : piece,
    );
    const ids = ['stand', 'fence', 'abel', 'stand-1', 'track-1', 'stair-house-1', 'line'];
    const { plan: mirrored } = mirrorItems({ ...plan, pieces: door }, { ids, axis: NORTH, copy: false });
    expect(recordOf(mirrored, 'stand')).toMatchObject({ at: [-1, 0, -4], headingDegrees: 330 });
    expect(recordOf(mirrored, 'lamp')).toMatchObject({ aim: [2, 1.5, 0], place: { on: 'stand' } });
    expect(recordOf(mirrored, 'fence')).toMatchObject({
      path: [
        [6, -6],
        [0, -6],
        [0, -3],
      ],
    });
    expect(recordOf(mirrored, 'line')).toMatchObject({ from: [11, 2, 0], to: [11, 2, 5] });
    expect(mirrored.cast[0]?.marks[1]).toMatchObject({ at: [1, 2], headingDegrees: 270 });
    expect(recordOf(mirrored, 'stand-1')).toMatchObject({
      headingDegrees: 270,
      arm: { headingDegrees: 270 },
    });
    expect(recordOf(mirrored, 'track-1')).toMatchObject({ bendMetres: -4, headingDegrees: 270 });
    expect(recordOf(mirrored, 'stair-house-1')).toMatchObject({ at: [8, 0, 3], door: { alongMetres: -0.5 } });
  });

  test('an axis that lies aslant', () => {
    const { plan } = mirrorItems(rooftop(), {
      ids: ['tank'],
      axis: { at: [0, 0], bearingDegrees: 135 },
      copy: false,
    });
    // The line through the middle towards the lower right swaps x and z.
    expect(recordOf(plan, 'tank')).toMatchObject({ at: [4, 0, 8], headingDegrees: 270 });
  });

  test('locked things stay, their copies do not', () => {
    const plan = lockItems(rooftop(), { ids: ['tank'], locked: true });
    expect(mirrorItems(plan, { ids: ['tank'], axis: NORTH, copy: false }).plan).toBe(plan);
    const copied = mirrorItems(plan, { ids: ['tank'], axis: NORTH, copy: true });
    expect(copied.ids).toEqual(['tank-1']);
    expect(recordOf(copied.plan, 'tank-1')).toMatchObject({ at: [-6, 0, 4], label: 'Tank 2' });
    expect(recordOf(copied.plan, 'tank-1')).not.toHaveProperty('locked');
  });
});

describe('copies', () => {
  test('a stand is copied with its lamp, and named by the next numbers', () => {
    const { plan, ids } = duplicateItems(rooftop(), { ids: ['lamp'], by: [2, 0] });
    expect(ids).toEqual(['stand-1', 'head-1']);
    expect(recordOf(plan, 'stand-1')).toMatchObject({ label: 'Lamp stand 2', at: [5, 0, -4] });
    expect(recordOf(plan, 'head-1')).toMatchObject({
      label: 'Head 2',
      place: { on: 'stand-1' },
      aim: [0, 1.5, 0],
    });
  });

  test('copies of a group are a group of their own', () => {
    const grouped = groupItems(rooftop(), { ids: ['tank', 'fence'] });
    const { plan, ids } = duplicateItems(grouped, { ids: ['tank', 'fence'], by: [0, 9] });
    expect(ids.map((id) => recordOf(plan, id))).toMatchObject([{ group: 'group-2' }, { group: 'group-2' }]);
    expect(recordOf(plan, 'tank')).toMatchObject({ group: 'group-1' });
  });

  test('a riser copied with what stands on it keeps it on its top', () => {
    const riser = put(put(EMPTY_PLAN, 'riser', [0, 0]), 'crate', [0, 0]);
    const { plan } = duplicateItems(riser, { ids: ['box-1', 'riser-1'], by: [5, 0] });
    expect(recordOf(plan, 'box-2')).toMatchObject({ at: [5, 0.4, 0] });
    const alone = duplicateItems(riser, { ids: ['box-1'], by: [5, 0] });
    expect(recordOf(alone.plan, 'box-2')).toMatchObject({ at: [5, 0, 0] });
  });

  test('a row along a corner, turning with it', () => {
    const tank = put(EMPTY_PLAN, 'post', [1, 1]);
    const along: Spot[] = [
      [0, 0],
      [4, 0],
      [4, 4],
    ];
    const row = arrayItems(tank, { ids: ['post-1'], along, count: 5, follow: true });
    expect(row.ids).toHaveLength(4);
    expect(row.ids.map((id) => recordOf(row.plan, id))).toMatchObject([
      { at: [3, 0, 1], headingDegrees: 0, label: 'Post 2' },
      { at: [5, 0, 1], headingDegrees: 0 },
      { at: [5, 0, 3], headingDegrees: 90 },
      { at: [5, 0, 5], headingDegrees: 90 },
    ]);
    const spaced = arrayItems(tank, { ids: ['post-1'], along, count: 50, spacingMetres: 3, follow: false });
    expect(spaced.ids.map((id) => recordOf(spaced.plan, id))).toMatchObject([
      { at: [4, 0, 1] },
      { at: [5, 0, 3], headingDegrees: 0 },
    ]);
  });

  test('a closed way has no place twice, and lamps in a row light side by side', () => {
    const square: Spot[] = [
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
      [0, 0],
    ];
    const row = arrayItems(rooftop(), { ids: ['lamp'], along: square, count: 4, follow: false });
    expect(row.ids).toHaveLength(6);
    expect(recordOf(row.plan, 'stand-3')).toMatchObject({ at: [3, 0, -2] });
    expect(recordOf(row.plan, 'head-3')).toMatchObject({ aim: [0, 1.5, 2] });
  });

  test('one or none, and no way, are no row', () => {
    const plan = rooftop();
    const way: Spot[] = [
      [0, 0],
      [2, 0],
    ];
    expect(arrayItems(plan, { ids: ['tank'], along: way, count: 1, follow: true }).plan).toBe(plan);
    expect(arrayItems(plan, { ids: ['tank'], along: [[0, 0]], count: 4, follow: true }).plan).toBe(plan);
    expect(arrayItems(plan, { ids: ['nobody'], along: way, count: 4, follow: true }).plan).toBe(plan);
  });
});

describe('removeItems', () => {
  test('takes carried things along, pulls cables out and leaves the kit', () => {
    const lamp = put(put(EMPTY_PLAN, 'generator', [0, 0]), 'lamp-led-panel', [8, 0]);
    const plan = put(lamp, 'cable', [0, 0], [8, 0]);
    const after = edited(plan, (before) => removeItems(before, { ids: ['stand-1'] }));
    expect(after.gear.map(({ id }) => id)).toEqual(['generator-1', 'cable-1']);
    expect(recordOf(after, 'cable-1')).toMatchObject({
      path: [
        [0, 0],
        [8, 0],
      ],
      plugs: { from: 'generator-1' },
    });
    expect(recordOf(after, 'cable-1')).not.toHaveProperty('plugs.to');
    expect(after.kit).toBe(plan.kit);
    const bare = removeItems(after, { ids: ['generator-1'] });
    expect(recordOf(bare, 'cable-1')).not.toHaveProperty('plugs');
  });

  test('what stood on a removed level comes down with all that stands on it', () => {
    const riser = put(put(put(EMPTY_PLAN, 'riser', [0, 0]), 'crate', [0, 0]), 'man', [0.9, 0]);
    const plan = put(riser, 'crate', [0, 0]);
    expect(recordOf(plan, 'box-2')).toMatchObject({ at: [0, 0.9, 0] });
    const down = edited(plan, (before) => removeItems(before, { ids: ['riser-1'] }));
    expect(recordOf(down, 'box-1')).toMatchObject({ at: [0, 0, 0] });
    expect(recordOf(down, 'box-2')).toMatchObject({ at: [0, 0.5, 0] });
    expect(down.cast[0]?.marks[0]).not.toHaveProperty('floorMetres');
    const both = edited(plan, (before) => removeItems(before, { ids: ['riser-1', 'box-1'] }));
    expect(recordOf(both, 'box-2')).toMatchObject({ at: [0, 0, 0] });
  });

  test('setups let go of whom they follow, hold and rack to, and of their track', () => {
    const [setup] = rooftop().setups;
    const [key, last] = setup.move.keys;
    const plan: Plan = {
      ...put(rooftop(), 'track', [0, 7], [-2, 7]),
      setups: [
        {
          ...setup,
          focus: {
            racks: [
              { atSeconds: 2, pullSeconds: 1, on: { follow: 'abel' } },
              { atSeconds: 4, pullSeconds: 1, on: { metres: 3 } },
            ],
          },
          operator: { hold: 'abel', at: [0.5, 0.4] },
          track: 'track-1',
          move: { ease: 'eased', keys: [{ ...key, alongMetres: 1 }, last] },
        },
      ],
    };
    const after = edited(plan, (before) => removeItems(before, { ids: ['abel', 'track-1'] }));
    const [left] = after.setups;
    expect(left.focus).toMatchObject({ racks: [{ on: { metres: 7 } }, { on: { metres: 3 } }] });
    expect(left).not.toHaveProperty('operator');
    expect(left).not.toHaveProperty('track');
    expect(left.move.keys).toEqual([key, last]);
    expect(removeItems(plan, { ids: ['tank'] }).setups, 'who refers to neither stays').toBe(plan.setups);
  });

  test('nobody is nothing', () => {
    const plan = rooftop();
    expect(removeItems(plan, { ids: ['nobody'] })).toBe(plan);
    expect(removeItems(plan, { ids: [] })).toBe(plan);
  });
});

describe('groups, locks, hides and names', () => {
  test('a group is chosen whole, and taken apart whole', () => {
    const plan = edited(rooftop(), (before) => groupItems(before, { ids: ['tank', 'abel', 'lamp'] }));
    expect(expandGroup(plan, ['lamp'])).toEqual(['lamp', 'tank', 'abel']);
    expect(expandGroup(plan, ['fence'])).toEqual(['fence']);
    expect(groupItems(plan, { ids: ['lamp', 'abel', 'tank'] }), 'they are one').toBe(plan);
    const other = groupItems(plan, { ids: ['lamp', 'fence'] });
    expect(expandGroup(other, ['fence'])).toEqual(['fence', 'lamp']);
    expect(edited(plan, (before) => ungroupItems(before, { ids: ['tank'] }))).toEqual(rooftop());
    const alone = rooftop();
    expect(groupItems(alone, { ids: ['tank', 'tank', 'nobody'] })).toBe(alone);
    expect(ungroupItems(alone, { ids: ['tank'] })).toBe(alone);
  });

  test('locked and hidden are said only where they are so', () => {
    const plan = rooftop();
    for (const [on, off] of [
      [
        edited(plan, (before) => lockItems(before, { ids: ['tank', 'abel'], locked: true })),
        (before: Plan) => lockItems(before, { ids: ['tank', 'abel'], locked: false }),
      ],
      [
        edited(plan, (before) => hideItems(before, { ids: ['tank', 'abel'], hidden: true })),
        (before: Plan) => hideItems(before, { ids: ['tank', 'abel'], hidden: false }),
      ],
    ] as const) {
      expect(on).not.toEqual(plan);
      expect(on.gear).toBe(plan.gear);
      expect(off(on)).toEqual(plan);
      expect(off(plan)).toBe(plan);
    }
  });

  test('names are numbered past those that others have', () => {
    const plan = edited(rooftop(), (before) =>
      labelItems(before, { ids: ['tank', 'fence'], stem: 'Lamp  stand' }),
    );
    expect(['tank', 'fence'].map((id) => recordOf(plan, id))).toMatchObject([
      { label: 'Lamp stand 2' },
      { label: 'Lamp stand 3' },
    ]);
    expect(labelItems(plan, { ids: ['tank', 'fence'], stem: 'Lamp stand' })).toBe(plan);
    expect(labelItems(plan, { ids: ['tank'], stem: ' ' })).toBe(plan);
  });
});
