import type { NamedPng } from './contactPictures';

/** Some pictures lie in a folder and the others do not; its message is a sentence that says so. */
export class PartlySaved extends Error {}

/** What is asked of a chosen folder. */
export type PictureFolder = Pick<FileSystemDirectoryHandle, 'name' | 'getFileHandle' | 'removeEntry'>;

/** Why a file could not be written, as the end of a sentence. */
function whyNot(error: unknown): string {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'NotAllowedError') return 'the browser no longer lets the page write there';
  if (name === 'QuotaExceededError') return 'there is no room left';
  if (name === 'NotFoundError') return 'the folder is not there any more';
  return error instanceof Error ? error.message.replace(/\.$/, '') : String(error);
}

/** Writes one file of a folder whole, or leaves the folder as it was. */
async function writeInto(folder: PictureFolder, { name, bytes }: NamedPng): Promise<void> {
  const isNew = await folder.getFileHandle(name).then(
    () => false,
    () => true,
  );
  const handle = await folder.getFileHandle(name, { create: true });
  try {
    const file = await handle.createWritable();
    try {
      await file.write(bytes);
      await file.close();
    } catch (error) {
      await file.abort().catch(() => undefined);
      throw error;
    }
  } catch (error) {
    if (isNew) await folder.removeEntry(name).catch(() => undefined);
    throw error;
  }
}

/**
 * Writes pictures into a folder as they come, and says how many of how many are there. What is written stays.
 * @throws PartlySaved when one cannot be written, or when it was called off
 */
export async function saveIntoFolder(
  folder: PictureFolder,
  pictures: AsyncIterable<NamedPng>,
  of: number,
  signal: AbortSignal,
): Promise<string> {
  let count = 0;
  const there = (): string => `${count} of ${of} pictures ${count === 1 ? 'is' : 'are'} in ${folder.name}`;
  for await (const picture of pictures) {
    try {
      await writeInto(folder, picture);
    } catch (error) {
      throw new PartlySaved(`${there()}. The next could not be written: ${whyNot(error)}.`);
    }
    count += 1;
  }
  if (signal.aborted) throw new PartlySaved(`Stopped: ${there()}.`);
  return `${count} pictures in ${folder.name}`;
}
