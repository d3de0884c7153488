import type { Terminal } from '../terminal';

/** How stress is shown. It never says anything that the words beside it do not. */
export interface Ink {
  readonly strong: (text: string) => string;
  readonly faint: (text: string) => string;
}

const PLAIN: Ink = { strong: (text) => text, faint: (text) => text };
const BOLD_AND_DIM: Ink = {
  strong: (text) => `\u001b[1m${text}\u001b[22m`,
  faint: (text) => `\u001b[2m${text}\u001b[22m`,
};

/** Bold and dim on a terminal, nothing elsewhere, with NO_COLOR set, or on a terminal that cannot. */
export function inkFor({ out, environment }: Pick<Terminal, 'out' | 'environment'>): Ink {
  const unwanted = (environment.NO_COLOR ?? '') !== '' || environment.TERM === 'dumb';
  return out.isTTY && !unwanted ? BOLD_AND_DIM : PLAIN;
}
