import { appendFileSync } from 'node:fs';
import { Socket } from 'node:net';
import fc from 'fast-check';
import { test } from 'vitest';

/** How many runs of a hundred thousand each kind takes: most for what is read fastest, since a night is to do. */
const SHARES = {
  'a link: any text': 8000,
  'a link: cut, a letter changed, a piece of itself again': 17_500,
  'a link: any bytes, whole in themselves': 1500,
  'a link: a byte of a plan changed, whole in itself': 1000,
  'a link: coded well, of JSON or of a changed plan': 500,
  'a plan: one thing changed': 4000,
  'a plan: one thing changed, worked out': 200,
  'a plan: letters of its text changed': 9300,
  'a plan: any JSON': 3000,
  'a plan: any JSON that says it is one': 3000,
  'a plan: any text': 6000,
  'a plan: any text in a crew sheet': 2000,
  'a lamp: some words changed': 9000,
  'a lamp: cut short': 3000,
  'a lamp: any text': 6000,
  'a model: some bytes changed': 2500,
  'a model: one thing of its description changed': 5000,
  'a model: any bytes': 3500,
  'a kit as a table: some cells changed': 5000,
  'a kit as a table: any text': 4000,
  'a kit as a table: the same again and again': 500,
  'a kit as JSON: one thing changed': 1500,
  'a pack: any bytes': 2000,
  'a pack: some bytes changed': 2000,
} as const;

type Kind = keyof typeof SHARES;

const WHOLE = 100_000;
if (Object.values(SHARES).reduce((sum, share) => sum + share, 0) !== WHOLE)
  throw new Error(`the shares of all kinds do not add up to ${WHOLE}`);

/** How many runs all kinds make together, and the seed that makes the same ones again. */
const RUNS = Number(process.env.FUZZ_RUNS);
export const SEED = Number(process.env.FUZZ_SEED);

/** What a reader may take for what no letter would be too small for: time of the processor, ms. */
const LONGEST_MS = 1000;
/** How much more memory the process may hold after a run than before the first one, bytes. */
const MOST_BYTES = 1024 ** 3;

const attempts: string[] = [];
const attempt = (what: string) => (): never => {
  attempts.push(what);
  throw new Error(`${what} was asked for`);
};
Socket.prototype.connect = attempt('a connection');
Object.assign(globalThis, { fetch: attempt('fetch'), WebSocket: attempt('a web socket') });

const SHARED = [Object, Array, String, Number, Function, Map, Set, Promise, RegExp, Error, Uint8Array];
const ownOfShared = (): number =>
  SHARED.reduce(
    (sum, { prototype }) => sum + Reflect.ownKeys(prototype).length,
    Reflect.ownKeys(globalThis).length,
  );

/** Time of the processor that this process has had, ms: what else the machine does is not counted. */
function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Whether text can be run as a script here; the command starts its processes without. */
function canRunText(): boolean {
  try {
    Reflect.construct(Function, ['return 1']);
    return true;
  } catch {
    return false;
  }
}

export interface FuzzOptions {
  /** What one run may take of the processor, ms, where it does more than read. */
  readonly longestMs?: number;
}

/**
 * A test that makes a kind's share of all runs and says how many it made a second and what came of them. `holds` answers
 * with one word for what came of a run; it throws where a reader does not keep its word. Each run fails as well where it
 * takes long or much memory, asks for the network, or leaves something on what all objects share.
 */
export function fuzzed<Value>(
  kind: Kind,
  inputs: fc.Arbitrary<Value>,
  holds: (input: Value) => string | Promise<string>,
  { longestMs = LONGEST_MS }: FuzzOptions = {},
): void {
  const runs = Math.ceil((RUNS * SHARES[kind]) / WHOLE);
  test(`${kind}, ${runs} times`, async () => {
    if (canRunText()) throw new Error('text can be run here: start by npm run fuzz');
    const answers: Record<string, number> = {};
    const shared = ownOfShared();
    const bytes = process.memoryUsage.rss();
    const begun = performance.now();
    let slowest = 0;
    const once = async (input: Value): Promise<void> => {
      const before = processorMs();
      const answer = await holds(input);
      const took = processorMs() - before;
      slowest = Math.max(slowest, took);
      if (took > longestMs) throw new Error(`took ${took} ms, expected at most ${longestMs}`);
      const more = process.memoryUsage.rss() - bytes;
      if (more > MOST_BYTES) throw new Error(`holds ${more} bytes more, expected at most ${MOST_BYTES}`);
      if (attempts.length > 0) throw new Error(`asked for ${attempts.join(', ')}`);
      if (ownOfShared() !== shared) throw new Error('left something on what all objects share');
      answers[answer] = (answers[answer] ?? 0) + 1;
    };
    await fc.assert(fc.asyncProperty(inputs, once), { numRuns: runs, seed: SEED });
    const seconds = (performance.now() - begun) / 1000;
    note({ kind, runs, seconds, slowest, answers });
  });
}

export interface Tally {
  readonly kind: string;
  readonly runs: number;
  readonly seconds: number;
  /** Of one run, ms of the processor. */
  readonly slowest: number;
  readonly answers: Readonly<Record<string, number>>;
}

/** Puts a kind's tally where the command finds it at the end. */
function note(tally: Tally): void {
  const { FUZZ_TALLY } = process.env;
  if (FUZZ_TALLY) appendFileSync(FUZZ_TALLY, `${JSON.stringify(tally)}\n`);
}
