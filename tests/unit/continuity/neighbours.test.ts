import { describe, expect, test } from 'vitest';
import { neighbourFindings } from '../../../src/core/continuity/neighbours';
import { staged } from '../../plans/staged';

const ANA = { ana: [{ at: [0, 0], heading: 180 }] } as const;

/** A camera so far from ana, so many degrees round her from +z towards +x. */
const round = (id: string, degrees: number, metres = 4, extra: object = {}) => {
  const turn = (degrees * Math.PI) / 180;
  return { id, keys: [{ at: [metres * Math.sin(turn), metres * Math.cos(turn)] as const }], ...extra };
};

const told = (first: ReturnType<typeof round>, second: ReturnType<typeof round>) =>
  neighbourFindings(staged({ cast: ANA, setups: [first, second] }));

describe('neighbouring setups of one person', () => {
  test('less than thirty degrees apart at one size are a jump, one finding', () => {
    const [turn, ...more] = told(round('a', 0), round('b', 20));
    expect(turn).toMatchObject({
      kind: 'thirty degrees',
      standing: 'breaks',
      setupId: 'b',
      againstId: 'a',
      steps: 0,
    });
    // Her eyes lie a little before the spot that both cameras go round.
    expect(turn.angleDegrees).toBeGreaterThan(19.5);
    expect(turn.angleDegrees).toBeLessThan(21);
    expect(more).toEqual([]);
  });

  test('more than thirty degrees apart hold at any size', () => {
    expect(told(round('a', 0), round('b', 40))).toMatchObject([
      { kind: 'thirty degrees', standing: 'holds' },
      { kind: 'size change', standing: 'holds', steps: 0 },
    ]);
  });

  test('little apart and one size tighter are said, two sizes and more are a cut along the axis', () => {
    expect(told(round('a', 0, 4), round('b', 5, 2.6))).toMatchObject([
      { kind: 'thirty degrees', standing: 'said', steps: -1 },
      { kind: 'size change', standing: 'holds', steps: -1 },
    ]);
    const [turn, size] = told(round('a', 0, 5), round('b', 0, 1.6));
    expect(turn).toMatchObject({ kind: 'thirty degrees', standing: 'holds' });
    expect(size.steps).toBeLessThanOrEqual(-2);
  });

  test('are compared where they are most alike', () => {
    const going = {
      id: 'b',
      keys: [
        { atSeconds: 0, at: [3.4, 0] },
        { atSeconds: 4, at: [0.6, 3.4] },
      ],
    } as const;
    const plan = staged({ cast: ANA, setups: [round('a', 0, 3.4), going] });
    expect(neighbourFindings(plan)[0]).toMatchObject({ standing: 'breaks', atSeconds: 4, againstSeconds: 4 });
  });

  test('where they share no time, are compared at the nearest ends', () => {
    const beats = { start: 0, first: 2, second: 3, end: 4 };
    const plan = staged({
      cast: ANA,
      beats,
      setups: [round('a', 0, 4, { to: 'first' }), round('b', 20, 4, { from: 'second' })],
    });
    expect(neighbourFindings(plan)[0]).toMatchObject({ standing: 'breaks', atSeconds: 3, againstSeconds: 2 });
  });

  test('are left alone where they are about different people, or nobody', () => {
    const cast = { ana: [{ at: [-3, 0], heading: 180 }], bea: [{ at: [3, 0], heading: 180 }] } as const;
    const on = (id: string, x: number) => ({
      id,
      keys: [{ at: [x, 3], heading: 0 }] as const,
      lens: 'long' as const,
    });
    expect(neighbourFindings(staged({ cast, setups: [on('a', -3), on('b', 3)] }))).toEqual([]);
    expect(neighbourFindings(staged({ cast, setups: [on('a', -3), on('b', 30)] }))).toEqual([]);
  });
});
