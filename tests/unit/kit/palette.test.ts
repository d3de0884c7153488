import { describe, expect, test } from 'vitest';
import { HEADS } from '../../../src/core/kit/heads';
import { makeItem, PALETTE, PALETTE_GROUPS, paletteEntryOf } from '../../../src/core/kit/palette';
import { STANDS } from '../../../src/core/kit/stands';
import { itemOf, itemsOf, kindOf } from '../../../src/core/plan/items';
import { parsePlan } from '../../../src/core/plan/parse';
import { gear as gearSchema } from '../../../src/core/plan/schema/gear';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import { piece as pieceSchema } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { EMPTY_PLAN } from '../../../src/desk/emptyPlan';
import { rooftop } from '../core/plan/edits/rooftop';

const SQUARE: readonly Spot[] = [
  [-6, -6],
  [6, -6],
  [6, 6],
  [-6, 6],
];

function put(plan: Plan, entryId: string, spots: readonly Spot[], headingDegrees?: number) {
  const made = makeItem(plan, entryId, { spots, ...(headingDegrees !== undefined && { headingDegrees }) });
  if (!made) throw new Error(`${entryId} was not made`);
  expect(parsePlan(made.plan)).toEqual({ ok: true, value: made.plan });
  return made;
}

const recordOf = (plan: Plan, id: string) => itemOf(plan, id)?.record;

test('every kind of set piece and gear can be put, but for a model, which comes out of a file', () => {
  const kinds = [...pieceSchema.options, ...gearSchema.options].map(({ entries }) => entries.kind.literal);
  const offered = new Set(PALETTE.map(({ kind }) => kind));
  expect(kinds.filter((kind) => !offered.has(kind))).toEqual(['model']);
  expect(offered.has('performer')).toBe(true);
  expect(new Set(PALETTE.map(({ id }) => id)).size).toBe(PALETTE.length);
  expect(new Set(PALETTE.map(({ word }) => word)).size).toBe(PALETTE.length);
  expect(new Set(PALETTE.map(({ group }) => group))).toEqual(new Set(PALETTE_GROUPS));
});

test.each(PALETTE.map(({ id }) => id))('%s goes onto a roof and onto nothing, and says what it is', (id) => {
  const roof = put(EMPTY_PLAN, 'deck', SQUARE).plan;
  for (const plan of id === 'deck-hole' ? [roof] : [roof, EMPTY_PLAN]) {
    const before = JSON.stringify(plan);
    const made = put(plan, id, [
      [-2, -1],
      [2, -1],
      [1, 3],
    ]);
    const item = itemOf(made.plan, made.id);
    const area = made.plan.ground.areas?.at(-1);
    if (area) expect(area).toMatchObject({ id: made.id, wetness: id === 'dry-area' ? 'dry' : 'wet down' });
    else if (id === 'meter') expect(made.plan.probes?.at(-1)?.id).toBe(made.id);
    else expect(item && kindOf(item)).toBe(paletteEntryOf(id)?.kind);
    expect(made.ids.at(-1)).toBe(made.id);
    expect(JSON.stringify(plan), 'the plan that went in is as it was').toBe(before);
    expect(
      parsePlan(
        put(made.plan, id, [
          [-1, 4],
          [1, 4],
          [0, 5],
        ]).plan,
      ).ok,
    ).toBe(true);
  }
});

test('every class of stand and of head that the crew brings is offered', () => {
  const made = PALETTE.reduce((plan: Plan, { id }) => {
    const after = makeItem(plan, id, {
      spots: [
        [0, 0],
        [3, 0],
        [3, 3],
      ],
    });
    return after?.plan ?? plan;
  }, EMPTY_PLAN);
  expect(new Set(made.kit.stands.map(({ id }) => id))).toEqual(new Set(STANDS.map(({ id }) => id)));
  expect(new Set(made.kit.heads.map(({ id }) => id))).toEqual(new Set(HEADS.map(({ id }) => id)));
});

describe('makeItem', () => {
  test('a lamp brings its stand, its class and the next free numbers', () => {
    const { plan, id, ids } = put(rooftop(), 'lamp-led-fresnel-300', [[5, 5]]);
    expect(ids).toHaveLength(2);
    expect(recordOf(plan, id)).toMatchObject({ label: 'Head 2', place: { on: ids[0] }, aim: [0, 1.3, 0] });
    expect(recordOf(plan, ids[0])).toMatchObject({
      label: 'Lamp stand 2',
      stand: 'three-riser-stand',
      at: [5, 0, 5],
      heightMetres: 2.8,
    });
    expect(plan.kit.heads.map((entry) => entry.id)).toEqual(['panel', 'led-fresnel-300']);
    expect(plan.kit.stands.map((entry) => entry.id)).toEqual(['medium', 'three-riser-stand']);
  });

  test('a number is not given twice, and a freed one is given again', () => {
    const first = put(EMPTY_PLAN, 'sandbag', [[0, 0]]);
    const second = put(first.plan, 'sandbag', [[1, 0]]);
    expect(recordOf(second.plan, second.id)?.label).toBe('Sandbag 2');
    const without = { ...second.plan, gear: second.plan.gear.slice(1) };
    const third = put(without, 'sandbag', [[2, 0]]);
    expect(recordOf(third.plan, third.id)?.label).toBe('Sandbag 1');
  });

  test('a flag put at the end of an empty stand goes on it, and the next brings its own', () => {
    const stand = put(EMPTY_PLAN, 'combo-stand-arm', [[0, 0]], 90);
    // The arm is 1.2 m long and rises by 20 degrees: its end is 1.13 m to the right.
    const on = put(stand.plan, 'flag', [[1.1, 0.1]]);
    expect(recordOf(on.plan, on.id)).toMatchObject({ place: { on: stand.id } });
    const next = put(on.plan, 'flag', [[1.1, 0.1]]);
    expect(next.ids).toHaveLength(2);
    expect(put(stand.plan, 'flag', [[0, 0]]).ids, 'the foot is too far from the end').toHaveLength(2);
  });

  test('a cable is plugged into what stands at its ends', () => {
    const generator = put(EMPTY_PLAN, 'generator', [[0, 0]]);
    const lamp = put(generator.plan, 'lamp-led-panel', [[8, 2]]);
    const cable = put(lamp.plan, 'cable', [
      [0.3, 0.2],
      [4, 1],
      [7.8, 2.1],
    ]);
    expect(recordOf(cable.plan, cable.id)).toMatchObject({
      path: [
        [0, 0],
        [4, 1],
        [8, 2],
      ],
      plugs: { from: generator.id, to: lamp.id },
    });
    expect(
      recordOf(
        put(generator.plan, 'cable', [
          [3, 3],
          [4, 1],
        ]).plan,
        'cable-1',
      ),
    ).not.toHaveProperty('plugs');
  });

  test('what is put on a riser stands on it', () => {
    const riser = put(EMPTY_PLAN, 'riser', [[0, 0]]);
    expect(recordOf(put(riser.plan, 'small-stand', [[0.5, 0.2]]).plan, 'stand-1')).toMatchObject({
      at: [0.5, 0.4, 0.2],
    });
    const man = put(riser.plan, 'man', [[0, 0]]);
    expect(man.plan.cast[0]?.marks[0]).toMatchObject({ floorMetres: 0.4, beat: 'begin' });
    expect(man.plan.beats.map(({ id }) => id)).toEqual(['begin', 'end']);
  });

  test('curved track goes through both its ends', () => {
    const { plan, id } = put(EMPTY_PLAN, 'curved-track', [
      [0, 0],
      [0, -4],
    ]);
    // Radius 4, chord 4: half the angle is 30 degrees, so it bulges by 4 − 4 cos 30° to the left.
    expect(recordOf(plan, id)).toMatchObject({
      headingDegrees: 0,
      at: [-0.535898, 0, -2],
      lengthMetres: 4.18879,
      bendMetres: 4,
    });
  });

  test('a pane takes the width between its ends and faces across', () => {
    const { plan, id } = put(EMPTY_PLAN, 'glass-pane', [
      [-1, 0],
      [2, 0],
    ]);
    expect(recordOf(plan, id)).toMatchObject({ at: [0.5, 0, 0], widthMetres: 3, headingDegrees: 0 });
  });

  test('a washing line is tied to the posts that it ends at', () => {
    const one = put(EMPTY_PLAN, 'washing-post', [[0, 0]]);
    const line = put(one.plan, 'washing-line', [
      [0.1, 0.1],
      [4, 0],
    ]);
    expect(recordOf(line.plan, line.id)).toMatchObject({ from: [0, 2.15, 0], to: [4, 2.1, 0] });
  });

  test('a deck drawn on a deck is a step up, and a hole is cut through the one that it lies in', () => {
    const deck = put(EMPTY_PLAN, 'deck', SQUARE);
    const step = put(deck.plan, 'deck', [
      [1, 1],
      [3, 1],
      [3, 3],
    ]);
    expect(recordOf(step.plan, step.id)).toMatchObject({ topMetres: 0.15, dropMetres: 0.15 });
    const hole = put(deck.plan, 'deck-hole', [
      [1, 1],
      [3, 1],
      [3, 3],
    ]);
    expect(hole.id).toBe(deck.id);
    expect(recordOf(hole.plan, deck.id)).toMatchObject({
      holes: [
        {
          id: 'hole-1',
          outline: [
            [1, 1],
            [3, 1],
            [3, 3],
          ],
        },
      ],
    });
    expect(
      makeItem(deck.plan, 'deck-hole', {
        spots: [
          [5, 5],
          [9, 5],
          [9, 9],
        ],
      }),
    ).toBeNull();
  });

  test('too little drawn, an entry that is not there, and a full plan give nothing', () => {
    expect(
      makeItem(EMPTY_PLAN, 'wall', {
        spots: [
          [0, 0],
          [0, 0],
        ],
      }),
    ).toBeNull();
    expect(
      makeItem(EMPTY_PLAN, 'deck', {
        spots: [
          [0, 0],
          [1, 0],
        ],
      }),
    ).toBeNull();
    expect(makeItem(EMPTY_PLAN, 'crate', { spots: [] })).toBeNull();
    expect(makeItem(EMPTY_PLAN, 'crane', { spots: [[0, 0]] })).toBeNull();
    const crowd = Array.from({ length: 60 }).reduce(
      (plan: Plan) => put(plan, 'man', [[0, 0]]).plan,
      EMPTY_PLAN,
    );
    expect(makeItem(crowd, 'man', { spots: [[1, 0]] })).toBeNull();
  });

  test('a run drawn back to its first corner is closed', () => {
    const { plan, id } = put(EMPTY_PLAN, 'fence', [...SQUARE, SQUARE[0]]);
    expect(recordOf(plan, id)).toMatchObject({ closed: true, path: SQUARE });
    expect(itemsOf(plan)).toHaveLength(1);
  });
});
