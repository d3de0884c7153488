export const withCommand = (event: KeyboardEvent): boolean =>
  (event.ctrlKey || event.metaKey) && !event.altKey;
export const plain = (event: KeyboardEvent): boolean => !event.ctrlKey && !event.metaKey && !event.altKey;

/** By the letter, or by where it is on the board: either finds the key on a layout that lacks the other. */
export const isKey = (event: KeyboardEvent, key: string, code: string): boolean =>
  event.key.toLowerCase() === key || event.code === code;

/** A letter alone, with Shift or without. */
export const letter =
  (key: string, shift: boolean) =>
  (event: KeyboardEvent): boolean =>
    plain(event) && event.shiftKey === shift && isKey(event, key, `Key${key.toUpperCase()}`);

/** A letter with Control or the command key, with Shift or without. */
export const command =
  (key: string, shift: boolean) =>
  (event: KeyboardEvent): boolean =>
    withCommand(event) && event.shiftKey === shift && isKey(event, key, `Key${key.toUpperCase()}`);

const APPLE = typeof navigator !== 'undefined' && /Mac|iPhone|iPad/.test(navigator.userAgent);

/** How a key with Control is written for this keyboard first, and for the other. */
export const commandKeys = (key: string): readonly string[] =>
  APPLE ? [`Cmd ${key}`, `Ctrl ${key}`] : [`Ctrl ${key}`, `Cmd ${key}`];
