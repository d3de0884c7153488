import fc from 'fast-check';
import { expect } from 'vitest';
import { parsePlan, parsePlanText } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';
import { serialisePlan } from '../../src/core/plan/serialise';
import { reportOf } from '../../src/core/report/report';
import { planToGlb } from '../../src/exchange/glb';
import { CREW_FILE_MARK, planTextIn } from '../../src/exchange/html/planInFile';
import { brokenNumbers } from '../plans/brokenNumbers';
import { DEMO, textOf } from '../plans/readPlan';
import { fuzzed } from './fuzzed';
import { changesTo, textChanges } from './mutation';

const text = textOf(DEMO);
const demo: unknown = JSON.parse(text);
const small: unknown = JSON.parse(textOf('tests/plans/paper.plan.json'));

type Read = ReturnType<typeof parsePlan>;

/** One clear sentence for each fault; null, or the plan that was read. */
function planOf(parsed: Read): Plan | null {
  if (parsed.ok) return parsed.value;
  expect(parsed.faults.length).toBeGreaterThan(0);
  for (const { sentence } of parsed.faults) {
    expect(sentence).toMatch(/^[^\n]+: found [^\n]+, expected [^\n]+\.$/);
    expect(sentence).not.toMatch(/[\p{Cc}\u2028\u2029]/u);
    expect(sentence.length).toBeLessThan(1000);
  }
  return null;
}

/** Faults, or a plan that comes back from its own text as it went. */
function readBack(parsed: Read): string {
  const plan = planOf(parsed);
  if (!plan) return 'refused';
  expect(parsePlanText(serialisePlan(plan))).toEqual({ ok: true, value: plan });
  return 'read';
}

/** Faults, for what can be no plan. */
function refused(parsed: Read): string {
  expect(planOf(parsed)).toBeNull();
  return 'refused';
}

/** Faults, or a plan whose stills and scene can be worked out. */
function workedOut(document: unknown): string {
  const plan = planOf(parsePlan(document));
  if (!plan) return 'refused';
  for (const setup of plan.setups) {
    const { atSeconds } = plan.beats.find(({ id }) => id === setup.span.from) ?? { atSeconds: 0 };
    const report = reportOf(plan, { setupIds: [setup.id], at: atSeconds });
    expect(brokenNumbers(report)).toEqual([]);
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
  }
  expect(planToGlb(plan, 0).length).toBeGreaterThan(0);
  return 'worked out';
}

fuzzed('a plan: one thing changed', changesTo(demo), (document) => readBack(parsePlan(document)));

fuzzed(
  'a plan: one thing changed, worked out',
  fc.oneof({ weight: 9, arbitrary: changesTo(small) }, { weight: 1, arbitrary: changesTo(demo) }),
  workedOut,
  { longestMs: 60_000 },
);

fuzzed(
  'a plan: letters of its text changed',
  textChanges(
    [text, textOf('tests/plans/paper.plan.json')],
    fc.constantFrom('', '0', '-', '"', '}', ']', ',', ':', 'e9', '\\', '\u0000', '\u2028', '"__proto__":1,'),
  ),
  (changed) => readBack(parsePlanText(changed)),
);

fuzzed('a plan: any JSON', fc.jsonValue({ maxDepth: 6 }), (value) => refused(parsePlan(value)));

fuzzed(
  'a plan: any JSON that says it is one',
  fc.dictionary(fc.constantFrom(...Object.keys(demo ?? {})), fc.jsonValue({ maxDepth: 4 })),
  (document) => refused(parsePlan({ ...document, standclear: 1 })),
);

fuzzed(
  'a plan: any text',
  fc.oneof(
    fc.string({ unit: 'binary', maxLength: 500 }),
    fc
      .tuple(fc.constantFrom('[', '{"a":', '[[', '"\\u0000'), fc.nat({ max: 20_000 }))
      .map(([deep, times]) => deep.repeat(times)),
  ),
  (any) => refused(parsePlanText(any)),
);

const sheet = (plan: string): string =>
  `${CREW_FILE_MARK}<script type="application/json" id="plan">${plan}</script>`;
fuzzed(
  'a plan: any text in a crew sheet',
  fc.oneof(
    fc.string({ unit: 'binary', maxLength: 500 }).map(sheet),
    fc.string({ maxLength: 200 }).map((any) => CREW_FILE_MARK + any),
    textChanges(
      [sheet(textOf('tests/plans/paper.plan.json'))],
      fc.constantFrom('', '<', '</script>', '"', '>'),
    ),
  ),
  (file) => {
    const within = planTextIn(file);
    return within === null ? 'no plan in it' : readBack(parsePlanText(within));
  },
);
