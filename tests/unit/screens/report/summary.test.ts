import { describe, expect, test } from 'vitest';
import { findingSentence } from '../../../../src/core/report/sentences';
import {
  concernOf,
  findingsOf,
  isLetShow,
  restOf,
  tallyOf,
  toneOf,
} from '../../../../src/screens/report/concerns';
import { summaryOf, worstByItem } from '../../../../src/screens/report/summary';
import { lostAlike } from '../../../../src/screens/report/useSetupReports';
import { itemReport, setupReport } from './itemReport';

const shows = itemReport({ id: 'Lamp stand 2', verdict: 'showing', share: 0.011 });
const showsMore = itemReport({ id: 'Cart', verdict: 'showing', share: 0.2 });
const mirrored = itemReport({ id: 'Head 1', verdict: 'mirrored', mirroredShare: 0.002 });
const close = itemReport({
  id: 'Bounce 1',
  verdict: 'close',
  margin: { metres: 0.18, frameWidths: 0.01, edge: 'left', atSeconds: 4 },
});
const covered = itemReport({ id: 'Flag 1', verdict: 'covered' });
const lost = itemReport({ id: 'Lamp stand 3', verdict: 'lost in the dark', share: 0.01 });
const clear = itemReport({ id: 'Flag 2' });
const wall = itemReport({ id: 'Wall', verdict: 'showing', share: 0.4, wish: 'either' });
const missing = itemReport({ id: 'Sign', verdict: 'clear', wish: 'must show' });

describe('what a verdict means depends on the wish', () => {
  test.each([
    [shows, 'shows'],
    [mirrored, 'mirrored'],
    [close, 'close'],
    [covered, null],
    [lost, null],
    [{ ...lost, wish: 'must show' as const }, 'missing'],
    [clear, null],
    [wall, null],
    [missing, 'missing'],
    [{ ...missing, verdict: 'showing' as const }, null],
  ])('%#', (item, concern) => expect(concernOf(item)).toBe(concern));
});

test('findings come worst first, the larger before the smaller; the rest behind them', () => {
  const setup = setupReport(clear, close, wall, shows, mirrored, missing, showsMore, covered);
  expect(findingsOf(setup).map(({ id }) => id)).toEqual([
    'Cart',
    'Lamp stand 2',
    'Sign',
    'Head 1',
    'Bounce 1',
  ]);
  expect(restOf(setup).map(({ id }) => id)).toEqual(['Flag 1', 'Flag 2', 'Wall']);
  expect(tallyOf(setup)).toEqual([
    { verdict: 'showing', count: 2 },
    { verdict: 'mirrored', count: 1 },
    { verdict: 'close', count: 1 },
    { verdict: 'covered', count: 1 },
    { verdict: 'clear', count: 1 },
  ]);
});

test('what was let show asks for nothing and is told as that', () => {
  const accepted = { ...shows, accepted: { reason: 'Reads as a street lamp' } };
  const closeToo = { ...close, accepted: { reason: 'It may' } };
  const setup = setupReport(accepted, mirrored, closeToo, clear);
  expect(findingsOf(setup).map(({ id }) => id)).toEqual(['Head 1']);
  expect(tallyOf(setup).map(({ verdict }) => verdict)).toEqual(['mirrored', 'close', 'clear']);
  expect(setup.items.filter(isLetShow)).toEqual([accepted]);
  expect(toneOf(accepted)).toBe('q');
  expect(summaryOf(setupReport(accepted, clear), 'm')).toEqual({
    verdict: 'showing',
    words: '1 let show',
    tone: 'q',
  });
  expect(summaryOf(setupReport(accepted, mirrored, clear), 'm').words).toBe('1 mirrored, 1 let show');
  // Something that must show is missing all the same.
  expect(concernOf({ ...missing, accepted: { reason: 'It may' } })).toBe('missing');
  expect(findingSentence(accepted, setup).text).toMatch(
    / of the frame\. Let show: Reads as a street lamp\.$/,
  );
  expect(findingSentence({ ...clear, accepted: { reason: 'It may.' } }, setup).text).not.toContain(
    'Let show',
  );
});

describe('a setup in a few words', () => {
  test.each([
    [[shows, showsMore, mirrored, close], 'showing', '2 show, 1 mirrored'],
    [[shows, clear], 'showing', 'lamp stand 2 shows'],
    [[shows, close], 'showing', '1 shows'],
    [[mirrored, wall], 'mirrored', 'head 1, mirrored'],
    [[close, covered], 'close', 'bounce 1, 0.18\u00a0m'],
    [[close, { ...close, id: 'b2' }], 'close', '2 close'],
    [[missing], 'covered', 'sign, missing'],
    [[covered, clear], 'covered', '1 covered'],
    [[lost, covered, clear], 'lost in the dark', '1 lost in the dark'],
    [[lost, close], 'close', 'bounce 1, 0.18\u00a0m'],
    [[clear, wall], 'clear', 'clear'],
    [[], 'clear', 'clear'],
  ] as const)('%#', (items, verdict, words) => {
    expect(summaryOf(setupReport(...items), 'm')).toEqual({ verdict, words });
  });
});

test('what is lost in the dark over a span is so at each of its instants', () => {
  const instant = setupReport({ ...lost, verdict: 'showing' }, shows);
  const over = setupReport(lost, shows);
  expect(lostAlike(instant, over).items.map(({ verdict }) => verdict)).toEqual([
    'lost in the dark',
    'showing',
  ]);
  expect(lostAlike(instant, setupReport(shows))).toBe(instant);
  expect(tallyOf(over)).toEqual([
    { verdict: 'showing', count: 1 },
    { verdict: 'lost in the dark', count: 1 },
  ]);
});

test('the worst of an item over the setups', () => {
  const here = itemReport({ id: 'x', verdict: 'covered' });
  const there = itemReport({ id: 'x', verdict: 'close', margin: close.margin });
  const setups = [setupReport(here, clear), { ...setupReport(there), id: 'b' }];
  expect(worstByItem(setups).get('x')).toEqual({ worst: there, troubledIds: ['b'] });
  expect(worstByItem(setups).get('Flag 2')).toEqual({ worst: clear, troubledIds: [] });
});
