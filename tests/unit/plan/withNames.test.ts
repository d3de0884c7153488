import { expect, test } from 'vitest';
import { nightOf } from '../../../src/core/night/nightOf';
import { packingOf } from '../../../src/core/night/packing/packingOf';
import { spanOf } from '../../../src/core/optics/camera';
import { itemsOf, kindOf } from '../../../src/core/plan/items';
import { calledBy } from '../../../src/core/plan/named';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { withNames } from '../../../src/core/plan/withNames';
import { reportOf } from '../../../src/core/report/report';
import { findingSentence } from '../../../src/core/report/sentences';
import { quickDemo } from '../../plans/quickDemo';

const UNSEEN = '\u2800\u200b';

/** The demo night, in which no name can be seen. */
function nameless(): Plan {
  const plan = quickDemo();
  const all = <Entry extends { readonly label: string }>(entries: readonly Entry[]): Entry[] =>
    entries.map((entry) => ({ ...entry, label: UNSEEN }));
  return {
    ...plan,
    pieces: all(plan.pieces),
    cast: all(plan.cast),
    gear: all(plan.gear),
    beats: all(plan.beats),
    setups: all(plan.setups),
    probes: all(plan.probes ?? []),
  };
}

test('a name of which nothing can be seen gives way to what the thing is', () => {
  for (const label of [' ', '\u00a0\u2003', '\u200b', '\u200e\u2068\u2069', '\u2800', '\u3164', '\ufe0f'])
    expect(calledBy(label, 'stand')).toBe('stand');
  for (const label of ['1', '.', ' Wide', '\u0301', '👩🏽‍🚒', 'מנורה'])
    expect(calledBy(label, 'stand')).toBe(label);
});

test('a plan whose names can all be seen is told as it is, and what has changed in another alone is new', () => {
  const plan = quickDemo();
  expect(withNames(plan)).toEqual(plan);
  expect(withNames(plan).gear).toBe(plan.gear);
  const bare = nameless();
  const told = withNames(bare);
  expect(withNames(bare)).toBe(told);
  expect(withNames(told)).toBe(told);
  const moved = withNames({ ...bare, notes: 'Later.' });
  expect(moved.gear[0]).toBe(told.gear[0]);
  const [first, ...others] = bare.gear;
  const edited = withNames({ ...bare, gear: [{ ...first, label: 'Lamp stand 1' }, ...others] });
  expect(edited.gear[0].label).toBe('Lamp stand 1');
  expect(edited.gear[1]).toBe(told.gear[1]);
});

test('without a name that can be seen, no sentence and no row has a gap in its place', () => {
  const plan = withNames(nameless());
  const [first] = plan.setups;
  const report = reportOf(plan, { setupIds: [first.id], at: spanOf(plan, first)[0] });
  const [setup] = report.setups;
  const kinds = new Map(itemsOf(plan).map((item) => [item.record.id, kindOf(item)]));
  for (const item of setup.items) {
    expect(item.label).toBe(kinds.get(item.id));
    expect(findingSentence(item, setup).name).toBe(item.label);
  }
  const night = nightOf(plan);
  expect(JSON.stringify([report, night, packingOf(plan, night)])).not.toMatch(/[\u2800\u200b]/);
});
