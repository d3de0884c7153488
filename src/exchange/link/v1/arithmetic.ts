/**
 * One yes or no at a time, each with how likely a yes was held to be. Writing, reading and learning go through the
 * same call, so that the model that asks cannot tell them apart and is the same on all three.
 */
export interface BitCoder {
  /**
   * @param bit what is written: 0 or 1; whoever reads may pass anything
   * @param likely how likely a 1 is, in 65,536ths: 1 to 65,535
   * @returns what was written, or what was read
   */
  readonly code: (bit: number, likely: number) => number;
}

const FULL = 0xffffffff;
const ONE = 65536;
const TOP_BYTE = 0x1000000;
/** So many bytes past its end are a reader's business: they lie in the range that is open when all is read. */
const LOOK_AHEAD = 4;

/** Thrown by a reader whose bytes have come to an end before what they say has; it stays within this folder. */
export class EndOfBytes extends Error {}

/** Where a range is divided: the part below belongs to a 1. Whole numbers below 2^48, exact in doubles. */
const divided = (low: number, high: number, likely: number): number =>
  low + Math.floor(((high - low) * likely) / ONE);

/** A binary arithmetic coder without carries, as it is commonly built (from memory), that writes. */
export function bitWriter(): BitCoder & { readonly finished: () => Uint8Array } {
  const bytes: number[] = [];
  let low = 0;
  let high = FULL;
  return {
    code(bit, likely) {
      const middle = divided(low, high, likely);
      if (bit) high = middle;
      else low = middle + 1;
      while (((low ^ high) & 0xff000000) === 0) {
        bytes.push(high >>> 24);
        low = (low << 8) >>> 0;
        high = ((high << 8) | 255) >>> 0;
      }
      return bit;
    },
    /** As few bytes as tell the range from any other, where whoever reads takes zeros to follow. */
    finished() {
      let rest = low;
      for (let kept = TOP_BYTE; rest > 0; kept /= 256) {
        const rounded = Math.ceil(low / kept) * kept;
        if (rounded > high) continue;
        rest = rounded;
        break;
      }
      for (; rest > 0; rest = (rest << 8) >>> 0) bytes.push(rest >>> 24);
      return Uint8Array.from(bytes);
    },
  };
}

/** The same, that reads. Its `code` throws EndOfBytes where it is asked for more than the bytes hold. */
export function bitReader(bytes: Uint8Array): BitCoder {
  let at = 0;
  let low = 0;
  let high = FULL;
  let held = 0;
  const shiftIn = (): void => {
    if (at >= bytes.length + LOOK_AHEAD) throw new EndOfBytes();
    held = ((held << 8) | (bytes[at] ?? 0)) >>> 0;
    at += 1;
  };
  for (let byte = 0; byte < LOOK_AHEAD; byte += 1) shiftIn();
  return {
    code(_, likely) {
      const middle = divided(low, high, likely);
      const bit = held <= middle ? 1 : 0;
      if (bit) high = middle;
      else low = middle + 1;
      while (((low ^ high) & 0xff000000) === 0) {
        low = (low << 8) >>> 0;
        high = ((high << 8) | 255) >>> 0;
        shiftIn();
      }
      return bit;
    },
  };
}

/** Neither reads nor writes: for the model to learn from what is known on both sides. */
export const LEARNER: BitCoder = { code: (bit) => bit };
