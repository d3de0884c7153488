import { Worker } from 'node:worker_threads';
import type { Plan } from '../core/plan/schema/plan';
import { assembleReport, type LitSetup } from '../core/report/report';
import type { Report } from '../core/report/types';
import type { HeldModels } from './holdModels';

/**
 * Reads the whole spans of setups in workers, at most one per core, each taking the next setup as soon as it is free.
 * @param places of the setups in the plan, in its order
 * @param tell called with how many setups are done, of how many
 */
export async function readSideBySide(
  plan: Plan,
  models: HeldModels,
  places: readonly number[],
  workerFile: string,
  cores: number,
  tell: (done: number, of: number) => void,
): Promise<Report> {
  const reports: LitSetup[] = [];
  let next = 0;
  let done = 0;
  const workers = Array.from({ length: Math.min(cores, places.length) }, () => {
    return new Worker(workerFile, { workerData: { plan, models } });
  });
  try {
    await Promise.all(
      workers.map(async (worker) => {
        while (next < places.length) {
          const index = next;
          next += 1;
          reports[index] = await answerOf(worker, places[index]);
          done += 1;
          tell(done, places.length);
        }
      }),
    );
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
  return assembleReport(plan, reports);
}

/** What a worker says of the setup at a place in the plan. */
function answerOf(worker: Worker, place: number): Promise<LitSetup> {
  return new Promise((resolve, reject) => {
    const onMessage = (report: LitSetup): void => {
      worker.off('error', onError);
      resolve(report);
    };
    const onError = (error: Error): void => {
      worker.off('message', onMessage);
      reject(error);
    };
    worker.once('message', onMessage);
    worker.once('error', onError);
    worker.postMessage(place);
  });
}
