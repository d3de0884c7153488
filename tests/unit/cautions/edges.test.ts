import { describe, expect, test } from 'vitest';
import { about, DECK, figureOf, HOUSE, parapet, performerAt, roof, standAt } from './roof';

describe('edges', () => {
  test('a guardrail of 42 inches, and one 3 inches lower, guards the edge; a lower parapet does not', () => {
    for (const height of [1.067, 0.995, 1.3])
      expect(about(roof({ pieces: [DECK, parapet(height)] }), 'edge-open')).toEqual([]);
    const [open] = about(roof({ pieces: [DECK, parapet(0.9)] }), 'edge-open');
    expect(open?.standing).toBe('breaks');
    expect(figureOf(open, 'edge without a guard')).toBeCloseTo(64, 6);
    expect(figureOf(open, 'height of what stands along it')).toBeCloseTo(0.9, 9);
    expect(open?.stretches).toHaveLength(4);
  });

  test('a drop under six feet wants no guard', () => {
    const street = {
      ...DECK,
      id: 'street',
      label: 'Street',
      outline: DECK.outline.map(([x, z]) => [2 * x, 2 * z]),
    };
    const over = (topMetres: number) =>
      roof({
        pieces: [
          { ...DECK, topMetres, dropMetres: topMetres },
          { ...street, topMetres: 0, dropMetres: 1 },
        ],
      });
    expect(about(over(1.7), 'edge-open').filter(({ itemIds }) => itemIds.includes('deck'))).toEqual([]);
    expect(about(over(2), 'edge-open').filter(({ itemIds }) => itemIds.includes('deck'))).toHaveLength(1);
  });

  test('only the stretch that a gap leaves open is told', () => {
    const { path, ...rest } = parapet(1.2);
    const pieces = [DECK, { ...rest, closed: false, path: [...path.slice(1), path[0], [6.9, -5.9]] }];
    const [open] = about(roof({ pieces }), 'edge-open');
    const length = figureOf(open, 'edge without a guard');
    // From 6.9 to 9.9, less the parapet's own ends, within a piece of 0.25 m and what a guard may stand beside.
    expect(length).toBeGreaterThan(2);
    expect(length).toBeLessThan(3.3);
    expect(open?.place?.[2]).toBe(-6);
  });

  test('somebody within six feet of an open edge, at a mark or on a walk, and nobody farther in', () => {
    const at = (...spots: number[][]) =>
      about(roof({ pieces: [DECK], cast: [performerAt('Ann', ...spots)] }), 'edge-people/Ann');
    expect(at([0, 4])).toEqual([]);
    expect(figureOf(at([0, 4.5])[0], 'from an open edge')).toBeCloseTo(1.5, 6);
    // Round the corner of the roof: neither mark is near.
    expect(at([-7, 0], [7, 0])).toEqual([]);
    const [passing] = at([8.1, -2], [8.1, 2], [0, 0]).length > 0 ? [] : at([8.3, -2], [8.3, 2]);
    expect(figureOf(passing, 'from an open edge')).toBeCloseTo(1.7, 6);
  });

  test('stands near it are told together, the nearest by name', () => {
    const gear = [standAt('one', [9, 0, 0]), standAt('two', [0, 0, 5.5]), standAt('far', [0, 0, 0])];
    const [found] = about(roof({ pieces: [DECK], gear }), 'edge-gear');
    expect(found?.id).toBe('edge-gear/one/two');
    expect(found?.sentence).toContain('two at 0.5\u00a0m');
  });

  test('the roof of a stair house has edges of its own', () => {
    const up = { ...performerAt('Ann'), marks: [] };
    const mark = { ...performerAt('Ann', [-8, 0]).marks[0], floorMetres: 2.72 };
    const plan = roof({ pieces: [DECK, parapet(1.2), HOUSE], cast: [{ ...up, marks: [mark] }] });
    const [found] = about(plan, 'edge-people/Ann');
    expect(figureOf(found, 'from an open edge')).toBeCloseTo(1.5, 6);
    expect(found?.sentence).toContain('Stair house');
  });

  test('on a roof of a house what is 3 inches lower guards too, and what is too low is told as high as it is', () => {
    const on = (height: number) => {
      const rail = {
        ...parapet(height),
        id: 'rail',
        baseMetres: 2.72,
        path: [
          [-9.4, -1.4],
          [-6.6, -1.4],
          [-6.6, 1.4],
          [-9.4, 1.4],
        ],
        thicknessMetres: 0.1,
      };
      const marks = [{ ...performerAt('Ann', [-8, 0]).marks[0], floorMetres: 2.72 }];
      const plan = roof({
        pieces: [DECK, parapet(1.2), HOUSE, rail],
        cast: [{ ...performerAt('Ann'), marks }],
      });
      return about(plan, 'edge-people/Ann');
    };
    expect(on(1)).toEqual([]);
    expect(figureOf(on(0.6)[0], 'height of what stands along it')).toBeCloseTo(0.6, 6);
    expect(on(0.6)[0]?.sentence).toContain('what stands along it is 0.60\u00a0m high');
  });

  test('a ladder beside a hole is told of the hole', () => {
    const holes = [
      {
        id: 'shaft',
        outline: [
          [0, 0],
          [2, 0],
          [2, 2],
          [0, 2],
        ],
      },
    ];
    const gear = [
      { id: 'ladder', label: 'Ladder', kind: 'ladder', at: [-1, 0, 1], headingDegrees: 0, heightMetres: 1.6 },
    ];
    const [found] = about(roof({ pieces: [{ ...DECK, holes }, parapet(1.2)], gear }), 'ladder-edge');
    expect(found?.sentence).toContain('from a hole in Deck');
  });

  test('who stands on a ladder needs a guard that is as much higher', () => {
    const ladder = (heightMetres: number, x: number) => ({
      id: 'ladder',
      label: 'Ladder',
      kind: 'ladder',
      at: [x, 0, 0],
      headingDegrees: 0,
      heightMetres,
    });
    const pieces = [DECK, parapet(1.2)];
    expect(about(roof({ pieces, gear: [ladder(0.7, 9.2)] }), 'ladder-edge')).toEqual([]);
    const [found] = about(roof({ pieces, gear: [ladder(2.4, 8.5)] }), 'ladder-edge');
    expect(found?.figures[1]).toMatchObject({ value: 1.2, expected: expect.closeTo(2.9, 9) });
    // Whoever falls with it falls as far as it is high.
    expect(about(roof({ pieces, gear: [ladder(2.4, 7.7)] }), 'ladder-edge')).toHaveLength(1);
    expect(about(roof({ pieces, gear: [ladder(2.4, 7.5)] }), 'ladder-edge')).toEqual([]);
  });

  test('a ladder beside a wall is told how far its foot stands out: a quarter of its length', () => {
    const gear = [
      {
        id: 'ladder',
        label: 'Ladder',
        kind: 'ladder',
        at: [-6, 0, 0],
        headingDegrees: 90,
        heightMetres: 3.2,
      },
    ];
    const [found] = about(roof({ pieces: [DECK, parapet(1.2), HOUSE], gear }), 'ladder-lean');
    expect(figureOf(found, 'foot out where it is leaned')).toBeCloseTo(0.8, 9);
  });
});
