import { describe, expect, test } from 'vitest';
import { whereabouts } from '../../../../src/core/form/figure/whereabouts';
import { circleAround } from '../../../../src/core/plan/edits/moves/circleAround';
import { comeFrom } from '../../../../src/core/plan/edits/moves/comeFrom';
import { stopFaceToFace } from '../../../../src/core/plan/edits/moves/stopFaceToFace';
import { metresBetween } from '../../../../src/core/plan/runs';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { markOf, sound, twoOnARoof } from './blockingPlan';

const beatMark = (plan: Plan, performerId: string, beatId: string) => {
  const mark = plan.cast.find(({ id }) => id === performerId)?.marks.find(({ beat }) => beat === beatId);
  if (!mark) throw new Error(`${performerId} has no mark at ${beatId}`);
  return mark;
};

describe('circleAround', () => {
  const ROUND = { performerId: 'abel', aroundId: 'bea', fromBeat: 'begin', toBeat: 'end' } as const;

  test('half round, clockwise, at two metres: from south-west of her to north-east', () => {
    const plan = twoOnARoof();
    // She stands at (2, −2); he at (0, 0), which is at 225 degrees of her, 2.83 m away.
    const after = sound(circleAround(plan, { ...ROUND, turnDegrees: 180, radiusMetres: 2 }));
    const end = beatMark(after, 'abel', 'end');
    expect(end.at[0]).toBeCloseTo(2 + Math.SQRT2, 5);
    expect(end.at[1]).toBeCloseTo(-2 - Math.SQRT2, 5);
    expect(end.headingDegrees).toBeCloseTo(225, 4);
    expect(end.faces).toEqual({ who: 'bea' });
    expect(end.looksOnTheWay).toEqual({ who: 'bea' });
    expect(end.way?.line).toBe('curved');
    for (const spot of end.way?.through ?? []) expect(metresBetween(spot, [2, -2])).toBeCloseTo(2, 5);
    // Clockwise from the south-west is by the west: the middle of the way is north-west of her.
    const middle = end.way?.through[4] ?? [0, 0];
    expect(middle[0]).toBeLessThan(2);
    expect(end.way?.through).toHaveLength(9);
    expect(markOf(after, 'abel', 'm1')).toBe(markOf(plan, 'abel', 'm1'));
  });

  test('the other way round for a turn below nothing, and as far away as they stand', () => {
    const after = sound(circleAround(twoOnARoof(), { ...ROUND, turnDegrees: -90 }));
    const end = beatMark(after, 'abel', 'end');
    // From 225 degrees a quarter back to 135: as far east of her as he was west.
    expect(end.at[0]).toBeCloseTo(4, 5);
    expect(end.at[1]).toBeCloseTo(0, 5);
    expect(end.way?.through, 'he stands on the arc already').toHaveLength(4);
  });

  test('twice round fits a way, and nobody goes round themselves or back in time', () => {
    const plan = twoOnARoof();
    sound(circleAround(plan, { ...ROUND, turnDegrees: 5000 }));
    expect(circleAround(plan, { ...ROUND, aroundId: 'abel', turnDegrees: 90 })).toBe(plan);
    expect(circleAround(plan, { ...ROUND, fromBeat: 'end', toBeat: 'begin', turnDegrees: 90 })).toBe(plan);
  });
});

describe('stopFaceToFace', () => {
  const FACE = { performerId: 'abel', otherId: 'bea', beatId: 'middle' } as const;

  test.each([0.15, 0.4, 1])('%s m between their eyes, as the figures stand', (apartMetres) => {
    const after = sound(stopFaceToFace(twoOnARoof(), { ...FACE, apartMetres }));
    const [abel, bea] = after.cast.map((performer) => whereabouts(performer, after, 4)?.eyes);
    if (!abel || !bea) throw new Error('somebody is not there');
    expect(Math.hypot(abel[0] - bea[0], abel[2] - bea[2])).toBeCloseTo(apartMetres, 2);
    expect(beatMark(after, 'abel', 'middle').faces).toEqual({ who: 'bea' });
    expect(beatMark(after, 'bea', 'middle').looks).toEqual({ who: 'abel' });
  });

  test('the first comes along the line from where they were, the other stays', () => {
    const after = stopFaceToFace(twoOnARoof(), { ...FACE, apartMetres: 0.5 });
    expect(beatMark(after, 'bea', 'middle').at).toEqual([2, -1]);
    // From (0, 0) towards (2, −1): z is half of x, the other way.
    const [x, z] = beatMark(after, 'abel', 'middle').at;
    expect(z).toBeCloseTo(-x / 2, 5);
    expect(x).toBeGreaterThan(0);
    expect(beatMark(after, 'abel', 'middle').headingDegrees).toBeCloseTo(63.435, 3);
  });
});

describe('comeFrom', () => {
  const COME = { performerId: 'bea', beatId: 'middle' } as const;

  test('leaves the last beat that is early enough as late as an ordinary pace lets them', () => {
    // 2.8 m at 1.4 m/s are 2 s, and 0.4 s to get going and to stop: away at 4 − 2.4 = 1.6 s.
    const after = sound(comeFrom(twoOnARoof(), { ...COME, corner: [2, 1.8] }));
    expect(after.beats).toHaveLength(3);
    expect(beatMark(after, 'bea', 'begin')).toMatchObject({
      at: [2, 1.8],
      headingDegrees: 0,
      holdSeconds: 1.6,
    });
    expect(beatMark(after, 'bea', 'begin')).not.toHaveProperty('faces');
  });

  test('adds a beat only when asked to and where none is early enough', () => {
    const late = { ...twoOnARoof(), setups: [], lines: [] };
    const plan = sound({
      ...late,
      beats: late.beats.map((beat) => ({ ...beat, atSeconds: beat.atSeconds + 3 })),
    });
    // 5.6 m take 4.4 s: away at 7 − 4.4 = 2.6 s, before the first beat at 3 s.
    const args = { ...COME, corner: [2, 4.6] as [number, number] };
    const hurried = sound(comeFrom(plan, args));
    expect(hurried.beats).toHaveLength(3);
    expect(beatMark(hurried, 'bea', 'begin')).toMatchObject({ at: [2, 4.6], holdSeconds: 0 });
    const calm = sound(comeFrom(plan, { ...args, newBeat: true }));
    expect(calm.beats[0]).toMatchObject({ label: 'Sets out', atSeconds: 2.6 });
    expect(
      calm.cast[1].marks.map(({ beat }) => beat),
      'what lay between is gone',
    ).toEqual([calm.beats[0].id, 'middle']);
  });

  test('not from the mark itself, nor before all beats', () => {
    const plan = twoOnARoof();
    expect(comeFrom(plan, { ...COME, corner: [2, -1] })).toBe(plan);
    expect(comeFrom(plan, { ...COME, beatId: 'begin', corner: [5, 5] })).toBe(plan);
  });
});
