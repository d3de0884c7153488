/** One row of a printed table: what was measured, what is to be reached, what was reached. */
export interface Row {
  readonly what: string;
  readonly reach: string;
  readonly reached: string;
}

/** Prints rows in aligned columns. */
export function printTable(rows: readonly Row[]): void {
  const all: Row[] = [{ what: 'what', reach: 'to reach', reached: 'reached' }, ...rows];
  const widest = (key: keyof Row) => Math.max(...all.map((row) => row[key].length));
  const [what, reach] = [widest('what'), widest('reach')];
  for (const row of all)
    console.log(`  ${row.what.padEnd(what)}  ${row.reach.padEnd(reach)}  ${row.reached}`);
}

/** Middle of the times that a task takes, milliseconds, after two runs that are not counted. */
export function medianMs(runs: number, task: () => void): number {
  task();
  task();
  const times: number[] = [];
  for (let k = 0; k < runs; k += 1) {
    const start = performance.now();
    task();
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return times[Math.floor(times.length / 2)];
}

export const ms = (value: number): string => `${value.toFixed(value < 10 ? 2 : 0)} ms`;
export const times = (value: number): string => `${value.toFixed(value < 10 ? 1 : 0)} times`;
