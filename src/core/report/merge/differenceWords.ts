import type { Difference, EntryDifference, OrderDifference } from '../../plan/merge/differences';
import type { Entry, ListName, SingleName } from '../../plan/merge/entries';
import type { MergeNote } from '../../plan/merge/mergePlans';
import { setupLetter } from '../../plan/setupLetter';
import { type Change, type Compared, changesOf, fieldWords } from './changes';
import { nameIn } from './values';

/** Under which heading a difference is read, in the order of the headings. */
export const SECTIONS = [
  'Setups',
  'Cast and beats',
  'Lamps and cloths',
  'Grip',
  'Power',
  'The set',
  'Kit',
  'Night',
  'Cautions',
  'Roof, sky and notes',
] as const;
export type MergeSection = (typeof SECTIONS)[number];

/** A difference in words. */
export interface DifferenceWords {
  readonly section: MergeSection;
  /** What it is about: `Lamp stand 2`. */
  readonly name: string;
  /** Who did something to it: `Changed by both.`; an empty text where that is not known and `changes` say all. */
  readonly who: string;
  readonly changes: readonly Change[];
}

const OF_LIST: Readonly<Record<ListName, MergeSection>> = {
  pieces: 'The set',
  cast: 'Cast and beats',
  gear: 'Grip',
  beats: 'Cast and beats',
  passes: 'Cast and beats',
  lines: 'Cast and beats',
  setups: 'Setups',
  tapes: 'The set',
  probes: 'Lamps and cloths',
  frameLines: 'Setups',
  areas: 'The set',
  bodies: 'Kit',
  lenses: 'Kit',
  heads: 'Kit',
  stands: 'Kit',
  nightSetups: 'Night',
  nightCast: 'Night',
  waysOut: 'Cautions',
  cautionNotes: 'Cautions',
};

const OF_SINGLE: Readonly<Record<SingleName, readonly [MergeSection, string]>> = {
  title: ['Roof, sky and notes', 'Title'],
  notes: ['Roof, sky and notes', 'Notes'],
  place: ['Roof, sky and notes', 'Place and date'],
  ground: ['The set', 'Ground'],
  safety: ['Roof, sky and notes', 'Safety margin'],
  dark: ['Lamps and cloths', 'What is lost in the dark'],
  sky: ['Roof, sky and notes', 'Sky'],
  power: ['Power', 'Power of the whole plan'],
  underlay: ['The set', 'Picture under the roof'],
  night: ['Night', 'The night'],
  nightOrder: ['Night', 'Order of the night'],
  cautions: ['Cautions', 'What is entered for cautions'],
};

const LIST_WORDS: Readonly<Record<ListName, string>> = {
  pieces: 'set pieces',
  cast: 'cast',
  gear: 'gear',
  beats: 'beats',
  passes: 'passes',
  lines: 'lines',
  setups: 'setups',
  tapes: 'tapes',
  probes: 'meters',
  frameLines: 'frame lines',
  areas: 'wet areas',
  bodies: 'bodies',
  lenses: 'lenses',
  heads: 'heads',
  stands: 'stand classes',
  nightSetups: 'setups of the night',
  nightCast: 'cast of the night',
  waysOut: 'ways out',
  cautionNotes: 'notes on cautions',
};

const LIGHT = new Set(['head', 'flag', 'frame', 'bounce', 'practical', 'bulb string']);
const POWER = new Set(['generator', 'distro', 'outlet', 'battery', 'appliance', 'cable']);

function sectionOf(entry: Entry): MergeSection {
  if (entry.list !== 'gear') return OF_LIST[entry.list];
  if (LIGHT.has(entry.value.kind)) return 'Lamps and cloths';
  return POWER.has(entry.value.kind) ? 'Power' : 'Grip';
}

/** What a person calls a record. */
export function entryName(entry: Entry, of: Compared): string {
  const side = of.mine.plan.byKey.has(entry.key) ? of.mine : of.theirs;
  switch (entry.list) {
    case 'setups': {
      const place = side.plan.lists.setups.findIndex(({ key }) => key === entry.key);
      return `Setup ${setupLetter(Math.max(place, 0))}, ${entry.value.label}`;
    }
    case 'beats':
      return /^beat\b/i.test(entry.value.label) ? entry.value.label : `Beat ${entry.value.label}`;
    case 'passes':
      return `Pass at ${nameIn(side, 'beats', entry.value.beat)}`;
    case 'lines':
      return `Line of ${entry.value.pair.map((id) => nameIn(side, 'cast', id)).join(' and ')}`;
    case 'tapes':
      return `Tape ${entry.value.id}`;
    case 'areas':
      return entry.value.label ?? `Wet area ${entry.value.id}`;
    case 'nightSetups':
      return `Night of ${nameIn(side, 'setups', entry.value.setup)}`;
    case 'nightCast':
      return `Times of ${nameIn(side, 'cast', entry.value.performer)}`;
    case 'cautionNotes':
      return `Note on ${entry.value.key.split('/')[0]}`;
    default:
      return entry.value.label;
  }
}

/** Who did what to a record that one of the two lacks. */
function presence({ mine, base, standing }: EntryDifference): string {
  if (standing === 'open') return mine ? 'Only in yours.' : 'Only in theirs.';
  if (!base) return mine ? 'You put it in.' : 'They put it in.';
  const taken = mine ? 'They took it out' : 'You took it out';
  if (standing !== 'conflict') return `${taken}.`;
  return mine ? `${taken}, you changed it.` : `${taken}, they changed it.`;
}

function whoWords(difference: Difference): string {
  if (difference.of === 'entry') {
    const { mine, theirs, base, standing } = difference;
    if (!mine || !theirs) return presence(difference);
    if (standing !== 'open' && !base) return 'Two things under one id.';
  }
  switch (difference.standing) {
    case 'open':
      return '';
    case 'mine':
      return 'Changed by you.';
    case 'theirs':
      return 'Changed by them.';
    case 'both':
      return 'Changed by both, in different fields.';
    case 'conflict':
      return 'Changed by both.';
  }
}

function orderChanges({ list, mine, theirs }: OrderDifference, of: Compared): readonly Change[] {
  const place = mine.findIndex((key, k) => key !== theirs[k]);
  const name = (key: string): string => {
    const entry = of.mine.plan.byKey.get(key);
    return entry ? entryName(entry, of) : key;
  };
  return [
    {
      what: `at place ${place + 1} of the ${LIST_WORDS[list]}`,
      mine: name(mine[place]),
      theirs: name(theirs[place]),
    },
  ];
}

/** A difference in words: its heading, its name, who changed it, and each field as both have it. */
export function differenceWords(difference: Difference, of: Compared): DifferenceWords {
  const who = whoWords(difference);
  if (difference.of === 'order') {
    const { list } = difference;
    return {
      section: OF_LIST[list],
      name: `Order of the ${LIST_WORDS[list]}`,
      who,
      changes: orderChanges(difference, of),
    };
  }
  if (difference.of === 'single') {
    const { name, mine, theirs } = difference;
    const [section, title] = OF_SINGLE[name];
    return {
      section,
      name: title,
      who,
      changes: changesOf(name, singleField(mine, theirs, name), mine, theirs, of),
    };
  }
  const { mine, theirs } = difference;
  const entry = mine ?? theirs;
  if (!entry) throw new Error(`differenceWords: nothing under ${difference.key}`);
  const changes = mine && theirs ? changesOf(entry.list, '', mine.value, theirs.value, of) : [];
  return { section: sectionOf(entry), name: entryName(entry, of), who, changes };
}

/** What is no record needs a word of its own. */
const singleField = (mine: unknown, theirs: unknown, name: string): string =>
  typeof (mine ?? theirs) === 'object' ? '' : fieldWords(name);

/** A change in words: `lens 50 mm, theirs 65 mm`. */
export const changeSentence = ({ what, mine, theirs }: Change): string => `${what} ${mine}, theirs ${theirs}`;

/** A difference as one line: `Lamp stand 2: height 2.40 m, theirs 2.70 m; place …`. */
export function differenceLine({ name, who, changes }: DifferenceWords): string {
  const said = changes.map(changeSentence).join('; ');
  return `${name}: ${[who, said === '' ? '' : `${said}.`].filter((words) => words !== '').join(' ')}`;
}

/** What a merge did beside the choices, as a sentence. */
export function noteSentence(note: MergeNote, of: Compared): string {
  if (note.kind === 'brought')
    return `${entryName(note.entry, of)} comes along: ${entryName(note.neededBy, of)} needs it.`;
  const { name } = differenceWords(note.difference, of);
  return `${name} stays as yours, since theirs does not go with the rest: ${note.why}`;
}
