/** What went wrong, in the words of whatever was thrown. */
export const reasonOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
