import { darkFromSteps } from '../core/night/dusk/darkFrom';
import { nightOf } from '../core/night/nightOf';
import { packingOf } from '../core/night/packing/packingOf';
import { suggestSteps } from '../core/night/suggest/suggest';
import { wallTime } from '../core/night/times/nightClock';
import type { Night } from '../core/night/types';
import { hoursAhead } from '../core/night/words/clockNotes';
import { conflictSentence } from '../core/night/words/demandWords';
import type { Plan } from '../core/plan/schema/plan';
import { setupLetter } from '../core/plan/setupLetter';
import { withNames } from '../core/plan/withNames';
import { duration } from '../core/units/durations';
import { nightCalendar } from '../exchange/calendar/nightCalendar';
import { nightCsv } from '../exchange/night/nightCsv';
import { nightDocument } from '../exchange/night/nightDocument';
import { zoneClock } from '../exchange/zoneClock';
import { EXIT, type ExitCode } from './exitCodes';
import { holdModels } from './holdModels';
import { refusePlanItself, writeOut } from './outFile';
import { escapedForJson, plainText } from './plainText';
import { withProgress } from './progress';
import { readPlan } from './readPlan';
import { inkFor } from './table/ink';
import { nightTable } from './table/nightTable';
import { printLine, type Terminal, widthOf } from './terminal';
import type { Words } from './words';

/** An order that is suggested, its night, and a sentence about it. */
interface Suggested {
  readonly night: Night;
  readonly isExact: boolean;
  readonly conflict: string;
  readonly sentence: string;
}

/** Finds the order that costs least, and says how it differs from the plan's. */
function suggested(plan: Plan, before: Night, terminal: Terminal): Suggested {
  const { order, isExact, conflict } = withProgress(
    suggestSteps(before.work),
    terminal,
    (progress, { done }) => progress.say(`Looking for an order: ${Math.floor(100 * done)} %`),
  );
  const night = nightOf(plan, order);
  const letters = order.map(setupLetter).join(', ');
  const sooner = before.schedule.wrap - night.schedule.wrap;
  const best = isExact ? 'No order is better' : 'The best order that was found';
  const change =
    sooner === 0
      ? 'as soon as the order of the plan'
      : `${duration(Math.abs(sooner))} ${sooner > 0 ? 'sooner' : 'later'} than the order of the plan`;
  const sentence = `${best}: ${letters}. Everyone wraps at ${wallTime(night.clock, night.schedule.wrap)}, ${change}.`;
  return { night, isExact, conflict: conflictSentence(plan, before.clock, conflict), sentence };
}

/** Says on the error stream where the plan's clock is not that of its time zone; what is known of zones differs from machine to machine. */
function tellOfZone(plan: Plan, { clock }: Night, terminal: Terminal): void {
  const zone = plan.place.timeZone;
  const known = zoneClock(zone, clock.date);
  const say = (sentence: string): void => printLine(terminal.err, `standclear: ${plainText(sentence)}`);
  if (!known) {
    say(
      `The time zone ${JSON.stringify(zone)} is not known here, so the clock of the night is not held against it.`,
    );
    return;
  }
  if (known.utcOffsetHours !== clock.utcOffsetHours)
    say(
      `In ${zone} the clocks are ${hoursAhead(known.utcOffsetHours)} ahead of universal time that day, and the night takes ${hoursAhead(clock.utcOffsetHours)}. Set night.utcOffsetHours.`,
    );
  const change = known.clockChange;
  if (change && plan.night?.clockChange === undefined)
    say(
      `In ${zone} the clocks are changed that night, at ${change.time} to ${hoursAhead(change.utcOffsetHours)}, and the night does not know of it. Set night.clockChange.`,
    );
}

/** `standclear night`: the times of the night, a calendar of them, and the packing list. */
export async function nightCommand(words: Words, terminal: Terminal): Promise<ExitCode> {
  const file = words.valueOf('ics');
  if (file !== null) refusePlanItself('ics', file, words.planFile);
  const plan = withNames(readPlan(words.planFile));
  await holdModels(plan, words.planFile, terminal);
  const own = nightOf(plan);
  tellOfZone(plan, own, terminal);
  const better = words.has('suggest') && plan.setups.length > 0 ? suggested(plan, own, terminal) : null;
  const night = better?.night ?? own;
  const { length } = plan.setups;
  const darkFrom = words.has('dark')
    ? withProgress(darkFromSteps(plan), terminal, (progress, share) => progress.tell(share * length, length))
    : null;
  const packing = packingOf(plan, night);
  if (words.has('json')) {
    const document = nightDocument(plan, own, { packing, suggested: better, darkFrom });
    terminal.out.write(escapedForJson(`${JSON.stringify(document, null, 2)}\n`));
    return EXIT.fine;
  }
  if (words.has('csv')) {
    terminal.out.write(nightCsv(plan, night, packing));
    return EXIT.fine;
  }
  if (file !== null) {
    writeOut(file, new TextEncoder().encode(nightCalendar(plan, night)));
    printLine(terminal.out, plainText(night.notes[0].sentence));
    return EXIT.fine;
  }
  const ink = inkFor(terminal);
  if (better) {
    printLine(terminal.out, plainText(better.sentence));
    if (better.conflict !== '') printLine(terminal.out, ink.strong(plainText(better.conflict)));
    printLine(terminal.out, '');
  }
  for (const line of nightTable(plan, night, { packing, darkFrom }, widthOf(terminal.out), ink))
    printLine(terminal.out, line);
  return EXIT.fine;
}
