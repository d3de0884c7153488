import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import type { SightStage } from '../../sight/stage';
import { changedKeepers, stageIn } from './judge';
import { isFinding, type Known, type KnownSetup } from './known';
import { type Berth, NO_BERTH, staysOut, type Watch, watchFrom } from './watch';

/** How much a change of things has to reach. */
export type Aim =
  /** Whatever goes along is clear wherever it was seen. */
  | 'clear of all'
  /** The item and what goes along are clear of one setup, and come into no other. */
  | { readonly clearOf: string };

interface Need {
  readonly one: KnownSetup;
  readonly id: string;
  readonly berth: Berth;
  /** The cameras of the setup that were found to matter. */
  readonly active: Watch[];
}

/** A little more than the safety margin, so that rounding a place to a micrometre does not undo it. */
const OVER_METRES = 2e-6;

function berthOf(known: Known, one: KnownSetup, id: string, aim: Aim): Berth | null {
  const item = one.items.get(id);
  const verdict = item?.verdict ?? 'clear';
  const { safety } = known.plan;
  const clear = { metres: safety.metres + OVER_METRES, frameWidths: safety.frameWidths + OVER_METRES };
  const isAsked = aim === 'clear of all' || aim.clearOf === one.setup.id;
  if (verdict === 'clear') return isAsked ? clear : NO_BERTH;
  if (verdict === 'close') return NO_BERTH;
  if (item && isFinding(item.wish, verdict)) return isAsked && !item.accepted ? clear : null;
  // What is hidden may stay hidden elsewhere: the report is asked afterwards.
  return null;
}

/** The first, the middle and the last camera of a setup, and the one where most of an item is seen. */
function firstWatches({ watches, items }: KnownSetup, id: string): Watch[] {
  const worst = items.get(id)?.worstAtSeconds ?? 0;
  const atWorst = watches.findLast(({ seconds }) => seconds <= worst + 1e-9);
  const last = watches.length - 1;
  return [...new Set([...(atWorst ? [atWorst] : []), watches[0], watches[last >> 1], watches[last]])];
}

/** A thing that a camera has in its frame, near it, or in a mirror. */
export interface Against {
  readonly one: KnownSetup;
  readonly id: string;
  readonly watch: Watch;
}

/** What a change of things has to keep to, asked cheaply while a place is looked for. */
export interface Needs {
  /** Whether a changed plan keeps to it before the cameras that matter so far. */
  readonly holds: (after: Plan) => boolean;
  /** The same with all of it moved over the deck, [x, z] in metres, on its level. */
  readonly holdsMoved: (by: Spot) => boolean;
  /** What is against it there: a thing, and a camera that has it in its frame or in a mirror; null where nothing is. */
  readonly againstMoved: (by: Spot) => Against | null;
  /** Whether any camera at all is against it there. */
  readonly anyAgainstMoved: (by: Spot) => boolean;
  /** All cameras that are against it there. */
  readonly allAgainstMoved: (by: Spot) => readonly Watch[];
  /** Whether it does before all cameras; where it does not, the one that is in the way matters from now on. */
  readonly holdsThroughout: (after: Plan) => boolean;
}

/** What has to hold for some things that change, by `aim`. */
export function needsOf(known: Known, ids: readonly string[], aim: Aim): Needs {
  const needs: Need[] = [];
  for (const one of known.setups)
    for (const id of ids) {
      const berth = berthOf(known, one, id, aim);
      if (berth) needs.push({ one, id, berth, active: firstWatches(one, id) });
    }
  const failing = (
    stageFor: (need: Need) => SightStage | null,
    watchesFor: (need: Need) => readonly Watch[],
    by: Spot | null,
  ): Against | null => {
    for (const [k, need] of needs.entries()) {
      const stage = stageFor(need);
      if (!stage) continue;
      for (const watch of watchesFor(need)) {
        if (staysOut(stage, by ? watchFrom(watch, by) : watch, need.berth)) continue;
        // What was in the way is likely to be so at the next place too.
        needs.splice(k, 1);
        needs.unshift(need);
        if (!need.active.includes(watch)) need.active.unshift(watch);
        return { one: need.one, id: need.id, watch };
      }
    }
    return null;
  };
  const once = (plan: Plan) => {
    const stages = new Map<string, SightStage | null>();
    return ({ one, id }: Need): SightStage | null => {
      let stage = stages.get(id);
      if (stage === undefined) {
        stage = stageIn(plan, one, id);
        stages.set(id, stage);
      }
      return stage;
    };
  };
  const now = once(known.plan);
  return {
    holds: (after) => !failing(once(after), ({ active }) => active, null),
    holdsMoved: (by) => !failing(now, ({ active }) => active, by),
    againstMoved: (by) => failing(now, ({ active }) => active, by),
    anyAgainstMoved: (by) =>
      failing(now, ({ active }) => active, by) !== null ||
      failing(now, ({ one }) => one.watches, by) !== null,
    allAgainstMoved: (by) =>
      needs.flatMap((need) => {
        const stage = now(need);
        const { one, berth } = need;
        return stage ? one.watches.filter((watch) => !staysOut(stage, watchFrom(watch, by), berth)) : [];
      }),
    holdsThroughout: (after) => !failing(once(after), ({ one }) => one.watches, null),
  };
}

/** Keepers that a change of things changes, and the rest of what it may do: nothing to the cast, a camera or a lock. */
export function keepersChanged(before: Plan, after: Plan): readonly string[] | null {
  if (after === before || after.cast !== before.cast || after.setups !== before.setups) return null;
  const locked = new Set(
    [...before.pieces, ...before.gear].filter(({ locked: is }) => is === true).map(({ id }) => id),
  );
  const touched = [...after.pieces, ...after.gear].some(
    (record) => locked.has(record.id) && ![...before.pieces, ...before.gear].some((each) => each === record),
  );
  return touched ? null : changedKeepers(before, after);
}
