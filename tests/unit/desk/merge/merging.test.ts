import { afterEach, expect, test } from 'vitest';
import { renameItem } from '../../../../src/core/plan/edits/renameItem';
import { setStop } from '../../../../src/core/plan/edits/setStop';
import { differencesOf } from '../../../../src/core/plan/merge/differences';
import { leaveMerge, mergeStore } from '../../../../src/desk/merge/mergeStore';
import { takeMerge } from '../../../../src/desk/merge/merging';
import { planStore } from '../../../../src/desk/planStore';
import { toastStore } from '../../../../src/desk/toastStore';
import { smallRoof } from '../../smallRoof';

const plan = smallRoof();
const theirs = renameItem(plan, { id: plan.pieces[0].id, label: 'Theirs' });
const said = () => toastStore.getState().toasts.map(({ sentence }) => sentence);

function putBeside(): void {
  planStore.getState().openPlan(plan, 'mine.plan.json');
  const { planId } = planStore.getState();
  const chosen = new Map(differencesOf(plan, theirs).map(({ key }) => [key, 'theirs'] as const));
  const beside = { planId, theirs, from: 'a link', beginnings: [], base: null, chosen };
  mergeStore.setState({ open: true, trouble: null, beside });
}
afterEach(leaveMerge);

test('a merge is taken once, however often it is pressed, and then there is nothing to compare', async () => {
  putBeside();
  await Promise.all([takeMerge(), takeMerge()]);
  expect(planStore.getState().plan).toEqual(theirs);
  expect(mergeStore.getState().beside).toBeNull();
  planStore.getState().undo();
  expect(planStore.getState().plan).toEqual(plan);
});

test('what is edited while the version is kept stays, and it is said that the merge was not taken', async () => {
  putBeside();
  const taking = takeMerge();
  planStore.getState().edit('stop', (now) => setStop(now, { setupId: plan.setups[0].id, stop: 8 }));
  const edited = planStore.getState().plan;
  expect(edited).not.toEqual(plan);
  await taking;
  expect(planStore.getState().plan).toBe(edited);
  expect(said().at(-1)).toBe('The plan changed meanwhile: compare again.');
  expect(mergeStore.getState().beside).not.toBeNull();
});
