import { spanOf } from '../optics/camera';
import type { Plan } from '../plan/schema/plan';
import { continuityEntries, coverageReport } from './continuity/continuityEntries';
import { noticesOf } from './notices';
import { setupReportSteps } from './setupReport';
import type { Report, SetupReport } from './types';

/** What a report is to be about; all of it where nothing is said. */
export interface ReportOptions {
  /** Only these setups, in the plan's order; all by default. */
  readonly setupIds?: readonly string[];
  /** One instant of the action's clock instead of whole spans; setups that do not cover it are left out. */
  readonly at?: number;
  /** Called as the work goes on: setups done (with a fraction for the one in hand), of how many. */
  readonly onProgress?: (done: number, of: number) => void;
}

/** The setups that a report of these options is about. */
function setupsAsked(plan: Plan, { setupIds, at }: ReportOptions): Plan['setups'] {
  return plan.setups.filter((setup) => {
    if (setupIds && !setupIds.includes(setup.id)) return false;
    if (at === undefined) return true;
    const [from, to] = spanOf(plan, setup);
    return at >= from && at <= to;
  });
}

/** Puts setup reports together; the page and the command line share it with the one-go form below. */
export function assembleReport(plan: Plan, setups: readonly SetupReport[]): Report {
  const continuity = continuityEntries(plan);
  return {
    standclearReport: 1,
    title: plan.title,
    setups: setups.map((setup) => ({ ...setup, continuity: continuity.get(setup.id) ?? [] })),
    coverage: coverageReport(plan),
    notices: noticesOf(plan),
  };
}

/** From a plan to its report: the whole night, some setups, or one instant. Pure: the same plan, the same bytes. */
export function reportOf(plan: Plan, options: ReportOptions = {}): Report {
  const setups = setupsAsked(plan, options);
  const asked = options.at === undefined ? ('span' as const) : { at: options.at };
  const reports: SetupReport[] = [];
  for (const setup of setups) {
    const steps = setupReportSteps(plan, setup, asked);
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) {
        reports.push(step.value);
        break;
      }
      options.onProgress?.(reports.length + step.value, setups.length);
    }
  }
  options.onProgress?.(setups.length, setups.length);
  return assembleReport(plan, reports);
}
