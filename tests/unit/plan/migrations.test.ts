import { expect, test, vi } from 'vitest';
import { MIGRATIONS, type Migration, migrate } from '../../../src/core/plan/migrations';
import { PLAN_VERSION } from '../../../src/core/plan/schema/version';
import { PAPER, readPlan } from '../../plans/readPlan';

/** From 1 to 2 a field is renamed, from 2 to 3 one is added, from 3 to 4 one becomes a list. */
const chain: ReadonlyMap<number, Migration> = new Map<number, Migration>([
  [1, ({ name, ...rest }) => ({ ...rest, title: name })],
  [2, (document) => ({ ...document, notes: '' })],
  [3, ({ title, ...rest }) => ({ ...rest, title: [title] })],
]);

test('a document goes through each version between its own and the newest', () => {
  expect(migrate({ standclear: 1, name: 'Roof' }, chain, 4)).toEqual({
    ok: true,
    value: { standclear: 4, title: ['Roof'], notes: '' },
  });
});

test('it starts at its own version', () => {
  expect(migrate({ standclear: 3, title: 'Roof', notes: 'kept' }, chain, 4)).toEqual({
    ok: true,
    value: { standclear: 4, title: ['Roof'], notes: 'kept' },
  });
});

test('a document of the newest version goes through none', () => {
  const never = vi.fn<Migration>((document) => ({ ...document }));
  const document = { standclear: 4, title: 'Roof' };
  expect(
    migrate(
      document,
      new Map([
        [1, never],
        [2, never],
        [3, never],
        [4, never],
      ]),
      4,
    ),
  ).toEqual({ ok: true, value: document });
  expect(never).not.toHaveBeenCalled();
});

test('the document itself stays as it was', () => {
  const document = Object.freeze({ standclear: 1, name: 'Roof' });
  migrate(document, chain, 4);
  expect(document).toEqual({ standclear: 1, name: 'Roof' });
});

test('a migration cannot keep its document at an older version', () => {
  const stubborn: Migration = () => ({ standclear: 1 });
  expect(migrate({ standclear: 1 }, new Map([[1, stubborn]]), 2)).toEqual({
    ok: true,
    value: { standclear: 2 },
  });
});

test('a missing migration is our own mistake', () => {
  expect(() => migrate({ standclear: 1 }, new Map(), 2)).toThrow('migrate: no migration from version 1');
});

test.each([
  [
    5,
    'standclear: found version 5, expected at most 4: this plan comes from a newer Standclear, open it there.',
  ],
  [0, 'standclear: found 0, expected the version of the plan, 1 to 4.'],
  [1.5, 'standclear: found 1.5, expected the version of the plan, 1 to 4.'],
  ['4', 'standclear: found "4", expected the version of the plan, 1 to 4.'],
  [undefined, 'standclear: found nothing, expected the version of the plan, 1 to 4.'],
  [Number.POSITIVE_INFINITY, 'standclear: found Infinity, expected the version of the plan, 1 to 4.'],
])('version %s is no version that can be read', (standclear, sentence) => {
  const migrated = migrate({ standclear }, chain, 4);
  expect(migrated).toMatchObject({ ok: false, faults: [{ sentence }] });
});

test('there is a migration from each version before this one', () => {
  expect([...MIGRATIONS.keys()].sort((a, b) => a - b)).toEqual(
    Array.from({ length: PLAN_VERSION - 1 }, (_, k) => k + 1),
  );
});

test('a plan of this version is left as it is', () => {
  const plan = readPlan(PAPER);
  expect(migrate(plan)).toEqual({ ok: true, value: plan });
});
