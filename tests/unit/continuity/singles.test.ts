import { describe, expect, test } from 'vitest';
import {
  compareSingles,
  matchingSingles,
  type Single,
  type SinglesAspect,
  singleAt,
} from '../../../src/core/continuity/singles';
import { whereabouts } from '../../../src/core/form/figure/whereabouts';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { singlesSentence } from '../../../src/core/report/continuity/singlesSentence';
import { faceOff, keyAt, ON_BEA, OVER_ANA, onAna } from '../../plans/faceOff';

function single(plan: Plan, index: number): Single {
  const found = singleAt(plan, plan.setups[index], 0);
  if (!found) throw new Error('the setup is about nobody');
  return found;
}

const apartIn = (plan: Plan) =>
  new Map(
    compareSingles(single(plan, 0), single(plan, 1)).map(
      ({ aspect, apart }): readonly [SinglesAspect, number] => [aspect, apart],
    ),
  );

describe('a single in numbers', () => {
  test('is as the tape and the protractor have it', () => {
    const plan = faceOff({ setups: [{ keys: [ON_BEA] }] });
    const bea = single(plan, 0);
    const eyes = whereabouts(plan.cast[1], plan, 0)?.eyes ?? [0, 0, 0];
    const [x, y, z] = [-1.5 - eyes[0], 1.56 - eyes[1], 2.3 - eyes[2]];
    expect(bea.performerId).toBe('bea');
    expect(bea.distanceMetres).toBeCloseTo(Math.hypot(x, y, z), 9);
    expect(bea.aboveEyesMetres).toBeCloseTo(y, 9);
    // 24.89 mm wide behind 85 mm: 2 atan(24.89/170).
    expect(bea.fieldDegrees).toBeCloseTo(((2 * Math.atan(24.89 / 170)) / Math.PI) * 180, 9);
    // Bea looks along −x; the lens lies towards −x and +z, counter-clockwise from there as seen from above.
    expect(bea.offLensDegrees).toBeCloseTo((-Math.atan2(z, -x) / Math.PI) * 180, 2);
    expect(bea.looksTo).toBe('left');
    // Her eyes off the axis: the field is 24.89/85 of the depth wide.
    const [right, forward] = [
      [Math.cos((41 * Math.PI) / 180), Math.sin((41 * Math.PI) / 180)],
      [Math.sin((41 * Math.PI) / 180), -Math.cos((41 * Math.PI) / 180)],
    ];
    const aside = -x * right[0] - z * right[1];
    const depth = -x * forward[0] - z * forward[1];
    expect(bea.aheadShare).toBeCloseTo(0.5 + aside / depth / (24.89 / 85), 9);
    expect(bea.overId).toBeNull();
    expect(single(faceOff({ setups: [{ keys: [OVER_ANA] }] }), 0).overId).toBe('ana');
  });

  test('is about nobody in a two shot, nor where a face is half as large again only nearly', () => {
    const two = faceOff({ setups: [{ keys: [keyAt([0, 1.5, 4], 0)], lens: 'wide' }] });
    expect(singleAt(two, two.setups[0], 0)).toBeNull();
    const named = singleAt(two, two.setups[0], 0, 'ana');
    expect(named?.looksTo).toBe('right');
  });
});

describe('two singles', () => {
  test('of mirrored cameras on two who are alike match exactly', () => {
    for (const key of [ON_BEA, OVER_ANA]) {
      const plan = faceOff({ setups: [{ keys: [key] }, { keys: [onAna(key)] }] });
      for (const [aspect, apart] of apartIn(plan))
        expect(apart, aspect).toBeLessThan(aspect === 'eyeline' ? 0.01 : 1e-4);
      const [finding, ...others] = matchingSingles(plan);
      expect(others).toEqual([]);
      expect(finding.standing).toBe('holds');
      expect([finding.setupId, finding.againstId]).toEqual(['setup-2', 'setup-1']);
      expect(finding.performerIds).toEqual(['bea', 'ana']);
      expect(singlesSentence(plan, finding)).toBe('B matches A: lens, distance and head within 1\u00a0%.');
    }
  });

  test('half as far again off differ by that factor in distance, and the head by its reverse', () => {
    const plan = faceOff({ setups: [{ keys: [ON_BEA] }, { keys: [onAna(ON_BEA, 1.5)] }] });
    const apart = apartIn(plan);
    expect(apart.get('distance')).toBeCloseTo(0.5, 9);
    // Crown and chin lie a little before and behind the eyes.
    expect(apart.get('head')).toBeCloseTo(0.5, 1);
    expect(apart.get('eyeline')).toBeCloseTo(0, 2);
    expect(apart.get('lens')).toBe(0);
    expect(apart.get('height')).toBeCloseTo(0.5 * Math.abs(single(plan, 0).aboveEyesMetres), 9);
    const [finding] = matchingSingles(plan);
    expect(finding.standing).toBe('breaks');
    expect(singlesSentence(plan, finding)).toContain('the eyes are');
  });

  test('on another lens or from over the line say so', () => {
    const lens = faceOff({ setups: [{ keys: [ON_BEA] }, { keys: [onAna(ON_BEA)], lens: 'short' }] });
    // 85 over 50.
    expect(apartIn(lens).get('lens')).toBeCloseTo(0.7, 9);
    const over = faceOff({
      setups: [{ keys: [ON_BEA] }, { keys: [keyAt([1.5, 1.56, -2.3], 221)] }],
    });
    const [finding] = matchingSingles(over);
    expect(finding.standing).toBe('breaks');
    expect(singlesSentence(over, finding)).toMatch(/^B does not match A: both look to frame left/);
  });

  test('are said to differ in what a cut does not show at once, and tolerances may be others', () => {
    const lower = onAna(keyAt([-1.5, 1.26, 2.3], 41, 5.6));
    const plan = faceOff({ setups: [{ keys: [ON_BEA] }, { keys: [lower] }] });
    const [finding] = matchingSingles(plan);
    expect(finding.standing).toBe('said');
    expect(singlesSentence(plan, finding)).toMatch(
      /^B matches A, but the lens is 0\.30\u00a0m lower over the eyes and the tilt is 5\.6° for 0\.0°\.$/,
    );
    const lax = {
      lens: 1,
      squeeze: 1,
      distance: 1,
      height: 1,
      tilt: 20,
      head: 1,
      'looking room': 1,
      headroom: 1,
      eyeline: 30,
    };
    expect(matchingSingles(plan, lax)[0].standing).toBe('holds');
  });

  test('are no pair where they share no time, the sizes are far apart, or neither looks at the other', () => {
    const pair = [{ keys: [ON_BEA] }, { keys: [onAna(ON_BEA)] }] as const;
    const later = { from: 'turn', to: 'end' };
    const apart = faceOff({
      setups: [
        { ...pair[0], span: { from: 'start', to: 'start' } },
        { ...pair[1], span: later },
      ],
    });
    expect(matchingSingles(apart)).toEqual([]);
    const away = {
      marks: [
        { id: 'x', beat: 'start', at: [-0.5, 0], headingDegrees: 180, stance: 'stand', holdSeconds: 0 },
      ],
    };
    const beaAway = {
      marks: [{ id: 'y', beat: 'start', at: [0.5, 0], headingDegrees: 180, stance: 'stand', holdSeconds: 0 }],
    };
    const strangers = { ana: away, bea: beaAway, setups: [...pair] };
    expect(matchingSingles(faceOff(strangers))).toEqual([]);
    const lines = [{ id: 'line-1', pair: ['ana', 'bea'] }];
    expect(matchingSingles(faceOff({ ...strangers, plan: { lines } }))).toHaveLength(1);
    const wide = { keys: [onAna(ON_BEA)], lens: 'wide' };
    expect(matchingSingles(faceOff({ setups: [pair[0], wide] }))).toEqual([]);
  });
});
