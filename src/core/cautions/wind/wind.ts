import { type Cloth, clothSheet, isCloth } from '../../form/gear/cloth';
import type { Stand } from '../../form/gear/references';
import { named } from '../../plan/named';
import type { Gear } from '../../plan/schema/gear';
import type { Plan } from '../../plan/schema/plan';
import { caution } from '../caution';
import type { Caution, Figure } from '../types';
import { bagsOf, bagWeight, figure, inARow, windWords } from '../words';
import { BAG_KILOGRAMS, bagsThatHold, MOST_BALLAST_KILOGRAMS } from './ballast';
import { beaufortOf, lowestOf, milesPerHour } from './beaufort';
import { pressureOf } from './drag';
import { gustOf, SAFETY } from './gust';
import { clothDragArea, onStandsOf, type StandStanding, standingOf } from './standingOf';
import { ballastNeeded, tippingWind } from './tipping';

/** Faster than this nobody works on a roof with things in the air, so a stand that stands up to it is not told of, m/s. Source: [beaufort] */
const HURRICANE = lowestOf(12);

/** Below a wind of tipping, the one up to which the safety holds: √(1 / 1.5) of it. */
const strikeAt = (tipping: number): number => tipping / Math.sqrt(SAFETY);

/** A wind that still holds: rounded down, since more might not. */
const windLimit = (metresPerSecond: number): string =>
  figure(Math.floor(metresPerSecond * 10 + 1e-9) / 10, 1, 'm/s');

/** Kilograms that are enough: rounded up, since less would not be. */
const enough = (kilograms: number): string => figure(Math.ceil(kilograms - 1e-9), 0, 'kg');

const windFigures = (name: string, metresPerSecond: number, expected: number | null): readonly Figure[] => [
  { name, value: metresPerSecond, unit: 'm/s', ...(expected !== null && { expected }) },
  { name, value: milesPerHour(metresPerSecond), unit: 'mph' },
  { name, value: beaufortOf(metresPerSecond).number, unit: 'Beaufort' },
];

interface Read {
  readonly stand: Stand;
  readonly standing: StandStanding;
  readonly carried: readonly Gear[];
  readonly tipping: number;
}

const SOURCES = [
  'plate-drag',
  'tipping',
  'overturning-safety',
  'gust-factor',
  'beaufort',
  'standard-air',
] as const;

/** How a stand is called with what it carries: `Flag stand with Flag`. */
function callOf({ stand, carried }: Read): string {
  const names = carried.map(({ label }) => named(label));
  return names.length === 0 ? named(stand.label) : `${named(stand.label)} with ${inARow(names, 4)}`;
}

function fallsByItself(read: Read): Caution {
  const { stand, standing } = read;
  const kilograms = ballastNeeded(standing, 0, SAFETY);
  return caution({
    ...aboutStand(read),
    standing: 'breaks',
    figures: [
      { name: 'tips by itself, in a wind of', value: 0, unit: 'm/s' },
      { name: 'ballast that only just holds it', value: kilograms, unit: 'kg' },
    ],
    sentence: `${callOf(read)} falls over by itself: its weight lies outside of its feet. Turn a leg of ${named(stand.label)} under the arm and weigh the other side down, with more than ${enough(kilograms)}.`,
  });
}

const aboutStand = ({ stand, standing }: Read) =>
  ({
    kind: 'wind',
    about: 'wind',
    itemIds: standing.itemIds,
    keyIds: [stand.id],
    place: stand.at,
    sources: SOURCES,
  }) as const;

/**
 * In which wind a stand tips with all that it carries, whether that is what is forecast, and the ballast that holds it;
 * null where no wind tips it in which anybody works.
 */
export function standInWind(plan: Plan, stand: Stand, on = onStandsOf(plan)): Caution | null {
  const standing = standingOf(plan, stand, on);
  const carried = on.carried.get(stand.id) ?? [];
  const read: Read = { stand, standing, carried, tipping: tippingWind(standing) };
  const { tipping } = read;
  if (tipping === 0) return fallsByItself(read);
  const gust = gustOf(plan);
  const limit = strikeAt(tipping);
  if (limit > HURRICANE) return null;
  const name = callOf(read);
  const figures = windFigures('tips in a wind of', tipping, gust);
  if (gust === null)
    return caution({
      ...aboutStand(read),
      standing: 'said',
      figures: [...figures, { name: 'lower or strike above', value: limit, unit: 'm/s' }],
      sentence: `${name} tips in a gust of about ${windWords(tipping)}. Lower or strike it when gusts come to ${windLimit(limit)}; no wind is forecast in the plan to hold it against.`,
    });
  const ballast = ballastNeeded(standing, pressureOf(gust), SAFETY);
  if (ballast <= 0)
    return caution({
      ...aboutStand(read),
      standing: 'holds',
      figures: [...figures, { name: 'lower or strike above', value: limit, unit: 'm/s' }],
      sentence: `${name} stands in gusts of ${figure(gust, 1, 'm/s')} and tips in about ${windWords(tipping)}. Lower or strike it above ${windLimit(limit)}.`,
    });
  const held = bagsThatHold(plan, stand, on);
  const bag = held?.kilograms ?? stand.bags?.kilograms ?? BAG_KILOGRAMS;
  const bags = held?.added ?? Math.ceil(ballast / bag - 1e-9);
  const more = standing.ballastKilograms > 0 ? 'more ' : '';
  const instead = stand.bags && bag !== stand.bags.kilograms ? ' in place of those' : '';
  const mend =
    ballast > MOST_BALLAST_KILOGRAMS
      ? `It would take ${enough(ballast)} ${more}to hold it: strike it, or lower it.`
      : `Put at least ${enough(ballast)} ${more}evenly over its legs, such as ${bagsOf(bags, bag)}${instead}, or lower or strike it above ${windLimit(limit)}.`;
  const than =
    tipping < gust ? 'which is forecast' : `too near the ${figure(gust, 1, 'm/s')} that are forecast`;
  return caution({
    ...aboutStand(read),
    standing: 'breaks',
    figures: [
      ...figures,
      { name: 'lower or strike above', value: limit, unit: 'm/s' },
      { name: 'ballast needed beside what it has', value: ballast, unit: 'kg' },
      { name: `ballast needed in bags of ${bagWeight(bag)}`, value: bags, unit: 'bags' },
    ],
    sentence: `${name} tips in a gust of about ${windWords(tipping)}, ${than}. ${mend}`,
  });
}

/** A gust that is told of where none is forecast: a fresh breeze, m/s. Source: [beaufort] */
const FRESH = lowestOf(5);

/** Cloths at a place of their own: the plan does not know what holds them. */
function ofLooseCloth(plan: Plan, cloth: Cloth): Caution {
  const gust = gustOf(plan) ?? FRESH;
  const newtons = pressureOf(gust) * clothDragArea(cloth);
  return caution({
    kind: 'wind',
    about: 'wind-unheld',
    standing: 'said',
    itemIds: [cloth.id],
    place: [...clothSheet(cloth, plan).middle],
    figures: [
      { name: 'push of a gust', value: newtons, unit: 'N' },
      { name: 'the gust', value: gust, unit: 'm/s' },
    ],
    sentence: `${named(cloth.label)} hangs in the air, and the plan does not say from what: a gust of ${windWords(gust)} pushes it with ${figure(newtons, 0, 'N')}. Tie it to what bears that and half as much again.`,
    sources: ['plate-drag', 'overturning-safety', 'beaufort'],
  });
}

/**
 * In which wind each stand tips over with all that it carries, whether that is what is forecast, and the ballast that
 * holds it. A gust is not a steady push, and a stand that rocks or slides is not reckoned: hence the safety.
 */
export function windCautions(plan: Plan): readonly Caution[] {
  const on = onStandsOf(plan);
  const stands = plan.gear.flatMap((gear) =>
    gear.kind === 'stand' ? (standInWind(plan, gear, on) ?? []) : [],
  );
  const loose = plan.gear.flatMap((gear) =>
    isCloth(gear) && 'at' in gear.place ? [ofLooseCloth(plan, gear)] : [],
  );
  return [...stands, ...loose];
}
