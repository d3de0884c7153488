/** Something that may fail through no mistake of ours: the value, or the faults that a person can act on. */
export type Result<Value, Fault> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** The two ways to end. */
export const success = <Value>(value: Value): Result<Value, never> => ({ ok: true, value });
export const failure = <Fault>(faults: readonly Fault[]): Result<never, Fault> => ({ ok: false, faults });
