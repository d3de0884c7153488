import { towardsWhat } from '../../continuity/reframing';
import { apart } from '../../plan/merge/entries';
import { saysTheSame } from '../../plan/merge/saysTheSame';
import type { Plan } from '../../plan/schema/plan';
import { formatDegrees } from '../../units/angles';
import { formatLength, type LengthSystem } from '../../units/lengths';
import { hypot } from '../../units/steadyMath';
import { isOneThing, isWithinFrame, nameIn, type ValueOf, valueWords } from './values';

/** One thing that two plans have differently: what it is, and how each has it. */
export interface Change {
  /** As `lens` or `mark at Turn, place`. */
  readonly what: string;
  readonly mine: string;
  readonly theirs: string;
}

/** The two plans that are compared, to be read in. */
export interface Compared {
  readonly plan: Plan;
  readonly mine: ValueOf;
  readonly theirs: ValueOf;
}

/** Two plans, to be read in lengths of a system. */
export const compared = (mine: Plan, theirs: Plan, lengths: LengthSystem): Compared => ({
  plan: mine,
  mine: { plan: apart(mine), lengths },
  theirs: { plan: apart(theirs), lengths },
});

type Fields = Readonly<Record<string, unknown>>;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Fields whose words are not their name in small letters without their unit. */
const WORDS: Readonly<Record<string, string>> = {
  at: 'place',
  on: 'focus',
  dim: 'level',
  tenMetres: 'ten metres on',
  halfTurn: 'half a turn',
  label: 'name',
  iso: 'ISO',
  secondDelivery: 'second delivery',
  headingDegrees: 'facing',
  framesPerSecond: 'frames per second',
  atSeconds: 'time',
  holdSeconds: 'holds for',
  before: 'before the lamp',
  shows: 'let show',
  frameWidths: 'margin in frame widths',
  topMetres: 'top',
  baseMetres: 'foot',
  statureMetres: 'stature',
  northDegrees: 'north',
  closed: 'closed run',
  rect: 'left, top, right, bottom',
  aim: 'aimed at',
  delivery: 'aspect ratio',
};

/** Fields that are called otherwise in what they lie in. */
const WORDS_IN: Readonly<Record<string, string>> = {
  'safety.metres': 'margin',
  'reading.metres': 'metered from',
  'sway.metres': 'farthest off',
  'sway.degrees': 'farthest turned',
};

/** What a field is called: its name in small letters, without the unit. */
export function fieldWords(field: string): string {
  const known = WORDS[field];
  if (known !== undefined) return known;
  const bare = field.replace(/(Metres|Degrees|Seconds|Mm|Kelvin|Stops|Hertz)$/, (unit) =>
    unit === 'Stops' && field === 'ndStops' ? '' : unit === 'Stops' ? ' stops' : '',
  );
  const words = bare.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
  return words === 'nd' ? 'ND' : words;
}

/** What an entry of each list within a record is called. */
const ENTRY: Readonly<Record<string, string>> = {
  marks: 'mark',
  openings: 'opening',
  holes: 'hole',
  modes: 'mode',
  cheats: 'cheated mark',
  keys: 'key',
  cues: 'cue',
  racks: 'rack',
  circuits: 'circuit',
};

const PLACES: ReadonlySet<string> = new Set(['at', 'position', 'aim', 'from', 'to', 'point']);

const numbers = (value: unknown): readonly number[] | null =>
  Array.isArray(value) && value.every((each) => typeof each === 'number') ? value : null;

/** A label within a sentence: `the stair house`, but `Vera` and `Head 2` as they are written. */
const within = (label: string): string =>
  /^[A-Z][a-z ]+$/.test(label) ? `the ${label.charAt(0).toLowerCase()}${label.slice(1)}` : label;

/** How far theirs lies from mine, and which way. */
function moveWords(mine: readonly number[], theirs: readonly number[], { plan, mine: of }: Compared): string {
  const flat = (at: readonly number[]): [number, number] => [at[0], at.length === 3 ? at[2] : at[1]];
  const [from, to] = [flat(mine), flat(theirs)];
  const metres = hypot(to[0] - from[0], to[1] - from[1]);
  const rise = mine.length === 3 ? theirs[1] - mine[1] : 0;
  const words: string[] = [];
  if (metres >= 0.0005) {
    const what = towardsWhat(plan, from, to);
    words.push(`${formatLength(metres, of.lengths)} ${what === null ? 'away' : `towards ${within(what)}`}`);
  }
  if (Math.abs(rise) >= 0.0005)
    words.push(`${formatLength(Math.abs(rise), of.lengths)} ${rise > 0 ? 'higher' : 'lower'}`);
  return words.join(', ') || 'less than a millimetre away';
}

const joined = (under: string, word: string): string => (under === '' ? word : `${under}, ${word}`);

function leaf(path: string, what: string, mine: unknown, theirs: unknown, of: Compared): Change {
  const field = path.slice(path.lastIndexOf('.') + 1);
  const [own, other] = [numbers(mine), numbers(theirs)];
  const isPlace =
    PLACES.has(field) &&
    !isWithinFrame(path) &&
    own &&
    other &&
    own.length === other.length &&
    own.length >= 2;
  const values = [valueWords(path, mine, of.mine), valueWords(path, theirs, of.theirs)];
  if (isPlace) return { what, mine: values[0], theirs: moveWords(own, other, of) };
  if (values[0] !== values[1]) return { what, mine: values[0], theirs: values[1] };
  if (Array.isArray(mine) && Array.isArray(theirs))
    return { what, mine: values[0], theirs: `${values[1]} that lie otherwise` };
  // What reads the same is not the same: by how much, where that is a number.
  const by = typeof mine === 'number' && typeof theirs === 'number' ? theirs - mine : null;
  const off =
    by === null
      ? 'otherwise'
      : field.endsWith('Degrees')
        ? formatDegrees(by, 4)
        : String(Number(by.toPrecision(2)));
  return { what, mine: values[0], theirs: by === null ? off : `${values[1]}, off by ${off}` };
}

/** What an entry is called among its like: a mark by its beat, the others by their name or number. */
function entryName(list: string, entry: unknown, place: number, of: ValueOf): string {
  const word = ENTRY[list] ?? fieldWords(list);
  if (isFields(entry)) {
    if (list === 'marks' && typeof entry.beat === 'string')
      return `${word} at ${nameIn(of, 'beats', entry.beat)}`;
    if (list === 'shows' && typeof entry.setup === 'string')
      return `let show in ${nameIn(of, 'setups', entry.setup)}`;
    if (list === 'cheats' && typeof entry.performer === 'string')
      return `${word} of ${nameIn(of, 'cast', entry.performer)}`;
    if (typeof entry.label === 'string') return `${word} ${entry.label}`;
  }
  return `${word} ${place + 1}`;
}

const nameless = (entry: unknown): string | null => {
  if (!isFields(entry)) return null;
  const { id, setup, performer, mark } = entry;
  if (typeof id === 'string') return id;
  if (typeof performer === 'string' && typeof mark === 'string') return `${performer}/${mark}`;
  return typeof setup === 'string' ? setup : null;
};

function listChanges(
  path: string,
  under: string,
  mine: readonly unknown[],
  theirs: readonly unknown[],
  of: Compared,
): readonly Change[] {
  const field = path.slice(path.lastIndexOf('.') + 1);
  const hasNames = [...mine, ...theirs].every((entry) => nameless(entry) !== null);
  if (!hasNames) {
    const isSameLong = mine.length === theirs.length && [...mine, ...theirs].every(isFields);
    if (!isSameLong) return [leaf(path, joined(under, fieldWords(field)), mine, theirs, of)];
    return mine.flatMap((entry, k) =>
      changesOf(`${path}.${k}`, joined(under, entryName(field, entry, k, of.mine)), entry, theirs[k], of),
    );
  }
  const others = new Map(theirs.map((entry) => [nameless(entry), entry]));
  const own = new Set(mine.map(nameless));
  const changes = mine.flatMap((entry, k): readonly Change[] => {
    const what = joined(under, entryName(field, entry, k, of.mine));
    const other = others.get(nameless(entry));
    if (other === undefined) return [{ what, mine: 'there', theirs: 'not there' }];
    return changesOf(`${path}.${k}`, what, entry, other, of);
  });
  const added = theirs.flatMap((entry, k): readonly Change[] => {
    if (own.has(nameless(entry))) return [];
    return [
      { what: joined(under, entryName(field, entry, k, of.theirs)), mine: 'not there', theirs: 'there' },
    ];
  });
  const all = [...changes, ...added];
  return all.length > 0
    ? all
    : [{ what: joined(under, fieldWords(field)), mine: 'one order', theirs: 'another order' }];
}

/**
 * In what two values differ, field by field.
 * @param path names of the fields, with points between; @param under what they are called so far
 */
export function changesOf(
  path: string,
  under: string,
  mine: unknown,
  theirs: unknown,
  of: Compared,
): readonly Change[] {
  if (saysTheSame(mine, theirs)) return [];
  const field = path.slice(path.lastIndexOf('.') + 1);
  const isWhole = (value: unknown): boolean => value === undefined || isFields(value);
  if (isWhole(mine) && isWhole(theirs) && !isOneThing(mine) && !isOneThing(theirs)) {
    const isPlace =
      field === 'place' && isFields(mine) && isFields(theirs) && 'at' in mine !== 'at' in theirs;
    if (!isPlace) {
      const [own, other] = [(mine ?? {}) as Fields, (theirs ?? {}) as Fields];
      return [...new Set([...Object.keys(own), ...Object.keys(other)])].flatMap((name) => {
        const called = WORDS_IN[`${field}.${name}`] ?? fieldWords(name);
        const word = field === 'place' && name === 'at' ? under : joined(under, called);
        const isNest =
          isFields(own[name]) ||
          isFields(other[name]) ||
          Array.isArray(own[name]) ||
          Array.isArray(other[name]);
        const inner = `${path}.${name}`;
        if (
          isNest &&
          Array.isArray(own[name] ?? []) &&
          Array.isArray(other[name] ?? []) &&
          !numbers(own[name] ?? other[name])
        )
          return saysTheSame(own[name], other[name])
            ? []
            : listChanges(inner, under, (own[name] ?? []) as unknown[], (other[name] ?? []) as unknown[], of);
        return changesOf(inner, word, own[name], other[name], of);
      });
    }
  }
  if (Array.isArray(mine) && Array.isArray(theirs) && !numbers(mine))
    return listChanges(path, under, mine, theirs, of);
  return [leaf(path, under, mine, theirs, of)];
}
