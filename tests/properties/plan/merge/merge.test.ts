import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Choice, differencesOf } from '../../../../src/core/plan/merge/differences';
import { mergePlans } from '../../../../src/core/plan/merge/mergePlans';
import { parsePlan } from '../../../../src/core/plan/parse';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { serialisePlan } from '../../../../src/core/plan/serialise';
import { type Draw, drawFrom } from '../../../plans/draw';
import { fullRoof } from '../../../plans/fullRoof';
import { cases } from '../../../thorough';
import { someEdit } from '../edits';

const ROOF = fullRoof();
const MOST_ITEMS = 400;

/** A plan after some edits that the schema takes. */
function edited(plan: Plan, draw: Draw, most: number): Plan {
  let now = plan;
  for (let count = draw.whole(1, most); count > 0; count -= 1) {
    const [, edit] = someEdit(now, draw, MOST_ITEMS);
    const after = edit(now);
    if (parsePlan(after).ok) now = after;
  }
  return now;
}

/** Holds a law for two copies of a roof, edited apart from each other; a smaller seed is no simpler case. */
function always(law: (mine: Plan, theirs: Plan, draw: Draw) => void, runs: number): void {
  fc.assert(
    fc.property(fc.noShrink(fc.integer({ min: 0, max: 1e9 })), (seed) => {
      const draw = drawFrom(seed);
      law(edited(ROOF, draw, 12), edited(ROOF, draw, 12), draw);
    }),
    { numRuns: cases(runs) },
  );
}

const allAre = (mine: Plan, theirs: Plan, choice: Choice, base: Plan | null): ReadonlyMap<string, Choice> =>
  new Map(differencesOf(mine, theirs, base).map(({ key }) => [key, choice]));

const isEmpty = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && Object.keys(value).length === 0;
const hasId = (entry: unknown): entry is { readonly id: string } =>
  typeof entry === 'object' && entry !== null && 'id' in entry;

/** A plan without what makes no difference on the roof: the order of what only one of two has, and lists of nothing. */
const sorted = (plan: Plan): unknown =>
  JSON.parse(serialisePlan(plan), (_, value: unknown) => {
    if (isEmpty(value)) return undefined;
    return Array.isArray(value) && value.every(hasId)
      ? value.toSorted((a, b) => (a.id < b.id ? -1 : 1))
      : value;
  });

test('all mine is mine and all theirs is theirs, to the letter, with and without what both began with', () => {
  always((mine, theirs, draw) => {
    const base = draw.chance(0.5) ? ROOF : null;
    const own = mergePlans(mine, theirs, allAre(mine, theirs, 'mine', base), base);
    expect(serialisePlan(own.plan)).toBe(serialisePlan(mine));
    const other = mergePlans(mine, theirs, allAre(mine, theirs, 'theirs', base), base);
    expect(serialisePlan(other.plan)).toBe(serialisePlan(theirs));
    expect([...own.notes, ...other.notes]).toEqual([]);
    expect(differencesOf(mine, mine, base)).toEqual([]);
  }, 120);
}, 120_000);

test('whatever is chosen gives a plan, and the same choices once more change nothing', () => {
  always((mine, theirs, draw) => {
    const base = draw.chance(0.5) ? ROOF : null;
    const choices = new Map(
      differencesOf(mine, theirs, base).map(({ key }) => [
        key,
        draw.pick<Choice>(['mine', 'theirs', 'both']),
      ]),
    );
    const merged = mergePlans(mine, theirs, choices, base);
    expect(parsePlan(merged.plan)).toEqual({ ok: true, value: merged.plan });
    const again = mergePlans(merged.plan, theirs, choices, base);
    expect(serialisePlan(again.plan)).toBe(serialisePlan(merged.plan));
  }, 120);
}, 120_000);

test('what one alone changed is in the merged plan, whoever merges', () => {
  let apart = 0;
  always((mine, theirs) => {
    // Only one of the two did anything: all of it comes.
    expect(serialisePlan(mergePlans(ROOF, theirs, new Map(), ROOF).plan)).toBe(serialisePlan(theirs));
    expect(serialisePlan(mergePlans(mine, ROOF, new Map(), ROOF).plan)).toBe(serialisePlan(mine));
    const there = mergePlans(mine, theirs, new Map(), ROOF);
    const back = mergePlans(theirs, mine, new Map(), ROOF);
    const isConflict = differencesOf(mine, theirs, ROOF).some(
      ({ standing, key, ...difference }) =>
        standing === 'conflict' ||
        key.startsWith('order/') ||
        (difference.of === 'entry' && difference.mine && difference.theirs && !difference.base),
    );
    if (isConflict || there.notes.length > 0 || back.notes.length > 0) return;
    apart += 1;
    expect(sorted(there.plan)).toEqual(sorted(back.plan));
  }, 120);
  expect(apart).toBeGreaterThan(1);
}, 120_000);

test('edits that touch different things give the same, merged or made one after the other', () => {
  let apart = 0;
  fc.assert(
    fc.property(fc.noShrink(fc.integer({ min: 0, max: 1e9 })), (seed) => {
      const draw = drawFrom(seed);
      const [, one] = someEdit(ROOF, draw, MOST_ITEMS);
      const [, other] = someEdit(ROOF, draw, MOST_ITEMS);
      const [mine, theirs] = [one(ROOF), other(ROOF)];
      const both = [other(mine), one(theirs)];
      if (mine === ROOF || theirs === ROOF || ![mine, theirs, ...both].every((plan) => parsePlan(plan).ok))
        return;
      const touched = (plan: Plan): readonly string[] => differencesOf(ROOF, plan).map(({ key }) => key);
      const [ours, others] = [touched(mine), touched(theirs)];
      if (ours.some((key) => others.includes(key) || key.startsWith('order/'))) return;
      // Edits that ask the other's doing, as what is put on the floor does, are no edits apart.
      if (serialisePlan(both[0]) !== serialisePlan(both[1])) return;
      apart += 1;
      expect(sorted(mergePlans(mine, theirs, new Map(), ROOF).plan)).toEqual(sorted(both[0]));
      expect(sorted(mergePlans(theirs, mine, new Map(), ROOF).plan)).toEqual(sorted(both[0]));
    }),
    { numRuns: cases(450) },
  );
  expect(apart).toBeGreaterThan(15);
}, 120_000);
