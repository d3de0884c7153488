import { boundsAt } from '../footprintBounds';
import { type LetteredWish, type LetteringInput, lettered } from '../letteredWish';
import { keyOf } from '../targets';
import { areaLettering } from './words';

/** Wet areas say what they are inside of themselves, where nothing more important stands. */
export const wetWishes = (input: LetteringInput): LetteredWish[] =>
  (input.plan.ground.areas ?? []).flatMap((area) => {
    const around = boundsAt({ outline: area.outline, closed: true }, input.at);
    if (!around) return [];
    return lettered(input, {
      id: keyOf({ type: 'area', areaId: area.id }),
      text: areaLettering(input.plan.ground, area.id),
      style: 'mark',
      around,
      priority: 25,
      worth: 1,
      inside: true,
      quiet: true,
    });
  });
