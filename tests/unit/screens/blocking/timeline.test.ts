import { expect, test } from 'vitest';
import { addCue } from '../../../../src/core/plan/edits/changeCues';
import { drawnUntil } from '../../../../src/desk/blocking/clock';
import { cutTo, placeAlong, reaches } from '../../../../src/screens/sheet/blocking/labels';
import { lanesOf, levelsOf } from '../../../../src/screens/sheet/blocking/lanes';
import { cornersOfRoof } from '../../../../src/screens/sheet/blocking/panel/corners';
import {
  fitted,
  momentsBetween,
  rulerOf,
  type Scale,
  scrollFor,
  secondsAt,
  withinReach,
  xOf,
} from '../../../../src/screens/sheet/blocking/scale';
import { cueText, spokenOf, walkTexts } from '../../../../src/screens/sheet/blocking/words';
import { DEMO, readPlan } from '../../../plans/readPlan';

const demo = readPlan(DEMO);
const scale: Scale = { pixelsPerSecond: 10, until: 40 };
/** Ten pixels a letter. */
const width = (text: string): number => text.length * 10;

test('the scale is from all of the action to a frame of ten pixels, and a moment stays under the pixel', () => {
  expect(xOf(scale, secondsAt(scale, 123))).toBeCloseTo(123, 9);
  expect(withinReach(0, 40, 644)).toBe(fitted(40, 644));
  expect(fitted(40, 644)).toBe(15);
  expect(withinReach(1e6, 40, 644)).toBe(240);
  // An hour at 240 pixels a second would be wider than a page can be.
  expect(withinReach(1e6, 3600, 644)).toBeLessThan(70);
  const nearer = { ...scale, pixelsPerSecond: 40 };
  expect(xOf(nearer, 20) - scrollFor(nearer, 20, 150)).toBe(150);
});

test('the ruler numbers round seconds, and small ticks divide them evenly', () => {
  expect(rulerOf(scale)).toEqual({ every: 10, decimals: 0, smallEvery: 1 });
  expect(rulerOf({ pixelsPerSecond: 240, until: 40 }).every).toBe(0.5);
  for (const pixelsPerSecond of [0.1, 0.4, 1, 3, 7, 15, 60, 150, 240]) {
    const { every, smallEvery } = rulerOf({ pixelsPerSecond, until: 3600 });
    expect(every / smallEvery).toBeCloseTo(Math.round(every / smallEvery), 9);
  }
  expect(momentsBetween(scale, 10, 0, 1000)).toEqual([0, 10, 20, 30, 40]);
  expect(momentsBetween(scale, 10, 112, 212)).toEqual([10, 20]);
});

test('labels end before the next in their row, get shorter where they must, and none is written over another', () => {
  const texts = (name: string): readonly string[] => [`${name} long`, name];
  const things = [0, 100, 130, 300].map((x, k) => ({ x, texts: texts(`n${k}`) }));
  expect(placeAlong(things, width, 400)).toEqual([
    { text: 'n0 long', row: 0 },
    { text: 'n1', row: 0 },
    { text: 'n2 long', row: 0 },
    { text: 'n3 long', row: 0 },
  ]);
  expect(placeAlong(things, width, 400, 2).map(({ text }) => text)).toEqual([
    'n0 long',
    'n1 long',
    'n2 long',
    'n3 long',
  ]);
  // 200 beats, some at one moment: whatever is written ends before the next of its row begins.
  const many = Array.from({ length: 200 }, (_, k) => ({
    x: Math.floor(k / 2) * 11 + (k % 2),
    texts: texts(`beat ${k}`),
  }));
  for (const rows of [1, 2] as const) {
    const placed = placeAlong(many, width, 3000, rows);
    placed.forEach(({ text, row }, k) => {
      const next = placed.findIndex((other, at) => at > k && other.row === row);
      if (next > 0 && text !== '') expect(many[k].x + width(text)).toBeLessThan(many[next].x);
    });
  }
});

test('a name is cut with an ellipsis, or left out where nothing would be left of it', () => {
  expect(cutTo('Face to face', width, 200)).toBe('Face to face');
  expect(cutTo('Face to face', width, 65)).toBe('Face\u2026');
  expect(cutTo('Face', width, 30)).toBe('');
});

test('what lies close together shares the room between: no press is taken from a neighbour', () => {
  expect(reaches([0, 10, 100], 24)).toEqual([
    { before: 24, after: 5 },
    { before: 5, after: 24 },
    { before: 24, after: 24 },
  ]);
  expect(reaches([50, 50], 24)[0]).toEqual({ before: 24, after: 0 });
});

test('the demo has lanes for its cast, the bird, its cameras and the sign that flickers', () => {
  const lanes = lanesOf(demo, false);
  expect(lanes.map(({ type }) => type)).toEqual([
    ...Array(3).fill('performer'),
    'prop',
    ...Array(8).fill('setup'),
    'lamp',
  ]);
  const [, vera] = lanes;
  if (vera?.type !== 'performer') throw new Error('Vera has the second lane');
  // She holds her first mark 3.5 s, and reaches the second at 9 s.
  expect(vera.stays[0]).toMatchObject({ name: 'V1', fromSeconds: 0, leaveSeconds: 3.5 });
  expect(vera.walks[0]).toMatchObject({ fromMark: 'v1', toMark: 'v2', arriveSeconds: 9 });
  // From V3 to V4 there is no way to go: she stays until the next mark.
  expect(vera.stays[2]).toMatchObject({ leaveSeconds: null, untilSeconds: 22 });
  expect(lanesOf(demo, true).length).toBeGreaterThan(lanes.length);
  // A little beyond the last beat at 40 s, so that another can be put there.
  expect(drawnUntil(demo)).toBe(43);
  expect(drawnUntil({ ...demo, beats: [], setups: [] })).toBe(8);
});

test('a flickering lamp falls below its level and never rises over it; a steady one has one level', () => {
  const sign = lanesOf(demo, false).find((lane) => lane.type === 'lamp');
  if (sign?.type !== 'lamp') throw new Error('the sign has a lane');
  const levels = levelsOf(demo, sign.lamp, 0, 40);
  expect(levels.length).toBeGreaterThan(100);
  // dim 0.16, depth 0.7: from 0.048 to 0.16.
  expect(Math.max(...levels.map(({ level }) => level))).toBeLessThanOrEqual(0.16);
  expect(Math.min(...levels.map(({ level }) => level))).toBeGreaterThanOrEqual(0.048 - 1e-9);
});

test('a lamp with a cue has a lane, its line bends where it fades and jumps where it is switched', () => {
  const head = demo.gear.find(({ kind }) => kind === 'head')?.id ?? '';
  const plan = [
    { atSeconds: 10, dim: 0.25, fadeSeconds: 4 },
    { atSeconds: 20, dim: 0, fadeSeconds: 0 },
  ].reduce((before, cue) => addCue(before, { id: head, cue }), demo);
  const lane = lanesOf(plan, false).find(({ id }) => id === head);
  if (lane?.type !== 'lamp') throw new Error('the lamp has a lane');
  const { dim } = lane.lamp;
  expect(levelsOf(plan, lane.lamp, 0, 40).map(({ seconds, level }) => [seconds, level])).toEqual([
    [0, dim],
    [10, dim],
    [14, 0.25],
    [20, 0.25],
    [20, 0],
    [40, 0],
  ]);
  expect(lanesOf(demo, false).some(({ id }) => id === head)).toBe(false);
  expect(lanesOf(demo, false, head).some(({ id }) => id === head)).toBe(true);
  const spoken = (thing: Parameters<typeof spokenOf>[1]): string =>
    spokenOf(plan, thing, 'm').replaceAll('\u00a0', ' ');
  expect(spoken({ type: 'cue', itemId: head, cueIndex: 0 })).toBe(
    `${lane.lamp.label} goes to 25 %, over 4.0 s, at 10.0 s`,
  );
  expect(spoken({ type: 'cue', itemId: head, cueIndex: 1 })).toBe(
    `${lane.lamp.label} goes out at once, at 20.0 s`,
  );
  expect(spoken({ type: 'fade', itemId: head, cueIndex: 0 })).toBe(
    `${lane.lamp.label} is done fading at 14.0 s`,
  );
});

test('where a cue ends a flicker the line keeps still, and all of it is said', () => {
  const plan = [
    { atSeconds: 0, beat: 'face', fadeSeconds: 0, flickers: false },
    { atSeconds: 26, fadeSeconds: 0, dim: 0.4, flickers: true },
  ].reduce((before, cue) => addCue(before, { id: 'sign', cue }), demo);
  const lane = lanesOf(plan, false).find(({ id }) => id === 'sign');
  if (lane?.type !== 'lamp') throw new Error('the sign has a lane');
  const levels = levelsOf(plan, lane.lamp, 0, 40);
  expect(levels.filter(({ seconds }) => seconds > 18 && seconds < 26)).toEqual([]);
  expect(levels.filter(({ seconds }) => seconds === 18).at(-1)?.level).toBe(0.16);
  expect(levels.filter(({ seconds }) => seconds < 18).length).toBeGreaterThan(50);
  expect(levels.filter(({ seconds }) => seconds > 26).length).toBeGreaterThan(50);
  expect(Math.max(...levels.filter(({ seconds }) => seconds > 26).map(({ level }) => level))).toBeGreaterThan(
    0.3,
  );
  expect(levels.every(({ seconds }, k) => k === 0 || seconds >= levels[k - 1].seconds)).toBe(true);
  const spoken = (thing: Parameters<typeof spokenOf>[1]): string =>
    spokenOf(plan, thing, 'm').replaceAll('\u00a0', ' ');
  const { label } = lane.lamp;
  expect(spoken({ type: 'lamp', itemId: 'sign' })).toBe(
    `${label}, dimmed to 16 %, 2 cues, flickers from 0.0 s to 18.0 s and from 26.0 s on`,
  );
  expect(spoken({ type: 'cue', itemId: 'sign', cueIndex: 0 })).toBe(
    `${label} stops flickering, at beat 5, 18.0 s`,
  );
  expect(spoken({ type: 'cue', itemId: 'sign', cueIndex: 1 })).toBe(
    `${label} goes to 40 % at once, and begins to flicker, at 26.0 s`,
  );
  expect(lane.lamp.cues?.map((cue) => cueText(cue).replaceAll('\u00a0', ' '))).toEqual([
    'steady',
    'to 40 % at once, flickers',
  ]);
});

test('everything has a spoken name', () => {
  const spoken = (thing: Parameters<typeof spokenOf>[1]): string =>
    spokenOf(demo, thing, 'm').replaceAll('\u00a0', ' ');
  expect(spoken({ type: 'mark', performerId: 'vera', markId: 'v3' })).toBe(
    'Vera’s mark V3 at beat 5, 18.0 s, faces 90°',
  );
  expect(spoken({ type: 'hold', performerId: 'vera', markId: 'v1' })).toBe(
    'Vera leaves mark V1 at 3.5 s, after 3.5 s',
  );
  expect(spoken({ type: 'beat', beatId: 'face' })).toBe('Beat 5, Face to face, 18.0 s');
  expect(spoken({ type: 'span', setupId: 'wide', end: 'to' })).toBe('Setup A ends at beat 7, 26.0 s');
  expect(spoken({ type: 'beat', beatId: 'nothing' })).toBe('');
});

test('a walk is said in seconds and in metres or feet, and says where nobody can go so fast', () => {
  const walk = {
    fromMark: 'a',
    toMark: 'b',
    path: [],
    metres: 3.048,
    leaveSeconds: 0,
    arriveSeconds: 1,
    cruisingMetresPerSecond: 6.096,
    gait: 'run',
    tooFast: true,
  } as const;
  const plain = (texts: readonly string[]): string | undefined => texts[0]?.replaceAll('\u00a0', ' ');
  expect(plain(walkTexts(walk, 'm'))).toBe('runs 3.0 m in 1.0 s, 6.1 m/s, too fast');
  expect(plain(walkTexts(walk, 'ft-in'))).toBe('runs 10′ 0″ in 1.0 s, 20.0 ft/s, too fast');
});

test('the corners of the roof are named by their side and by what stands there', () => {
  const corners = cornersOfRoof(demo);
  expect(corners.length).toBeGreaterThanOrEqual(4);
  expect(corners.map(({ word }) => word.split(',')[0])).toContain('far left');
  expect(corners.find(({ word }) => word.startsWith('far left'))?.word).toBe('far left, by stair house');
  expect(cornersOfRoof({ ...demo, pieces: [] })).toEqual([]);
});
