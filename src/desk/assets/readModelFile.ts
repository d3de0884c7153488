import { proxy, transfer } from 'comlink';
import { sentenceOf } from '../reasonOf';
import { AskedWorker, withoutLine } from '../workers/askedWorker';
import type { ModelAnswer, ModelApi } from '../workers/modelApi';
import { silenceOf } from '../workers/silence';

/** A reading that goes on beside the page. */
export interface ModelReading {
  /** Null when it was stopped. */
  readonly answer: Promise<ModelAnswer | null>;
  readonly stop: () => void;
}

/**
 * Reads a GLB file in a worker of its own, which ends with it: a damaged or huge file can take no more than that worker
 * down, and a stop is at once.
 *
 * @param tell told the share that is done, 0..1
 */
export function readModelFile(file: Blob, tell: (share: number) => void): ModelReading {
  const worker = new AskedWorker<ModelApi, Blob>(
    () => new Worker(new URL('../workers/model.worker.ts', import.meta.url), { type: 'module' }),
    withoutLine,
    { isThere: (api) => api.isThere(), tell: silenceOf('The reading of the model') },
  );
  let stop = (): void => {};
  const stopped = new Promise<null>((resolve) => {
    stop = () => resolve(null);
  });
  const answer = worker
    .about(file, async (api): Promise<ModelAnswer> => {
      const bytes = await file.arrayBuffer().catch(() => null);
      if (!bytes) return { ok: false, sentence: 'The file cannot be opened any more. Choose it once more.' };
      return api.read(transfer(bytes, [bytes]), proxy(tell));
    })
    .catch(
      (error: unknown): ModelAnswer => ({
        ok: false,
        sentence: sentenceOf('The model could not be read', error),
      }),
    );
  return {
    answer: Promise.race([answer, stopped]).finally(() => worker.end()),
    stop,
  };
}
