import { modelsAtHand } from '../form/models/modelShelf';
import type { ItemForm } from '../form/types';
import { cameraAt, spanOf } from '../optics/camera';
import { formsThrough } from '../optics/riding';
import { reasonToShow } from '../plan/edits/shows';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { instantsOf } from '../sight/frames';
import { readOutside } from '../sight/outside';
import { sameData } from '../units/sameData';
import { reportOfItem, setupReportSteps } from './setupReport';
import type { ItemReport, SetupReport } from './types';

/** What a setup's whole span was found to be, in which plan, and with which models at hand. */
export interface Earlier {
  readonly plan: Plan;
  readonly models: object;
  readonly report: SetupReport;
}

/** Of more items than these that have changed one is likely to be in frame. By trial, no source. */
const MOST_CHANGED = 12;

/** Whether two forms are the same to whoever looks at them, and called the same. */
const isSameForm = (a: ItemForm, b: ItemForm): boolean =>
  a === b ||
  (a.label === b.label &&
    a.kind === b.kind &&
    a.wish === b.wish &&
    a.parts.length === b.parts.length &&
    a.parts.every((part, k) => {
      const { name, shape, worldFromPart } = b.parts[k];
      return part.name === name && part.shape === shape && sameData(part.worldFromPart, worldFromPart);
    }));

/** Notes who is in one list of forms and not, or not the same, in the other; false where those in both change places. */
function noteChanged(before: readonly ItemForm[], after: readonly ItemForm[], changed: Set<string>): boolean {
  if (before.length === after.length && before.every(({ id }, place) => id === after[place].id)) {
    for (const [place, form] of after.entries()) if (!isSameForm(before[place], form)) changed.add(form.id);
    return true;
  }
  const gone = new Map(before.map((form, place) => [form.id, { form, place }]));
  let reached = -1;
  for (const form of after) {
    const old = gone.get(form.id);
    if (!old || !isSameForm(old.form, form)) changed.add(form.id);
    if (!old) continue;
    if (old.place < reached) return false;
    reached = old.place;
    gone.delete(form.id);
  }
  for (const id of gone.keys()) changed.add(id);
  return true;
}

/**
 * The items that are not at every instant of a setup's span what they were in another plan; null where more than a few
 * are not, or where the setup itself, its camera or what counts as near are others.
 */
function* changedItems(
  before: Plan,
  plan: Plan,
  setup: Setup,
): Generator<number, ReadonlySet<string> | null, void> {
  const old = before.setups.find(({ id }) => id === setup.id);
  if (!old || !sameData(old, setup) || !sameData(before.safety, plan.safety)) return null;
  const span = spanOf(plan, setup);
  if (!sameData(spanOf(before, old), span)) return null;
  const changed = new Set<string>();
  const ids = formsThrough(plan, setup, span[0]).map(({ id }) => id);
  const reasons = ids.map((id) => reasonToShow(before, id, setup.id));
  for (const [place, id] of ids.entries())
    if (reasonToShow(plan, id, setup.id) !== reasons[place]) changed.add(id);
  for (const seconds of instantsOf(span[0], span[1])) {
    if (!sameData(cameraAt(before, old, seconds), cameraAt(plan, setup, seconds))) return null;
    const forms = formsThrough(plan, setup, seconds);
    const isInOrder = noteChanged(formsThrough(before, old, seconds), forms, changed);
    if (!isInOrder || changed.size > MOST_CHANGED) return null;
    yield 0;
  }
  return changed;
}

/**
 * What is known of each item already, and of those that have changed anew; null where the setup has to be read in full,
 * since one of them is or was in frame.
 */
function* itemsAgain(
  plan: Plan,
  setup: Setup,
  earlier: Earlier,
): Generator<number, readonly ItemReport[] | null, void> {
  if (earlier.models !== modelsAtHand()) return null;
  const changed = yield* changedItems(earlier.plan, plan, setup);
  if (!changed) return null;
  if (changed.size === 0) return earlier.report.items;
  const span = spanOf(plan, setup);
  if (!(yield* readOutside(earlier.plan, setup, span, changed))) return null;
  const reading = yield* readOutside(plan, setup, span, changed);
  if (!reading) return null;
  const known = new Map(earlier.report.items.map((item) => [item.id, item]));
  for (const [item, { id }] of reading.stage.forms.entries())
    if (changed.has(id)) known.set(id, reportOfItem(plan, setup, reading, item));
  return formsThrough(plan, setup, span[0]).flatMap(({ id }) => known.get(id) ?? []);
}

/**
 * Reports a setup over its span, as `setupReportSteps` does and to the letter what that does. Where all that has changed
 * since it was reported before cannot touch its frame, then or now, only that is looked at.
 * Yields the done share, 0..1; returns the report.
 */
export function* reportAgainSteps(
  plan: Plan,
  setup: Setup,
  earlier: Earlier | null,
): Generator<number, SetupReport, void> {
  const items = earlier && (yield* itemsAgain(plan, setup, earlier));
  return earlier && items ? { ...earlier.report, items } : yield* setupReportSteps(plan, setup);
}
