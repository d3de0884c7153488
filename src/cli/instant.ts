import { spanOf } from '../core/optics/camera';
import type { Plan } from '../core/plan/schema/plan';
import type { Setup } from '../core/plan/schema/setup';
import { setupLetter } from '../core/plan/setupLetter';
import { parseSeconds } from '../core/units/seconds';
import { CommandFault } from './fault';
import type { Words } from './words';

/** The instant that was typed behind --at. @throws CommandFault if it is no number of seconds */
export function readInstant(text: string): number {
  const read = parseSeconds(text);
  if (!read.ok) throw new CommandFault(`--at: ${read.faults[0].sentence}`);
  return read.value;
}

const shownSpan = (plan: Plan, setup: Setup): string => spanOf(plan, setup).join(' to ');

/** Names of setups as they were typed: behind `--setup`, which may come again, and in a row behind `--setups`. */
export const typedSetups = (words: Words): readonly string[] => [
  ...words.valuesOf('setup'),
  ...words.valuesOf('setups').flatMap((row) => row.split(',').map((name) => name.trim())),
];

/**
 * The setups of those ids or letters, in the plan's order; all of them where none is named. An id goes before a letter.
 * @throws CommandFault naming the known ones
 */
export function chosenSetups(plan: Plan, names: readonly string[]): readonly Setup[] {
  if (names.length === 0) return plan.setups;
  const known = plan.setups.map((setup, place) => ({ setup, letter: setupLetter(place) }));
  const chosen = new Set(
    names.map((name) => {
      const found =
        known.find(({ setup }) => setup.id === name) ??
        known.find(({ letter }) => letter === name.toUpperCase());
      if (found) return found.setup.id;
      const all = known.map(({ letter, setup }) => `${letter} (${setup.id})`).join(', ');
      throw new CommandFault(
        `There is no setup ${JSON.stringify(name)}: this plan has ${all === '' ? 'no setups' : all}.`,
      );
    }),
  );
  return plan.setups.filter(({ id }) => chosen.has(id));
}

/**
 * Sorts setups by whether they cover an instant.
 * @param named whether the setups were asked for by name; then each has to cover it
 * @throws CommandFault that says the span where it lies outside
 */
export function coveringSetups(
  plan: Plan,
  setups: readonly Setup[],
  seconds: number,
  named: boolean,
): { readonly covering: readonly Setup[]; readonly others: readonly Setup[] } {
  const covers = (setup: Setup): boolean => {
    const [from, to] = spanOf(plan, setup);
    return seconds >= from && seconds <= to;
  };
  const covering = setups.filter(covers);
  const others = setups.filter((setup) => !covers(setup));
  if (others.length > 0 && (named || covering.length === 0)) {
    const spans = others.map((setup) => `setup ${setup.id} covers ${shownSpan(plan, setup)} s`);
    throw new CommandFault(`--at ${seconds} lies outside: ${spans.join(', ')}.`);
  }
  return { covering, others };
}

/** Refuses an instant outside the action's clock, from 0 to the last beat. @throws CommandFault that says the span */
export function checkOnTheClock(plan: Plan, seconds: number): void {
  const last = plan.beats.reduce((latest, beat) => Math.max(latest, beat.atSeconds), 0);
  if (seconds < 0 || seconds > last) {
    throw new CommandFault(`--at ${seconds} lies outside: the action runs from 0 to ${last} s.`);
  }
}
