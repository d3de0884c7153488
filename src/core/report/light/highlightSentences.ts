import { formatLength } from '../../units/lengths';
import { placeInFrame, timeWords } from '../sentences';
import type { Extent } from '../types';
import { againstWords, itemName, type LightStory, told } from './lightWords';
import type { LightSentence } from './types';

const within = (share: number): number => Math.min(1, Math.max(0, share));

/** What of a setup's light its highlights are told of. */
type HighlightStory = Pick<LightStory, 'plan' | 'lengths'> & {
  readonly light: Pick<LightStory['light'], 'highlights'>;
  readonly seen: Pick<LightStory['seen'], 'seconds'>;
};

/** The highlights that lamps put into the floor. */
export const highlightSentences = ({
  plan,
  light,
  seen,
  lengths,
}: HighlightStory): readonly LightSentence[] =>
  light.highlights.map(({ lampId, spans, brightest, count }) => {
    const [x, y] = brightest.frame.map(within);
    const at: Extent = [x, y, x, y];
    const what = count > 1 ? `${count} highlights` : 'a highlight';
    const size = `${count > 1 ? 'the brightest ' : ''}${formatLength(brightest.lengthMetres, lengths, { decimals: 1 })} long`;
    const bright = againstWords(brightest.stops, 'grey');
    return told({
      about: 'highlight',
      itemId: lampId,
      name: itemName(plan, lampId),
      text: `${what} in the floor ${placeInFrame(at, [])}${timeWords(spans, seen.seconds)}, ${size}, ${bright}.`,
      atSeconds: brightest.seconds,
    });
  });
