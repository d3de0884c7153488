import type { CautionStanding } from '../../../../core/cautions/types';
import './cautionGlyph.css';

/** The colour is the second sign; what stands in the triangle and the words beside it are the other two. */
const TONE: Readonly<Record<CautionStanding, string>> = { breaks: 'verm', said: '', holds: 'verd' };
const MARK: Readonly<Record<CautionStanding, string>> = {
  breaks: 'M8 6v3.4M8 11.4v.8',
  said: 'M8 11v.8',
  holds: 'M5.6 10 7.4 11.8 10.6 8.2',
};
const WORD: Readonly<Record<CautionStanding, string>> = {
  breaks: 'breaks a figure',
  said: 'to be minded',
  holds: 'holds',
};

/** How a caution stands: a triangle with a stroke and a dot where a figure is broken, a dot where it is said, a tick where it holds. */
export function CautionGlyph({
  standing,
  noted,
}: {
  readonly standing: CautionStanding;
  readonly noted: boolean;
}) {
  return (
    <svg
      className={`v caution-glyph ${noted ? 'q' : TONE[standing]}`}
      viewBox="0 0 16 16"
      role="img"
      aria-label={noted ? `${WORD[standing]}, noted` : WORD[standing]}
    >
      <path d="M8 1.8 15 14H1Z" />
      <path d={MARK[standing]} />
    </svg>
  );
}
