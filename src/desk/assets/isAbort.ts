/** Whether somebody closed a file dialog without choosing: no fault, and nothing to say. */
export const isAbort = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'AbortError';
