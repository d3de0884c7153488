import { expect, test } from 'vitest';
import { addCue } from '../../../../src/core/plan/edits/changeCues';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { momentOf, nudgedTo, retime, roomOf } from '../../../../src/desk/blocking/retime';
import { nearestBeat, snapTime } from '../../../../src/desk/blocking/snapTime';
import type { Timed } from '../../../../src/desk/blocking/things';
import { DEMO, readPlan } from '../../../plans/readPlan';

// The demo's beats: 0, 5, 9, 14, 18, 22, 26, 32, 35 and 40 s. Vera stands at 0, 9, 18, 22, 26 and 40 s.
const demo = readPlan(DEMO);
const beat = (beatId: string): Timed => ({ type: 'beat', beatId });
const vera = (markId: string): Timed => ({ type: 'mark', performerId: 'vera', markId });
const secondsOf = (plan: Plan): readonly number[] => plan.beats.map(({ atSeconds }) => atSeconds);

test('a moment catches on a beat first, then on a whole second, else it lies on a frame', () => {
  const { beats } = demo;
  expect(snapTime(13.7, beats, 0.4)).toEqual({ seconds: 14, caught: { on: 'beat', beatId: 'closer' } });
  expect(snapTime(12.8, beats, 0.4)).toEqual({ seconds: 13, caught: { on: 'second' } });
  // 302 frames of a 24th of a second.
  expect(snapTime(12.58, beats, 0.05)).toEqual({ seconds: 12.5833, caught: null });
  expect(snapTime(14, beats, -1).caught).toBeNull();
  // However small the scale, half way between two seconds is free.
  expect(snapTime(11.5, beats, 2).caught).toBeNull();
});

test('of two beats as near, and of beats at one moment, the first is the nearest', () => {
  const at = (id: string, atSeconds: number) => ({ id, label: id, atSeconds });
  expect(nearestBeat([at('a', 4), at('b', 6)], 5)?.id).toBe('a');
  expect(nearestBeat([at('a', 4), at('b', 4)], 5)?.id).toBe('a');
  expect(nearestBeat([], 5)).toBeNull();
});

test('a beat keeps between its neighbours, and with ripple takes along all after it', () => {
  const far = retime(demo, beat('closer'), 30, { reachSeconds: -1 });
  expect(far.seconds).toBe(18);
  const rippled = retime(demo, beat('closer'), 16, { reachSeconds: 0.1, ripples: true });
  expect(rippled.caught).toEqual({ on: 'second' });
  expect(secondsOf(rippled.plan)).toEqual([0, 5, 9, 16, 20, 24, 28, 34, 37, 42]);
  expect(roomOf(demo, beat('closer'), false)).toEqual([9, 18]);
});

test('a mark goes to the nearest beat between the marks beside it, and stays where there is none', () => {
  // Between 9 and 18 s there is one beat that is free, at 14 s.
  const moved = retime(demo, vera('v3'), 12, { reachSeconds: 0.1 });
  expect(moved.caught).toEqual({ on: 'beat', beatId: 'closer' });
  expect(momentOf(moved.plan, vera('v3'))).toBe(14);
  expect(retime(demo, vera('v3'), 0, { reachSeconds: 0.1 }).plan).toEqual(moved.plan);
  // v4 at 22 s lies between 18 and 26 s, where there is no other beat.
  expect(retime(demo, vera('v4'), 19, { reachSeconds: 0.1 }).plan).toBe(demo);
  expect(nudgedTo(demo, vera('v4'), 1, 'frame')).toBe(22);
  expect(nudgedTo(demo, vera('v3'), -1, 'frame')).toBe(14);
});

test('the end of a hold is when somebody leaves: after their mark, before the next', () => {
  const hold: Timed = { type: 'hold', performerId: 'vera', markId: 'v2' };
  expect(momentOf(demo, hold)).toBe(14);
  const held = (plan: Plan): number | undefined => plan.cast[1]?.marks[1]?.holdSeconds;
  expect(held(retime(demo, hold, 12.02, { reachSeconds: 0.1 }).plan)).toBe(3);
  expect(held(retime(demo, hold, 2, { reachSeconds: -1 }).plan)).toBe(0);
  expect(held(retime(demo, hold, 99, { reachSeconds: -1 }).plan)).toBe(9);
});

test('the end of a span goes to a beat on its own side of the other end; of beats at one moment its own stays', () => {
  const end: Timed = { type: 'span', setupId: 'wide', end: 'to' };
  expect(momentOf(retime(demo, end, 0, { reachSeconds: 0.1 }).plan, end)).toBe(14);
  const doubled = {
    ...demo,
    beats: demo.beats.toSpliced(6, 0, { id: 'double', label: 'Double', atSeconds: 26 }),
  };
  expect(retime(doubled, end, 26, { reachSeconds: 0.1 }).plan.setups[0]?.span.to).toBe('refuse');
});

test('a camera key and a pass go to beats; a nudge steps by frames, seconds or beats', () => {
  const key: Timed = { type: 'key', setupId: 'alongside', keyIndex: 1 };
  const before = momentOf(demo, key);
  const caught = retime(demo, key, 22.1, { reachSeconds: 0.5 });
  expect(caught.caught).toEqual({ on: 'beat', beatId: 'ring' });
  expect(nudgedTo(demo, key, 1, 'frame')).toBeCloseTo(before + 1 / 24, 9);
  expect(nudgedTo(demo, key, -1, 'second')).toBeCloseTo(before - 1, 9);
  expect(nudgedTo(demo, beat('closer'), 1, 'beat')).toBe(18);
  const passing = { ...demo, passes: [{ id: 'p', beat: 'ring', from: 'nuno', to: 'vera' }] };
  const pass: Timed = { type: 'pass', passId: 'p' };
  expect(momentOf(passing, pass)).toBe(22);
  expect(retime(passing, pass, 25, { reachSeconds: 0 }).plan.passes?.[0]?.beat).toBe('refuse');
});

test('a cue catches on a beat and goes with it, is free on the clock elsewhere, and its fade ends where a hand lets it', () => {
  const head = demo.gear.find(({ kind }) => kind === 'head')?.id ?? '';
  const plan = addCue(demo, { id: head, cue: { atSeconds: 3, dim: 0, fadeSeconds: 2 } });
  const cue = { type: 'cue', itemId: head, cueIndex: 0 } as const;
  const fade = { ...cue, type: 'fade' } as const;
  const cueIn = (of: Plan) => of.gear.flatMap((gear) => ('cues' in gear ? (gear.cues ?? []) : []))[0];
  const on = retime(plan, cue, 13.8, { reachSeconds: 0.4 });
  expect(cueIn(on.plan)).toEqual({ atSeconds: 0, beat: 'closer', dim: 0, fadeSeconds: 2 });
  expect(on.caught).toEqual({ on: 'beat', beatId: 'closer' });
  expect(momentOf(on.plan, fade)).toBe(16);
  const off = retime(on.plan, cue, 12.1, { reachSeconds: 0.2 });
  expect(cueIn(off.plan)).toEqual({ atSeconds: 12, dim: 0, fadeSeconds: 2 });
  expect(cueIn(retime(on.plan, fade, 18.1, { reachSeconds: 0.2 }).plan)?.fadeSeconds).toBe(4);
  expect(cueIn(retime(on.plan, fade, 2, { reachSeconds: -1 }).plan)?.fadeSeconds).toBe(0);
  expect(nudgedTo(on.plan, cue, 1, 'beat')).toBe(18);
  expect(retime(plan, cue, -5, { reachSeconds: -1 }).seconds).toBe(0);
});
