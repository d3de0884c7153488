import { stirred, textHash } from './hash';
import type { Keys, Memory } from './memory';
import { KIND, type SymbolCoder } from './mixer';
import { codeNumber, type Place } from './numbers';
import { codeString } from './strings';

/** What JSON can say. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

const TYPE = { string: 0, number: 1, object: 2, array: 3, true: 4, false: 5, null: 6, end: 7 } as const;
const TYPE_BITS = 3;
const KEY_BITS = 6;
/** Numbers of keys below are no keys: the end of an object, a key that has no number yet. */
const KEY_END = 0;
const KEY_NEW = 1;
const FIRST_KEY = 2;
const MOST_KEYS = 62;
const NAMES = { path: 5, kind: 0, index: 0 };
/** The key whose value says what kind of thing an object is: it comes first, since all the rest hangs on it. */
const KIND_KEY = 'kind';

/** What a document may take while it is coded. */
export interface Limits {
  readonly characters: number;
  readonly decisions: number;
  readonly depth: number;
}

/** Thrown where a document takes more than it may; it stays within this folder. */
export class TooMuch extends Error {}

/** Thrown where what is read is no document; it stays within this folder too. */
export class Misfit extends Error {}

/** What stands around a value. */
interface Around {
  readonly before: number;
  readonly word: number;
  readonly id: string;
  readonly depth: number;
}

const hashOf = (text: string | null): number => (text === null ? 0 : textHash(text));

/**
 * Codes a JSON document. While writing and learning, `document` is what is coded; while reading, it is undefined and
 * what was read is returned, as the text of the same document, its keys in the order in which they were coded.
 */
export function codeDocument(
  coder: SymbolCoder,
  memory: Memory,
  document: Json | undefined,
  limits: Limits,
): string {
  const out: string[] = [];
  let characters = 0;
  const begun = coder.decisions();

  function spend(): void {
    if (coder.decisions() - begun > limits.decisions) throw new TooMuch();
  }
  function put(text: string): void {
    spend();
    characters += text.length;
    if (characters > limits.characters) throw new TooMuch();
    out.push(text);
  }

  function codeType(wanted: number, place: Place, word: number): number {
    const here = stirred(place.path, place.kind);
    const length = memory.lengths.get(here) ?? memory.lengths.get(place.path) ?? -1;
    coder.begin(KIND.type, Math.min(place.index, 15));
    coder.context(here);
    coder.context(stirred(place.path, place.index));
    coder.context(stirred(stirred(here, place.index), length));
    coder.context(stirred(here, word));
    return coder.symbol(TYPE_BITS, wanted);
  }

  /** @returns the value's own text where it is a string (without quotes) or a number; null for others, undefined at an array's end */
  function codeValue(value: Json | undefined, place: Place, around: Around): string | null | undefined {
    if (around.depth > limits.depth) throw new TooMuch();
    const type = codeType(value === undefined ? TYPE.end : typeOf(value), place, around.word);
    switch (type) {
      case TYPE.string: {
        const string = codeString(
          coder,
          memory,
          typeof value === 'string' ? value : '',
          place,
          around,
          spend,
        );
        put(JSON.stringify(string));
        return string;
      }
      case TYPE.number: {
        const number = codeNumber(coder, memory, JSON.stringify(value) ?? '', place, around);
        put(number);
        return number;
      }
      case TYPE.object:
        codeObject(isRecord(value) ? value : {}, place, around.depth);
        return null;
      case TYPE.array:
        codeArray(Array.isArray(value) ? value : [], place, around);
        return null;
      case TYPE.end:
        return undefined;
      default:
        put(type === TYPE.true ? 'true' : type === TYPE.false ? 'false' : 'null');
        return null;
    }
  }

  function codeArray(values: readonly Json[], { path, kind }: Place, around: Around): void {
    const within = stirred(path, 77);
    let before = 0;
    let index = 0;
    put('[');
    for (; ; index += 1) {
      const comma = out.length;
      if (index > 0) put(',');
      const inner = { before, word: around.word, id: around.id, depth: around.depth + 1 };
      const text = codeValue(values[index], { path: within, kind, index }, inner);
      if (text === undefined) {
        out.length = comma;
        break;
      }
      before = hashOf(text);
    }
    put(']');
    memory.lengths.set(stirred(within, kind), index);
    memory.lengths.set(within, index);
  }

  function codeObject(values: { readonly [key: string]: Json }, { path, kind }: Place, depth: number): void {
    const names = Object.keys(values);
    const ordered = names.includes(KIND_KEY)
      ? [KIND_KEY, ...names.filter((name) => name !== KIND_KEY)]
      : names;
    const keys = keysAt(memory, path);
    let own = kind;
    let [before, word, id] = [0, 0, ''];
    let [key, keySet] = [0, path];
    put('{');
    for (let at = 0; ; at += 1) {
      const here = stirred(path, own);
      const after = stirred(here, key);
      coder.begin(KIND.key, 0);
      coder.context(after);
      coder.context(stirred(stirred(path, key), memory.followers.get(after) ?? -1));
      coder.context(stirred(here, keySet));
      coder.context(stirred(key, 1000));
      coder.context(stirred(after, word));
      const name = ordered[at];
      const wanted = name === undefined ? KEY_END : (keys.numbers.get(name) ?? KEY_NEW);
      const coded = coder.symbol(KEY_BITS, wanted);
      memory.followers.set(after, coded);
      if (coded === KEY_END) break;
      const spelled = codeName(keys, coded, name ?? '');
      const hash = textHash(spelled);
      put(`${at > 0 ? ',' : ''}${JSON.stringify(spelled)}:`);
      const place = { path: stirred(path, hash), kind: own, index: 0 };
      const text = codeValue(ownValue(values, spelled), place, { before, word, id, depth: depth + 1 });
      if (text === undefined) throw new Misfit();
      before = hashOf(text);
      if (spelled === KIND_KEY) own = before;
      else if (spelled === 'id') id = text ?? '';
      else if (spelled !== 'label' && out[out.length - 1].startsWith('"')) word = before;
      key = hash;
      keySet = stirred(keySet, hash);
    }
    put('}');
  }

  /** The key of that number, which is spelled where it has none yet. */
  function codeName(keys: Keys, coded: number, name: string): string {
    const known = keys.list[coded - FIRST_KEY];
    if (known !== undefined) return known;
    const spelled = codeString(coder, memory, name, NAMES, { before: 0, word: 0, id: '' }, spend);
    if (keys.list.length < MOST_KEYS && !keys.numbers.has(spelled)) {
      keys.list.push(spelled);
      keys.numbers.set(spelled, keys.list.length + FIRST_KEY - 1);
    }
    return spelled;
  }

  const whole = { path: 1, kind: 0, index: 0 };
  if (codeValue(document, whole, { before: 0, word: 0, id: '', depth: 0 }) === undefined) throw new Misfit();
  return out.join('');
}

const isRecord = (value: Json | undefined): value is { readonly [key: string]: Json } =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function keysAt(memory: Memory, path: number): Keys {
  const met = memory.keys.get(path);
  if (met) return met;
  const keys: Keys = { numbers: new Map(), list: [] };
  memory.keys.set(path, keys);
  return keys;
}

/** While reading there is nothing to look up, and a key of a stranger's is looked up among own keys only. */
const ownValue = (values: { readonly [key: string]: Json }, key: string): Json | undefined =>
  Object.hasOwn(values, key) ? values[key] : undefined;

function typeOf(value: Json): number {
  if (value === null) return TYPE.null;
  if (typeof value === 'boolean') return value ? TYPE.true : TYPE.false;
  if (typeof value === 'string') return TYPE.string;
  if (typeof value === 'number') return TYPE.number;
  return Array.isArray(value) ? TYPE.array : TYPE.object;
}
