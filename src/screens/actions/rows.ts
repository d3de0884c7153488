import { arrayItems, rowPlaces } from '../../core/plan/edits/arrayItems';
import type { Copied } from '../../core/plan/edits/copies';
import { cornersOf } from '../../core/plan/edits/corners';
import { middleOf } from '../../core/plan/edits/extent';
import { type Item, itemsOf } from '../../core/plan/items';
import { spotFrom } from '../../core/plan/runs';
import type { Plan } from '../../core/plan/schema/plan';
import { liveStore } from '../../desk/liveStore';
import { planStore } from '../../desk/planStore';
import { sessionStore } from '../../desk/sessionStore';
import { toastStore } from '../../desk/toastStore';
import { type Asked, ask, type RowAsked } from './askStore';
import { calledOf, tell } from './doing';

type Way = [number, number][];

/** What a row can be laid along: all that has corners, but not what is laid itself. */
export const runsFor = (plan: Plan, ids: readonly string[]): readonly Item[] =>
  itemsOf(plan).filter(
    ({ record }) => !ids.includes(record.id) && (cornersOf(plan, record.id)?.spots.length ?? 0) > 1,
  );

/** The way that a row goes, metres; empty where the things are nowhere. */
export function wayOf(plan: Plan, { ids, count, spacingMetres, bearingDegrees, runId }: RowAsked): Way {
  const from = middleOf(plan, ids);
  if (!from) return [];
  const run = runId === null ? null : cornersOf(plan, runId);
  if (run) {
    const [first] = run.spots;
    const spots = run.closed && first ? [...run.spots, first] : run.spots;
    return spots.map(([x, z]) => [x, z]);
  }
  const to = spotFrom(from, bearingDegrees, (spacingMetres ?? 1) * (count - 1));
  return [from, to];
}

/** The plan with the row in it, and the ids of what was laid. */
export function rowIn(plan: Plan, row: RowAsked): Copied {
  return arrayItems(plan, { ids: row.ids, follow: row.follow, ...placesOf(plan, row) });
}

/** A straight way is as long as its spacings: it is laid evenly, so that no rounding loses the last. */
function placesOf(plan: Plan, row: RowAsked) {
  const { runId, spacingMetres, count } = row;
  const spaced = runId !== null && spacingMetres !== null ? { spacingMetres } : {};
  return { along: wayOf(plan, row), count, ...spaced };
}

/** Shows the row as it would be laid, and remembers how it is asked for. */
export function showRow(row: RowAsked): void {
  ask(row);
  const { gesture, beginGesture, moveGesture } = liveStore.getState();
  if (gesture?.itemId !== ROW) beginGesture(ROW);
  moveGesture(rowIn(planStore.getState().plan, row).plan);
}

/** Asks how a row of some things is laid, beginning with three of them, a metre apart. */
export const askRow = (ids: readonly string[]): void =>
  showRow({ type: 'row', ids, count: 3, spacingMetres: 1, bearingDegrees: 90, runId: null, follow: false });

/** The gesture that shows a row is told from a drag by this id. */
const ROW = 'row';

/** Lays the row that is asked for, one step of the history. */
export function layRow(row: RowAsked): void {
  dropAsked();
  const { plan, edit } = planStore.getState();
  const laid = rowIn(plan, row);
  const [fault] = edit(`lay a row of ${calledOf(plan, row.ids)}`, () => laid.plan);
  if (fault) {
    toastStore.getState().say(fault.sentence, { tone: 'warn' });
    return;
  }
  if (laid.ids.length === 0) {
    toastStore.getState().say('There is no room for a row there.', { tone: 'warn' });
    return;
  }
  sessionStore.getState().setSelectedIds([...row.ids, ...laid.ids]);
  tell(`A row of ${rowPlaces(placesOf(plan, row)).length} is laid.`);
}

/** Gives up what is asked. */
export function dropAsked(): void {
  const { gesture, dropGesture } = liveStore.getState();
  if (gesture?.itemId === ROW) dropGesture();
  ask(null);
}

/** Whether the row's own form is open. */
export const isRow = (asked: Asked | null): asked is RowAsked => asked?.type === 'row';
