import { crc32 } from '../crc32';
import { type BitCoder, bitReader, bitWriter, EndOfBytes, LEARNER } from './arithmetic';
import { codeDocument, type Json, type Limits, Misfit, TooMuch } from './document';
import { emptyMemory, type Memory } from './memory';
import { type Learnt, nothingLearnt, symbolCoder } from './mixer';
import { NIGHT_TEXT } from './primer/night';
import { PALETTE_TEXT } from './primer/palette';

/** What a link may hold: characters of JSON without blanks, bits decided (a few seconds of work), levels of nesting. */
export const LIMITS: Limits = { characters: 2_000_000, decisions: 2_500_000, depth: 40 };

const CHECK_BITS = 16;
const EVEN = 32768;

interface State {
  readonly learnt: Learnt;
  readonly memory: Memory;
}

let primed: State | null = null;

/** What both sides know before the first bit; worked out once. */
function primedState(): State {
  if (primed) return primed;
  const state: State = { learnt: nothingLearnt(), memory: emptyMemory() };
  const coder = symbolCoder(state.learnt, LEARNER);
  for (const text of [PALETTE_TEXT, NIGHT_TEXT]) codeDocument(coder, state.memory, JSON.parse(text), LIMITS);
  primed = state;
  return state;
}

/** Codes a document and then a sum of it, so that a reader who understood something else notices. */
function coded(
  bits: BitCoder,
  document: Json | undefined,
  limits: Limits,
): { readonly text: string; readonly agrees: boolean } {
  const { learnt, memory } = structuredClone(primedState());
  const text = codeDocument(symbolCoder(learnt, bits), memory, document, limits);
  const sum = crc32(new TextEncoder().encode(text));
  let agrees = true;
  for (let bit = 0; bit < CHECK_BITS; bit += 1) {
    const own = (sum >>> bit) & 1;
    if (bits.code(own, EVEN) !== own) agrees = false;
  }
  return { text, agrees };
}

/** A JSON document as few bytes; null where it is larger than a link may hold. */
export function packed(document: Json, limits = LIMITS): Uint8Array | null {
  if (JSON.stringify(document).length > limits.characters) return null;
  const writer = bitWriter();
  try {
    coded(writer, document, limits);
  } catch (error) {
    if (error instanceof TooMuch) return null;
    throw error;
  }
  return writer.finished();
}

/** The text of the document that was packed, its keys perhaps in another order; or why these bytes give none. */
export function unpacked(
  bytes: Uint8Array,
  limits = LIMITS,
):
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly kind: 'altered' | 'tooLarge' } {
  try {
    const { text, agrees } = coded(bitReader(bytes), undefined, limits);
    return agrees ? { ok: true, text } : { ok: false, kind: 'altered' };
  } catch (error) {
    if (error instanceof TooMuch) return { ok: false, kind: 'tooLarge' };
    if (error instanceof EndOfBytes || error instanceof Misfit) return { ok: false, kind: 'altered' };
    throw error;
  }
}
