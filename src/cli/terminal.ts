/** A stream to write to, and what is known of what stands behind it. */
export interface Output {
  readonly write: (text: string) => void;
  readonly isTTY: boolean;
  /** Width in characters; null where nothing ends a line, as in a file. */
  readonly columns: number | null;
}

/** All that the commands know of the world outside: so that tests can stand in for it. */
export interface Terminal {
  readonly out: Output;
  readonly err: Output;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** The bundled worker that reads setups beside the main thread; null where there is none. */
  readonly workerFile: string | null;
  /** How many setups may be read side by side. */
  readonly cores: number;
}

const NARROWEST = 48;

/** How many characters a line may take; in a file as many as it needs. */
export function widthOf(output: Output): number {
  return output.columns === null ? Number.POSITIVE_INFINITY : Math.max(output.columns, NARROWEST);
}

/** Prints one line of text to a stream. */
export const printLine = (output: Output, line: string): void => output.write(`${line}\n`);
