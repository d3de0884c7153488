import { describe, expect, test } from 'vitest';
import { coverageOf } from '../../../src/core/continuity/coverage';
import { FACE_TO_FACE, MASTER, staged } from '../../plans/staged';

const BEATS = { start: 0, middle: 4, end: 10 };

describe('coverage', () => {
  test('has each performer and each pair in every interval, by setup, share and size', () => {
    const single = {
      id: 'single',
      keys: [{ at: [0.4, 1.2], lookAt: [-1, 0] }],
      lens: 'long',
      to: 'middle',
    } as const;
    const { intervals, rows } = coverageOf(
      staged({ cast: FACE_TO_FACE, beats: BEATS, setups: [{ ...MASTER, to: 'end' }, single] }),
    );
    expect(intervals).toEqual([
      { fromBeat: 'start', toBeat: 'middle', fromSeconds: 0, toSeconds: 4 },
      { fromBeat: 'middle', toBeat: 'end', fromSeconds: 4, toSeconds: 10 },
    ]);
    expect(rows.map(({ performerIds }) => performerIds)).toEqual([['ana'], ['bea'], ['ana', 'bea']]);
    const [ana, bea, both] = rows;
    expect(ana.cells[0].setups.map(({ setupId, share }) => [setupId, share])).toEqual([
      ['master', 1],
      ['single', 1],
    ]);
    expect(ana.cells[1].setups.map(({ setupId }) => setupId)).toEqual(['master']);
    expect(bea.cells[0].setups.map(({ setupId }) => setupId)).toEqual(['master']);
    expect(both.cells[0].setups).toHaveLength(1);
    // The lower frame line lies 1.5 m − 5 m × 9.33/40 = 0.33 m over the deck: between knee and ankle.
    expect(ana.cells[0].setups[0].size).toBe('medium long shot');
  });

  test('counts to a frame when somebody comes into a frame', () => {
    // She goes along x at an even pace once she is under way, and a camera that stands has her from some instant on.
    const { rows } = coverageOf(
      staged({
        cast: { ana: [{ at: [-8, 0] }, { at: [0, 0], beat: 'end' }] },
        setups: [{ id: 'long', keys: [{ at: [0, 10] }], lens: 'long' }],
      }),
    );
    const [cell] = rows[0].cells;
    expect(cell.isInPlay).toBe(true);
    expect((cell.share * 4 * 24) % 1).toBeCloseTo(0, 6);
    expect(cell.share).toBeGreaterThan(0.15);
    expect(cell.share).toBeLessThan(0.4);
    expect(cell.share).toBe(cell.setups[0].share);
  });

  test('counts what two setups have at once only once', () => {
    const { rows } = coverageOf(staged({ cast: FACE_TO_FACE, setups: [MASTER, { ...MASTER, id: 'again' }] }));
    expect(rows[0].cells[0].share).toBe(1);
  });

  test('has a hole where something happens with somebody and nobody has it', () => {
    const away = { id: 'away', keys: [{ at: [0, 5], heading: 180 }] } as const;
    const cast = {
      ana: [{ at: [0, 0] }, { at: [3, 0], beat: 'end' }],
      bea: [{ at: [1, 0] }],
      cyd: [],
    } as const;
    // Bea arrives at the start and then only stands; ana walks on.
    expect(coverageOf(staged({ cast, beats: BEATS, setups: [away] })).holes).toEqual([
      { performerIds: ['ana', 'bea'], fromBeat: 'start', toBeat: 'middle', fromSeconds: 0, toSeconds: 4 },
      { performerIds: ['ana'], fromBeat: 'middle', toBeat: 'end', fromSeconds: 4, toSeconds: 10 },
    ]);
  });

  test('is empty for a plan of one beat, and of none', () => {
    const plan = staged({ cast: FACE_TO_FACE, setups: [] });
    expect(coverageOf({ ...plan, beats: plan.beats.slice(0, 1) })).toMatchObject({
      intervals: [],
      holes: [],
    });
    expect(coverageOf({ ...plan, beats: [], cast: [] })).toEqual({ intervals: [], rows: [], holes: [] });
  });
});
