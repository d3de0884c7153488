import type { PlanRow } from './shelfTypes';

const textIn = (value: unknown, key: string): string => {
  const found: unknown = value !== null && typeof value === 'object' ? Reflect.get(value, key) : undefined;
  return typeof found === 'string' ? found : '';
};

/** What the list says of a document, whether or not it can be read as a plan. */
export function rowOf(id: string, document: unknown, fileName: string, writing: number): PlanRow {
  const place: unknown =
    document !== null && typeof document === 'object' ? Reflect.get(document, 'place') : null;
  return {
    id,
    title: textIn(document, 'title') || fileName || 'A plan without a title',
    date: textIn(place, 'date'),
    fileName,
    writing,
    changedAt: Date.now(),
    takenOut: false,
  };
}
