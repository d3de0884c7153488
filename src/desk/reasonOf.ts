/** What went wrong, in the words of whatever was thrown. */
export const reasonOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** A sentence that says what did not come about, and why: `No link could be made: the worker stopped.` */
export const sentenceOf = (what: string, error: unknown): string =>
  `${what}: ${reasonOf(error).replace(/\.?$/, '.')}`;
