import { expect, test } from 'vitest';
import { addProbe } from '../../../../src/core/plan/edits/addProbe';
import { changeMark } from '../../../../src/core/plan/edits/changeMark';
import { moveItem } from '../../../../src/core/plan/edits/moveItem';
import { removeBeat } from '../../../../src/core/plan/edits/removeBeat';
import { removeItems } from '../../../../src/core/plan/edits/removeItems';
import { removeSetup } from '../../../../src/core/plan/edits/removeSetup';
import { setStop } from '../../../../src/core/plan/edits/setStop';
import { itemOf } from '../../../../src/core/plan/items';
import { type Choice, differencesOf } from '../../../../src/core/plan/merge/differences';
import { mergePlans } from '../../../../src/core/plan/merge/mergePlans';
import { parsePlan } from '../../../../src/core/plan/parse';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { compared } from '../../../../src/core/report/merge/changes';
import { noteSentence } from '../../../../src/core/report/merge/differenceWords';
import { DEMO, readPlan } from '../../../plans/readPlan';

const base = readPlan(DEMO);
const standings = (mine: Plan, theirs: Plan): ReadonlyMap<string, string> =>
  new Map(differencesOf(mine, theirs, base).map(({ key, standing }) => [key, standing]));

test('one moves a performer at one mark, the other at another: both moves are in the merged plan', () => {
  const [nuno] = base.cast;
  const [first, second] = nuno.marks;
  const mine = changeMark(base, { performerId: nuno.id, markId: first.id, patch: { at: [1, 1] } });
  const theirs = changeMark(base, { performerId: nuno.id, markId: second.id, patch: { at: [2, 2] } });
  expect(standings(mine, theirs).get(`item/${nuno.id}`)).toBe('both');
  const [merged] = mergePlans(mine, theirs, new Map(), base).plan.cast;
  expect([merged.marks[0].at, merged.marks[1].at]).toEqual([
    [1, 1],
    [2, 2],
  ]);
});

test('both move the same thing: a conflict, mine unless theirs is chosen', () => {
  const mine = moveItem(base, { id: 'crate-2', to: [1, 1] });
  const theirs = moveItem(base, { id: 'crate-2', to: [2, 2] });
  expect(standings(mine, theirs)).toEqual(new Map([['item/crate-2', 'conflict']]));
  const placed = (choice: Choice | null): unknown => {
    const choices = new Map<string, Choice>(choice === null ? [] : [['item/crate-2', choice]]);
    const item = itemOf(mergePlans(mine, theirs, choices, base).plan, 'crate-2');
    return item?.section === 'piece' && 'at' in item.record ? [item.record.at[0], item.record.at[2]] : null;
  };
  expect([placed(null), placed('mine'), placed('theirs')]).toEqual([
    [1, 1],
    [1, 1],
    [2, 2],
  ]);
});

test('two things under one id both stay, and merging again brings no third', () => {
  const mine = addProbe(base, { at: [1, 1, 1] });
  const theirs = addProbe(base, { at: [2, 1, 2] });
  const once = mergePlans(mine, theirs, new Map(), base).plan;
  expect(once.probes?.map(({ label, at }) => [label, at])).toEqual([
    ['Meter 1', [1, 1, 1]],
    ['Meter 1, theirs', [2, 1, 2]],
  ]);
  expect(mergePlans(once, theirs, new Map(), base).plan).toEqual(once);
});

test('a stand that is taken out and stays needed comes along, and a sentence says so', () => {
  const carried = base.gear.find((gear) => gear.kind === 'head' && 'on' in gear.place);
  if (carried?.kind !== 'head' || !('on' in carried.place)) throw new Error('the demo has no carried head');
  const { on } = carried.place;
  const theirs = removeItems(base, { ids: [on] });
  const choices = new Map<string, Choice>([
    [`item/${on}`, 'theirs'],
    [`item/${carried.id}`, 'mine'],
  ]);
  const { plan, notes } = mergePlans(base, theirs, choices, null);
  expect(parsePlan(plan).ok).toBe(true);
  expect(itemOf(plan, on)).not.toBeNull();
  const of = compared(base, theirs, 'm');
  expect(notes.map((note) => noteSentence(note, of))).toEqual([
    `${itemOf(base, on)?.record.label} comes along: ${carried.label} needs it.`,
  ]);
});

test('a beat that one took out and the other hung a setup on comes along with the setup', () => {
  const beat = base.setups[1].span.to;
  const theirs = removeBeat(base, { beatId: beat });
  expect(theirs).not.toBe(base);
  const mine = setStop(base, { setupId: base.setups[1].id, stop: 8 });
  const merged = mergePlans(
    mine,
    theirs,
    new Map<string, Choice>([[`setups/${base.setups[1].id}`, 'mine']]),
    base,
  );
  expect(parsePlan(merged.plan).ok).toBe(true);
  expect(merged.plan.beats.some(({ id }) => id === beat)).toBe(true);
  expect(merged.notes.some(({ kind }) => kind === 'brought')).toBe(true);
});

test('a setup that they took out goes, and what speaks of it does without', () => {
  const [gone] = base.setups;
  const theirs = removeSetup(base, { setupId: gone.id });
  const mine: Plan = { ...base, night: { ...base.night, order: base.setups.map(({ id }) => id) } };
  const { plan } = mergePlans(mine, theirs, new Map<string, Choice>([['nightOrder', 'mine']]), base);
  expect(plan.setups.some(({ id }) => id === gone.id)).toBe(false);
  expect(plan.night?.order).toEqual(base.setups.slice(1).map(({ id }) => id));
});

test('choices with which the plan would not hold together are refused, and a sentence says why', () => {
  const [setup] = base.setups;
  const from = base.beats.find(({ id }) => id === setup.span.from);
  if (!from) throw new Error('the demo has no such beat');
  // They put the beat of its beginning behind that of its end, and end it at another.
  const late = base.beats.map((beat) => (beat.id === from.id ? { ...beat, atSeconds: 3000 } : beat));
  const theirs: Plan = {
    ...base,
    beats: late,
    setups: base.setups.map((each) => ({
      ...each,
      span: { from: from.id, to: from.id },
      move: { ...each.move, keys: each.move.keys.slice(0, 1) },
    })),
  };
  expect(parsePlan(theirs).ok).toBe(true);
  const choices = new Map<string, Choice>(
    differencesOf(base, theirs).map(({ key }) => [key, key.startsWith('beats/') ? 'theirs' : 'mine']),
  );
  const { plan, notes } = mergePlans(base, theirs, choices);
  expect(plan).toEqual(base);
  expect(notes.map((note) => noteSentence(note, compared(base, theirs, 'm')))).toEqual([
    expect.stringMatching(/ stays as yours, since theirs does not go with the rest: Setup .*span/),
  ]);
});
