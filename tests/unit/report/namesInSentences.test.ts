import { expect, test } from 'vitest';
import { spanOf } from '../../../src/core/optics/camera';
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
