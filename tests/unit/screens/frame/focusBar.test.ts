import { expect, test } from 'vitest';
import { focusSampleAt, focusTrack } from '../../../../src/core/continuity/focusTrack';
import { parsePlan } from '../../../../src/core/plan/parse';
import { retimed } from '../../../../src/desk/blocking/retimeKey';
import {
  BAR_HEIGHT,
  bandPath,
  focusReading,
  focusScale,
  letteredRacks,
  linePath,
  racksOf,
  rackWords,
  spread,
} from '../../../../src/screens/frame/focusBar';
import { DEMO, readPlan } from '../../../plans/readPlan';

const demo = readPlan(DEMO);
const samples = focusTrack(demo, demo.setups[0], 9);

test('the bar holds everybody and the focus, near below far', () => {
  const { yOf, ticks } = focusScale(samples);
  for (const { focusMetres, performers } of samples) {
    for (const metres of [focusMetres, ...performers.map((each) => each.metres)]) {
      if (metres === null) continue;
      expect(yOf(metres)).toBeGreaterThan(0);
      expect(yOf(metres)).toBeLessThan(BAR_HEIGHT);
    }
  }
  expect(yOf(7)).toBeGreaterThan(yOf(8));
  // Each doubling is as high as the next, within the bar.
  expect(yOf(6) - yOf(9)).toBeCloseTo(yOf(8) - yOf(12), 6);
  expect(ticks.every((metres) => yOf(metres) > 0 && yOf(metres) < BAR_HEIGHT)).toBe(true);
});

test('marked distances are not lettered over each other, however far they span', () => {
  const [sample] = samples;
  const { yOf, ticks } = focusScale([
    { ...sample, focusMetres: 0.3 },
    { ...sample, focusMetres: 60 },
  ]);
  expect(ticks.length).toBeGreaterThan(1);
  ticks.slice(1).forEach((metres, k) => {
    expect(yOf(ticks[k]) - yOf(metres)).toBeGreaterThanOrEqual(12);
  });
});

test('lines stop where there is nobody, and the band is closed', () => {
  const scale = focusScale(samples);
  const gone = samples.map((sample, k) =>
    k === 4 ? { ...sample, focusMetres: null, nearMetres: null } : sample,
  );
  expect(linePath(samples, scale, ({ focusMetres }) => focusMetres).match(/M/g)).toHaveLength(1);
  expect(linePath(gone, scale, ({ focusMetres }) => focusMetres).match(/M/g)).toHaveLength(2);
  expect(bandPath(gone, scale).match(/Z/g)).toHaveLength(2);
});

test('lettering keeps apart and within the bar, in the order of its lines', () => {
  expect(spread([10, 12, 30], 10, 5, 40)).toEqual([10, 20, 30]);
  expect(spread([38, 36], 10, 5, 40)).toEqual([40, 30]);
});

test('the reading says the focus and everybody against it', () => {
  const words = focusReading(demo, samples[4], 'm');
  for (const { label } of demo.cast) expect(words).toContain(label);
  expect(words).toMatch(/focus \d+\.\d\d\sm, sharp from/);
});

test('a key is retimed to a frame, caught by a beat, and never passes the keys beside it', () => {
  const [setup] = demo.setups;
  const span = [9, 26] as const;
  const at = (seconds: number, reachSeconds: number) =>
    retimed(demo, { setupId: setup.id, keyIndex: 0, seconds, span, reachSeconds });
  const keyOf = (plan: typeof demo) => plan.setups[0].move.keys[0];
  const beat = demo.beats.find(({ atSeconds }) => atSeconds > 9 && atSeconds < setup.move.keys[1].atSeconds);
  expect(keyOf(at(11.51, -1)).atSeconds).toBeCloseTo(11.5, 3);
  if (beat) {
    expect(keyOf(at(beat.atSeconds + 0.1, 0.2))).toMatchObject({ beat: beat.id, atSeconds: 0 });
  }
  const late = at(99, -1);
  expect(keyOf(late).atSeconds).toBeLessThan(late.setups[0].move.keys[1].atSeconds);
  expect(parsePlan(JSON.parse(JSON.stringify(late))).ok).toBe(true);
});

test('racks are told from whom to whom, when, and over how long', () => {
  const [first] = demo.setups;
  const [one, other] = demo.cast;
  const racked = {
    ...first,
    focus: {
      racks: [
        { atSeconds: 20, pullSeconds: 0, on: { metres: 2 } },
        { atSeconds: 9, pullSeconds: 1, on: { follow: one.id } },
        { atSeconds: 12, pullSeconds: 0.8, on: { follow: other.id } },
      ],
    },
  };
  const racks = racksOf(demo, racked, 'm');
  expect(racks.map(rackWords)).toEqual([
    `begins on ${one.label}`,
    `at 12.0\u00a0s from ${one.label} to ${other.label}, pulled over 0.8\u00a0s`,
    `at 20.0\u00a0s from ${other.label} to 2.00\u00a0m, at once`,
  ]);
  expect(racks[1].from).toBeCloseTo(11.2, 9);
  expect(racksOf(demo, { ...first, focus: { metres: 3 } }, 'm')).toEqual([]);
  // Half way through a pull it is said what is pulled; after it, no more.
  const at = (seconds: number) => focusReading(demo, focusSampleAt(demo, racked, seconds), 'm', racks);
  expect(at(11.6)).toContain(`; pulled from ${one.label} to ${other.label}; `);
  expect(at(12.5)).not.toContain('pulled');
  // On the bar each is marked where it ends; names that would run together are left out, and the first needs none.
  expect(letteredRacks(racks, [9, 26], 0.14).map(({ share, lettered }) => [share, lettered])).toEqual([
    [expect.closeTo(3 / 17, 9), true],
    [expect.closeTo(11 / 17, 9), true],
  ]);
  expect(letteredRacks(racks, [9, 26], 0.6).map(({ lettered }) => lettered)).toEqual([true, false]);
  expect(letteredRacks(racks, [14, 26], 0.14)).toHaveLength(1);
});
