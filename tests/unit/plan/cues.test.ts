import { expect, test } from 'vitest';
import { lampsAt } from '../../../src/core/form/lamps';
import { dimAt, flickerStretches, flickersAt, isEverLit, playedCues } from '../../../src/core/plan/cues';
import { addCue, removeCue, setCue } from '../../../src/core/plan/edits/changeCues';
import { hangingOn, removeBeat } from '../../../src/core/plan/edits/removeBeat';
import { reshapeItem } from '../../../src/core/plan/edits/reshapeItem';
import { named } from '../../../src/core/plan/named';
import { parsePlan } from '../../../src/core/plan/parse';
import type { Cue } from '../../../src/core/plan/schema/gear';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { serialisePlan } from '../../../src/core/plan/serialise';
import { startingFrom } from '../../../src/core/plan/startingFrom';
import { lightNotices } from '../../../src/core/report/light/lightNotices';
import { DEMO, readPlan } from '../../plans/readPlan';

// The demo's beats: 0, 5, 9, 14, 18, 22, 26, 32, 35 and 40 s; the third is `together`.
const demo = readPlan(DEMO);
const BEAT = demo.beats[2];
const head = demo.gear.find(({ kind }) => kind === 'head')?.id ?? '';
const cued = (...cues: Cue[]): Plan => cues.reduce((plan, cue) => addCue(plan, { id: head, cue }), demo);
const lampOf = (plan: Plan) => {
  const lamp = plan.gear.find(({ id }) => id === head);
  if (lamp?.kind !== 'head') throw new Error('the demo has no head');
  return lamp;
};
const candelaAt = (plan: Plan, seconds: number): number =>
  lampsAt(plan, seconds).find(({ itemId }) => itemId === head)?.peakCandela ?? Number.NaN;

test('a lamp keeps its dim until a cue, fades in a straight line, and keeps what it came to', () => {
  const lamp = { dim: 1, cues: [{ atSeconds: 2, dim: 0.2, fadeSeconds: 4 }] };
  expect([0, 2, 3, 4, 6, 60].map((seconds) => dimAt(lamp, demo, seconds))).toEqual([
    1,
    1,
    0.8,
    expect.closeTo(0.6, 12),
    0.2,
    0.2,
  ]);
});

test('a switch is thrown at its very instant, and of two at one moment the last has its way', () => {
  const cues = [
    { atSeconds: 5, dim: 0.5, fadeSeconds: 0 },
    { atSeconds: 5, dim: 0, fadeSeconds: 0 },
  ];
  expect(dimAt({ dim: 1, cues }, demo, 4.999)).toBe(1);
  expect(dimAt({ dim: 1, cues }, demo, 5)).toBe(0);
});

test('a cue that comes while another fades takes over from the level that it finds, whatever the order of the list', () => {
  const fade: Cue = { atSeconds: 0, dim: 0, fadeSeconds: 10 };
  const up: Cue = { atSeconds: 5, dim: 1, fadeSeconds: 5 };
  for (const cues of [
    [fade, up],
    [up, fade],
  ]) {
    const lamp = { dim: 1, cues };
    expect([0, 2.5, 5, 7.5, 10].map((seconds) => dimAt(lamp, demo, seconds))).toEqual([
      1, 0.75, 0.5, 0.75, 1,
    ]);
    expect(playedCues(demo, lamp).map(({ untilSeconds }) => untilSeconds)).toEqual([5, 10]);
  }
});

test('a cue on a beat goes with the beat, and the lamp gives as much as it says', () => {
  const plan = cued({ atSeconds: 1, beat: BEAT.id, dim: 0, fadeSeconds: 0 });
  const at = BEAT.atSeconds + 1;
  expect(candelaAt(plan, at - 0.01)).toBe(candelaAt(demo, 0));
  expect(candelaAt(plan, at)).toBe(0);
  const later = { ...plan, beats: plan.beats.map((beat) => ({ ...beat, atSeconds: beat.atSeconds + 3 })) };
  expect(candelaAt(later, at)).toBe(candelaAt(demo, 0));
  expect(candelaAt(later, at + 3)).toBe(0);
});

test('cues are added, changed and taken out, and without any the lamp is as it was', () => {
  const one = cued({ atSeconds: 3, beat: BEAT.id, dim: 0.5, fadeSeconds: 2 });
  const free = setCue(one, { id: head, cueIndex: 0, patch: { beat: undefined, atSeconds: 7 } });
  expect(lampOf(free).cues).toEqual([{ atSeconds: 7, dim: 0.5, fadeSeconds: 2 }]);
  expect(setCue(free, { id: head, cueIndex: 0, patch: { dim: 0.5 } })).toBe(free);
  expect(setCue(free, { id: head, cueIndex: 0, patch: { dim: 1.5 } })).toBe(free);
  expect(setCue(free, { id: head, cueIndex: 4, patch: { dim: 1 } })).toBe(free);
  expect(addCue(demo, { id: 'abel', cue: { atSeconds: 0, dim: 0, fadeSeconds: 0 } })).toBe(demo);
  expect(addCue(demo, { id: head, cue: { atSeconds: 0, beat: 'never', dim: 0, fadeSeconds: 0 } })).toBe(demo);
  expect(removeCue(one, { id: head, cueIndex: 0 })).toEqual(demo);
  expect(parsePlan(JSON.parse(serialisePlan(one)))).toMatchObject({ ok: true });
});

test('a cue whose beat is taken out keeps its moment, and so does one in a plan that begins without beats', () => {
  const plan = cued({ atSeconds: 1, beat: BEAT.id, dim: 0, fadeSeconds: 0 });
  expect(hangingOn(plan, BEAT.id).cues).toBe(1);
  const without = removeBeat(plan, { beatId: BEAT.id });
  expect(without.beats).toHaveLength(demo.beats.length - 1);
  expect(playedCues(without, lampOf(without))[0].fromSeconds).toBe(BEAT.atSeconds + 1);
  const fresh = startingFrom(plan, 'Another night', { gear: true, cast: false, setups: false });
  expect(lampOf(fresh).cues).toEqual([{ atSeconds: BEAT.atSeconds + 1, dim: 0, fadeSeconds: 0 }]);
});

test('a beat that there is not is named in one sentence', () => {
  const plan = cued({ atSeconds: 0, beat: BEAT.id, dim: 0, fadeSeconds: 0 });
  const broken = { ...plan, beats: plan.beats.filter(({ id }) => id !== BEAT.id) };
  const read = parsePlan(broken);
  expect(JSON.stringify(read)).toContain('cues[0].beat');
});

test('a lamp that only a cue puts on is one of those that are lit', () => {
  expect(isEverLit({ dim: 0 })).toBe(false);
  expect(isEverLit({ dim: 0, cues: [{ atSeconds: 3, dim: 0.1, fadeSeconds: 0 }] })).toBe(true);
});

const FLICKER = { seed: 7, perSecond: 6, depth: 0.8 };
const sign = demo.gear.find((gear) => gear.kind === 'practical' && gear.flicker);
if (sign?.kind !== 'practical') throw new Error('the demo has no sign that flickers');
const signed = (...cues: Cue[]) => ({ ...sign, flicker: FLICKER, cues });
const given = (lamp: typeof sign, seconds: number): number => {
  const plan = { ...demo, gear: demo.gear.map((gear) => (gear.id === lamp.id ? lamp : gear)) };
  return lampsAt(plan, seconds).find(({ itemId }) => itemId === lamp.id)?.peakCandela ?? Number.NaN;
};

test('a flicker plays as the lamp is set until a cue about it, and from the very instant of one as that says', () => {
  const lamp = signed(
    { atSeconds: 30, fadeSeconds: 0, flickers: true },
    { atSeconds: 1, beat: BEAT.id, fadeSeconds: 0, flickers: false },
    { atSeconds: 20, fadeSeconds: 2, dim: 0.5 },
  );
  const at = [0, 9.99, 10, 25, 29.99, 30, 3000];
  expect(at.map((seconds) => flickersAt(lamp, demo, seconds))).toEqual([
    true,
    true,
    false,
    false,
    false,
    true,
    true,
  ]);
  const waiting = { ...lamp, flicker: { ...FLICKER, waits: true } };
  expect(at.map((seconds) => flickersAt(waiting, demo, seconds))).toEqual([
    ...Array(5).fill(false),
    true,
    true,
  ]);
  expect(flickerStretches(lamp, demo, 0, 40)).toEqual([
    [0, 10],
    [30, 40],
  ]);
  expect(flickerStretches(lamp, demo, 12, 28)).toEqual([]);
  expect(flickerStretches(waiting, demo, 0, 40)).toEqual([[30, 40]]);
  const { flicker: _, ...plain } = lamp;
  expect(flickersAt(plain, demo, 35)).toBe(false);
  expect(flickerStretches(plain, demo, 0, 40)).toEqual([]);
});

test('a lamp gives what its pattern leaves where its flicker plays, and all of its dim where it does not', () => {
  const { flicker: _, ...rest } = sign;
  const steady = given({ ...rest, dim: 1 }, 0);
  const lamp = { ...signed({ atSeconds: 12, fadeSeconds: 0, flickers: false }), dim: 1 };
  const shares = Array.from({ length: 40 }, (_each, k) => given(lamp, k * 0.5) / steady);
  expect(shares.slice(24).every((share) => share === 1)).toBe(true);
  expect(Math.min(...shares.slice(0, 24))).toBeLessThan(0.8);
});

test('a cue that only turns a flicker lets a fade go on', () => {
  const cues = [
    { atSeconds: 2, dim: 0, fadeSeconds: 10 },
    { atSeconds: 4, fadeSeconds: 0, flickers: false },
  ];
  expect([2, 4, 7, 12].map((seconds) => dimAt({ dim: 1, cues }, demo, seconds))).toEqual([1, 0.8, 0.5, 0]);
  expect(playedCues(demo, { dim: 1, cues }).map(({ index }) => index)).toEqual([0]);
  expect(isEverLit({ dim: 0, cues: [{ atSeconds: 4, fadeSeconds: 0, flickers: true }] })).toBe(false);
});

test('a cue has to change something, and one about a flicker that is not there is said', () => {
  const at = { atSeconds: 4, fadeSeconds: 0 };
  expect(addCue(demo, { id: sign.id, cue: at })).toBe(demo);
  const turned = addCue(demo, { id: sign.id, cue: { ...at, flickers: false } });
  expect(lightNotices(turned)).toEqual(lightNotices(demo));
  const both = setCue(turned, { id: sign.id, cueIndex: 0, patch: { dim: 0.3 } });
  expect(setCue(both, { id: sign.id, cueIndex: 0, patch: { flickers: undefined } }).gear).toContainEqual({
    ...sign,
    cues: [{ ...at, dim: 0.3 }],
  });
  expect(setCue(turned, { id: sign.id, cueIndex: 0, patch: { flickers: undefined } })).toBe(turned);
  const read = parsePlan(
    JSON.parse(serialisePlan(turned).replace(/,\s*"flickers": false/, ''), (_key, value: unknown) => value),
  );
  expect(read.ok ? [] : read.faults.map(({ sentence }) => sentence)).toEqual([
    expect.stringMatching(/cues\[0\].*expected dim, flickers or both/),
  ]);

  const bare = reshapeItem(turned, { id: sign.id, patch: { flicker: undefined } });
  expect(lightNotices(bare).map(({ sentence }) => sentence)).toContain(
    `${sign.label} has no flicker: found a cue about its flicker, expected a pattern to flicker by. Give it one, or take the cue out.`,
  );
  const onHead = cued({ ...at, flickers: true }, { ...at, flickers: false });
  expect(lightNotices(onHead).map(({ sentence }) => sentence)).toContain(
    `${named(lampOf(demo).label)} has no flicker: found 2 cues about its flicker, expected a pattern to flicker by. Only a practical has one: take them out.`,
  );
});
