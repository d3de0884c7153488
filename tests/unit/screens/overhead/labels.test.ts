import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { sharedArea } from '../../../../src/screens/overhead/geometry/clipping';
import {
  type LabelWish,
  type Obstacles,
  placeLabels,
} from '../../../../src/screens/overhead/geometry/labels';
import type { Bounds } from '../../../../src/screens/overhead/geometry/spots';

const PANE: Bounds = [0, 0, 700, 700];
const NOTHING: Obstacles = { boxes: [], lines: [], blocked: [] };

const wish = (id: string, around: Bounds, more: Partial<LabelWish> = {}): LabelWish => ({
  id,
  text: id,
  width: 60,
  height: 14,
  around,
  priority: 1,
  inside: false,
  worth: 10,
  ...more,
});

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const box = fc
  .tuple(number(0, 680), number(0, 680), number(4, 200), number(4, 200))
  .map(([left, top, width, height]): Bounds => [left, top, left + width, top + height]);
const wishes = fc.array(
  fc
    .record({
      around: box,
      width: number(8, 140),
      priority: fc.integer({ min: 0, max: 5 }),
      inside: fc.boolean(),
    })
    .map((more) => wish('', more.around, more)),
  { maxLength: 60 },
);
const obstacles = fc.record({
  boxes: fc.array(fc.record({ owner: fc.constantFrom('0', '1', 'x'), bounds: box, cost: number(0, 3) }), {
    maxLength: 20,
  }),
  lines: fc.array(
    fc.record({
      from: fc.tuple(number(0, 700), number(0, 700)),
      to: fc.tuple(number(0, 700), number(0, 700)),
      cost: number(0, 3),
    }),
    { maxLength: 20 },
  ),
  blocked: fc.array(box, { maxLength: 4 }),
});

describe('placing labels', () => {
  test.prop([wishes, obstacles])(
    'no two names overlap, none leaves the pane or stands where nothing may',
    (all, around) => {
      const named = all.map((each, index) => ({ ...each, id: String(index) }));
      const placed = placeLabels(named, around, PANE);
      placed.forEach((one, index) => {
        const [left, top, right, bottom] = one.bounds;
        expect(left >= 0 && top >= 0 && right <= 700 && bottom <= 700).toBe(true);
        for (const bounds of around.blocked) expect(sharedArea(bounds, one.bounds)).toBe(0);
        for (const other of placed.slice(index + 1)) expect(sharedArea(other.bounds, one.bounds)).toBe(0);
      });
    },
  );

  test('a name stands inside what has room for it, else beside', () => {
    const [shed] = placeLabels([wish('shed', [100, 100, 220, 150], { inside: true })], NOTHING, PANE);
    expect(shed.inside).toBe(true);
    const [stand] = placeLabels([wish('stand', [100, 100, 120, 120], { inside: true })], NOTHING, PANE);
    expect(stand.bounds[0]).toBeGreaterThanOrEqual(120);
  });

  test('it keeps off other symbols and off lines', () => {
    const around: Obstacles = {
      boxes: [{ owner: 'other', bounds: [122, 90, 200, 130], cost: 2 }],
      lines: [{ from: [0, 124], to: [700, 124], cost: 2 }],
      blocked: [],
    };
    const [name] = placeLabels([wish('stand', [100, 100, 120, 120])], around, PANE);
    expect(sharedArea(name.bounds, [122, 90, 200, 130])).toBe(0);
    expect(name.bounds[3] <= 124 || name.bounds[1] >= 124).toBe(true);
  });

  test('what is worth little is left out where it would cover something', () => {
    const around: Obstacles = {
      ...NOTHING,
      boxes: [{ owner: 'other', bounds: [0, 0, 300, 300], cost: 2 }],
    };
    expect(placeLabels([wish('sandbag', [100, 100, 120, 120], { worth: 0.9 })], around, PANE)).toEqual([]);
    expect(placeLabels([wish('performer', [100, 100, 120, 120])], around, PANE)).toHaveLength(1);
  });

  test('the more important name gets the better place', () => {
    const placed = placeLabels(
      [wish('low', [100, 100, 120, 120]), wish('high', [100, 100, 120, 120], { priority: 5 })],
      NOTHING,
      PANE,
    );
    expect(placed[0].id).toBe('high');
    expect(placed).toHaveLength(2);
  });
});
