import type { Terminal } from './terminal';

/** Work that is over before this needs no line about it. */
const QUIET_MS = 500;
const CLEAR_LINE = '\r\u001b[K';

export interface Progress {
  /** Says how far the work is. */
  readonly tell: (done: number, of: number) => void;
  /** Takes the line away again. */
  readonly end: () => void;
}

/** A line on the terminal's error stream about work that takes long; nothing where that stream goes to a file. */
export function progressOf(
  { err }: Pick<Terminal, 'err'>,
  now: () => number = () => performance.now(),
): Progress {
  const started = now();
  let shown = false;
  return {
    tell: (done, of) => {
      if (!err.isTTY || now() - started < QUIET_MS) return;
      err.write(`${CLEAR_LINE}Reading setups: ${done} of ${of}`);
      shown = true;
    },
    end: () => {
      if (shown) err.write(CLEAR_LINE);
      shown = false;
    },
  };
}
