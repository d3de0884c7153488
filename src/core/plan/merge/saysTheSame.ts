const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  value !== null && typeof value === 'object';

/**
 * Whether two pieces of plain data say the same, whatever the order of their fields. A field that is `undefined` is one
 * that is left out, as it is in a file; `null` is not.
 */
export function saysTheSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (!isRecord(one) || !isRecord(other) || Array.isArray(one) !== Array.isArray(other)) return false;
  if (Array.isArray(one) && Array.isArray(other) && one.length !== other.length) return false;
  return (
    Object.keys(one).every((field) => saysTheSame(one[field], other[field])) &&
    Object.keys(other).every((field) => Object.hasOwn(one, field) || saysTheSame(one[field], other[field]))
  );
}
