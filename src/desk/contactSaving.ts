import { fileSave } from 'browser-fs-access';
import { Zip, ZipPassThrough } from 'fflate';
import { createStore } from 'zustand/vanilla';
import type { LengthSystem } from '../core/units/lengths';
import { isAbort } from './assets/isAbort';
import { PartlySaved, saveIntoFolder } from './contactFolder';
import { type ContactOrder, contactSheetPicture, countOf, singlePictures } from './contactPictures';
import { fileWord } from './fileWord';
import { liveStore } from './liveStore';
import { planStore } from './planStore';
import { sentenceOf } from './reasonOf';
import { toastStore } from './toastStore';

/** What is being saved. */
export interface ContactSavingState {
  /** Pictures drawn, of how many, and since when by the page's own clock, milliseconds. */
  readonly saving: { readonly done: number; readonly of: number; readonly sinceMs: number } | null;
}

export const contactSavingStore = createStore<ContactSavingState>()(() => ({ saving: null }));

export type ContactWhat = 'one sheet' | 'single pictures';

interface PickingWindow extends Window {
  readonly showDirectoryPicker?: (options: {
    readonly mode: 'readwrite';
  }) => Promise<FileSystemDirectoryHandle>;
}

const PNG_FILES = { description: 'Picture', mimeTypes: ['image/png'], extensions: ['.png'] };
const ZIP_FILES = { description: 'Pictures', mimeTypes: ['application/zip'], extensions: ['.zip'] };
const STOPPED = 'the pictures were stopped';

let stopping: AbortController | null = null;

/** Stops the pictures; those that lie in a folder already stay there. */
export const stopContactPictures = (): void => stopping?.abort();

async function saveSheet(order: ContactOrder): Promise<string> {
  const name = `${fileWord(order.plan.title)}-contact-sheet.png`;
  const drawn = contactSheetPicture(order).then((sheet) => {
    if (!sheet) throw new DOMException(STOPPED, 'AbortError');
    return new Blob([sheet.bytes], { type: 'image/png' });
  });
  // Where a place is asked for, it is asked for at once: a press counts for a few seconds only.
  const handle = await fileSave(drawn, { ...PNG_FILES, fileName: name });
  return handle?.name ?? name;
}

/** The pictures in one file; each goes over to the browser as it comes, which need not keep it in memory. */
async function zipped(order: ContactOrder): Promise<Blob> {
  const blobs: Blob[] = [];
  let fresh: BlobPart[] = [];
  let fault: Error | null = null;
  const zip = new Zip((error, chunk) => {
    if (error) fault = error;
    else fresh.push(new Uint8Array(chunk));
  });
  for await (const { name, bytes } of singlePictures(order)) {
    // A PNG is packed already.
    const file = new ZipPassThrough(name);
    zip.add(file);
    file.push(bytes, true);
    blobs.push(new Blob(fresh));
    fresh = [];
  }
  if (order.signal.aborted) throw new DOMException(STOPPED, 'AbortError');
  zip.end();
  if (fault) throw fault;
  return new Blob([...blobs, ...fresh], { type: 'application/zip' });
}

async function saveSingles(order: ContactOrder): Promise<string> {
  const word = fileWord(order.plan.title);
  if (countOf(order.plan) === 1) {
    const drawn = singlePictures(order)
      .next()
      .then(({ value }) => {
        if (!value) throw new DOMException(STOPPED, 'AbortError');
        return new Blob([value.bytes], { type: 'image/png' });
      });
    const handle = await fileSave(drawn, { ...PNG_FILES, fileName: `${word}.png` });
    return handle?.name ?? `${word}.png`;
  }
  const { showDirectoryPicker }: PickingWindow = window;
  if (showDirectoryPicker) {
    const folder = await showDirectoryPicker({ mode: 'readwrite' });
    return saveIntoFolder(folder, singlePictures(order), countOf(order.plan), order.signal);
  }
  const fileName = `${word}-pictures.zip`;
  const handle = await fileSave(zipped(order), { ...ZIP_FILES, fileName });
  return handle?.name ?? fileName;
}

/** Draws every setup at its moments and saves the pictures: one at a time, with progress in contactSavingStore. */
export async function saveContactPictures(
  what: ContactWhat,
  choice: { readonly width: number; readonly line: boolean; readonly lengths: LengthSystem },
): Promise<void> {
  if (stopping) return;
  stopping = new AbortController();
  // The stage draws no stills while a move plays.
  liveStore.getState().setPlaying(false);
  const { plan } = planStore.getState();
  const of = countOf(plan);
  const sinceMs = performance.now();
  const { say } = toastStore.getState();
  contactSavingStore.setState({ saving: { done: 0, of, sinceMs } });
  const order: ContactOrder = {
    ...choice,
    plan,
    signal: stopping.signal,
    tell: (done) => contactSavingStore.setState({ saving: { done, of, sinceMs } }),
  };
  try {
    const saved = await (what === 'one sheet' ? saveSheet(order) : saveSingles(order));
    say(`Saved as ${saved}.`, { about: 'contact sheet' });
  } catch (error) {
    if (error instanceof PartlySaved) say(error.message, { tone: 'warn', about: 'contact sheet' });
    else if (!isAbort(error)) {
      say(sentenceOf('The pictures were not saved', error), { tone: 'warn', about: 'contact sheet' });
    }
  } finally {
    stopping.abort();
    stopping = null;
    contactSavingStore.setState({ saving: null });
  }
}
