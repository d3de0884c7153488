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
  /** Says something else of how far it is. */
  readonly say: (text: string) => void;
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
  const say = (textOf: () => string): void => {
    const time = now();
    if (!err.isTTY || time - last < BETWEEN_MS) return;
    last = time;
    err.write(`${CLEAR_LINE}${textOf()}`);
    shown = true;
  };
  return {
    tell: (done, of) =>
      say(() => `Reading ${of} ${of === 1 ? 'setup' : 'setups'}: ${Math.floor((100 * done) / of)} %`),
    say: (text) => say(() => text),
    end: () => {
      if (shown) err.write(CLEAR_LINE);
      shown = false;
    },
  };
}

/**
 * Takes work in steps to its end, with a line about how far it is.
 * @param tell says on the line what a step means
 */
export function withProgress<Step, Value>(
  steps: Generator<Step, Value, void>,
  terminal: Pick<Terminal, 'err'>,
  tell: (progress: Progress, step: Step) => void,
): Value {
  const progress = progressOf(terminal);
  try {
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) return step.value;
      tell(progress, step.value);
    }
  } finally {
    progress.end();
  }
}
