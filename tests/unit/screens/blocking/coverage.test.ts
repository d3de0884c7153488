import { expect, test } from 'vitest';
import type { Coverage, CoverageCell } from '../../../../src/core/continuity/coverage';
import { chartRows, columnEdges, pixelAt } from '../../../../src/screens/sheet/blocking/coverage/chart';
import { barWords, cellWords } from '../../../../src/screens/sheet/blocking/coverage/words';
import { smallRoof } from '../../smallRoof';

const intervals: Coverage['intervals'] = [
  { fromBeat: 'a', toBeat: 'b', fromSeconds: 0, toSeconds: 2 },
  { fromBeat: 'b', toBeat: 'c', fromSeconds: 2, toSeconds: 8 },
  { fromBeat: 'c', toBeat: 'd', fromSeconds: 8, toSeconds: 10 },
];
const none = (isInPlay: boolean): CoverageCell => ({ setups: [], share: 0, isInPlay });
const cell = (...setups: CoverageCell['setups']): CoverageCell => ({ setups, share: 1, isInPlay: true });
const coverage = (cells: readonly CoverageCell[], performerIds = ['vera']): Coverage => ({
  intervals,
  rows: [{ performerIds, cells }],
  holes: [],
});

test('a setup that goes on in the same size is one bar; another size begins another on the same line', () => {
  const [row] = chartRows(
    coverage([
      cell({ setupId: 'one', share: 1, size: 'mid shot' }),
      cell({ setupId: 'one', share: 1, size: 'mid shot' }, { setupId: 'two', share: 0.4, size: 'close-up' }),
      cell({ setupId: 'one', share: 1, size: 'close-up' }),
    ]),
  );
  expect(row.lines).toBe(2);
  expect(row.bars).toEqual([
    {
      setupId: 'one',
      size: 'mid shot',
      first: 0,
      last: 1,
      fromSeconds: 0,
      toSeconds: 8,
      whole: true,
      line: 0,
    },
    {
      setupId: 'one',
      size: 'close-up',
      first: 2,
      last: 2,
      fromSeconds: 8,
      toSeconds: 10,
      whole: true,
      line: 0,
    },
    {
      setupId: 'two',
      size: 'close-up',
      first: 1,
      last: 1,
      fromSeconds: 2,
      toSeconds: 8,
      whole: false,
      line: 1,
    },
  ]);
});

test('a line of a row is taken again once the setup on it is over', () => {
  const [row] = chartRows(
    coverage([
      cell({ setupId: 'one', share: 1, size: 'mid shot' }),
      cell({ setupId: 'two', share: 1, size: 'mid shot' }),
      none(false),
    ]),
  );
  expect(row.bars.map(({ setupId, line }) => [setupId, line])).toEqual([
    ['one', 0],
    ['two', 0],
  ]);
  expect(row.lines).toBe(1);
});

test('a hole is where something happens and no setup has it; a pair apart and somebody at rest are none', () => {
  const cells = [none(true), none(true), none(false)];
  expect(chartRows(coverage(cells))[0].holes).toEqual([{ first: 0, last: 1, fromSeconds: 0, toSeconds: 8 }]);
  expect(chartRows(coverage(cells, ['vera', 'nuno']))[0].holes).toEqual([]);
});

test('columns share the room by their length, and never fall below what can be lettered', () => {
  // 100 pixels: 3 × 20 for the letters, 40 left over for 10 seconds, 4 each.
  expect(columnEdges(intervals, 100, 20)).toEqual([0, 28, 72, 100]);
  expect(columnEdges(intervals, 30, 20)).toEqual([0, 20, 40, 60]);
});

test('a moment lies between the edges of its column, and at the ends outside', () => {
  const edges = [0, 28, 72, 100];
  expect(pixelAt(intervals, edges, 1)).toBe(14);
  expect(pixelAt(intervals, edges, 5)).toBe(50);
  expect(pixelAt(intervals, edges, -3)).toBe(0);
  expect(pixelAt(intervals, edges, 99)).toBe(100);
});

test('bars and cells are said in words', () => {
  const plan = smallRoof();
  const [setup] = plan.setups;
  const [performer] = plan.cast;
  const [row] = chartRows(
    coverage(
      [cell({ setupId: setup.id, share: 0.5, size: 'mid shot' }), none(true), none(false)],
      [performer.id],
    ),
  );
  expect(barWords(plan, row, row.bars[0])).toBe(
    `A mid shot, ${performer.label}, 0.0\u00a0s to 2.0\u00a0s, in part`,
  );
  expect(cellWords(plan, cell({ setupId: setup.id, share: 0.5, size: 'mid shot' }), false)).toBe(
    'A, mid shot for 50\u00a0%',
  );
  expect(cellWords(plan, none(true), false)).toBe('no setup');
  expect(cellWords(plan, none(true), true)).toBe('not together');
});
