import type { EdgeLight } from '../../light/edgeLight';
import { formatSeconds } from '../../units/seconds';
import { formatStopSetting } from '../../units/stops';
import { againstWords, type LightStory, namedItem, told } from './lightWords';
import type { LightSentence } from './types';

const SIDES: Readonly<Record<EdgeLight['side'], string>> = {
  'camera left': 'at camera left',
  'camera right': 'at camera right',
  both: 'at both sides',
  top: 'over the hair',
  none: '',
};

function textOf({ plan, setup, light }: LightStory, edge: LightStory['light']['edges'][number]): string {
  const { itemId, side, onTop, stops, stopsOverKey, seconds } = edge;
  const when = light.levels.length > 1 ? `, at ${formatSeconds(seconds)}` : '';
  const where = `${SIDES[side]}${onTop && side !== 'top' ? ' and over the hair' : ''}`;
  const key = stopsOverKey === null ? '' : `, ${againstWords(stopsOverKey, 'the key')}`;
  const stop = againstWords(stops ?? 0, formatStopSetting(setup.stop));
  return `lit from behind ${where} by ${namedItem(plan, itemId ?? '')}${when}: ${stop}${key}.`;
}

/** Which edge of everybody in frame is lit from behind where that is strongest, or that none is. */
export function edgeSentences(story: LightStory): readonly LightSentence[] {
  return story.plan.cast.flatMap(({ id, label }): LightSentence[] => {
    const own = story.light.edges.filter(({ performerId }) => performerId === id);
    if (own.length === 0) return [];
    const about = { about: 'edge', performerId: id, name: label } as const;
    const best = own.reduce((most, next) => (next.lux > most.lux ? next : most));
    if (best.side === 'none' || best.stops === null)
      return [told({ ...about, text: 'no lamp from behind draws an edge.' })];
    return [
      told({
        ...about,
        itemId: best.itemId,
        text: textOf(story, best),
        standing: 'holds',
        atSeconds: best.seconds,
      }),
    ];
  });
}
