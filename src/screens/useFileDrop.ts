import { useEffect } from 'react';
import { openPlanFile } from '../desk/files';
import { mergeStore } from '../desk/merge/mergeStore';
import { sentenceOf } from '../desk/reasonOf';
import { toastStore } from '../desk/toastStore';

const holdsFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;

function allow(event: DragEvent): void {
  if (holdsFiles(event)) event.preventDefault();
}

/** Not every browser gives a way back to the file. */
interface DroppedItem extends DataTransferItem {
  readonly getAsFileSystemHandle?: () => Promise<FileSystemHandle | null>;
}

interface Dropped {
  readonly file: File;
  readonly handle: Promise<FileSystemFileHandle | null>;
}

async function handleOf(item: DroppedItem): Promise<FileSystemFileHandle | null> {
  try {
    const handle = await item.getAsFileSystemHandle?.();
    return handle instanceof FileSystemFileHandle ? handle : null;
  } catch {
    // The file itself has come, and is saved like one that was never opened.
    return null;
  }
}

/** The files of a drop with the ways back to them, asked for at once: the browser takes them away after the event. */
const droppedFiles = (items: DataTransferItemList): Dropped[] =>
  [...items].flatMap((item) => {
    const file = item.getAsFile();
    return file ? [{ file, handle: handleOf(item) }] : [];
  });

async function takeIn(dropped: readonly Dropped[]): Promise<void> {
  const [{ importFile, isImportable }, { dropPhotometricFile, isPhotometric }] = await Promise.all([
    import('../desk/assets/importFile'),
    import('../desk/photometry/photometricFile'),
  ]);
  for (const { file, handle } of dropped) {
    if (isImportable(file)) await importFile(file);
    else if (isPhotometric(file)) await dropPhotometricFile(file);
    else if (mergeStore.getState().open) {
      const { compareWithFile } = await import('../desk/merge/merging');
      await compareWithFile(file);
    } else await openPlanFile(file, (await handle) ?? undefined);
  }
}

function drop(event: DragEvent): void {
  if (!holdsFiles(event)) return;
  event.preventDefault();
  if (!event.dataTransfer) return;
  takeIn(droppedFiles(event.dataTransfer.items)).catch((error: unknown) =>
    toastStore.getState().say(sentenceOf('What was dropped could not be taken in', error), { tone: 'warn' }),
  );
}

/** Plan files dropped anywhere on the page are opened, each as a plan of its own; a model or a picture goes onto the roof, a photometric file into the chosen lamp. While a copy is asked for or compared, a plan file is compared. */
export function useFileDrop(): void {
  useEffect(() => {
    window.addEventListener('dragover', allow);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragover', allow);
      window.removeEventListener('drop', drop);
    };
  }, []);
}
