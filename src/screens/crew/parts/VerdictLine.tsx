import { Glyph, TONE_OF_VERDICT } from '../../parts/Glyph';
import type { CardSaying } from '../setups/cardWords';

/** What is said of what a setup sees, behind its glyph; that it is being read while nothing is known. */
export function VerdictLine({ saying }: { readonly saying: CardSaying | null }) {
  if (!saying) return <p className="crew-say q">being read</p>;
  const { verdict, words, tone } = saying;
  return (
    <p className={`crew-say ${tone ?? TONE_OF_VERDICT[verdict]}`}>
      <Glyph verdict={verdict} {...(tone ? { tone } : {})} />
      <span>{words}</span>
    </p>
  );
}
