import type { DirtyAsked, MadeDirty } from '../../core/continuity/makeDirty';
import type { Plan } from '../../core/plan/schema/plan';
import { ReportWorker } from '../reportWorker';
import { silenceOf } from '../workers/silence';

let worker: ReportWorker | null = null;
let line: Promise<unknown> = Promise.resolve();

/**
 * Looks for the camera from which somebody near takes a share of a setup's frame, in a worker of its own that is started
 * when it is first asked. One search at a time: each waits for the one before. Null for none, and once `signal` ends it.
 */
export function askDirty(
  plan: Plan,
  setupId: string,
  asked: DirtyAsked,
  how: { readonly tell: (share: number) => void; readonly signal: AbortSignal },
): Promise<MadeDirty | null> {
  const { tell, signal } = how;
  const search = (): Promise<MadeDirty | null> =>
    new Promise((resolve, reject) => {
      if (signal.aborted) {
        resolve(null);
        return;
      }
      worker ??= new ReportWorker(silenceOf('The look for a camera'));
      const at = worker;
      signal.addEventListener('abort', () => at.giveUp(), { once: true });
      at.makeDirty(plan, setupId, asked, tell).then(resolve, reject);
    });
  const next = line.then(search);
  line = next.catch(() => undefined);
  return next;
}
