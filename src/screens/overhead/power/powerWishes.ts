import { segmentsOf } from '../geometry/runs';
import type { Ring, Spot } from '../geometry/spots';
import { aroundSpot, type LetteredWish, type LetteringInput, lettered } from '../letteredWish';
import type { PowerOnRoof } from './powerOnRoof';

/** Half of what a word is set beside, pixels. */
const BESIDE = { amps: 4, dark: 9 } as const;
/** Worth this much a place is found in nearly any crowd. */
const MUST = 30;

/** The lines that the power draws, pixels: words had better not lie on them. */
export const powerLines = (
  { cords, moves }: PowerOnRoof,
  at: LetteringInput['at'],
): readonly (readonly [Spot, Spot])[] => [
  ...cords.flatMap(({ path }) => segmentsOf(path, false).map(({ from, to }) => [at(from), at(to)] as const)),
  ...moves.map(({ from, to }) => [at(from), at(to)] as const),
];

/** The circles that the power draws: no name lies under one. */
export const powerRings = (
  { sources, dark }: PowerOnRoof,
  at: LetteringInput['at'],
  perMetre: number,
): readonly Ring[] => [
  ...sources.map((each) => ({ middle: at(each.at), radius: each.radiusMetres * perMetre })),
  ...dark.map((each) => ({ middle: at(each.at), radius: BESIDE.dark })),
];

/** The words of the power: amps at cables, loads at sources, what has none. */
export function powerWishes(input: LetteringInput): LetteredWish[] {
  const { power, at, perMetre } = input;
  if (!power) return [];
  return [
    ...power.dark.map((each) =>
      lettered(input, {
        id: `power:dark:${each.id}`,
        text: each.text,
        style: 'strong',
        around: aroundSpot(at(each.at), BESIDE.dark),
        priority: 94,
        worth: MUST,
        fault: true,
      }),
    ),
    ...power.sources.map((each) =>
      lettered(input, {
        id: `power:source:${each.id}`,
        text: each.text,
        style: 'strong',
        around: aroundSpot(at(each.at), each.radiusMetres * perMetre),
        priority: 92,
        worth: MUST,
        fault: each.stops,
      }),
    ),
    ...power.amps.map((each) =>
      lettered(input, {
        id: `power:amps:${each.id}`,
        text: each.text,
        style: 'strong',
        around: aroundSpot(at(each.at), BESIDE.amps),
        priority: 88,
        worth: 6,
      }),
    ),
  ];
}
