/** What went wrong, in the words of whatever was thrown. */
export const reasonOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/**
 * A sentence that says what did not come about, and why: `No link could be made: the worker stopped.` However the reason
 * was written, it goes on small after the colon and ends.
 */
export function sentenceOf(what: string, error: unknown): string {
  const reason = reasonOf(error).trim();
  if (reason === '') return `${what}.`;
  // A word all of capitals keeps them, and so does one that is a name of the language.
  const small = /^[A-Z][a-z]*(\s|$)/.test(reason) ? reason.charAt(0).toLowerCase() + reason.slice(1) : reason;
  return `${what}: ${small}${/[.!?]$/.test(small) ? '' : '.'}`;
}
