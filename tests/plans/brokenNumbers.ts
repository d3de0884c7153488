/** Where below a value a number is infinite or none at all, which JSON could not write. */
export function brokenNumbers(value: unknown, where = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${where}: ${value}`];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, entry]) => brokenNumbers(entry, `${where}.${key}`));
}
