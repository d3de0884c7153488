import { clippingOf, pasteClipping } from '../../core/plan/clipping';
import { middleOf } from '../../core/plan/edits/extent';
import { removeItems } from '../../core/plan/edits/removeItems';
import { itemsOf } from '../../core/plan/items';
import { parsePlanText } from '../../core/plan/parse';
import type { Plan } from '../../core/plan/schema/plan';
import { serialisePlan } from '../../core/plan/serialise';
import { planStore } from '../../desk/planStore';
import { sessionStore } from '../../desk/sessionStore';
import { toastStore } from '../../desk/toastStore';
import { minus, type Spot } from '../overhead/geometry/spots';
import { bring, calledOf, change, namedOf, tell } from './doing';

/** What was copied last in this page, and how often it was put back since. */
let held: { readonly text: string; readonly pasted: number } | null = null;

/** Each further copy lies this much beside the one before, metres. */
const BESIDE = 0.5;

/** Whether this page has something to paste. */
export const hasClipping = (): boolean => held !== null;

/** Holds the items for pasting; the text for the system's clipboard, or null where there are none. */
function hold(plan: Plan, ids: readonly string[]): string | null {
  const clipping = clippingOf(plan, ids);
  if (!clipping) return null;
  const text = serialisePlan(clipping);
  held = { text, pasted: 0 };
  return text;
}

/** Copies items; the text is a plan file with nothing else in it. */
export function copyOut(ids: readonly string[]): string | null {
  const { plan } = planStore.getState();
  const text = hold(plan, ids);
  if (text !== null) toastStore.getState().say(`${namedOf(plan, ids)} copied.`, { about: 'action' });
  return text;
}

/** Copies items and takes them out of the plan. */
export function cutOut(ids: readonly string[]): string | null {
  const { plan } = planStore.getState();
  const text = hold(plan, ids);
  if (text === null) return null;
  const words = namedOf(plan, ids);
  if (change(`cut ${calledOf(plan, ids)}`, (before) => removeItems(before, { ids }))) {
    sessionStore.getState().setSelectedIds([]);
    tell(`${words} cut. Paste puts ${ids.length > 1 ? 'them' : 'it'} down again.`);
  }
  return text;
}

/**
 * Puts a clipping into the plan: with its middle at a place, else a little beside where it was. Without a text it is
 * what this page copied last. What is no plan is said, and nothing changes.
 */
export function paste(at: Spot | null, text: string | null = null): void {
  const source = text ?? held?.text ?? null;
  const { say } = toastStore.getState();
  if (source === null) {
    say('Nothing is copied yet. Choose things and copy them first.', { about: 'action' });
    return;
  }
  const read = parsePlanText(source);
  if (!read.ok) {
    say(`What is on the clipboard was not pasted. ${read.faults[0]?.sentence ?? ''}`, {
      tone: 'warn',
      about: 'action',
    });
    return;
  }
  const clipping = read.value;
  const ids = itemsOf(clipping).map(({ record }) => record.id);
  const middle = middleOf(clipping, ids);
  const again = held?.text === source ? held.pasted + 1 : 1;
  const by: Spot = at && middle ? minus(at, middle) : [BESIDE * again, BESIDE * again];
  const done = bring(`paste ${calledOf(clipping, ids)}`, (plan) =>
    pasteClipping(plan, clipping, [by[0], by[1]]),
  );
  if (done) held = { text: source, pasted: at ? 0 : again };
}
