import { expect, test } from 'vitest';
import demo from '../../../../assets/loft-night.plan.json';
import { parsePlan } from '../../../../src/core/plan/parse';
import type { ItemReport } from '../../../../src/core/report/types';
import { findingsOnRoof } from '../../../../src/screens/overhead/findings';
import type { Spot } from '../../../../src/screens/overhead/geometry/spots';
import { itemReport, setupReport } from '../report/itemReport';

const parsed = parsePlan(demo);
if (!parsed.ok) throw new Error('the demo plan does not parse');
const plan = parsed.value;

const item = (id: string, more: Partial<ItemReport>): ItemReport =>
  itemReport({ id, label: plan.gear.find((gear) => gear.id === id)?.label ?? id, ...more });

const places: Readonly<Record<string, Spot>> = { 'stand-1': [0, 0], 'head-1': [0, 0.1], 'stand-2': [5, 0] };
const placeOf = (id: string): Spot | null => places[id] ?? null;

test('what stands in one place gets one ring, told by its worst', () => {
  const found = findingsOnRoof(
    setupReport(
      item('head-1', { verdict: 'showing', share: 0.01 }),
      item('stand-1', { verdict: 'showing', share: 0.02 }),
      item('stand-2', {
        verdict: 'close',
        margin: { metres: 0.12, frameWidths: 0.01, edge: 'left', atSeconds: 0 },
      }),
    ),
    plan,
    placeOf,
    'm',
    1,
  );
  expect(found.map(({ words, detail, glyph }) => [words, detail, glyph])).toEqual([
    ['Lamp stand 1 and 1 more show', '2.0\u00a0% of the frame', 'showing'],
    ['Lamp stand 2 is close', '0.12\u00a0m outside frame left', 'close'],
  ]);
});

test('what may show is no finding, and a lesser one of the same place does not cover the ring', () => {
  const found = findingsOnRoof(
    setupReport(
      item('stand-2', { verdict: 'showing', share: 0.5, wish: 'either' }),
      item('stand-1', { verdict: 'showing', share: 0.01 }),
      item('head-1', { verdict: 'mirrored', mirroredShare: 0.01 }),
    ),
    plan,
    placeOf,
    'm',
    1,
  );
  expect(found.map(({ words }) => words)).toEqual(['Lamp stand 1 shows']);
});
