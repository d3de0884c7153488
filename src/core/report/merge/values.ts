import { type Apart, keyOf, type ListName } from '../../plan/merge/entries';
import { NIGHT_COSTS } from '../../plan/schema/night';
import { formatDegrees, formatHeading } from '../../units/angles';
import { formatLength, type LengthSystem } from '../../units/lengths';
import { formatNumber, NBSP } from '../../units/numbers';
import { formatSeconds } from '../../units/seconds';
import { formatShare } from '../../units/shares';
import { formatStopCount, formatStopSetting } from '../../units/stops';

/** What a value is read in: the plan that it is of, taken apart, and how lengths are shown. */
export interface ValueOf {
  readonly plan: Apart;
  readonly lengths: LengthSystem;
}

/** Fields that name a record of the plan, and the list that it stands in. */
const NAMING: Readonly<Record<string, ListName>> = {
  lens: 'lenses',
  body: 'bodies',
  head: 'heads',
  stand: 'stands',
  track: 'gear',
  on: 'gear',
  beat: 'beats',
  performer: 'cast',
  who: 'cast',
  follow: 'cast',
  hold: 'cast',
  setup: 'setups',
  rides: 'setups',
  establishedBy: 'setups',
};
/** The same where a field means something else elsewhere. */
const NAMING_IN: Readonly<Record<string, ListName>> = {
  'span.from': 'beats',
  'span.to': 'beats',
  'plugs.from': 'gear',
  'plugs.to': 'gear',
};

/** What a person calls a record, by its list and id; the id where the plan lacks it. */
export function nameIn({ plan }: ValueOf, list: ListName, id: string): string {
  const value = plan.byKey.get(keyOf(list, id))?.value;
  return value && 'label' in value && value.label !== undefined ? value.label : id;
}

const SHARES: ReadonlySet<string> = new Set([
  'dim',
  'transmission',
  'reflectance',
  'coiledShare',
  'litShare',
  'depth',
  'strength',
  'slack',
]);

/** What the night counts in minutes. */
const MINUTES: ReadonlySet<string> = new Set([
  'rig',
  'light',
  'rehearse',
  'shoot',
  'move',
  'strike',
  'dries',
  'minutes',
  ...NIGHT_COSTS,
]);

/** Numbers in the unit that their field is named after. @param path the field's name after that of what it lies in */
function numberWords(path: string, value: number, { lengths }: ValueOf): string {
  const field = path.slice(path.lastIndexOf('.') + 1);
  if (SHARES.has(field) && path !== 'filter.strength') return formatShare(value);
  if (field === 'stop') return formatStopSetting(value);
  if (MINUTES.has(field)) return `${value}${NBSP}min`;
  if (/(^m|M)etres$/.test(field)) return formatLength(value, lengths);
  if (field === 'headingDegrees') return formatHeading(value, 1);
  if (/(^d|D)egrees$/.test(field)) return formatDegrees(value);
  if (field.endsWith('Seconds')) return formatSeconds(value);
  if (field.endsWith('Stops')) return formatStopCount(value);
  const plain = String(Number(value.toFixed(3))).replace('-', '\u2212');
  const unit = UNITS.find(([end]) => field.endsWith(end))?.[1];
  return unit === undefined ? plain : `${plain}${NBSP}${unit}`;
}

const UNITS: readonly (readonly [string, string])[] = [
  ['Kelvin', 'K'],
  ['kelvin', 'K'],
  ['Mm', 'mm'],
  ['watts', 'W'],
  ['Watts', 'W'],
  ['kilograms', 'kg'],
  ['mired', 'mired'],
  ['Hertz', 'Hz'],
  ['volts', 'V'],
  ['amps', 'A'],
  ['Amps', 'A'],
  ['Litres', 'l'],
  ['wattHours', 'Wh'],
  ['hours', 'h'],
  ['Hours', 'h'],
  ['lux', 'lx'],
];

/** Fields whose three or two numbers are a size. */
const SIZES: ReadonlySet<string> = new Set(['size', 'gateMm', 'pixels']);
/** What a list without names has so many of. */
const COUNTED: Readonly<Record<string, string>> = {
  path: 'corners',
  outline: 'corners',
  through: 'places',
  cues: 'cues',
  keys: 'keys',
  racks: 'racks',
  spares: 'spares',
  circuits: 'circuits',
};

const numbersOf = (value: readonly unknown[]): readonly number[] =>
  value.filter((each) => typeof each === 'number');

const plainly = (numbers: readonly number[]): string => numbers.join(', ');
const asShares = (numbers: readonly number[]): string => numbers.map((each) => formatShare(each)).join(', ');

/** Where in the frame somebody is held: a place by its name, and two shares. */
const WITHIN_FRAME = 'operator.at';

/** Lists of numbers that are no lengths, by the end of their path. */
const NO_LENGTHS: readonly (readonly [string, (numbers: readonly number[]) => string])[] = [
  ['gateMm', (numbers) => `${numbers.map((each) => formatNumber(each, 2)).join(' × ')}${NBSP}mm`],
  ['pixels', (numbers) => numbers.join(' × ')],
  [WITHIN_FRAME, asShares],
  ['rect', asShares],
  ['normal', ([heading, tilt]) => `${formatHeading(heading, 1)}, tilted ${formatDegrees(tilt)}`],
  ['legs', plainly],
  ['litresPerHour', (numbers) => `${plainly(numbers)}${NBSP}l/h`],
];

const endsWith = (path: string, end: string): boolean => path === end || path.endsWith(`.${end}`);

/** Whether a path leads to a place in the frame, not on the roof. */
export const isWithinFrame = (path: string): boolean => endsWith(path, WITHIN_FRAME);

function listWords(path: string, value: readonly unknown[], of: ValueOf): string {
  const field = path.slice(path.lastIndexOf('.') + 1);
  const numbers = numbersOf(value);
  if (numbers.length === value.length && numbers.length > 0 && numbers.length <= 4) {
    const other = NO_LENGTHS.find(([end]) => endsWith(path, end));
    if (other) return other[1](numbers);
    const joint = SIZES.has(field) ? ' × ' : ', ';
    return numbers.map((each) => formatLength(each, of.lengths)).join(joint);
  }
  if (value.every((each) => typeof each === 'string'))
    return value.map((id: string) => nameOfAny(of, id)).join(', ') || 'none';
  return `${value.length}${NBSP}${COUNTED[field] ?? 'entries'}`;
}

/** Ids in lists are of performers or setups. */
const nameOfAny = (of: ValueOf, id: string): string => {
  const asSetup = nameIn(of, 'setups', id);
  return asSetup === id ? nameIn(of, 'cast', id) : asSetup;
};

/** Records that are said as one thing. */
function recordWords(value: object, of: ValueOf): string | null {
  if ('who' in value && typeof value.who === 'string') return nameIn(of, 'cast', value.who);
  if ('follow' in value && typeof value.follow === 'string') return `on ${nameIn(of, 'cast', value.follow)}`;
  if ('metres' in value && typeof value.metres === 'number' && Object.keys(value).length === 1)
    return `at ${formatLength(value.metres, of.lengths)}`;
  if ('on' in value && typeof value.on === 'string') return `on ${nameIn(of, 'gear', value.on)}`;
  if ('at' in value && Array.isArray(value.at)) return `at ${listWords('at', value.at, of)}`;
  if ('racks' in value && Array.isArray(value.racks)) return listWords('racks', value.racks, of);
  if ('point' in value && Array.isArray(value.point)) return `at ${listWords('at', value.point, of)}`;
  if ('sha256' in value && 'name' in value && typeof value.name === 'string') return value.name;
  if ('candela' in value) return 'measured';
  return null;
}

/**
 * A value of a plan to read. @param path the field's name, after those that it lies in, with points between
 */
export function valueWords(path: string, value: unknown, of: ValueOf): string {
  const field = path.slice(path.lastIndexOf('.') + 1);
  if (value === undefined || value === null) return 'none';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  const last = path.split('.').slice(-2).join('.');
  if (typeof value === 'number') return numberWords(last, value, of);
  if (typeof value === 'string') {
    const list = NAMING_IN[last] ?? NAMING[field];
    if (list !== undefined) return nameIn(of, list, value);
    return value === '' ? 'empty' : value.length > 60 ? `${value.slice(0, 57)}…` : value;
  }
  if (Array.isArray(value)) return listWords(path, value, of);
  return recordWords(value, of) ?? 'set';
}

/** Whether a record is said as one thing, so that its fields are not compared by themselves. */
export const isOneThing = (value: unknown): boolean =>
  typeof value === 'object' &&
  value !== null &&
  !Array.isArray(value) &&
  (Object.keys(value).join() === 'metres' ||
    ['who', 'follow', 'on', 'racks', 'point', 'sha256', 'candela'].some((field) => field in value)) &&
  !('id' in value) &&
  !('atSeconds' in value);
