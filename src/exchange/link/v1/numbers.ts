import { nextNumber } from './foretold';
import { stirred, textHash } from './hash';
import type { Memory } from './memory';
import { KIND, type SymbolCoder } from './mixer';

const SIGNS = '0123456789-.e+';
const END = 14;
const NOTHING = 15;
const SIGN_BITS = 4;
/** No number in JSON that a double gives is longer. */
const LONGEST = 32;

/** Where a value lies: the place by keys alone, the place with the kind of thing that it belongs to, the number in its array. */
export interface Place {
  readonly path: number;
  readonly kind: number;
  readonly index: number;
}

/** A text that the next number may be, read sign by sign for as long as it holds. */
function guess(text: string): { readonly sign: () => number; readonly saw: (sign: number) => void } {
  let at = 0;
  let holds = text !== '';
  const sign = (): number =>
    holds && at <= text.length ? (at < text.length ? SIGNS.indexOf(text[at]) : END) : NOTHING;
  return {
    sign,
    saw(seen) {
      if (seen !== sign()) holds = false;
      at += 1;
    },
  };
}

const FRACTION_SEEN = 7;

/**
 * Codes a number as JSON writes it, sign by sign.
 * @param beside what came just before it in its object or array, and the word that says what kind of thing it is
 */
export function codeNumber(
  coder: SymbolCoder,
  memory: Memory,
  text: string,
  place: Place,
  beside: { readonly before: number; readonly word: number },
): string {
  const at = stirred(place.path, Math.min(place.index, 5) + 1);
  const here = stirred(at, place.kind);
  const { last, before } = memory.numbers.get(here) ?? memory.numbers.get(at) ?? { last: '', before: '' };
  const lastHash = textHash(last);
  const nearHash = textHash(memory.lastNumber);
  const pairHash = stirred(nearHash, textHash(memory.numberBefore));
  const point = last.indexOf('.');
  const lastPlaces = point < 0 ? 0 : last.length - point;
  const same = guess(last);
  const even = guess(before === '' ? '' : nextNumber(last, before));
  const again = guess(memory.nextNumber.get(pairHash) ?? memory.nextNumber.get(nearHash) ?? '');
  let written = '';
  let prefix = 7;
  let fraction = 0;
  for (;;) {
    const length = written.length;
    const s = same.sign();
    const e = even.sign();
    const a = again.sign();
    const start = length === 0 ? 1 : 0;
    const under = length < last.length ? SIGNS.indexOf(last[length]) : END;
    coder.begin(
      KIND.number,
      (s < NOTHING ? 1 : 0) + (e < NOTHING ? 2 : 0) + (a < NOTHING ? 4 : 0) + 8 * Math.min(length, 7),
    );
    coder.context(stirred(here, prefix));
    coder.context(stirred(stirred(at, e), s));
    coder.context(stirred(stirred(77, a), e * 16 + s));
    coder.context(stirred(stirred(here, beside.before), prefix));
    coder.context(stirred(stirred(here, beside.word), prefix));
    coder.context(stirred(place.path, prefix));
    coder.context(stirred(at, fraction * 16 + start));
    coder.context(stirred(stirred(here, fraction), lastPlaces));
    coder.context(stirred(prefix, 99));
    coder.context(stirred(stirred(here, under), length + fraction * 16));
    coder.context(stirred(stirred(here, beside.before), stirred(prefix, lastHash)));
    coder.context(stirred(nearHash, prefix));
    coder.context(stirred(stirred(here, beside.word), stirred(prefix, lastHash)));
    const wanted = length < text.length ? SIGNS.indexOf(text[length]) : END;
    const sign = coder.symbol(SIGN_BITS, wanted);
    if (sign >= END || length >= LONGEST) break;
    for (const each of [same, even, again]) each.saw(sign);
    written += SIGNS[sign];
    prefix = stirred(prefix, sign + 1);
    if (SIGNS[sign] === '.') fraction = 1;
    else if (fraction > 0) fraction = Math.min(fraction + 1, FRACTION_SEEN);
  }
  const record = { last: written, before: last };
  memory.numbers.set(here, record);
  memory.numbers.set(at, record);
  memory.nextNumber.set(pairHash, written);
  memory.nextNumber.set(nearHash, written);
  memory.numberBefore = memory.lastNumber;
  memory.lastNumber = written;
  return written;
}
