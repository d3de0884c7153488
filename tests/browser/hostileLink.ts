import { toBase64url } from '../../src/exchange/link/base64url';
import { enclosed } from '../../src/exchange/link/envelope';
import { LONGEST_FRAGMENT } from '../../src/exchange/link/link';
import { packed } from '../../src/exchange/link/v1/pack';

/** Bytes of the length and the sum that stand before a link's bytes, when there are so many. */
const BEFORE = 7;

/** Text that nothing foretells: every letter of it has to be decided in full. */
function unforeseen(letters: number): string {
  let state = 1;
  return Array.from({ length: letters }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return String.fromCharCode(33 + ((state >>> 16) % 90));
  }).join('');
}

/**
 * The longest link that is read at all, whole in itself, with as much in it to decide as a link may have: it is no plan,
 * which shows only at its end.
 */
export function hostileLink(): string {
  const coded = packed({
    standclear: 1,
    notes: Array.from({ length: 80 }, (_, place) => unforeseen(1800 + place)),
  });
  if (!coded) throw new Error('the link was to be as large as a link may be, and is larger');
  const bytes = new Uint8Array(Math.floor(((LONGEST_FRAGMENT - 1) * 3) / 4) - BEFORE);
  bytes.set(coded);
  return `1${toBase64url(enclosed(bytes))}`;
}
