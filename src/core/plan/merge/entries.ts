import type { Beat, Line, Pass, Performer } from '../schema/cast';
import type { CautionsEntered } from '../schema/cautions';
import type { FrameLine, Tape } from '../schema/drawing';
import type { Gear } from '../schema/gear';
import type { WetArea } from '../schema/ground';
import type { Body, HeadClass, Lens, StandClass } from '../schema/kit';
import type { NightCast, NightSetup } from '../schema/night';
import type { Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import type { Setup } from '../schema/setup';
import type { ProbeRecord } from '../schema/sky';

type WayOut = NonNullable<CautionsEntered['waysOut']>[number];
type CautionNote = NonNullable<CautionsEntered['notes']>[number];

/** What each list of a plan holds. */
interface Listed {
  readonly pieces: Piece;
  readonly cast: Performer;
  readonly gear: Gear;
  readonly beats: Beat;
  readonly passes: Pass;
  readonly lines: Line;
  readonly setups: Setup;
  readonly tapes: Tape;
  readonly probes: ProbeRecord;
  readonly frameLines: FrameLine;
  readonly areas: WetArea;
  readonly bodies: Body;
  readonly lenses: Lens;
  readonly heads: HeadClass;
  readonly stands: StandClass;
  readonly nightSetups: NightSetup;
  readonly nightCast: NightCast;
  readonly waysOut: WayOut;
  readonly cautionNotes: CautionNote;
}

export type ListName = keyof Listed;

/** One record of a list, with the key that it is compared by. */
export type Entry = {
  [Name in ListName]: { readonly list: Name; readonly key: string; readonly value: Listed[Name] };
}[ListName];

/** What a plan has once, each compared as one thing. */
export const SINGLES = [
  'title',
  'notes',
  'place',
  'ground',
  'safety',
  'dark',
  'sky',
  'power',
  'underlay',
  'night',
  'nightOrder',
  'cautions',
] as const;
export type SingleName = (typeof SINGLES)[number];

/** A plan taken apart into what is compared and chosen by itself. */
export interface Apart {
  readonly singles: Readonly<Record<SingleName, unknown>>;
  readonly lists: Readonly<Record<ListName, readonly Entry[]>>;
  readonly byKey: ReadonlyMap<string, Entry>;
}

/** The key of a record. Items have their ids in common, whichever list they stand in. */
export const keyOf = (list: ListName, id: string): string =>
  list === 'pieces' || list === 'cast' || list === 'gear' ? `item/${id}` : `${list}/${id}`;

const filled = (record: object): object | undefined => (Object.keys(record).length > 0 ? record : undefined);

function singlesOf(plan: Plan): Readonly<Record<SingleName, unknown>> {
  const { areas: _areas, ...ground } = plan.ground;
  const { setups: _setups, cast: _cast, order, ...night } = plan.night ?? {};
  const { waysOut: _ways, notes: _notes, ...cautions } = plan.cautions ?? {};
  return {
    title: plan.title,
    notes: plan.notes,
    place: plan.place,
    ground,
    safety: plan.safety,
    dark: plan.dark,
    sky: plan.sky,
    power: plan.power,
    underlay: plan.underlay,
    night: filled(night),
    nightOrder: order && order.length > 0 ? order : undefined,
    cautions: filled(cautions),
  };
}

function listsOf(plan: Plan): Readonly<Record<ListName, readonly Entry[]>> {
  const entries = <Name extends ListName>(
    list: Name,
    values: readonly Listed[Name][] | undefined,
    idOf: (value: Listed[Name]) => string,
  ): readonly Entry[] =>
    (values ?? []).map((value) => ({ list, key: keyOf(list, idOf(value)), value }) as Entry);
  const id = (value: { readonly id: string }): string => value.id;
  const { kit } = plan;
  return {
    pieces: entries('pieces', plan.pieces, id),
    cast: entries('cast', plan.cast, id),
    gear: entries('gear', plan.gear, id),
    beats: entries('beats', plan.beats, id),
    passes: entries('passes', plan.passes, id),
    lines: entries('lines', plan.lines, id),
    setups: entries('setups', plan.setups, id),
    tapes: entries('tapes', plan.tapes, id),
    probes: entries('probes', plan.probes, id),
    frameLines: entries('frameLines', plan.frameLines, id),
    areas: entries('areas', plan.ground.areas, id),
    bodies: entries('bodies', kit.bodies, id),
    lenses: entries('lenses', kit.lenses, id),
    heads: entries('heads', kit.heads, id),
    stands: entries('stands', kit.stands, id),
    nightSetups: entries('nightSetups', plan.night?.setups, ({ setup }) => setup),
    nightCast: entries('nightCast', plan.night?.cast, ({ performer }) => performer),
    waysOut: entries('waysOut', plan.cautions?.waysOut, id),
    cautionNotes: entries('cautionNotes', plan.cautions?.notes, ({ key }) => key),
  };
}

/** Takes a plan apart. */
export function apart(plan: Plan): Apart {
  const lists = listsOf(plan);
  const all = Object.values(lists).flat();
  return { singles: singlesOf(plan), lists, byKey: new Map(all.map((entry) => [entry.key, entry])) };
}

/** All lists by name, in the order of the file. */
export const listNames = (lists: Apart['lists']): readonly ListName[] => Object.keys(lists) as ListName[];

/**
 * Puts a plan together again, for the schema to read. What is empty is left out, unless `emptiesOf` has it empty: then
 * the file stays as that one is.
 */
export function together(
  singles: Readonly<Record<SingleName, unknown>>,
  lists: Readonly<Record<ListName, readonly Entry[]>>,
  emptiesOf: Plan,
): unknown {
  const values = (list: ListName): readonly unknown[] => lists[list].map(({ value }) => value);
  const some = (list: ListName, before: readonly unknown[] | undefined): object => {
    const all = values(list);
    return all.length > 0 || before?.length === 0 ? { all } : {};
  };
  const named = (name: string, list: ListName, before: readonly unknown[] | undefined): object => {
    const found = some(list, before);
    return 'all' in found ? { [name]: found.all } : {};
  };
  const single = (name: string, value: unknown): object => (value === undefined ? {} : { [name]: value });
  const { night, cautions, ground } = emptiesOf;
  const ofNight = {
    ...(singles.night as object | undefined),
    ...named('setups', 'nightSetups', night?.setups),
    ...named('cast', 'nightCast', night?.cast),
    ...single('order', singles.nightOrder ?? (night?.order?.length === 0 ? [] : undefined)),
  };
  const ofCautions = {
    ...(singles.cautions as object | undefined),
    ...named('waysOut', 'waysOut', cautions?.waysOut),
    ...named('notes', 'cautionNotes', cautions?.notes),
  };
  return {
    standclear: emptiesOf.standclear,
    title: singles.title,
    notes: singles.notes,
    place: singles.place,
    ground: { ...(singles.ground as object), ...named('areas', 'areas', ground.areas) },
    safety: singles.safety,
    ...single('dark', singles.dark),
    kit: {
      bodies: values('bodies'),
      lenses: values('lenses'),
      heads: values('heads'),
      stands: values('stands'),
    },
    pieces: values('pieces'),
    beats: values('beats'),
    cast: values('cast'),
    ...named('passes', 'passes', emptiesOf.passes),
    ...named('lines', 'lines', emptiesOf.lines),
    gear: values('gear'),
    setups: values('setups'),
    ...named('tapes', 'tapes', emptiesOf.tapes),
    ...named('probes', 'probes', emptiesOf.probes),
    ...single('sky', singles.sky),
    ...single('power', singles.power),
    ...single('night', filled(ofNight) ?? (night ? {} : undefined)),
    ...single('underlay', singles.underlay),
    ...single('cautions', filled(ofCautions) ?? (cautions ? {} : undefined)),
    ...named('frameLines', 'frameLines', emptiesOf.frameLines),
  };
}
