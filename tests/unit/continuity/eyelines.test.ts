import { describe, expect, test } from 'vitest';
import { eyelineWord } from '../../../src/core/continuity/eyelineAt';
import { type EyelineFinding, eyelineFindings } from '../../../src/core/continuity/eyelines';
import { FACE_TO_FACE, MASTER, type Staged, staged } from '../../plans/staged';

const findings = (plan: Partial<Staged>): readonly EyelineFinding[] =>
  eyelineFindings(staged({ cast: FACE_TO_FACE, setups: [MASTER], ...plan }));

/** Over bea's shoulder at ana, and over ana's at bea, both from the master's side. */
const ON_ANA = { id: 'on-ana', keys: [{ at: [1.6, 0.5], lookAt: [-1, 0] }], lens: 'long' } as const;
const ON_BEA = { id: 'on-bea', keys: [{ at: [-1.6, 0.5], lookAt: [1, 0] }], lens: 'long' } as const;

describe('an eyeline', () => {
  test('is in profile for who stands square to the lens, across it', () => {
    const [ana, bea] = findings({});
    // Eyes stand a little before the feet, so a little less than atan(5/1) off the lens, which is 78.7 or 101.3 degrees.
    expect(ana).toMatchObject({ what: 'alone', word: 'profile', side: 'right', atId: 'bea' });
    expect(bea).toMatchObject({ what: 'alone', word: 'profile', side: 'left', atId: 'ana' });
    expect(ana.offDegrees).toBeCloseTo(-bea.offDegrees, 0);
    expect(ana.offDegrees).toBeGreaterThan(75);
    expect(ana.offDegrees).toBeLessThan(85);
  });

  test('is told by its angle off the lens', () => {
    expect([0, -3, 4, 15, -16, 45, 60, 90, -104, 106, 180].map(eyelineWord)).toEqual([
      'into the lens',
      'into the lens',
      'near',
      'near',
      'three-quarter',
      'three-quarter',
      'wide',
      'profile',
      'profile',
      'turned away',
      'turned away',
    ]);
  });

  test('of 20° of turn, worked by hand', () => {
    const cast = { ana: [{ at: [0, 0], heading: 160 }] } as const;
    const [ana] = findings({ cast, setups: [{ id: 'front', keys: [{ at: [0, 6], height: 1.5 }] }] });
    // Seen from +z and turned from 180° to 160°, towards +x, which is frame right.
    expect(ana.side).toBe('right');
    expect(ana.offDegrees).toBeGreaterThan(19);
    expect(ana.offDegrees).toBeLessThan(22);
    expect(ana.atId).toBeNull();
  });

  test('goes above a low lens and below a high one', () => {
    const cast = { ana: [{ at: [0, 0], heading: 160 }] } as const;
    const ups = [0.5, 1.59, 2.6].map(
      (height) => findings({ cast, setups: [{ id: 's', keys: [{ at: [0, 6], height }] }] })[0].upDegrees,
    );
    expect(ups[0]).toBeGreaterThan(8);
    expect(Math.abs(ups[1])).toBeLessThan(2);
    expect(ups[2]).toBeLessThan(-8);
  });

  test('is not told of who turns away, is out of frame, or too small', () => {
    const away = { ana: [{ at: [0, 0], heading: 0 }] } as const;
    expect(findings({ cast: away })).toEqual([]);
    const front = { ana: [{ at: [0, 0], heading: 180 }] } as const;
    expect(findings({ cast: front, setups: [{ id: 's', keys: [{ at: [0, 5], heading: 180 }] }] })).toEqual(
      [],
    );
    expect(findings({ cast: front, setups: [{ id: 's', keys: [{ at: [0, 60] }] }] })).toEqual([]);
  });
});

describe('two singles', () => {
  const pairOf = (plan: Partial<Staged>): EyelineFinding | undefined =>
    findings({ setups: [MASTER, ON_ANA, ON_BEA], ...plan }).find(({ what }) => what !== 'alone');

  test('answer each other from one side of the line', () => {
    expect(pairOf({})).toMatchObject({
      what: 'meet',
      standing: 'holds',
      setupId: 'on-bea',
      againstId: 'on-ana',
      performerIds: ['bea', 'ana'],
      side: 'left',
      against: { side: 'right' },
    });
  });

  test('look the same way where one of them is over the line', () => {
    const over = { ...ON_BEA, keys: [{ at: [-1.6, -0.5], lookAt: [1, 0] }] } as const;
    expect(pairOf({ setups: [MASTER, ON_ANA, over] })).toMatchObject({
      what: 'same way',
      standing: 'breaks',
      side: 'right',
      against: { side: 'right' },
    });
  });

  test('do not meet where both lenses look up', () => {
    const low = (setup: typeof ON_ANA | typeof ON_BEA) => ({
      ...setup,
      lens: 'wide' as const,
      keys: [{ ...setup.keys[0], height: 1.2 }],
    });
    expect(pairOf({ setups: [MASTER, low(ON_ANA), low(ON_BEA)] })).toMatchObject({
      what: 'heights',
      standing: 'said',
    });
  });

  test('are no singles while they have both faces', () => {
    expect(pairOf({ setups: [MASTER, { ...MASTER, id: 'two' }] })).toBeUndefined();
  });
});
