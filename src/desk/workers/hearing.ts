/** What every worker that is waited for answers, so that one that hangs is noticed. */
export interface Hearing {
  /** Says that it hears, which it does between the steps of its work. */
  readonly isThere: () => void;
}

/** For the far end. */
export const HEARING: Hearing = { isThere: () => undefined };
