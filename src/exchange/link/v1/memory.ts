/** What numbers were at a place of the document: the last one and the one before it, as texts. */
export interface LastNumbers {
  readonly last: string;
  readonly before: string;
}

/** The strings that were met at one place, by number from 1, and the number that came last. */
export interface Words {
  readonly numbers: Map<string, number>;
  readonly list: string[];
  last: number;
}

/** The keys that the objects of one place had, by number from 2 on. */
export interface Keys {
  readonly numbers: Map<string, number>;
  readonly list: string[];
}

/** What the coder remembers of all that it has coded, as plain data: whoever clones it goes on from there. */
export interface Memory {
  /** The keys that objects had at each place. */
  readonly keys: Map<number, Keys>;
  /** Which key last followed another. */
  readonly followers: Map<number, number>;
  /** How long an array last was. */
  readonly lengths: Map<number, number>;
  readonly numbers: Map<number, LastNumbers>;
  /** Which number came after another, or after two. */
  readonly nextNumber: Map<number, string>;
  readonly words: Map<number, Words>;
  /** Which word a place last had. */
  readonly lastWord: Map<number, number>;
  /** The string that a place last had. */
  readonly strings: Map<number, string>;
  /** Which string followed another where both first came. */
  readonly successors: Map<string, string>;
  /** The last 65,536 bytes that were spelled, round and round, how many there were, and where a run of them last was. */
  readonly spelled: Uint8Array;
  spelledCount: number;
  readonly runs: Map<number, number>;
  lastNumber: string;
  numberBefore: string;
  wordBefore: number;
}

/** Nothing remembered. */
export const emptyMemory = (): Memory => ({
  keys: new Map(),
  followers: new Map(),
  lengths: new Map(),
  numbers: new Map(),
  nextNumber: new Map(),
  words: new Map(),
  lastWord: new Map(),
  strings: new Map(),
  successors: new Map(),
  spelled: new Uint8Array(1 << 16),
  spelledCount: 0,
  runs: new Map(),
  lastNumber: '',
  numberBefore: '',
  wordBefore: 0,
});
