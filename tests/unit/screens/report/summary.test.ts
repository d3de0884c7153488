import { describe, expect, test } from 'vitest';
import { concernOf, findingsOf, restOf, tallyOf } from '../../../../src/screens/report/concerns';
import { summaryOf, worstByItem } from '../../../../src/screens/report/summary';
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
const clear = itemReport({ id: 'Flag 2' });
const wall = itemReport({ id: 'Wall', verdict: 'showing', share: 0.4, wish: 'either' });
const missing = itemReport({ id: 'Sign', verdict: 'clear', wish: 'must show' });

describe('what a verdict means depends on the wish', () => {
  test.each([
    [shows, 'shows'],
    [mirrored, 'mirrored'],
    [close, 'close'],
    [covered, null],
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
    [[clear, wall], 'clear', 'clear'],
    [[], 'clear', 'clear'],
  ] as const)('%#', (items, verdict, words) => {
    expect(summaryOf(setupReport(...items), 'm')).toEqual({ verdict, words });
  });
});

test('the worst of an item over the setups', () => {
  const here = itemReport({ id: 'x', verdict: 'covered' });
  const there = itemReport({ id: 'x', verdict: 'close', margin: close.margin });
  const setups = [setupReport(here, clear), { ...setupReport(there), id: 'b' }];
  expect(worstByItem(setups).get('x')).toEqual({ worst: there, troubledIds: ['b'] });
  expect(worstByItem(setups).get('Flag 2')).toEqual({ worst: clear, troubledIds: [] });
});
