import fc from 'fast-check';
import { expect, test } from 'vitest';
import { editFaults } from '../../../src/core/plan/editFaults';
import { MOST } from '../../../src/core/plan/edits/limits';
import { itemsOf } from '../../../src/core/plan/items';
import { parsePlan } from '../../../src/core/plan/parse';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { EMPTY_PLAN } from '../../../src/desk/emptyPlan';
import { type Draw, drawFrom } from '../../plans/draw';
import { fullRoof } from '../../plans/fullRoof';
import { cases } from '../../thorough';
import { someEdit } from './edits';

/** What every edit was held to before: the whole plan, read anew. */
function faultsOf(plan: unknown): readonly string[] {
  const read = parsePlan(plan);
  return read.ok ? [] : read.faults.map(({ sentence }) => sentence);
}
const said = (before: Plan, after: Plan): readonly string[] =>
  editFaults(before, after).map(({ sentence }) => sentence);

const LISTS = ['pieces', 'gear', 'cast', 'setups'] as const;
type Spoil = (plan: Plan, draw: Draw) => object;

/** One record of a list with other fields, or with what is not a record in its place. */
function otherwise(plan: Plan, draw: Draw, change: (record: object) => unknown): object {
  const list = draw.pick(LISTS);
  if (plan[list].length === 0) return plan;
  const records: readonly object[] = plan[list];
  const at = draw.whole(0, records.length - 1);
  return { ...plan, [list]: records.map((record, place) => (place === at ? change(record) : record)) };
}

/** What an edit must not make of a plan, and some of what it may. */
const SPOILS: readonly Spoil[] = [
  (plan, draw) => otherwise(plan, draw, (record) => ({ ...record, label: '' })),
  (plan, draw) => otherwise(plan, draw, (record) => ({ ...record, weather: 'fair' })),
  (plan, draw) => otherwise(plan, draw, (record) => ({ ...record, id: itemsOf(plan)[0]?.record.id ?? '' })),
  (plan, draw) => otherwise(plan, draw, (record) => ({ ...record, at: [0, Number.NaN, 0] })),
  (plan, draw) => otherwise(plan, draw, () => draw.pick([null, undefined, 7, [], {}])),
  (plan, draw) => otherwise(plan, draw, (record) => ({ ...record, id: undefined })),
  (plan, draw) => ({ ...plan, [draw.pick(LISTS)]: draw.pick([undefined, null, 'none', {}]) }),
  (plan) => ({ ...plan, gear: plan.gear.filter(({ kind }) => kind !== 'stand') }),
  (plan) => ({ ...plan, beats: plan.beats.slice(1) }),
  (plan, draw) => ({ ...plan, gear: plan.gear.slice(draw.whole(0, plan.gear.length)) }),
  (plan) => ({ ...plan, gear: [...plan.gear, ...plan.gear.slice(0, 1)] }),
  (plan) => ({ ...plan, gear: [undefined, ...plan.gear] }),
  (plan) => ({ ...plan, pieces: plan.pieces.toReversed(), gear: plan.gear.toReversed() }),
  (plan) => ({ ...plan, cast: plan.gear, gear: plan.cast }),
  (plan) => ({ ...plan, safety: { metres: -1, frameWidths: 0 } }),
  (plan) => ({ ...plan, kit: { ...plan.kit, lenses: plan.kit.lenses.slice(1) } }),
  (plan) => ({ ...plan, toString: 1 }),
  ({ place: _place, ...plan }) => plan,
  ({ tapes: _tapes, ...plan }) => plan,
];

test('after an edit, and after what no edit should do, the faults are those of the whole plan', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(EMPTY_PLAN, fullRoof()),
      fc.noShrink(fc.integer({ min: 0, max: 1e9 })),
      (start, seed) => {
        const draw = drawFrom(seed);
        let plan = start;
        for (let step = 0; step < 20; step += 1) {
          const [name, change] = someEdit(plan, draw, 60);
          const after = change(plan);
          expect(said(plan, after), name).toEqual(faultsOf(after));
          const spoilt = draw.pick(SPOILS)(after, draw) as Plan;
          expect(said(plan, spoilt), `${name}, spoilt`).toEqual(faultsOf(spoilt));
          plan = after;
        }
      },
    ),
    { numRuns: cases(60) },
  );
});

test('a list that grows too long is one, whatever of it was there before', () => {
  const [piece] = fullRoof().pieces;
  const some = Array.from({ length: MOST.pieces }, (_, k) => ({ ...piece, id: `piece-${k}` }));
  const [setup] = fullRoof().setups;
  const setups = Array.from({ length: MOST.setups }, (_, k) => ({ ...setup, id: `setup-${k}` }));
  const before: Plan = { ...fullRoof(), pieces: some, setups };
  expect(faultsOf(before)).toEqual([]);
  const after = { ...before, pieces: [...some, { ...piece, id: 'one-more' }] };
  expect(said(before, after)).toEqual(faultsOf(after));
  expect(said(before, after)[0]).toContain('at most 4,000 set pieces');
  const longer = { ...before, setups: [{ ...setup, id: 'one-more' }, ...setups] };
  expect(said(before, longer)).toEqual(faultsOf(longer));
  expect(said(before, longer)[0]).toContain('at most 400 setups');
});
