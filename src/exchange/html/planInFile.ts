import type { Plan } from '../../core/plan/schema/plan';
import { serialisePlan } from '../../core/plan/serialise';
import { Markup } from './markup';

/** What every crew sheet as one file begins with; other HTML is none. */
export const CREW_FILE_MARK = '<!doctype html><!-- standclear crew sheet 1 -->';

/** Where the plan lies in it: as data, which no browser runs. */
const OPENS = '<script type="application/json" id="plan">';
const CLOSES = '</script>';

/** The plan as data inside of a file: no letter of it can end its element. */
export const planMarkup = (plan: Plan): Markup =>
  new Markup(
    `${OPENS}${JSON.stringify(JSON.parse(serialisePlan(plan))).replaceAll('<', '\\u003c')}${CLOSES}`,
  );

/** The text of the plan in a crew sheet that is one file; null where it is none. What it says is not checked. */
export function planTextIn(file: string): string | null {
  if (!file.startsWith(CREW_FILE_MARK)) return null;
  const from = file.indexOf(OPENS);
  if (from < 0) return null;
  const until = file.indexOf(CLOSES, from);
  return until < 0 ? null : file.slice(from + OPENS.length, until);
}
