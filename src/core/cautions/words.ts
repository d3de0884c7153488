import { itemOf } from '../plan/items';
import { named } from '../plan/named';
import type { Plan } from '../plan/schema/plan';
import { formatLength } from '../units/lengths';
import { formatNumber, NBSP } from '../units/numbers';
import type { EdgeNear } from './edges/edgeAt';
import { beaufortOf, milesPerHour } from './wind/beaufort';

/** A length in metres as it is said; centimetres only where it matters. */
export const metres = (value: number, decimals = 1): string => formatLength(value, 'm', { decimals });

/** A number with its unit. */
export const figure = (value: number, decimals: number, unit: string): string =>
  `${formatNumber(value, decimals)}${NBSP}${unit}`;

/** A wind with its other units and its name: `9.8 m/s (22 mph, Beaufort 5, fresh breeze)`. */
export function windWords(metresPerSecond: number): string {
  const { number, name } = beaufortOf(metresPerSecond);
  const miles = figure(milesPerHour(metresPerSecond), 0, 'mph');
  return `${figure(metresPerSecond, 1, 'm/s')} (${miles}, Beaufort${NBSP}${number}, ${name})`;
}

/** Names in a row; of more than `most`, the first of them and how many more. Of `count`, which may be more than are given. */
export function inARow(names: readonly string[], most: number, count = names.length): string {
  const more = `${count - most + 1} more`;
  const told = count > most ? [...names.slice(0, most - 1), more] : names;
  const last = told[told.length - 1] ?? '';
  return told.length < 2 ? last : `${told.slice(0, -1).join(', ')} and ${last}`;
}

const nameOf = (plan: Plan, id: string): string => named(itemOf(plan, id)?.record.label ?? id);

const MOST_NAMES = 4;

/** The names of items in a row; of more than four, the first three and how many more. */
export const namesOf = (plan: Plan, ids: readonly string[]): string =>
  inARow(
    ids.slice(0, MOST_NAMES).map((id) => nameOf(plan, id)),
    MOST_NAMES,
    ids.length,
  );

/** The edge of what has one, or of a hole in it: `an edge of Deck`. */
export const edgeWords = (plan: Plan, { pieceId, isHole }: EdgeNear): string =>
  `${isHole ? 'a hole in' : 'an edge of'} ${nameOf(plan, pieceId)}`;

/** What stands along an edge: nothing, or how high it is. */
export const heldWords = (heldMetres: number): string =>
  heldMetres > 0 ? `what stands along it is ${metres(heldMetres, 2)} high` : 'nothing stands along it';

/** What one bag weighs, with half a kilogram where it has one: `12.5 kg`. */
export const bagWeight = (kilograms: number): string =>
  figure(kilograms, Number.isInteger(kilograms) ? 0 : 1, 'kg');

/** `1 bag of 10 kg`, `3 bags of 12.5 kg`. */
export const bagsOf = (count: number, kilograms: number): string =>
  `${count} ${verb(count, 'bag', 'bags')} of ${bagWeight(kilograms)}`;

/** The word for one or for many, by how many there are: *stands* or *stand*. */
export const verb = (count: number, one: string, many: string): string => (count === 1 ? one : many);
