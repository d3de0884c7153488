import { proxy, transfer, wrap } from 'comlink';
import type { ModelAnswer, ModelApi } from '../workers/modelApi';

/** A reading that goes on beside the page. */
export interface ModelReading {
  /** Null when it was stopped. */
  readonly answer: Promise<ModelAnswer | null>;
  readonly stop: () => void;
}

/**
 * Reads the bytes of a GLB file in a worker of its own, which ends with it: a damaged or huge file can take no more
 * than that worker down, and a stop is at once. The bytes are handed over.
 *
 * @param tell told the share that is done, 0..1
 */
export function readModelFile(bytes: ArrayBuffer, tell: (share: number) => void): ModelReading {
  const worker = new Worker(new URL('../workers/model.worker.ts', import.meta.url), { type: 'module' });
  let stop = (): void => {};
  const stopped = new Promise<null>((resolve) => {
    stop = () => resolve(null);
  });
  const broken = new Promise<ModelAnswer>((resolve) => {
    worker.addEventListener('error', () =>
      resolve({
        ok: false,
        sentence: 'The part of the page that reads models did not start. Load the page again.',
      }),
    );
  });
  const answer = wrap<ModelApi>(worker)
    .read(transfer(bytes, [bytes]), proxy(tell))
    .catch(
      (): ModelAnswer => ({ ok: false, sentence: 'The model could not be read: the browser gave up on it.' }),
    );
  return {
    answer: Promise.race([answer, broken, stopped]).finally(() => worker.terminate()),
    stop,
  };
}
