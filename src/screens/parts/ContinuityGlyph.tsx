import type { Standing } from '../../core/continuity/types';

/** The colour of a standing is its second sign; the glyph and the words beside it are the other two. */
const TONE_OF_STANDING: Readonly<Record<Standing, string>> = { breaks: 'verm', said: '', holds: 'verd' };

/** How a finding of continuity stands. */
export function ContinuityGlyph({ standing }: { readonly standing: Standing }) {
  return (
    <svg className={`v ${TONE_OF_STANDING[standing]}`} role="img" aria-label={standing}>
      <use href={`#g-${standing}`} />
    </svg>
  );
}

const FRAMES = (
  <path
    d="M1.25 3.75h4.5v8.5h-4.5zM10.25 3.75h4.5v8.5h-4.5z"
    fill="none"
    stroke="currentColor"
    strokeWidth="1.5"
  />
);

/** Two frames of a cut: a line that goes on from one to the next, one that does not, and a point between them. */
export function ContinuitySymbols() {
  return (
    <>
      <symbol id="g-holds" viewBox="0 0 16 16">
        {FRAMES}
        <path d="M0 8h16" stroke="currentColor" strokeWidth="1.5" />
      </symbol>
      <symbol id="g-breaks" viewBox="0 0 16 16">
        {FRAMES}
        <path d="M0 6.2h7.4M8.6 9.8H16" stroke="currentColor" strokeWidth="2" />
      </symbol>
      <symbol id="g-said" viewBox="0 0 16 16">
        {FRAMES}
        <circle cx="8" cy="8" r="1.7" fill="currentColor" />
      </symbol>
    </>
  );
}
