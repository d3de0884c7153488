import { wallTime } from '../../../core/night/times/nightClock';
import type { Night } from '../../../core/night/types';
import type { Plan } from '../../../core/plan/schema/plan';
import { setupLetter } from '../../../core/plan/setupLetter';
import { listed } from '../../../core/report/listed';
import type { SetupSheet } from '../../../desk/crew/setupSheet';

/** What goes on at a minute, and until when: `shoot, C, until 21:40`; before the call and after the wrap, that. */
export function nowWords(night: Night, minutes: number): string {
  const { clock, schedule, call } = night;
  if (minutes < call) return `call at ${wallTime(clock, call)}`;
  const found = schedule.stretches.find(({ from, until }) => from <= minutes && minutes < until);
  if (!found) return 'everyone is off';
  const whose = found.job === null ? '' : `, ${setupLetter(found.job)}`;
  return `${found.doing}${whose}, until ${wallTime(clock, found.until)}`;
}

/** When somebody is needed on the roof. */
export interface Needed {
  readonly performerId: string;
  readonly label: string;
  /** `needed 18:49 to 02:10, in A, C and H`. */
  readonly words: string;
}

/** From the first rehearsal that has them in frame to the end of the last shot, and what the plan says of their times. */
export function neededCast(
  plan: Plan,
  night: Night,
  sheets: ReadonlyMap<string, SetupSheet>,
): readonly Needed[] {
  const { clock, schedule, work } = night;
  return plan.cast.map(({ id, label }) => {
    const own = schedule.setups.filter(({ setupId }) =>
      sheets.get(setupId)?.cast.some(({ performerId }) => performerId === id),
    );
    const [first, last] = [own[0], own.at(-1)];
    const asked = plan.night?.cast?.find(({ performer }) => performer === id);
    const words = [
      ...(first && last
        ? [
            `needed ${wallTime(clock, first.shotFrom - work.jobs[first.job].rehearse)} to ${wallTime(clock, last.until)}`,
            `in ${listed(own.map(({ job }) => setupLetter(job)))}`,
          ]
        : ['in no frame']),
      ...(asked?.from === undefined ? [] : [`in from ${asked.from}`]),
      ...(asked?.until === undefined ? [] : [`out by ${asked.until}`]),
    ];
    return { performerId: id, label, words: words.join(', ') };
  });
}
