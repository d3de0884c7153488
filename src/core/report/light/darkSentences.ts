import { formOf } from '../../form/formsAt';
import { takesBlack } from '../../form/gear/blacked';
import type { ItemReads, PartReads } from '../../light/readsInTheDark';
import { formatStopCount } from '../../units/stops';
import { isPlural } from '../sentences';
import { againstWords, itemName, type LightStory, someNames, told } from './lightWords';
import type { LightSentence } from './types';

/** How much a part stands out: how far its luminance lies from what is round it, over all that shows of it. */
const outstanding = ({ luminance, around, share }: PartReads): number => Math.abs(luminance - around) * share;

/** The part that stands out most. */
const mostOf = (parts: readonly PartReads[]): PartReads =>
  parts.reduce((most, next) => (outstanding(next) > outstanding(most) ? next : most));

type OfPlan = Pick<LightStory, 'plan'>;

/** Whether black tape or cloth would go over any of an item, and is not there yet. */
export function canBeBlacked({ plan }: OfPlan, { itemId, seconds }: ItemReads): boolean {
  const gear = plan.gear.find(({ id }) => id === itemId);
  if (!gear || gear.blacked) return false;
  return formOf(plan, itemId, seconds)?.parts.some(({ shape }) => takesBlack(shape.substance)) ?? false;
}

/** What would lose an item that reads, in words with a space before them; empty where nothing of the two does. */
function lossWords(story: OfPlan, reads: ItemReads, parts: readonly PartReads[]): string {
  const blacked = canBeBlacked(story, reads) ? reads.blackedVerdict : 'reads';
  const lamps = [...new Set(parts.flatMap(({ flagged }) => flagged?.itemId ?? []))];
  const names = someNames(story.plan, lamps);
  const flags = lamps.length > 1 ? `flags that take ${names} off it` : `a flag that takes ${names} off it`;
  const flagged = reads.flaggedVerdict === 'lost in the dark' && lamps.length > 0;
  if (blacked === 'lost in the dark') return ` Black tape loses it${flagged ? `, or ${flags}` : ''}.`;
  if (flagged)
    return ` ${flags.charAt(0).toUpperCase()}${flags.slice(1)} ${lamps.length > 1 ? 'lose' : 'loses'} it.`;
  return blacked === 'passes for an upright' ? ' Under black tape it may pass for an upright.' : '';
}

/** How an item reads, in words that follow its name, and what would lose it. */
export function readsText(story: OfPlan, reads: ItemReads): string {
  const { parts, verdict } = reads;
  const showing = parts.filter(({ isLost }) => !isLost);
  const part = verdict === 'lost in the dark' ? parts[0] : mostOf(showing);
  const [is, reading, stands, it] = isPlural(part.name)
    ? ['are', 'read', 'stand', 'them']
    : ['is', 'reads', 'stands', 'it'];
  const under = againstWords(-part.stopsUnder, 'grey');
  if (verdict === 'lost in the dark')
    return `the ${part.name} ${is} lost in the dark, ${formatStopCount(part.contrastStops)} from what is behind ${it}, ${under}.`;
  if (verdict === 'passes for an upright')
    return `the ${part.name} may pass for an upright: ${it === 'it' ? it : 'they'} ${stands} among ${part.likeUprights ?? 0} of like width and brightness.`;
  const apart = againstWords(part.contrastStops, `what is behind ${it}`);
  return `the ${part.name} ${reading}, ${apart}, ${under}.${lossWords(story, reads, showing)}`;
}

/** How what should keep out and shows reads, and what must show and is lost. */
export function darkSentences(story: LightStory): readonly LightSentence[] {
  const { plan, light, seen } = story;
  return light.reads.flatMap((reads): LightSentence[] => {
    const wish = seen.items.find(({ id }) => id === reads.itemId)?.wish ?? 'either';
    const isLost = reads.verdict === 'lost in the dark';
    if (wish === 'either' || (wish === 'must show' && !isLost)) return [];
    return [
      told({
        about: 'dark',
        itemId: reads.itemId,
        name: itemName(plan, reads.itemId),
        text: readsText(story, reads),
        standing: wish === 'must show' ? 'breaks' : isLost ? 'holds' : 'said',
        atSeconds: reads.seconds,
      }),
    ];
  });
}
