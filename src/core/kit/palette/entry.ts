import type { Item, Section } from '../../plan/items';
import type { HeadClass, StandClass } from '../../plan/schema/kit';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';

/** How a thing is put down: one place; corners of a run; corners of a closed outline; two ends. */
export type How = 'spot' | 'run' | 'outline' | 'ends';

/** The headings under which the palette is laid out, in their order. */
export const PALETTE_GROUPS = [
  'Set pieces',
  'Cast',
  'Stands and grip',
  'Lamps',
  'Lamps without a stand',
  'Lamps of the place',
  'Power',
  'Camera',
] as const;
export type PaletteGroup = (typeof PALETTE_GROUPS)[number];

/** One thing that can be put on the roof. */
export interface PaletteEntry {
  readonly id: string;
  /** What it is called, and the stem that the names of new ones are numbered from. */
  readonly word: string;
  readonly section: Section;
  readonly kind: string;
  readonly group: PaletteGroup;
  readonly how: How;
  /** Name of its icon. */
  readonly icon: string;
  /** Other words that somebody may look for it by, lower case. */
  readonly also: readonly string[];
}

/** Where a new thing goes: at least one place; two or more give a heading to what stands. */
export interface Where {
  readonly spots: readonly Spot[];
  readonly closed?: boolean;
  readonly headingDegrees?: number;
}

/** What an entry makes its records from. */
export interface Making {
  readonly plan: Plan;
  /** The drawn places; never empty, no two in a row the same. */
  readonly spots: readonly Spot[];
  readonly closed: boolean;
  /** 0 where nobody said. */
  readonly headingDegrees: number;
  /** Whether somebody said. */
  readonly headed: boolean;
}

/** A record yet without its id and name. */
type Unnamed<Record> = Record extends unknown ? Omit<Record, 'id' | 'label'> : never;
type RecordOf<Part extends Section> = Extract<Item, { readonly section: Part }>['record'];

/** A new item: its record, its name's stem, and the classes that it needs. */
export type NewItem =
  | { readonly section: 'piece'; readonly record: Unnamed<RecordOf<'piece'>>; readonly stem: string }
  | { readonly section: 'cast'; readonly record: Unnamed<RecordOf<'cast'>>; readonly stem: string }
  | {
      readonly section: 'gear';
      readonly record: Unnamed<RecordOf<'gear'>>;
      readonly stem: string;
      readonly heads?: readonly HeadClass[];
      readonly stands?: readonly StandClass[];
      /** The stand that carries it: one that is there, or the item made before it. */
      readonly onto?: { readonly standId: string } | 'item before';
    };

/** What cutting into something gives: the plan with it done, and the id of what was cut. */
export interface Cut {
  readonly plan: Plan;
  readonly id: string;
}

/** An entry with the way that its items are made, or something that is there is cut; null where too little was drawn. */
export type MakingEntry = PaletteEntry &
  (
    | { readonly make: (making: Making) => readonly NewItem[] | null }
    | { readonly cut: (making: Making) => Cut | null }
  );
