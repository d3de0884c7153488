import type { Caution } from '../../core/cautions/types';
import type { Plan } from '../../core/plan/schema/plan';
import type { PowerReport } from '../../core/report/power/types';
import type { SetupReport } from '../../core/report/types';
import type { NightAnswer } from '../night/nightApi';
import type { Hearing } from '../workers/hearing';
import type { SetupSheet } from './setupSheet';

/** A caution with its sources in full, in words: the page has no bibliography along. */
export interface CautionInFull extends Caution {
  readonly sourceLines: readonly string[];
}

/** What the crew sheet's worker answers. `hold` comes first; the questions are about the plan held. */
export interface CrewApi extends Hearing {
  readonly hold: (plan: Plan) => void;
  readonly night: () => NightAnswer;
  /** What a crew has to know of each setup, as the plan has them. */
  readonly sheets: () => readonly SetupSheet[];
  /** A setup at the first instant of its span; null for an id that the plan lacks. */
  readonly still: (setupId: string) => SetupReport | null;
  /** A setup over its whole move, with what is lost in the dark; null for an id that the plan lacks. */
  readonly whole: (setupId: string) => SetupReport | null;
  readonly power: () => PowerReport;
  readonly cautions: () => readonly CautionInFull[];
}
