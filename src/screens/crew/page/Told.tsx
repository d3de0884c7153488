import { keysOf } from '../../parts/keysOf';
import { StandingGlyph } from '../../sheet/light/StandingGlyph';

/** A sentence, and whether it breaks something, is only said, or holds. */
export interface ToldSentence {
  readonly standing: 'breaks' | 'said' | 'holds';
  readonly sentence: string;
}

/** Sentences under a heading, each with its sign; nothing where there are none. */
export function Told({
  heading,
  told,
}: {
  readonly heading: string;
  readonly told: readonly ToldSentence[];
}) {
  if (told.length === 0) return null;
  const keys = keysOf(told.map(({ sentence }) => sentence));
  return (
    <section className="crew-section">
      <h3>{heading}</h3>
      <ul className="crew-told">
        {told.map(({ standing, sentence }, place) => (
          <li key={keys[place]}>
            <StandingGlyph standing={standing} />
            <span>{sentence}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
