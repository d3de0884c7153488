import { existsSync } from 'node:fs';
import { spanOf } from '../core/optics/camera';
import type { Plan } from '../core/plan/schema/plan';
import type { Setup } from '../core/plan/schema/setup';
import { withNames } from '../core/plan/withNames';
import { reportOf } from '../core/report/report';
import type { Report } from '../core/report/types';
import type { HeldModels } from './holdModels';
import { progressOf } from './progress';
import { readSideBySide } from './sideBySide';
import type { Terminal } from './terminal';

/**
 * The report on some of the plan's setups, over their spans or at one instant.
 * Where at least two of them cover a span and there are two cores, workers read them side by side; the report is
 * the same to the byte.
 */
export async function readSetups(
  asWritten: Plan,
  models: HeldModels,
  setups: readonly Setup[],
  at: number | null,
  terminal: Terminal,
): Promise<Report> {
  const plan = withNames(asWritten);
  const { workerFile, cores } = terminal;
  const progress = progressOf(terminal);
  try {
    const moving = at === null ? setups.filter((setup) => coversMoreThanAnInstant(plan, setup)) : [];
    if (cores >= 2 && moving.length >= 2 && workerFile !== null && existsSync(workerFile)) {
      const places = setups.map((setup) => plan.setups.findIndex(({ id }) => id === setup.id));
      return await readSideBySide(plan, models, places, workerFile, cores, progress.tell);
    }
    const setupIds = setups.map((setup) => setup.id);
    return reportOf(plan, { setupIds, ...(at === null ? {} : { at }), onProgress: progress.tell });
  } finally {
    progress.end();
  }
}

function coversMoreThanAnInstant(plan: Plan, setup: Setup): boolean {
  const [from, to] = spanOf(plan, setup);
  return to > from;
}
