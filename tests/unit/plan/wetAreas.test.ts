import { describe, expect, test } from 'vitest';
import { addArea } from '../../../src/core/plan/edits/addArea';
import { changeArea } from '../../../src/core/plan/edits/changeArea';
import { insertCorner } from '../../../src/core/plan/edits/insertCorner';
import { moveArea } from '../../../src/core/plan/edits/moveArea';
import { removeArea } from '../../../src/core/plan/edits/removeArea';
import { removeCorner } from '../../../src/core/plan/edits/removeCorner';
import { setCorner } from '../../../src/core/plan/edits/setCorner';
import { setLegLength } from '../../../src/core/plan/edits/setLegLength';
import { parsePlan } from '../../../src/core/plan/parse';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import { wetnessAt } from '../../../src/core/plan/wetness';
import { wetNotices } from '../../../src/core/report/wetNotices';
import { smallRoof, smallRoofDocument } from '../smallRoof';

const square = (x: number, z: number, half: number): Spot[] => [
  [x - half, z - half],
  [x + half, z - half],
  [x + half, z + half],
  [x - half, z + half],
];

const ROOF = { ...smallRoof(), ground: { surface: 'asphalt', wetness: 'dry' } as const };
const WET = addArea(addArea(ROOF, { wetness: 'wet down', outline: square(0, 0, 2) }), {
  wetness: 'puddled',
  outline: square(1, 1, 0.5),
});
const areas = (plan: typeof WET) => plan.ground.areas ?? [];

describe('wet areas', () => {
  test('the later lies over the earlier, and outside of all it is as wet as the ground', () => {
    expect(wetnessAt(WET, [1, 1])).toBe('puddled');
    expect(wetnessAt(WET, [-1, 1])).toBe('wet down');
    expect(wetnessAt(WET, [3, 0])).toBe('dry');
  });

  test('are named, made wetter, moved, shaped by corners and lengths, and taken away', () => {
    const [big, small] = areas(WET).map(({ id }) => id);
    const named = changeArea(WET, { id: small, patch: { label: ' By the hatch ', wetness: 'damp' } });
    expect(areas(named)[1]).toMatchObject({ label: 'By the hatch', wetness: 'damp' });
    expect(changeArea(named, { id: small, patch: { label: undefined } }).ground.areas?.[1]).toEqual({
      ...areas(WET)[1],
      wetness: 'damp',
    });
    expect(wetnessAt(moveArea(WET, { id: small, by: [4, 0] }), [5, 1])).toBe('puddled');
    expect(areas(setCorner(WET, { id: big, index: 0, to: [-3, -3] }))[0].outline[0]).toEqual([-3, -3]);
    const five = insertCorner(WET, { id: big, index: 3, at: [-4, 0] });
    expect(wetnessAt(five, [-3, 0])).toBe('wet down');
    expect(removeCorner(five, { id: big, index: 4 })).toEqual(WET);
    expect(wetnessAt(setLegLength(WET, { id: big, index: 0, metres: 6 }), [3.5, 0])).toBe('wet down');
    expect(removeArea(removeArea(WET, { id: big }), { id: small })).toEqual(ROOF);
  });

  test('what cannot be changes nothing', () => {
    expect(addArea(WET, { wetness: 'dry', outline: square(0, 0, 1).slice(0, 2) })).toBe(WET);
    expect(changeArea(WET, { id: 'area-1', patch: { label: '' } })).toBe(WET);
    expect(moveArea(WET, { id: 'nobody', by: [1, 1] })).toBe(WET);
    expect(removeCorner(removeCorner(WET, { id: 'area-1', index: 0 }), { id: 'area-1', index: 0 })).toEqual(
      removeCorner(WET, { id: 'area-1', index: 0 }),
    );
    const full = Array.from({ length: 60 }).reduce<typeof ROOF>(
      (plan) => addArea(plan, { wetness: 'damp', outline: square(0, 0, 1) }) as typeof ROOF,
      ROOF,
    );
    expect(addArea(full, { wetness: 'dry', outline: square(0, 0, 1) })).toBe(full);
  });

  test('are read strictly, and two of one id are a fault', () => {
    const read = (list: readonly object[]) =>
      parsePlan({ ...smallRoofDocument(), ground: { surface: 'felt', wetness: 'dry', areas: list } });
    const [area] = areas(WET);
    const sentences = (list: readonly object[]): string => {
      const found = read(list);
      return found.ok ? '' : found.faults.map(({ sentence }) => sentence).join('\n');
    };
    expect(sentences([area])).toBe('');
    expect(sentences([{ ...area, outline: area.outline.slice(1, 3) }])).toContain('at least three corners');
    expect(sentences([{ ...area, wetness: 'soaked' }])).toContain('dry, damp, wet down or puddled');
    expect(sentences([area, area])).toContain('an id of its own');
  });

  test('that lie off every deck, cross themselves or make no difference are told', () => {
    const told = (outline: Spot[]) =>
      wetNotices(addArea(ROOF, { wetness: 'puddled', outline })).map(({ sentence }) => sentence);
    expect(told(square(0, 0, 1))).toEqual([]);
    expect(told(square(900, 0, 1))[0]).toContain('lies beside every deck');
    expect(
      told([
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
      ])[0],
    ).toContain('crosses itself');
  });
});
