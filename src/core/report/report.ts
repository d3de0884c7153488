import { cautionsOf } from '../cautions/cautions';
import { spanOf } from '../optics/camera';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { inOneGo } from '../units/steps';
import { continuityEntries, coverageReport } from './continuity/continuityEntries';
import { darkened } from './light/darkened';
import { lightSteps } from './light/lightOf';
import type { SetupLight } from './light/types';
import { noticesOf } from './notices';
import { powerReport } from './power/powerReport';
import { type Asked, setupReportSteps } from './setupReport';
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

/** What one setup sees, and its light. */
export interface LitSetup {
  readonly seen: SetupReport;
  readonly light: SetupLight;
}

/** The share of a setup's work that counts as done once all is seen and only its light is left: an estimate. */
const SEEN_SHARE = 0.9;

/** Reads one setup, over its span or at an instant: what it sees, then how that is lit. Yields the done share, 0..1. */
export function* litSetupSteps(
  plan: Plan,
  setup: Setup,
  asked: Asked = 'span',
): Generator<number, LitSetup, void> {
  const seeing = setupReportSteps(plan, setup, asked);
  let seen = seeing.next();
  for (; !seen.done; seen = seeing.next()) yield SEEN_SHARE * seen.value;
  const lighting = lightSteps(plan, setup, seen.value);
  let light = lighting.next();
  for (; !light.done; light = lighting.next()) yield SEEN_SHARE + (1 - SEEN_SHARE) * light.value;
  return { seen: seen.value, light: light.value };
}

/** The same in one go. */
export function litSetup(plan: Plan, setup: Setup, asked: Asked = 'span'): LitSetup {
  return inOneGo(litSetupSteps(plan, setup, asked));
}

/** Puts setup reports together; the command line, which reads setups side by side, shares it with the form below. */
export function assembleReport(plan: Plan, setups: readonly LitSetup[]): Report {
  const continuity = continuityEntries(plan);
  return {
    standclearReport: 1,
    title: plan.title,
    setups: setups.map(({ seen, light }) => ({
      ...darkened(plan, seen, light),
      light,
      continuity: continuity.get(seen.id) ?? [],
    })),
    coverage: coverageReport(plan),
    cautions: cautionsOf(plan),
    power: powerReport(plan),
    notices: noticesOf(plan),
  };
}

/** From a plan to its report: the whole night, some setups, or one instant. Pure: the same plan, the same bytes. */
export function reportOf(plan: Plan, options: ReportOptions = {}): Report {
  const setups = setupsAsked(plan, options);
  const asked = options.at === undefined ? ('span' as const) : { at: options.at };
  const reports: LitSetup[] = [];
  for (const setup of setups) {
    const steps = litSetupSteps(plan, setup, asked);
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
