import { spanOf } from '../core/optics/camera';
import type { Plan } from '../core/plan/schema/plan';
import type { Setup } from '../core/plan/schema/setup';
import { parseSeconds } from '../core/units/seconds';
import { CommandFault } from './fault';

/** The instant that was typed behind --at. @throws CommandFault if it is no number of seconds */
export function readInstant(text: string): number {
  const read = parseSeconds(text);
  if (!read.ok) throw new CommandFault(`--at: ${read.faults[0].sentence}`);
  return read.value;
}

const shownSpan = (plan: Plan, setup: Setup): string => spanOf(plan, setup).join(' to ');

/** The setups of those ids, in the plan's order; all of them if there are no ids. @throws CommandFault naming the known ids */
export function chosenSetups(plan: Plan, ids: readonly string[]): readonly Setup[] {
  if (ids.length === 0) return plan.setups;
  for (const id of ids) {
    if (plan.setups.some((setup) => setup.id === id)) continue;
    const known = plan.setups.map((setup) => setup.id).join(', ');
    throw new CommandFault(
      `There is no setup ${JSON.stringify(id)}: ${known === '' ? 'this plan has no setups' : `this plan has ${known}`}.`,
    );
  }
  return plan.setups.filter((setup) => ids.includes(setup.id));
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
