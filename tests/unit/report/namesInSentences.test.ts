import { expect, test } from 'vitest';
import { alignToFrame } from '../../../src/core/clearance/alignToFrame';
import { standingRefusal } from '../../../src/core/continuity/standing';
import { darkFromSentence } from '../../../src/core/night/dusk/darkFrom';
import { nightOf } from '../../../src/core/night/nightOf';
import type { Demand } from '../../../src/core/night/order/demands';
import { nightClock } from '../../../src/core/night/times/nightClock';
import { breachSentence, conflictSentence } from '../../../src/core/night/words/demandWords';
import { spanOf } from '../../../src/core/optics/camera';
import { tidyPoint } from '../../../src/core/plan/edits/tidy';
import { named } from '../../../src/core/plan/named';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { reportOf } from '../../../src/core/report/report';
import { findingSentence } from '../../../src/core/report/sentences';
import { quickDemo } from '../../plans/quickDemo';

/** What every name of the plan ends in. */
const TAIL = ', zz';
const NAMED = ['pieces', 'gear', 'cast', 'beats', 'setups'] as const;

/** The demo night, in which every name has a comma. */
function allCommas(): Plan {
  const plan = quickDemo();
  const renamed = NAMED.map((section) => [
    section,
    plan[section].map((record, k) => ({ ...record, label: `${section} ${k}${TAIL}` })),
  ]);
  return { ...plan, ...Object.fromEntries(renamed) };
}

const plan = allCommas();
const [first] = plan.setups;
const report = reportOf(plan, { setupIds: [first.id], at: spanOf(plan, first)[0] });
const [setup] = report.setups;

/** Every sentence of the report, with where it stands. */
const sentences: readonly (readonly [string, string])[] = [
  ...report.notices.map(({ sentence }) => ['notice', sentence] as const),
  ...report.cautions.map(({ sentence }) => ['caution', sentence] as const),
  ...report.power.sentences.map(({ sentence }) => ['power', sentence] as const),
  ...report.coverage.holes.map(({ sentence }) => ['coverage', sentence] as const),
  ...setup.continuity.map(({ sentence }) => ['continuity', sentence] as const),
  ...setup.light.sentences.map(({ text }) => ['light', text] as const),
  ...setup.items.map((item) => ['finding', findingSentence(item, setup).text] as const),
];

test('a name with a comma stands in quotation marks in every sentence of the report', () => {
  const [told, bare] = [
    sentences.filter(([, words]) => words.includes(TAIL)),
    sentences.filter(([, words]) => words.replace(/“[^”]*”/g, '').includes(TAIL)),
  ];
  expect(bare).toEqual([]);
  expect(new Set(told.map(([where]) => where))).toEqual(
    new Set(['notice', 'caution', 'power', 'coverage', 'continuity', 'light', 'finding']),
  );
});

test('every sentence of the report ends, and goes on small after a colon', () => {
  const names = new Set(['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H']);
  const faults = sentences.filter(([, words]) => {
    const after = /: ([A-Z]\w*)/.exec(words.replace(/“[^”]*”/g, '“”'))?.[1];
    return !/[.!?]$/.test(words) || (after !== undefined && !names.has(after));
  });
  expect(faults).toEqual([]);
});

test('a name without such a sign stands as it was written, and one in quotation marks keeps to single ones', () => {
  for (const label of ['Wide', 'Dolly track 3.6 m', 'Head 2 (edge)', '16:9 wide', 'مصباح 3'])
    expect(named(label)).toBe(label);
  expect(named('Wide, both')).toBe('“Wide, both”');
  expect(named('Take No.')).toBe('“Take No.”');
  expect(named('“Now”, loud')).toBe('“‘Now’, loud”');
});

test('and so it does in the words of the night, of clear ground and of what stands in the way', () => {
  const [a] = plan.setups;
  const [performer] = plan.cast;
  const stand = plan.gear.find(({ kind }) => kind === 'stand');
  const clock = nightClock(plan);
  const asked = (kind: Demand['kind']): Demand => ({
    kind,
    setupId: a.id,
    performerId: performer.id,
    earliest: 1200,
    latest: 1210,
  });
  const demands = (['before dark', 'after dark', 'from', 'until', 'in from', 'out by'] as const).map(asked);
  const night = nightOf(plan);
  const breach = breachSentence(plan, clock, night.schedule, { demand: asked('out by'), byMinutes: 5 });
  const held = plan.setups.find(({ support }) => support === 'sticks') ?? a;
  const box = plan.pieces.find(({ kind }) => kind === 'box');
  const at = box && 'at' in box ? box.at : [0, 0, 0];
  const keys = held.move.keys.map((key) => ({ ...key, position: tidyPoint([at[0], at[1] + 0.3, at[2]]) }));
  const inside = { ...held, move: { ...held.move, keys } };
  const locked = { ...plan, gear: plan.gear.map((gear) => ({ ...gear, locked: true })) };
  const aligned = alignToFrame(locked, {
    id: stand?.id ?? '',
    setupId: a.id,
    seconds: spanOf(plan, a)[0],
    to: 'right',
  });
  const told = [
    conflictSentence(plan, clock, demands),
    breach,
    darkFromSentence(plan, { setupId: a.id, itemId: stand?.id ?? '', minutes: 1200, isFromSunset: false }),
    standingRefusal({ ...plan, setups: [inside] }, inside, spanOf(plan, held)[0]) ?? '',
    'why' in aligned ? aligned.why : '',
  ];
  for (const words of told) {
    expect(words).toContain(TAIL);
    expect(words.replace(/“[^”]*”/g, '')).not.toContain(TAIL);
  }
});
