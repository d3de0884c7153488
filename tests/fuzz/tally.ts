import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Tally } from './fuzzed';

const USUAL_RUNS = 100_000;

/** Gives all kinds one number of runs and one seed, others each time unless it is given, and prints at the end what came of them. */
export default function tally(): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'fuzz-'));
  const file = join(folder, 'tally');
  process.env.FUZZ_TALLY = file;
  process.env.FUZZ_RUNS = String(numberIn(process.env.FUZZ_RUNS) ?? USUAL_RUNS);
  process.env.FUZZ_SEED = String(numberIn(process.env.FUZZ_SEED) ?? Date.now() % 2 ** 31);
  const begun = performance.now();
  return () => {
    const lines = existsSync(file) ? readFileSync(file, 'utf8').trim().split('\n') : [];
    print(
      lines.map((line): Tally => JSON.parse(line)),
      (performance.now() - begun) / 1000,
    );
    rmSync(folder, { recursive: true });
  };
}

function numberIn(text: string | undefined): number | null {
  return text !== undefined && /^\d+$/.test(text) ? Number(text) : null;
}

function print(tallies: readonly Tally[], seconds: number): void {
  const widest = Math.max(...tallies.map(({ kind }) => kind.length));
  for (const { kind, runs, seconds: took, slowest, answers } of tallies.toSorted((a, b) =>
    a.kind < b.kind ? -1 : 1,
  )) {
    const said = Object.entries(answers).map(([answer, count]) => `${count} ${answer}`);
    console.log(
      `  ${kind.padEnd(widest)} ${String(runs).padStart(7)} runs ${(runs / took).toFixed(0).padStart(6)} a second, slowest ${slowest.toFixed(0).padStart(4)} ms: ${said.join(', ')}`,
    );
  }
  const all = tallies.reduce((sum, { runs }) => sum + runs, 0);
  console.log(
    `\n  ${all} runs of seed ${process.env.FUZZ_SEED} in ${seconds.toFixed(0)} s; FUZZ_SEED and FUZZ_RUNS make the same again\n`,
  );
}
