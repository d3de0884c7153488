import { fileSave } from 'browser-fs-access';
import { createStore } from 'zustand/vanilla';
import type { Plan } from '../../core/plan/schema/plan';
import { serialisePlan } from '../../core/plan/serialise';
import { keptFile } from '../assets/assetShelf';
import { isAbort } from '../assets/isAbort';
import { fileWord } from '../fileWord';
import { liveStore } from '../liveStore';
import { planStore } from '../planStore';
import { sentenceOf } from '../reasonOf';
import { toastStore } from '../toastStore';
import { AskedWorker } from '../workers/askedWorker';
import { PlanLine } from '../workers/planLine';
import { silenceOf } from '../workers/silence';
import type { OpenFile } from './kinds';
import type { OpenFilesApi, WorkedFile } from './openFilesApi';

/** Which open file is being made, null for none. */
export const openFilesStore = createStore<{ readonly making: OpenFile['what'] | null }>()(() => ({
  making: null,
}));

/** What was made, and what somebody has to know of it. */
interface Made {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly notes: readonly string[];
}

/** From a worker of its own, which ends with it: a roof takes its time. */
async function worked(plan: Plan, what: WorkedFile, seconds: number, signal: AbortSignal): Promise<Made> {
  const worker = new AskedWorker<OpenFilesApi>(
    () => new Worker(new URL('./openFiles.worker.ts', import.meta.url), { type: 'module' }),
    ({ hold, holdModel }) => new PlanLine({ hold, holdModel }),
    { isThere: (api) => api.isThere(), tell: silenceOf('The file') },
  );
  signal.addEventListener('abort', () => worker.startAnew());
  try {
    const bytes = await worker.about(plan, (api) => api.write(what, seconds));
    return { bytes, notes: [] };
  } finally {
    worker.end();
  }
}

async function packed(plan: Plan): Promise<Made> {
  const { writePlanPack } = await import('../../exchange/planPack/write');
  const { bytes, missing } = await writePlanPack(plan, async ({ sha256 }) => {
    const blob = await keptFile(sha256);
    return blob && new Uint8Array(await blob.arrayBuffer());
  });
  return {
    bytes,
    notes: missing.map((name) => `${name} is not on this device, and not in the pack.`),
  };
}

async function made(plan: Plan, what: OpenFile['what'], seconds: number, signal: AbortSignal): Promise<Made> {
  if (what === 'plan') return { bytes: new TextEncoder().encode(serialisePlan(plan)), notes: [] };
  return what === 'pack' ? packed(plan) : worked(plan, what, seconds, signal);
}

/** Makes an open file of the plan as it is, at the playhead, and saves it; one at a time. */
export async function saveOpenFile({ what, act, ending, type }: OpenFile): Promise<void> {
  if (openFilesStore.getState().making !== null) return;
  openFilesStore.setState({ making: what });
  const { plan } = planStore.getState();
  const { seconds } = liveStore.getState();
  const { say } = toastStore.getState();
  const fileName = `${fileWord(plan.title)}${ending}`;
  const own = new AbortController();
  let notes: readonly string[] = [];
  try {
    const file = made(plan, what, seconds, own.signal).then((done) => {
      notes = done.notes;
      return new Blob([done.bytes], { type });
    });
    // A dialog that is closed leaves nobody to hear that the file was stopped.
    file.catch(() => {});
    // Where a place is asked for, it is asked for at once: a press counts for a few seconds only.
    const handle = await fileSave(file, {
      description: act.replace(/^Save (the )?/, ''),
      mimeTypes: [type],
      extensions: [ending.slice(ending.lastIndexOf('.'))],
      fileName,
    });
    say([`Saved as ${handle?.name ?? fileName}.`, ...notes].join(' '), {
      about: 'open files',
      ...(notes.length > 0 && { tone: 'warn' as const }),
    });
  } catch (error) {
    if (!isAbort(error))
      say(sentenceOf(`${fileName} was not saved`, error), { tone: 'warn', about: 'open files' });
  } finally {
    own.abort();
    openFilesStore.setState({ making: null });
  }
}
