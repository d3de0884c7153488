import type { Looks, Mark, Performer, Towards } from '../schema/cast';
import type { Gear } from '../schema/gear';
import type { FocusOn, Setup } from '../schema/setup';
import type { Shown } from '../schema/texts';
import { type Entry, keyOf, type ListName } from './entries';

/**
 * What becomes of a reference: its new id, or null where it leads nowhere. `needs` references cannot be left out of
 * their record; the others can, and are where the answer is null.
 */
export type Visit = (key: string, id: string, needs: boolean) => string | null;

type Of = (list: ListName, id: string) => string;
type Maybe = (list: ListName, id: string) => string | null;

interface Ways {
  readonly needed: Of;
  readonly dropped: Maybe;
  readonly visit: Visit;
}

/** The same record with a field as it is now, left out where it is gone. */
function withField<Value extends object, Field extends keyof Value>(
  value: Value,
  field: Field,
  now: Value[Field] | undefined,
): Value {
  if (now === value[field]) return value;
  const { [field]: _before, ...rest } = value;
  return (now === undefined ? rest : { ...rest, [field]: now }) as Value;
}

function accepted<Value extends { readonly shows?: Shown[] | undefined }>(value: Value, ways: Ways): Value {
  if (!value.shows) return value;
  const shows = value.shows.flatMap((shown) => {
    const setup = ways.dropped('setups', shown.setup);
    return setup === null ? [] : [{ ...shown, setup }];
  });
  return { ...withField(value, 'shows', shows.length > 0 ? shows : undefined) };
}

function gearOf(before: Gear, ways: Ways): Gear {
  const { needed, dropped } = ways;
  let gear: Gear = accepted(before, ways);
  if ('head' in gear) gear = { ...gear, head: needed('heads', gear.head) };
  if (gear.kind === 'stand') gear = { ...gear, stand: needed('stands', gear.stand) };
  if ('place' in gear && 'on' in gear.place) gear = { ...gear, place: { on: needed('gear', gear.place.on) } };
  if ('cues' in gear && gear.cues) {
    const cues = gear.cues.map((cue) =>
      cue.beat === undefined ? cue : { ...cue, beat: needed('beats', cue.beat) },
    );
    gear = { ...gear, cues };
  }
  if (gear.kind === 'dolly' && gear.rides !== undefined)
    gear = withField(gear, 'rides', dropped('setups', gear.rides) ?? undefined);
  if (gear.kind === 'cable' && gear.plugs) {
    const end = (id: string | undefined): string | undefined =>
      id === undefined ? undefined : (dropped('gear', id) ?? undefined);
    const [from, to] = [end(gear.plugs.from), end(gear.plugs.to)];
    const was = gear.plugs;
    const lost = (was.from !== undefined && from === undefined) || (was.to !== undefined && to === undefined);
    const plugs = { ...(from !== undefined && { from }), ...(to !== undefined && { to }) };
    gear = withField(gear, 'plugs', lost && Object.keys(plugs).length === 0 ? undefined : plugs);
  }
  return gear;
}

const TURNINGS = ['faces', 'looks', 'facesOnTheWay', 'looksOnTheWay'] as const;

const turned = <To extends Towards | Looks>(to: To, { needed }: Ways): To =>
  'who' in to ? { ...to, who: needed('cast', to.who) } : to;

function performerOf(before: Performer, ways: Ways): Performer {
  const marks = before.marks.map((mark) => {
    let now: Mark = { ...mark, beat: ways.needed('beats', mark.beat) };
    for (const field of TURNINGS) {
      const to = mark[field];
      if (to) now = { ...now, [field]: turned(to, ways) };
    }
    return now;
  });
  return { ...accepted(before, ways), marks };
}

function setupOf(before: Setup, ways: Ways): Setup {
  const { needed, dropped, visit } = ways;
  const on = (focus: FocusOn): FocusOn =>
    'follow' in focus ? { follow: needed('cast', focus.follow) } : focus;
  const timed = <Moment extends { readonly beat?: string | undefined }>(moment: Moment): Moment =>
    moment.beat === undefined ? moment : { ...moment, beat: needed('beats', moment.beat) };
  const { focus, operator, track, cheats } = before;
  const kept = cheats?.flatMap((cheat) => {
    const performer = dropped('cast', cheat.performer);
    const mark = performer === null ? null : visit(`mark/${performer}/${cheat.mark}`, cheat.mark, false);
    return performer === null || mark === null ? [] : [{ ...cheat, performer, mark }];
  });
  const setup: Setup = {
    ...before,
    body: needed('bodies', before.body),
    lens: needed('lenses', before.lens),
    focus:
      'racks' in focus
        ? { racks: focus.racks.map((rack) => ({ ...timed(rack), on: on(rack.on) })) }
        : on(focus),
    span: { from: needed('beats', before.span.from), to: needed('beats', before.span.to) },
    move: { ...before.move, keys: before.move.keys.map(timed) },
    ...(operator && { operator: { ...operator, hold: needed('cast', operator.hold) } }),
    ...(track !== undefined && { track: needed('gear', track) }),
  };
  if (!kept) return setup;
  const isEmptied = kept.length === 0 && before.cheats?.length !== 0;
  return withField(setup, 'cheats', isEmptied ? undefined : kept);
}

/**
 * A record with all that it refers to visited; null where it is about nothing any more. References that a record cannot
 * be without keep their id where the answer is null: who asks has to bring along what they lead to.
 */
export function withReferences(entry: Entry, visit: Visit): Entry | null {
  const needed: Of = (list, id) => visit(keyOf(list, id), id, true) ?? id;
  const dropped: Maybe = (list, id) => visit(keyOf(list, id), id, false);
  const ways: Ways = { needed, dropped, visit };
  switch (entry.list) {
    case 'pieces':
      return { ...entry, value: accepted(entry.value, ways) };
    case 'cast':
      return { ...entry, value: performerOf(entry.value, ways) };
    case 'gear':
      return { ...entry, value: gearOf(entry.value, ways) };
    case 'setups':
      return { ...entry, value: setupOf(entry.value, ways) };
    case 'passes': {
      const { beat, from, to } = entry.value;
      const value = {
        ...entry.value,
        beat: needed('beats', beat),
        from: needed('cast', from),
        to: needed('cast', to),
      };
      return { ...entry, value };
    }
    case 'lines': {
      const { pair, establishedBy } = entry.value;
      const value = {
        ...entry.value,
        pair: [needed('cast', pair[0]), needed('cast', pair[1])] as [string, string],
      };
      if (establishedBy === undefined) return { ...entry, value };
      return {
        ...entry,
        value: withField(value, 'establishedBy', dropped('setups', establishedBy) ?? undefined),
      };
    }
    case 'nightSetups': {
      const setup = dropped('setups', entry.value.setup);
      if (setup === null) return null;
      const cast = entry.value.cast?.flatMap((id) => dropped('cast', id) ?? []);
      const value = withField({ ...entry.value, setup }, 'cast', cast);
      return { ...entry, key: keyOf('nightSetups', setup), value };
    }
    case 'nightCast': {
      const performer = dropped('cast', entry.value.performer);
      if (performer === null) return null;
      return { ...entry, key: keyOf('nightCast', performer), value: { ...entry.value, performer } };
    }
    default:
      return entry;
  }
}
