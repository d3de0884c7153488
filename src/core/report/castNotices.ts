import { carriedAt, handOversOf } from '../form/figure/carrying';
import { whereabouts } from '../form/figure/whereabouts';
import { removeCheat } from '../plan/edits/removeCheat';
import { named } from '../plan/named';
import { played } from '../plan/played';
import type { Pass, Stance } from '../plan/schema/cast';
import type { Plan } from '../plan/schema/plan';
import { formatSeconds } from '../units/seconds';
import { hypot } from '../units/steadyMath';
import { type BlockingFault, beatName, fault, markName, metres, whereOf } from './blockingFaults';
import { listed } from './listed';
import type { Notice } from './types';
import { markFaults, unstandable, walkFaults } from './walkFaults';

/** Two who stand nearer than this are in one another, metres. Source: common practice, no source */
const BODIES_METRES = 0.3;
/** Farther apart than this two do not reach each other's hands, metres. Source: common practice, no source */
const HANDS_METRES = 1.6;
/** The action is looked through this often for two on one spot, and at most at so many instants. */
const LOOK_SECONDS = 0.5;
const MOST_LOOKS = 200;
/** Higher or lower than this one is on another level, metres. */
const LEVEL_METRES = 1;
const HAIR_SECONDS = 1e-6;

/** Who sits, crouches or leans may be close to somebody, on them or against them. */
const CLOSE: ReadonlySet<Stance> = new Set(['sit', 'crouch', 'lean']);

/** The instants at which it is looked where everybody is: all beats, and evenly in between. */
function instantsOf({ beats }: Plan): readonly number[] {
  const moments = beats.map(({ atSeconds }) => atSeconds);
  if (moments.length === 0) return [];
  const [first, last] = [Math.min(...moments), Math.max(...moments)];
  const count = Math.min(MOST_LOOKS, Math.ceil((last - first) / LOOK_SECONDS));
  const evenly = Array.from({ length: count }, (_, k) => first + ((last - first) * k) / count);
  return [...new Set([...moments, ...evenly])].sort((a, b) => a - b);
}

/** Two performers on one spot at one time, each two once. */
function spotFaults(plan: Plan): BlockingFault[] {
  const present = plan.cast.filter(({ marks }) => marks.length > 0);
  if (present.length < 2) return [];
  const said = new Set<string>();
  const faults: BlockingFault[] = [];
  for (const at of instantsOf(plan)) {
    const there = present.map((performer) => ({ performer, now: whereabouts(performer, plan, at) }));
    there.forEach(({ performer, now }, k) => {
      for (const other of there.slice(k + 1)) {
        const key = `${performer.id} ${other.performer.id}`;
        if (!now || !other.now || said.has(key)) continue;
        if (CLOSE.has(now.stance) || CLOSE.has(other.now.stance)) continue;
        const apart = hypot(now.at[0] - other.now.at[0], now.at[2] - other.now.at[2]);
        if (apart >= BODIES_METRES || Math.abs(now.at[1] - other.now.at[1]) > LEVEL_METRES) continue;
        said.add(key);
        faults.push(
          fault({
            about: 'spot',
            where: whereOf(performer),
            sentence: `${named(performer.label)} and ${named(other.performer.label)} are ${metres(apart)} apart at ${formatSeconds(at)}, one in the other. Move one: bodies need ${metres(BODIES_METRES)}.`,
            performerId: performer.id,
          }),
        );
      }
    });
  }
  return faults;
}

/** Beats at one moment, and setups that cover no time. */
function timeFaults(plan: Plan): BlockingFault[] {
  const byMoment = new Map<number, string[]>();
  for (const { atSeconds, label } of plan.beats)
    byMoment.set(atSeconds, [...(byMoment.get(atSeconds) ?? []), label]);
  const equal = [...byMoment].flatMap(([atSeconds, labels]): BlockingFault[] =>
    labels.length < 2
      ? []
      : [
          fault({
            about: 'beats',
            where: 'Beats',
            sentence: `${listed(labels.map(named))} are at one moment, ${formatSeconds(atSeconds)}. Move one, or take it out.`,
          }),
        ],
  );
  const moments = new Map(plan.beats.map(({ id, atSeconds }) => [id, atSeconds]));
  const empty = plan.setups
    .filter(({ span }) => span.from !== span.to && moments.get(span.from) === moments.get(span.to))
    .map(({ id, label, span }) =>
      fault({
        about: 'span',
        where: `Setup ${label}`,
        sentence: `${named(label)} covers no time: ${beatName(plan, span.from)} and ${beatName(plan, span.to)} are at one moment. Move a beat, or take another.`,
        setupId: id,
      }),
    );
  return [...equal, ...empty];
}

function lineFaults(plan: Plan): BlockingFault[] {
  return (plan.lines ?? []).flatMap(({ pair: [one, other] }): BlockingFault[] => {
    const [first, second] = [one, other].map((id) => plan.cast.find((performer) => performer.id === id));
    if (!first || !second) return [];
    const about = { about: 'line', where: 'Lines' } as const;
    if (first === second)
      return [
        fault({
          ...about,
          sentence: `A line names ${named(first.label)} twice. It runs between two people.`,
        }),
      ];
    return [first, second]
      .filter(({ marks }) => marks.length === 0)
      .map(({ id, label }) =>
        fault({
          ...about,
          sentence: `The line of ${named(first.label)} and ${named(second.label)} has no place: ${named(label)} has no mark. Put one on the deck.`,
          performerId: id,
        }),
      );
  });
}

function passFault(plan: Plan, pass: Pass, done: ReadonlySet<string>): BlockingFault | null {
  const [from, to] = [pass.from, pass.to].map((id) => plan.cast.find((performer) => performer.id === id));
  const at = plan.beats.find(({ id }) => id === pass.beat)?.atSeconds;
  if (!from || !to || at === undefined) return null;
  const about = { about: 'pass', where: whereOf(from), performerId: from.id } as const;
  const when = beatName(plan, pass.beat);
  if (from === to)
    return fault({
      ...about,
      sentence: `${named(from.label)} hands something to themselves at ${when}. Choose who takes it.`,
    });
  if (!done.has(pass.id)) {
    const sentence =
      carriedAt(plan, from.id, at - HAIR_SECONDS) === null
        ? `${named(from.label)} has nothing in hand to give ${named(to.label)} at ${when}. Give them a prop, or take the pass out.`
        : `${named(to.label)} has their hands full at ${when} and cannot take what ${named(from.label)} gives. Let them pass theirs on first.`;
    return fault({ ...about, sentence });
  }
  const [giver, taker] = [from, to].map((performer) => whereabouts(performer, plan, at));
  if (!giver || !taker) return null;
  const apart = hypot(giver.at[0] - taker.at[0], giver.at[2] - taker.at[2]);
  if (apart <= HANDS_METRES) return null;
  return fault({
    ...about,
    sentence: `${named(from.label)} and ${named(to.label)} are ${metres(apart)} apart at ${when}, too far to hand anything over. Hands meet within ${metres(HANDS_METRES)}.`,
  });
}

/** Cheated marks where nobody can stand. */
const cheatFaults = (plan: Plan): BlockingFault[] =>
  plan.setups.flatMap((setup) => {
    if (!setup.cheats) return [];
    const shot = played(plan, setup);
    return setup.cheats.flatMap(({ performer: who, mark: which }): BlockingFault[] => {
      const performer = shot.cast.find(({ id }) => id === who);
      const mark = performer?.marks.find(({ id }) => id === which);
      const why = mark ? unstandable(shot, mark) : null;
      if (!performer || !mark || why === null) return [];
      return [
        fault({
          about: 'cheat',
          where: `Setup ${setup.label}`,
          sentence: `${markName(plan, performer, mark)}, as cheated for ${named(setup.label)}, ${why}`,
          performerId: who,
          markId: which,
          setupId: setup.id,
          mend: {
            name: 'take back a cheat',
            edit: (before) => removeCheat(before, { setupId: setup.id, performerId: who, markId: which }),
          },
        }),
      ];
    });
  });

/**
 * What in the blocking cannot be played as it is written, or not safely: two on one spot, marks and walks in or over
 * what is there, walks that are too fast, beats, lines, passes and cheats that make no sense, open edges. Each in one
 * sentence, with the edit that mends it where there is one.
 */
export function blockingFaults(plan: Plan): readonly BlockingFault[] {
  const known = kept.get(plan);
  if (known) return known;
  const faults = faultsOf(plan);
  kept.set(plan, faults);
  return faults;
}

const kept = new WeakMap<Plan, readonly BlockingFault[]>();

function faultsOf(plan: Plan): readonly BlockingFault[] {
  const done = new Set(handOversOf(plan).map(({ passId }) => passId));
  return [
    ...timeFaults(plan),
    ...plan.cast.flatMap((performer) => [...markFaults(plan, performer), ...walkFaults(plan, performer)]),
    ...spotFaults(plan),
    ...lineFaults(plan),
    ...(plan.passes ?? []).map((pass) => passFault(plan, pass, done)).filter((each) => each !== null),
    ...cheatFaults(plan),
  ];
}

/** The same as notices of the report. */
export const castNotices = (plan: Plan): Notice[] =>
  blockingFaults(plan).map(({ where, sentence }) => ({ where, sentence }));
