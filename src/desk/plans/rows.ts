import { newPlanId } from './planId';
import type { PlanRow } from './shelfTypes';

/** Tells this page's writings and notes from those of other pages. */
export const TAB = newPlanId();

let lastAt = 0;

/** The time now, milliseconds since 1970, later than the last one told. */
export function nextInstant(): number {
  lastAt = Math.max(Date.now(), lastAt + 1);
  return lastAt;
}

const textIn = (value: unknown, key: string): string => {
  const found: unknown = value !== null && typeof value === 'object' ? Reflect.get(value, key) : undefined;
  return typeof found === 'string' ? found : '';
};

/** What the list says of a document, whether or not it can be read as a plan; made now in this tab unless told else. */
export function rowOf(
  kept: Pick<PlanRow, 'id' | 'fileName' | 'writing'> & Partial<Pick<PlanRow, 'changedAt' | 'tab'>>,
  document: unknown,
): PlanRow {
  const { id, fileName, writing, changedAt = nextInstant(), tab = TAB } = kept;
  const place: unknown =
    document !== null && typeof document === 'object' ? Reflect.get(document, 'place') : null;
  return {
    id,
    title: textIn(document, 'title') || fileName || 'A plan without a title',
    date: textIn(place, 'date'),
    fileName,
    writing,
    changedAt,
    tab,
    takenOut: false,
  };
}
