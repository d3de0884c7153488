/** Whether two lists of inputs differ in any place, by identity. */
export function differs(before: readonly unknown[], now: readonly unknown[]): boolean {
  return before.length !== now.length || now.some((value, k) => !Object.is(value, before[k]));
}
