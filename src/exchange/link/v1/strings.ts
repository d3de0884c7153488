import { nextName } from './foretold';
import { stirred } from './hash';
import { lettersOf, textOfLetters } from './letters';
import type { Memory, Words } from './memory';
import { KIND, type SymbolCoder } from './mixer';
import type { Place } from './numbers';

const WORD_BITS = 7;
const MOST_WORDS = 127;
const LONGEST_WORD = 40;
const NOTHING = 256;
const LONGEST_RUN = 16;

/** What stands beside a string: what came before it in its object, the last word of that, and the id. */
export interface BesideString {
  readonly before: number;
  readonly word: number;
  readonly id: string;
}

/** Codes a string: as the number of a word that its place had before, or spelled. */
export function codeString(
  coder: SymbolCoder,
  memory: Memory,
  text: string,
  place: Place,
  beside: BesideString,
  spend: () => void,
): string {
  const here = stirred(place.path, place.kind);
  const words = wordsAt(memory, place.path);
  const last = memory.lastWord.get(here) ?? 0;
  coder.begin(KIND.word, Math.min(words.list.length, 3));
  coder.context(here);
  coder.context(stirred(here, beside.word));
  coder.context(stirred(stirred(place.path, beside.before), words.last));
  coder.context(stirred(stirred(here, last), words.last));
  coder.context(stirred(stirred(place.path, memory.wordBefore), 5));
  const word = coder.symbol(WORD_BITS, words.numbers.get(text) ?? 0);
  words.last = word;
  memory.lastWord.set(here, word);
  memory.wordBefore = word;
  const known = words.list[word - 1];
  const string = known ?? spelled(coder, memory, text, place, beside, spend);
  if (known === undefined && words.list.length < MOST_WORDS && string.length <= LONGEST_WORD) {
    words.list.push(string);
    words.numbers.set(string, words.list.length);
  }
  const lastHere = memory.strings.get(place.path);
  if (lastHere !== undefined && !memory.successors.has(lastHere)) memory.successors.set(lastHere, string);
  memory.strings.set(place.path, string);
  memory.strings.set(here, string);
  return string;
}

function wordsAt(memory: Memory, path: number): Words {
  const met = memory.words.get(path);
  if (met) return met;
  const words: Words = { numbers: new Map(), list: [], last: 0 };
  memory.words.set(path, words);
  return words;
}

/** Bytes that may come next, read one by one for as long as they hold. */
function guess(bytes: readonly number[]): {
  readonly byte: () => number;
  readonly saw: (seen: number) => void;
} {
  let at = 0;
  let holds = bytes.length > 0;
  const byte = (): number => (holds && at <= bytes.length ? (bytes[at] ?? 0) : NOTHING);
  return {
    byte,
    saw(seen) {
      if (seen !== byte()) holds = false;
      at += 1;
    },
  };
}

const HYPHEN = 45;
const BLANK = 32;
const isSmall = (byte: number): boolean => byte > 96 && byte < 123;

/** The id as a name would have it, `Bulb post` of `bulb-post`; after a word that differs it goes on with the next. */
function idAsName(id: readonly number[]): ReturnType<typeof guess> {
  let at = 0;
  let start = true;
  let holds = id.length > 0;
  const byte = (): number => {
    if (!holds) return NOTHING;
    const letter = id[at] ?? 0;
    if (letter === HYPHEN) return BLANK;
    return start && isSmall(letter) ? letter - 32 : letter;
  };
  return {
    byte,
    saw(seen) {
      const next = byte();
      start = false;
      if (holds) {
        if (seen === next) at += 1;
        else holds = false;
      } else if (id.length > 0 && (seen === HYPHEN || seen === BLANK)) {
        const hyphen = id.indexOf(HYPHEN, at);
        if (hyphen >= 0) {
          at = hyphen + 1;
          holds = true;
        }
      }
    },
  };
}

const isLetter = (byte: number): boolean => byte > 127 || isSmall(byte | 32);

function spelled(
  coder: SymbolCoder,
  memory: Memory,
  text: string,
  place: Place,
  beside: BesideString,
  spend: () => void,
): string {
  const here = stirred(place.path, place.kind);
  const bytes = lettersOf(text);
  const last = memory.strings.get(here) ?? memory.strings.get(place.path) ?? '';
  const counted = guess(lettersOf(nextName(last)));
  const successor = guess(lettersOf(memory.successors.get(last) ?? ''));
  const named = idAsName(lettersOf(beside.id));
  const run = runsIn(memory);
  const written: number[] = [];
  let prefix = 3;
  let word = 0;
  let [c1, c2, c3, c4] = [0, 0, 0, 0];
  for (;;) {
    const counts = counted.byte();
    const follows = successor.byte();
    const names = named.byte();
    const runs = run.byte();
    const three = stirred(stirred(c1, c2), c3);
    const four = stirred(three, c4);
    coder.begin(
      KIND.text,
      Math.min(run.length(), 7) +
        (counts < NOTHING ? 8 : 0) +
        (follows < NOTHING ? 16 : 0) +
        (names < NOTHING ? 32 : 0),
    );
    coder.context(stirred(here, prefix));
    coder.context(c1 + 256);
    coder.context(three);
    coder.context(four);
    coder.context(stirred(word, 8));
    coder.context(stirred(stirred(place.path, follows), counts));
    coder.context(stirred(runs, Math.min(run.length(), 15)));
    coder.context(stirred(place.path, c1));
    coder.context(stirred(stirred(names, counts), runs));
    coder.context(stirred(stirred(here, beside.word), prefix));
    const byte = coder.symbol(8, bytes[written.length] ?? 0);
    counted.saw(byte);
    successor.saw(byte);
    named.saw(byte);
    c4 = c3;
    c3 = c2;
    c2 = c1;
    c1 = byte;
    run.saw(byte, stirred(stirred(stirred(c1, c2), c3), written.length >= 3 ? c4 : 0), written.length >= 2);
    if (byte === 0) break;
    spend();
    written.push(byte);
    prefix = stirred(prefix, byte + 1);
    if (isLetter(byte)) word = stirred(word, byte | 32);
    else word = 0;
  }
  return textOfLetters(written);
}

/** What came after the longest run of bytes that was met before as it is met now. */
function runsIn(memory: Memory): {
  readonly byte: () => number;
  readonly length: () => number;
  readonly saw: (byte: number, run: number, begun: boolean) => void;
} {
  const { spelled: met, runs } = memory;
  const around = met.length - 1;
  let at = -1;
  let length = 0;
  return {
    byte: () => (at >= 0 ? met[at & around] : NOTHING),
    length: () => length,
    saw(byte, run, begun) {
      const now = memory.spelledCount;
      if (at >= 0 && met[at & around] === byte) {
        at += 1;
        length += 1;
      } else {
        at = -1;
        length = 0;
      }
      met[now & around] = byte;
      memory.spelledCount = now + 1;
      if (at < 0 && begun) {
        at = runs.get(run) ?? -1;
        if (at >= 0)
          for (length = 1; length < LONGEST_RUN; length += 1)
            if (met[(at - 1 - length) & around] !== met[(now - length) & around]) break;
      }
      runs.set(run, now + 1);
    },
  };
}
