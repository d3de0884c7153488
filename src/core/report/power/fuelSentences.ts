import { named } from '../../plan/named';
import type { Power } from '../../power/powerOf';
import { hourWords, litreWords, wattWords } from './powerWords';
import type { PowerSentence } from './types';

/** What generators burn and when they are filled again, and how long batteries last. */
export function fuelSentences({ sources, hours: { hours } }: Power): readonly PowerSentence[] {
  return sources.flatMap(({ source, litWatts, fuel, batteryHours }): PowerSentence[] => {
    if (fuel && litWatts > 0) {
      const times =
        fuel.refillHours.length === 0
          ? `A full tank lasts the ${hourWords(hours)}`
          : fuel.refillHours.length === 1
            ? `Fill it after ${hourWords(fuel.refillHours[0])}`
            : `Fill it every ${hourWords(fuel.tankHours)}, ${fuel.refillHours.length} times`;
      const bring = fuel.bringLitres > 0 ? `, and bring ${litreWords(fuel.bringLitres)} beside the tank` : '';
      return [
        {
          about: 'fuel',
          standing: 'said',
          itemIds: [source.id],
          sentence: `${named(source.label)} gives ${wattWords(litWatts)} and burns ${litreWords(fuel.litresPerHour)} of ${fuel.fuel} an hour, ${litreWords(fuel.litres)} in ${hourWords(hours)}. ${times}${bring}.`,
        },
      ];
    }
    if (batteryHours === null || litWatts <= 0) return [];
    const lasts = batteryHours >= hours;
    return [
      {
        about: 'battery',
        standing: lasts ? 'holds' : 'breaks',
        itemIds: [source.id],
        sentence: `${named(source.label)} gives ${wattWords(litWatts)} for ${hourWords(batteryHours)}, ${lasts ? 'as long as it has to' : `and everything is on for ${hourWords(hours)}: bring another, or change it before then`}.`,
      },
    ];
  });
}
