import type { BitCoder } from './arithmetic';
import { likelyOf, MOST_ODDS, oddsOf } from './curves';
import { stirred } from './hash';

/** What is coded: each kind has contexts, maps and weights of its own. */
export const KIND = { type: 0, key: 1, number: 2, text: 3, word: 4 } as const;
export type Kind = (typeof KIND)[keyof typeof KIND];

const KINDS = 5;
/** Contexts of one symbol, at most. */
const MOST_CONTEXTS = 16;
const INPUTS = MOST_CONTEXTS + 1;
const BIAS = 0.4;

/** Histories: how often a 0 and a 1 came, up to 15 each, and which came last. */
const STATES = 512;
const MOST_COUNT = 15;
/** What is left of a count of the one when the other comes. */
const REMAINS = [0, 1, 2, 2, 3, 3, 4, 4, 4, 5, 5, 5, 5, 6, 6, 6];

/** Four bits of a symbol under one context lie together: a check of 16 bits, then a history for each place among them. */
const BUCKET = 16;
const PART_BITS = 4;
const BUCKETS = 1 << 19;

/** Of the three sets of weights of a kind: by how many contexts are known, by the place in the symbol, by the caller's word. */
const SETS = [32, 256, 64] as const;
const SET_STARTS = [0, KINDS * SETS[0], KINDS * (SETS[0] + SETS[1])] as const;
const WEIGHT_SETS = KINDS * (SETS[0] + SETS[1] + SETS[2]);

/** What a likelihood comes to when it is always a 0, or a 1: never quite certain, and never so small that doubles lose it. */
const SURE = [1 / 16384, 1 - 1 / 16384];

const NODES = 256;
const CURVE_POINTS = 25;

const RATES = { weights: 0.006, eager: 0.02, final: 0.002, maps: 0.02, curves: 0.02, hurry: 4 } as const;

/** All that the mixer has learnt, as arrays: whoever copies them copies it. */
export interface Learnt {
  /** Histories, by what was met. */
  readonly buckets: Uint16Array;
  /** How likely a 1 is after a history, by kind and context; and how often that was asked, up to 255. */
  readonly maps: Float64Array;
  readonly asked: Uint8Array;
  readonly weights: Float64Array;
  readonly used: Uint16Array;
  readonly finals: Float64Array;
  /** What came of what was said: a curve for each kind and place. */
  readonly curves: Float64Array;
}

/** A mixer that has learnt nothing. */
export function nothingLearnt(): Learnt {
  const maps = new Float64Array(KINDS * MOST_CONTEXTS * STATES);
  for (let at = 0; at < maps.length; at += 1) {
    const zeros = (at % STATES) >> 5;
    const ones = (at >> 1) & MOST_COUNT;
    maps[at] = (ones + 0.25) / (zeros + ones + 0.5);
  }
  const curves = new Float64Array(KINDS * NODES * CURVE_POINTS);
  for (let at = 0; at < curves.length; at += 1) {
    const odds = (at % CURVE_POINTS) - (CURVE_POINTS - 1) / 2;
    curves[at] = likelyOf(Math.max(-MOST_ODDS, Math.min(MOST_ODDS, odds)));
  }
  const weights = new Float64Array(WEIGHT_SETS * INPUTS).fill(0.35);
  return {
    buckets: new Uint16Array(BUCKETS * BUCKET),
    maps,
    asked: new Uint8Array(maps.length),
    weights,
    used: new Uint16Array(WEIGHT_SETS),
    finals: new Float64Array(KINDS * SETS.length).fill(1 / SETS.length),
    curves,
  };
}

/** Codes symbols, each bit of which is foretold from what came in like contexts before. */
export interface SymbolCoder {
  /** Begins a symbol. `word` (below 64) chooses among weights: what of the contexts to trust may hang on it. */
  readonly begin: (kind: Kind, word: number) => void;
  /** Adds a context, always the same ones in the same order for a kind. */
  readonly context: (hash: number) => void;
  /** Codes a number of so many bits, up to 8, from the highest on. */
  readonly symbol: (bits: number, value: number) => number;
  /** How many bits were coded. */
  readonly decisions: () => number;
}

const countOf = (state: number): number => (state >> 5) + ((state >> 1) & MOST_COUNT);

const bounded = (odds: number): number => Math.max(-MOST_ODDS, Math.min(MOST_ODDS, odds));

/** Several guesses from contexts become one by weights that are learnt: logistic mixing, from memory. */
export function symbolCoder(learnt: Learnt, coder: BitCoder): SymbolCoder {
  const { buckets, maps, asked, weights, used, finals, curves } = learnt;
  const contexts = new Int32Array(MOST_CONTEXTS);
  const bucketAt = new Int32Array(MOST_CONTEXTS);
  const mapAt = new Int32Array(MOST_CONTEXTS);
  const inputs = new Float64Array(INPUTS);
  const dots = new Float64Array(SETS.length);
  const setAt = new Int32Array(SETS.length);
  let kind: Kind = KIND.type;
  let word = 0;
  let count = 0;
  let coded = 0;

  /** Finds the bucket of each context for the part of the symbol that begins at this place. */
  function open(node: number): void {
    for (let i = 0; i < count; i += 1) {
      let hash = Math.imul(contexts[i] + Math.imul(node, 0x9e3779b1), 0x2c1b3c6d);
      hash ^= hash >>> 15;
      hash = Math.imul(hash, 0x297a2d39);
      const check = (hash >>> 16) | 1;
      const first = ((hash ^ (hash >>> 17)) & (BUCKETS - 1)) * BUCKET;
      bucketAt[i] = buckets[first] === check ? first : otherThan(first, check);
    }
  }

  /** The neighbour of a bucket that another context holds, where it is this one's; else whichever of the two knows less. */
  function otherThan(first: number, check: number): number {
    const second = first ^ BUCKET;
    if (buckets[second] === check) return second;
    const chosen = countOf(buckets[second + 1]) < countOf(buckets[first + 1]) ? second : first;
    buckets.fill(0, chosen, chosen + BUCKET);
    buckets[chosen] = check;
    return chosen;
  }

  /** Asks what each context foretells at this place of the part; gives how many know anything. */
  function lookUp(inner: number): number {
    let known = 0;
    for (let i = 0; i < count; i += 1) {
      const state = buckets[bucketAt[i] + inner];
      const place = (kind * MOST_CONTEXTS + i) * STATES + state;
      mapAt[i] = place;
      if (state === 0) {
        inputs[i] = 0;
      } else {
        inputs[i] = oddsOf(maps[place]);
        known += 1;
      }
    }
    inputs[count] = BIAS;
    return known;
  }

  function mixed(node: number, known: number): number {
    setAt[0] = SET_STARTS[0] + kind * SETS[0] + known;
    setAt[1] = SET_STARTS[1] + kind * SETS[1] + node;
    setAt[2] = SET_STARTS[2] + kind * SETS[2] + word;
    let odds = 0;
    for (let set = 0; set < SETS.length; set += 1) {
      const start = setAt[set] * INPUTS;
      let dot = 0;
      for (let i = 0; i <= count; i += 1) dot += weights[start + i] * inputs[i];
      dots[set] = bounded(dot);
      odds += finals[kind * SETS.length + set] * dots[set];
    }
    return bounded(odds);
  }

  function learn(inner: number, bit: number, likely: number): void {
    for (let set = 0; set < SETS.length; set += 1) {
      const times = used[setAt[set]];
      if (times < 65535) used[setAt[set]] = times + 1;
      const rate = Math.max(RATES.weights, RATES.eager / (1 + times));
      const step = (bit - likelyOf(dots[set])) * rate;
      const start = setAt[set] * INPUTS;
      for (let i = 0; i <= count; i += 1) weights[start + i] += step * inputs[i];
      finals[kind * SETS.length + set] += (bit - likely) * RATES.final * dots[set];
    }
    const sure = SURE[bit];
    for (let i = 0; i < count; i += 1) {
      const place = mapAt[i];
      const times = asked[place];
      if (times < 255) asked[place] = times + 1;
      maps[place] += (sure - maps[place]) * Math.max(RATES.maps, 1 / (times + RATES.hurry));
      const slot = bucketAt[i] + inner;
      let zeros = buckets[slot] >> 5;
      let ones = (buckets[slot] >> 1) & MOST_COUNT;
      if (bit) {
        if (ones < MOST_COUNT) ones += 1;
        zeros = REMAINS[zeros];
      } else {
        if (zeros < MOST_COUNT) zeros += 1;
        ones = REMAINS[ones];
      }
      buckets[slot] = (zeros << 5) | (ones << 1) | bit;
    }
  }

  function codeBit(node: number, inner: number, wanted: number): number {
    const odds = mixed(node, lookUp(inner));
    const said = likelyOf(odds);
    const place = odds + (CURVE_POINTS - 1) / 2;
    const step = Math.floor(place);
    const part = place - step;
    const curve = (kind * NODES + node) * CURVE_POINTS + step;
    const seen = curves[curve] * (1 - part) + curves[curve + 1] * part;
    const likely = Math.floor(((said + seen) / 2) * 65536);
    const bit = coder.code(wanted, Math.max(1, Math.min(65535, likely)));
    curves[curve] += (SURE[bit] - curves[curve]) * RATES.curves * (1 - part);
    curves[curve + 1] += (SURE[bit] - curves[curve + 1]) * RATES.curves * part;
    learn(inner, bit, said);
    coded += 1;
    return bit;
  }

  return {
    begin(of, choice) {
      kind = of;
      word = choice;
      count = 0;
    },
    context(hash) {
      contexts[count] = stirred(hash, count + kind * 32 + 1);
      count += 1;
    },
    symbol(bits, value) {
      let node = 1;
      for (let left = bits; left > 0; ) {
        const part = Math.min(PART_BITS, left);
        open(node);
        for (let inner = 1; inner < 1 << part; ) {
          left -= 1;
          const bit = codeBit(node, inner, (value >> left) & 1);
          node = (node << 1) | bit;
          inner = (inner << 1) | bit;
        }
      }
      return node - (1 << bits);
    },
    decisions: () => coded,
  };
}
