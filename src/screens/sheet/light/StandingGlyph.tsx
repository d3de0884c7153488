import type { Standing } from '../../../core/continuity/types';
import './standingGlyph.css';

/** The colour of a standing is its second sign; the glyph and the words beside it are the other two. */
const TONE: Readonly<Record<Standing, string>> = { breaks: 'verm', said: '', holds: 'verd' };
const MARK: Readonly<Record<Standing, string>> = {
  breaks: 'M1.5 14.5 14.5 1.5',
  said: 'M8 1v3M8 12v3M1 8h3M12 8h3',
  holds: 'M5.4 8.2 7.4 10.2 10.8 6',
};
const WORD: Readonly<Record<Standing, string>> = { breaks: 'will not do', said: 'said', holds: 'holds' };

/** How a finding of light stands: a ring, struck through where it will not do, ticked where it holds, else with rays. */
export function StandingGlyph({ standing }: { readonly standing: Standing }) {
  return (
    <svg
      className={`v light-standing ${TONE[standing]}`}
      viewBox="0 0 16 16"
      role="img"
      aria-label={WORD[standing]}
    >
      <circle cx="8" cy="8" r={standing === 'said' ? 2.6 : 5.6} />
      <path d={MARK[standing]} />
    </svg>
  );
}
