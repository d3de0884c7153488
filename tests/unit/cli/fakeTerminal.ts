import type { Terminal } from '../../../src/cli/terminal';

interface FakeTerminal extends Terminal {
  /** Everything that was written so far. */
  readonly printed: () => string;
  readonly errors: () => string;
}

/** A terminal that keeps what is written to it. */
export function fakeTerminal(
  given: {
    readonly isTTY?: boolean;
    readonly columns?: number;
    readonly environment?: Terminal['environment'];
    readonly workerFile?: string;
  } = {},
): FakeTerminal {
  const texts = { out: '', err: '' };
  const output = (name: 'out' | 'err') => ({
    write: (text: string) => {
      texts[name] += text;
    },
    isTTY: given.isTTY ?? false,
    columns: given.columns ?? null,
  });
  return {
    out: output('out'),
    err: output('err'),
    environment: given.environment ?? {},
    workerFile: given.workerFile ?? null,
    cores: 2,
    printed: () => texts.out,
    errors: () => texts.err,
  };
}
