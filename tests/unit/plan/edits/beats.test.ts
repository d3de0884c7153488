import { describe, expect, test } from 'vitest';
import { addBeat } from '../../../../src/core/plan/edits/addBeat';
import { beatRange } from '../../../../src/core/plan/edits/beatRange';
import { changeBeat } from '../../../../src/core/plan/edits/changeBeat';
import { beatBeside, hangingOn, removeBeat } from '../../../../src/core/plan/edits/removeBeat';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { markOf, sound, twoOnARoof } from './blockingPlan';

const moments = (plan: Plan): (string | number)[][] => plan.beats.map(({ id, atSeconds }) => [id, atSeconds]);

describe('addBeat', () => {
  test('comes among the others in the order of time, with a name of its own', () => {
    const after = sound(addBeat(twoOnARoof(), { atSeconds: 5 }));
    expect(after.beats.map(({ label }) => label)).toEqual(['Begin', 'Middle', 'Beat 4', 'End']);
    expect(sound(addBeat(after, { atSeconds: 4, label: 'Cue' })).beats[2]).toMatchObject({ label: 'Cue' });
  });

  test.each([-1, 3601, Number.NaN])('not at %s s', (atSeconds) => {
    const plan = twoOnARoof();
    expect(addBeat(plan, { atSeconds })).toBe(plan);
  });
});

describe('changeBeat', () => {
  test('is kept where spans end after they start and keys stay in order', () => {
    const plan = twoOnARoof();
    // The key that hangs on the middle, a second after it, has to stay between those at 0 s and at 7 s.
    expect(beatRange(plan, { beatId: 'middle' })).toEqual([0, 5.999]);
    expect(moments(sound(changeBeat(plan, { beatId: 'middle', patch: { atSeconds: 7.5 } })))[1]).toEqual([
      'middle',
      5.999,
    ]);
    // The span begins at the beginning, which nothing else holds back.
    expect(beatRange(plan, { beatId: 'begin' })).toEqual([0, 4]);
    expect(moments(sound(changeBeat(plan, { beatId: 'begin', patch: { atSeconds: 6 } })))[0]).toEqual([
      'begin',
      4,
    ]);
    expect(beatRange(plan, { beatId: 'never' })).toBeNull();
  });

  test('takes those after it along when asked to', () => {
    const plan = twoOnARoof();
    const after = sound(changeBeat(plan, { beatId: 'middle', patch: { atSeconds: 5.5 }, ripple: true }));
    expect(moments(after)).toEqual([
      ['begin', 0],
      ['middle', 5.5],
      ['end', 9.5],
    ]);
    expect(moments(changeBeat(plan, { beatId: 'middle', patch: { atSeconds: 5.5 } }))[2]).toEqual(['end', 8]);
    // All of them go along, so nothing but the clock's own end is in the way.
    const free = { ...plan, setups: [] };
    expect(beatRange(free, { beatId: 'begin', ripple: true })).toEqual([0, 3592]);
  });

  test('renames, and says nothing where nothing changes', () => {
    const plan = twoOnARoof();
    expect(changeBeat(plan, { beatId: 'end', patch: { label: 'Last' } }).beats[2].label).toBe('Last');
    expect(changeBeat(plan, { beatId: 'end', patch: { label: 'End', atSeconds: 8 } })).toBe(plan);
    expect(changeBeat(plan, { beatId: 'end', patch: { label: '' } })).toBe(plan);
    expect(changeBeat(plan, { beatId: 'never', patch: { atSeconds: 1 } })).toBe(plan);
  });
});

describe('removeBeat', () => {
  test('says what hangs on a beat, and hands it on', () => {
    const plan = twoOnARoof();
    expect(hangingOn(plan, 'middle')).toEqual({ marks: 1, passes: 1, spans: 1, keys: 1, cues: 0 });
    expect(beatBeside(plan, 'middle'), 'of two as near, the earlier').toBe('begin');
    const after = sound(removeBeat(plan, { beatId: 'middle', instead: 'end' }));
    expect(moments(after)).toEqual([
      ['begin', 0],
      ['end', 8],
    ]);
    expect(markOf(after, 'bea', 'm2').beat).toBe('end');
    expect(after.passes?.[0].beat).toBe('end');
    expect(after.setups[0].span).toEqual({ from: 'begin', to: 'end' });
    // It stays at 5 s, which is before that beat, so it counts on the clock itself.
    expect(after.setups[0].move.keys[1]).toMatchObject({ atSeconds: 5 });
    expect(after.setups[0].move.keys[1].beat).toBeUndefined();
  });

  test('who has a mark at the other beat keeps that one, and its cheat', () => {
    const after = sound(removeBeat(twoOnARoof(), { beatId: 'middle' }));
    expect(after.cast[1].marks.map(({ id }) => id)).toEqual(['m1']);
    expect(after.setups[0].cheats?.map(({ mark, performer }) => [performer, mark])).toEqual([['abel', 'm1']]);
    expect(after.setups[0].move.keys[1]).toMatchObject({ beat: 'begin', atSeconds: 5 });
  });

  test('the only beat stays while something hangs on it', () => {
    const [beat] = twoOnARoof().beats;
    const bare = { ...twoOnARoof(), beats: [beat], setups: [], lines: [], passes: [], cast: [] };
    expect(removeBeat(bare, { beatId: 'begin' }).beats).toEqual([]);
    const [, bea] = twoOnARoof().cast;
    const held = { ...bare, cast: [{ ...bea, marks: bea.marks.slice(0, 1) }] };
    expect(removeBeat(held, { beatId: 'begin' })).toBe(held);
    const plan = twoOnARoof();
    expect(removeBeat(plan, { beatId: 'begin', instead: 'begin' })).toBe(plan);
    // The span would begin at 8 s and end at 4 s.
    expect(removeBeat(plan, { beatId: 'begin', instead: 'end' })).toBe(plan);
  });
});
