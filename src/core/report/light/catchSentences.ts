import type { CatchLight } from '../../light/catchLight';
import { formatSeconds } from '../../units/seconds';
import { formatShare } from '../../units/shares';
import { againstWords, type LightStory, namedItem, told } from './lightWords';
import type { LightSentence } from './types';

/** Which eyes catch the item that is brightest in one of them. */
function eyesWords([first, ...others]: readonly CatchLight[]): string {
  const inBoth = others.some(({ itemId, eye }) => itemId === first.itemId && eye !== first.eye);
  return inBoth ? 'both eyes catch' : `the ${first.eye} eye catches`;
}

function textOf({ plan, light }: LightStory, seconds: number, lights: readonly CatchLight[]): string {
  const [first] = lights;
  const when = light.levels.length > 1 ? ` at ${formatSeconds(seconds)}` : '';
  const size = `${formatShare(first.sizeShareOfIris)} of the iris`;
  return `${eyesWords(lights)} ${namedItem(plan, first.itemId)}, at ${first.clock} o’clock${when}: ${size}, ${againstWords(first.stops, 'grey')}.`;
}

/** What is mirrored in the eyes of everybody whose eyes a setup sees: where it is brightest, or that nothing is. */
export function catchSentences(story: LightStory): readonly LightSentence[] {
  return story.plan.cast.flatMap(({ id, label }): LightSentence[] => {
    const seen = story.light.catchLights.filter(
      ({ performerId, seesEyes }) => performerId === id && seesEyes,
    );
    if (seen.length === 0) return [];
    const about = { about: 'catch light', performerId: id, name: label } as const;
    const lit = seen.filter(({ lights }) => lights.length > 0);
    if (lit.length === 0) return [told({ ...about, text: 'the eyes catch no lamp.' })];
    const best = lit.reduce((most, next) => (next.lights[0].stops > most.lights[0].stops ? next : most));
    return [
      told({
        ...about,
        itemId: best.lights[0].itemId,
        text: textOf(story, best.seconds, best.lights),
        standing: 'holds',
        atSeconds: best.seconds,
      }),
    ];
  });
}
