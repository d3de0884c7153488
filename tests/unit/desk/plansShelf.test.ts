import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, expect, test, vi } from 'vitest';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import { rooftop } from '../core/plan/edits/rooftop';

/** A page of its own: what one tab knows of the shelf, another does not. */
async function openTab() {
  vi.resetModules();
  const writing = await import('../../../src/desk/plans/writing');
  const takingUp = await import('../../../src/desk/plans/takingUp');
  const versions = await import('../../../src/desk/plans/versionShelf');
  const opening = await import('../../../src/desk/plans/lastOpen');
  const shelf = await import('../../../src/desk/shelf');
  return { ...writing, ...takingUp, ...versions, ...opening, ...shelf };
}

const plan = rooftop();
const fileName = 'rooftop.plan.json';
const moved = (to: readonly [number, number]) => moveItem(plan, { id: 'tank', to: [to[0], to[1]] });
let clock = 0;
const open = (state = plan) => {
  clock += 1;
  return { planId: 'one', plan: state, fileName, changedAt: clock };
};

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

test('a plan is written, read back by another page, and counted', async () => {
  const tab = await openTab();
  expect((await tab.writePlan(open()))?.writing).toBe(1);
  expect((await tab.writePlan(open(moved([1, 1]))))?.writing).toBe(2);
  const other = await openTab();
  const found = await other.findPlan('one');
  expect(found?.document).toEqual(moved([1, 1]));
  expect(found?.row).toMatchObject({ title: plan.title, date: plan.place.date, fileName, writing: 2 });
  expect(await other.lastOpen()).toEqual(['one']);
  expect(await other.findPlan('two')).toBeNull();
});

test('no tab writes over what another has written', async () => {
  const tab = await openTab();
  await tab.writePlan(open());
  const other = await openTab();
  const found = await other.findPlan('one');
  if (!found) throw new Error('the plan is not there');
  other.takeUpFrom(found.row);
  expect(await other.writePlan(open(moved([2, 2])))).not.toBeNull();
  expect(tab.isNews('one', 2)).toBe(true);
  expect(await tab.writePlan(open(moved([1, 1])))).toBeNull();
  expect((await tab.findPlan('one'))?.document).toEqual(moved([2, 2]));
  // Who came to the same has nothing to give up.
  expect((await tab.writePlan(open(moved([2, 2]))))?.writing).toBe(2);
  expect((await tab.writePlan(open(moved([3, 3]))))?.writing).toBe(3);
});

test('what a page left on its way out is the plan, or a plan of its own where another tab has written since', async () => {
  const tab = await openTab();
  await tab.writePlan(open());
  await tab.leavePlan(open(moved([1, 1])));
  const next = await openTab();
  expect(await next.takeUpLeft()).toEqual([]);
  const found = await next.findPlan('one');
  expect(found?.document).toEqual(moved([1, 1]));
  expect(found?.row.writing).toBe(2);

  // A page that only slept goes on: what was taken up was its own.
  expect((await tab.writePlan(open(moved([4, 4]))))?.writing).toBe(3);
  await tab.leavePlan(open(moved([5, 5])));
  const later = await next.findPlan('one');
  if (later) next.takeUpFrom(later.row);
  await next.writePlan(open(moved([6, 6])));
  const aside = await (await openTab()).takeUpLeft();
  expect(aside.map(({ title }) => title)).toEqual([`${plan.title}, from a closed tab`]);
  expect((await next.findPlan('one'))?.document).toEqual(moved([6, 6]));
  const beside = await next.findPlan(aside[0]?.id ?? '');
  expect(beside?.document).toEqual({ ...moved([5, 5]), title: `${plan.title}, from a closed tab` });
  expect(await next.takeUpLeft()).toEqual([]);
});

test('a note that a writing has overtaken is passed over, and one that came after the writing is not', async () => {
  const tab = await openTab();
  await tab.writePlan(open());
  const [early, written, late] = [open(moved([1, 1])), open(moved([2, 2])), open(moved([3, 3]))];
  // As when the page is gone between the writing and the taking away of the note.
  await tab.leavePlan(early);
  const shelved = await tab.onShelf(['left'], 'readonly', ({ store }) => store.getAll());
  await tab.writePlan(written);
  await tab.onShelf(['left'], 'readwrite', async ({ store }) => {
    for (const note of shelved) await store.put(note, 'again');
  });
  const next = await openTab();
  expect(await next.takeUpLeft()).toEqual([]);
  expect((await next.findPlan('one'))?.document).toEqual(moved([2, 2]));
  await tab.leavePlan(late);
  await tab.writePlan({ ...written, changedAt: written.changedAt });
  await next.takeUpLeft();
  expect((await next.findPlan('one'))?.document).toEqual(moved([3, 3]));
});

test('a plan that was never written before its page went away is there', async () => {
  await (await openTab()).leavePlan(open());
  const next = await openTab();
  await next.takeUpLeft();
  expect((await next.findPlan('one'))?.document).toEqual(plan);
});

test('what is taken out goes for good with all that is its own, unless it was put back or written again', async () => {
  const tab = await openTab();
  await tab.writePlan(open());
  await tab.addVersion('one', plan, 'a test');
  await tab.addVersion('other', plan, 'a test');
  await tab.markTakenOut('one', true);
  await tab.markTakenOut('one', false);
  expect(await tab.dropTakenOut(['one'])).toEqual([]);
  await tab.markTakenOut('one', true);
  await tab.writePlan(open(moved([1, 1])));
  expect(await tab.dropTakenOut(['one'])).toEqual([]);
  await tab.markTakenOut('one', true);
  expect(await tab.dropTakenOut(['one'])).toEqual(['one']);
  expect(await tab.findPlan('one')).toBeNull();
  expect(await tab.findVersions('one')).toEqual([]);
  expect(await tab.findVersions('other')).toHaveLength(1);
});

test('versions are kept once for each state, the newest first, and given up for room after the pictures', async () => {
  const tab = await openTab();
  await tab.writePlan(open());
  for (const [reason, state] of [
    ['first', plan],
    ['again', plan],
    ['second', moved([1, 1])],
  ] as const)
    await tab.addVersion('one', state, reason);
  expect((await tab.findVersions('one')).map(({ reason }) => reason)).toEqual(['second', 'first']);
  await tab.onShelf(['pictures'], 'readwrite', ({ store }) => store.put(new Blob(['x']), 'one'));
  expect(await tab.giveUpLesser()).toBe(true);
  expect(await tab.shelved('pictures', 'one')).toBeNull();
  expect(await tab.findVersions('one')).toHaveLength(2);
  expect(await tab.giveUpLesser()).toBe(true);
  expect((await tab.findVersions('one')).map(({ reason }) => reason)).toEqual(['second']);
  expect(await tab.giveUpLesser()).toBe(true);
  expect(await tab.giveUpLesser()).toBe(false);
  expect((await tab.findPlan('one'))?.document).toEqual(plan);
});

async function shelfOfVersion1(records: Readonly<Record<string, unknown>>): Promise<void> {
  const old = await openDB('standclear', 1, {
    upgrade: (database) => {
      database.createObjectStore('plans');
    },
  });
  for (const [key, value] of Object.entries(records)) await old.put('plans', value, key);
  old.close();
}

test('the shelf of version 1 becomes kept plans, whatever lay on it', async () => {
  await shelfOfVersion1({
    current: { document: plan, fileName, writing: 7 },
    leaving: { document: moved([1, 1]), fileName, writing: 6 },
    unread: { document: { standclear: 99, title: 'From tomorrow' }, fileName: 'tomorrow.plan.json' },
  });
  const tab = await openTab();
  const rows = await tab.planRows();
  expect(rows.map(({ title }) => title).sort()).toEqual(
    [plan.title, `${plan.title}, from a closed tab`, 'From tomorrow'].sort(),
  );
  const [last] = await tab.lastOpen();
  const found = await tab.findPlan(last ?? '');
  expect(found?.document).toEqual(plan);
  if (!found) throw new Error('the plan is not there');
  tab.takeUpFrom(found.row);
  expect(
    (await tab.writePlan({ planId: found.row.id, plan: moved([2, 2]), fileName, changedAt: 1 }))?.writing,
  ).toBe(8);
});

test('what a page of version 1 left last is the plan', async () => {
  await shelfOfVersion1({
    current: { document: plan, fileName, writing: 7 },
    leaving: { document: moved([1, 1]), fileName, writing: 7 },
  });
  const tab = await openTab();
  const rows = await tab.planRows();
  expect(rows).toHaveLength(1);
  expect((await tab.findPlan(rows[0]?.id ?? ''))?.document).toEqual(moved([1, 1]));
});

test('an empty shelf of version 1 is an empty shelf', async () => {
  await shelfOfVersion1({});
  const tab = await openTab();
  expect(await tab.planRows()).toEqual([]);
  expect(await tab.lastOpen()).toEqual([]);
});

test('where a page of an older kind holds the shelf, that is said, and the shelf is there once it is gone', async () => {
  const old = await openDB('standclear', 1, {
    upgrade: (database) => {
      database.createObjectStore('plans');
    },
  });
  const tab = await openTab();
  await expect(tab.planRows()).rejects.toThrow('older Standclear');
  old.close();
  expect(await tab.planRows()).toEqual([]);
});

test('a shelf of a newer kind is left alone', async () => {
  const newer = await openDB('standclear', 3);
  const tab = await openTab();
  await expect(tab.writePlan(open())).rejects.toThrow(expect.objectContaining({ name: 'VersionError' }));
  newer.close();
});
