import type { Terminal } from './terminal';

/** Work that is over before this needs no line about it. */
const QUIET_MS = 500;
/** Often enough to see it move, seldom enough not to slow the work. */
const BETWEEN_MS = 100;
const CLEAR_LINE = '\r\u001b[K';

/** A line about work in hand. */
export interface Progress {
  /** Says how far the work is: setups done, with a fraction for the one in hand, of how many. */
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
  let last = started + QUIET_MS - BETWEEN_MS;
  let shown = false;
  return {
    tell: (done, of) => {
      const time = now();
      if (!err.isTTY || time - last < BETWEEN_MS) return;
      last = time;
      err.write(
        `${CLEAR_LINE}Reading ${of} ${of === 1 ? 'setup' : 'setups'}: ${Math.floor((100 * done) / of)} %`,
      );
      shown = true;
    },
    end: () => {
      if (shown) err.write(CLEAR_LINE);
      shown = false;
    },
  };
}
