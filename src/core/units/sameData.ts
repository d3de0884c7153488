const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  value !== null && typeof value === 'object';

/** Whether two pieces of plain data say the same, whatever the order of their fields. A field left out is not `null`. */
export function sameData(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (!isRecord(one) || !isRecord(other) || Array.isArray(one) !== Array.isArray(other)) return false;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && sameData(one[key], other[key]))
  );
}
