import { expect, test } from 'vitest';
import { connectAll } from '../../../src/core/power/connect/connectAll';
import { powerReport } from '../../../src/core/report/power/powerReport';
import { DEMO, readPlan } from '../../plans/readPlan';

const plan = readPlan(DEMO);

test('in the demo all that hangs on a cord has power, and nothing breaks', () => {
  const { loads, sentences, totals } = powerReport(plan);
  expect(loads.filter(({ feeding }) => feeding !== 'own').map(({ id, feeding }) => [id, feeding])).toEqual(
    ['head-1', 'head-2', 'head-3', 'head-4', 'cart'].map((id) => [id, 'fed']),
  );
  expect(sentences.filter(({ standing }) => standing === 'breaks')).toEqual([]);
  expect(totals.watts - totals.lossWatts).toBeCloseTo(4 * 350 + 200, 6);
});

test('without its cables, connecting everything feeds the same', () => {
  const bare = { ...plan, gear: plan.gear.filter(({ kind }) => kind !== 'cable') };
  const connected = connectAll(bare);
  expect(connected).toMatchObject({ left: [], straightIds: [] });
  const { loads, sentences } = powerReport(connected.plan);
  expect(loads.filter(({ feeding }) => feeding === 'fed')).toHaveLength(5);
  expect(sentences.filter(({ standing }) => standing === 'breaks')).toEqual([]);
});
