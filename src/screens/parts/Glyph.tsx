import type { Verdict } from '../../core/report/types';

/** The colour of a verdict is its second sign; the glyph and the words beside it are the other two. */
export const TONE_OF_VERDICT: Readonly<Record<Verdict, string>> = {
  showing: 'verm',
  mirrored: 'verm',
  'lost in the dark': 'q',
  covered: 'q',
  close: '',
  clear: 'verd',
};

/** Where the page keeps the drawing of a verdict's glyph. */
export const glyphHref = (verdict: Verdict): string =>
  `#g-${verdict === 'lost in the dark' ? 'lost' : verdict}`;

/** A verdict's glyph. `tone` is given where the verdict is no trouble, as for what may show. */
export function Glyph({ verdict, tone }: { readonly verdict: Verdict; readonly tone?: string }) {
  return (
    <svg className={`v ${tone ?? TONE_OF_VERDICT[verdict]}`} role="img" aria-label={verdict}>
      <use href={glyphHref(verdict)} />
    </svg>
  );
}
