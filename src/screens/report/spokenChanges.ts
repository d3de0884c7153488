import type { NightReport, SetupReport } from '../../core/report/types';
import { findingChanges } from './findingChanges';
import { outcomeOf } from './outcome';

/** What is to be said of an edit: what became of the setup that is looked at, and what came of it for the others. */
export interface SpokenChanges {
  /** Of the setup, in words; null where every finding stayed what it was. */
  readonly own: string | null;
  /** Of the others, one sentence; null where nothing came into their way or left it. */
  readonly others: string | null;
}

/** What a person who hears the page is told of an edit, each of it once. */
export function spokenChanges(
  [before, after]: readonly [SetupReport, SetupReport],
  [nightBefore, nightAfter]: readonly [NightReport | null, NightReport],
  letterOf: (setupId: string) => string,
): SpokenChanges {
  const outcome = nightBefore && outcomeOf(nightBefore, nightAfter, letterOf, after.id);
  return { own: findingChanges(before, after), others: outcome?.sentence ?? null };
}
