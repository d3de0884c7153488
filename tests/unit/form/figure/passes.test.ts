import { describe, expect, test } from 'vitest';
import { carriedAt, propLanes } from '../../../../src/core/form/figure/carrying';
import type { Performer, Stance } from '../../../../src/core/plan/schema/cast';
import { boxOf, MAN, named, partsOf, troupe, WOMAN } from './people';

const one = (id: string, prop?: Performer['prop']): Performer => ({ ...MAN, id, ...(prop && { prop }) });
const there = (who: Performer) => ({ who, marks: [{ atSeconds: 0 }] });
const pass = (atSeconds: number, from: string, to: string) => ({ atSeconds, from, to });

describe('who holds what when', () => {
  test('up to the beat the giver, from it on the taker', () => {
    const plan = troupe([there(one('a', 'bird')), there(one('b'))], [pass(4, 'a', 'b')]);
    expect([0, 3.999, 4, 100].map((seconds) => carriedAt(plan, 'a', seconds))).toEqual([
      'bird',
      'bird',
      null,
      null,
    ]);
    expect([0, 3.999, 4, 100].map((seconds) => carriedAt(plan, 'b', seconds))).toEqual([
      null,
      null,
      'bird',
      'bird',
    ]);
    expect(propLanes(plan)).toEqual([
      {
        prop: 'bird',
        holds: [
          { performerId: 'a', fromSeconds: 0, untilSeconds: 4 },
          { performerId: 'b', fromSeconds: 4, untilSeconds: null },
        ],
      },
    ]);
  });

  test('on from hand to hand, whatever the order in the record, at one beat too', () => {
    const cast = [there(one('a', 'ball')), there(one('b')), there(one('c'))];
    const slowly = troupe(cast, [pass(9, 'b', 'c'), pass(4, 'a', 'b')]);
    expect([3, 5, 9].map((seconds) => ['a', 'b', 'c'].find((id) => carriedAt(slowly, id, seconds)))).toEqual([
      'a',
      'b',
      'c',
    ]);
    const atOnce = troupe(cast, [pass(4, 'b', 'c'), pass(4, 'a', 'b')]);
    expect(['a', 'b', 'c'].map((id) => carriedAt(atOnce, id, 4))).toEqual([null, null, 'ball']);
  });

  test('who has nothing gives nothing; full hands take nothing, unless the two swap', () => {
    const cast = [there(one('a', 'ball')), there(one('b', 'box')), there(one('c'))];
    expect(carriedAt(troupe(cast, [pass(4, 'c', 'a')]), 'a', 5)).toBe('ball');
    const full = troupe(cast, [pass(4, 'a', 'b')]);
    expect(['a', 'b'].map((id) => carriedAt(full, id, 5))).toEqual(['ball', 'box']);
    const swap = troupe(cast, [pass(4, 'a', 'b'), pass(4, 'b', 'a')]);
    expect(['a', 'b'].map((id) => carriedAt(swap, id, 5))).toEqual(['box', 'ball']);
  });
});

/** He with the thing at the left, she at the right, so far apart, facing each other; she has it from 2 s on. */
const duo = (prop: Performer['prop'], metres: number, his: Stance = 'stand', hers: Stance = 'stand') =>
  troupe(
    [
      { who: one('a', prop), marks: [{ atSeconds: 0, headingDegrees: 90, stance: his }] },
      {
        who: { ...WOMAN, id: 'b' },
        marks: [{ atSeconds: 0, at: [metres, 0], headingDegrees: 270, stance: hers }],
      },
    ],
    [pass(2, 'a', 'b')],
  );
const middleOf = (parts: Parameters<typeof boxOf>[0]) => {
  const { low, high } = boxOf(parts);
  return low.map((value, axis) => (value + high[axis]) / 2);
};

describe.each([
  ['bird', 'holding', 'stand'],
  ['box', 'holding', 'holding'],
  ['case', 'stand', 'stand'],
  ['ball', 'stand', 'holding'],
] as const)('a %s, %s to %s', (prop, his, hers) => {
  const plan = duo(prop, 1, his, hers);
  const propAt = (seconds: number) => {
    const own = ['a', 'b'].map((id) => named(partsOf(plan, id, seconds), 'prop'));
    expect(own.filter((parts) => parts.length > 0)).toHaveLength(1);
    return middleOf(own.flat());
  };

  test('does not jump at the beat: it is between the two, where their hands are', () => {
    const [before, after] = [propAt(2 - 1e-6), propAt(2)];
    after.forEach((value, axis) => {
      expect(value).toBeCloseTo(before[axis], 2);
    });
    expect(after[0]).toBeGreaterThan(0.35);
    expect(after[0]).toBeLessThan(0.65);
    for (const id of ['a', 'b']) {
      const [right] = named(partsOf(plan, id, 2), 'hands');
      const reached = middleOf([right]);
      expect(Math.hypot(...reached.map((value, axis) => value - after[axis]))).toBeLessThan(0.3);
    }
  });

  test('never moves faster than hands do, and neither do the hands', () => {
    const handsAt = (seconds: number) =>
      ['a', 'b'].flatMap((id) =>
        named(partsOf(plan, id, seconds), 'hands').map((hand) => hand.worldFromPart ?? []),
      );
    for (let frame = 24; frame < 72; frame += 1) {
      const [one, other] = [propAt(frame / 24), propAt((frame + 1) / 24)];
      expect(Math.hypot(...one.map((value, axis) => value - other[axis])) * 24).toBeLessThan(4);
      const [now, then] = [handsAt(frame / 24), handsAt((frame + 1) / 24)];
      now.forEach((m, k) => {
        expect(Math.hypot(...[3, 7, 11].map((n) => m[n] - then[k][n])) * 24).toBeLessThan(4);
      });
    }
  });
});

test('out of reach nobody reaches, and the giver’s hands relax', () => {
  const plan = duo('bird', 6);
  const handAt = (id: string, seconds: number) =>
    named(partsOf(plan, id, seconds), 'hands')[0].worldFromPart ?? [];
  expect(handAt('a', 1)).toEqual(handAt('a', 1.99));
  // The forearm comes down.
  expect(handAt('a', 3)[7]).toBeLessThan(handAt('a', 1)[7] - 0.1);
  expect(handAt('b', 3)[7]).toBeGreaterThan(handAt('b', 1)[7] + 0.1);
});

test('shapes stay the same objects, whoever has what in hand', () => {
  const plan = duo('bird', 1);
  const [before, after] = [partsOf(plan, 'a', 0), partsOf(plan, 'a', 5)];
  const shapes = new Set(before.map(({ shape }) => shape));
  expect(after.filter(({ name }) => name !== 'hands').every(({ shape }) => shapes.has(shape))).toBe(true);
  const taken = named(partsOf(plan, 'b', 5), 'prop').map(({ shape }) => shape);
  named(before, 'prop').forEach(({ shape }, k) => {
    expect(taken[k]).toBe(shape);
  });
});
