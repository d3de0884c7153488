import { fileSave } from 'browser-fs-access';
import { proxy, type Remote } from 'comlink';
import { createStore } from 'zustand/vanilla';
import type { Plan } from '../../core/plan/schema/plan';
import type { LengthSystem } from '../../core/units/lengths';
import type { PackAsked } from '../../exchange/pdf/packInput';
import { isAbort } from '../assets/isAbort';
import { fileWord } from '../fileWord';
import { liveStore } from '../liveStore';
import { sentenceOf } from '../reasonOf';
import { pageAddress } from '../share/making';
import { toastStore } from '../toastStore';
import { AskedWorker } from '../workers/askedWorker';
import { PlanLine } from '../workers/planLine';
import { silenceOf } from '../workers/silence';
import type { PackApi } from './packApi';
import { crewFilePictures, packStills } from './packStills';

/** What goes up to the roof in a file: on paper, or as the crew sheet in one file. */
export type PackKind = 'pack' | 'crew sheet';

/** How a file that is being made stands. */
export interface PackSavingState {
  /** Which; null while none is made. */
  readonly kind: PackKind | null;
  /** How much of it is worked out, 0..1. */
  readonly share: number;
}

export const packSavingStore = createStore<PackSavingState>()(() => ({ kind: null, share: 0 }));

/** A file, and what is to be told of it. */
interface Made {
  readonly parts: readonly BlobPart[];
  readonly notes: readonly string[];
}

/** What is different of the two. */
interface Kind {
  readonly type: string;
  readonly extension: string;
  readonly ending: string;
  readonly description: string;
  /** The file, of what the worker has read by then and of pictures. */
  readonly make: (
    plan: Plan,
    signal: AbortSignal,
    read: Promise<void>,
    api: Remote<PackApi>,
  ) => Promise<Made>;
}

const KINDS: Readonly<Record<PackKind, Kind>> = {
  pack: {
    type: 'application/pdf',
    extension: '.pdf',
    ending: '-pack.pdf',
    description: 'The pack',
    make: async (plan, signal, read, api) => {
      const [stills] = await Promise.all([packStills(plan, signal), read]);
      const { bytes, notes } = await api.write(stills);
      return { parts: [bytes], notes };
    },
  },
  'crew sheet': {
    type: 'text/html',
    extension: '.html',
    ending: '-crew-sheet.html',
    description: 'The crew sheet',
    make: async (plan, signal, read, api) => {
      const [pictures] = await Promise.all([crewFilePictures(plan, signal), read]);
      return { parts: [await api.writeCrewFile(pictures)], notes: [] };
    },
  },
};

let stopping: AbortController | null = null;

/** Stops what is being made; nothing is saved. */
export const stopPack = (): void => stopping?.abort();

/** The file, from a worker of its own that ends with it: stopped, it is over at once, whatever it does. */
function made(kind: Kind, plan: Plan, asked: PackAsked, signal: AbortSignal): Promise<Made> {
  const worker = new AskedWorker<PackApi>(
    () => new Worker(new URL('./pack.worker.ts', import.meta.url), { type: 'module' }),
    ({ hold, holdModel }) => new PlanLine({ hold, holdModel }),
    { isThere: (api) => api.isThere(), tell: silenceOf(kind.description) },
  );
  const stopped = new Promise<never>((_, reject) => {
    const stop = (): void => reject(new DOMException('it was stopped', 'AbortError'));
    if (signal.aborted) stop();
    signal.addEventListener('abort', stop);
  });
  const tell = (share: number): void => packSavingStore.setState({ share });
  const file = worker.about(plan, (api) =>
    kind.make(plan, signal, api.read({ ...asked, address: pageAddress() }, proxy(tell)), api),
  );
  return Promise.race([file, stopped]).finally(() => worker.end());
}

/** Makes a file and saves it, with progress in packSavingStore; one at a time. */
async function save(which: PackKind, plan: Plan, asked: PackAsked): Promise<void> {
  if (stopping) return;
  const own = new AbortController();
  stopping = own;
  // The stage draws no stills while a move plays.
  liveStore.getState().setPlaying(false);
  packSavingStore.setState({ kind: which, share: 0 });
  const { say } = toastStore.getState();
  const kind = KINDS[which];
  const fileName = `${fileWord(plan.title)}${kind.ending}`;
  let notes: readonly string[] = [];
  try {
    const file = made(kind, plan, asked, own.signal).then((done) => {
      notes = done.notes;
      return new Blob([...done.parts], { type: kind.type });
    });
    // A dialog that is closed leaves nobody to hear that the file was stopped.
    file.catch(() => {});
    // Where a place is asked for, it is asked for at once: a press counts for a few seconds only.
    const handle = await fileSave(file, {
      description: kind.description,
      mimeTypes: [kind.type],
      extensions: [kind.extension],
      fileName,
    });
    say([`Saved as ${handle?.name ?? fileName}.`, ...notes].join(' '), {
      about: 'pack',
      ...(notes.length > 0 && { tone: 'warn' as const }),
    });
  } catch (error) {
    if (!isAbort(error))
      say(sentenceOf(`The ${which} was not saved`, error), { tone: 'warn', about: 'pack' });
  } finally {
    own.abort();
    stopping = null;
    packSavingStore.setState({ kind: null, share: 0 });
  }
}

/** Makes the pack of a plan and saves it as a PDF file. */
export const savePack = (plan: Plan, asked: PackAsked): Promise<void> => save('pack', plan, asked);

/** Makes the crew sheet of a plan and saves it as one file of HTML. */
export const saveCrewFile = (plan: Plan, lengths: LengthSystem): Promise<void> =>
  save('crew sheet', plan, { paper: 'a4', lengths });
