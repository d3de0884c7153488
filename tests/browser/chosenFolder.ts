import type { Page } from 'playwright-core';

/** What the page finds where a browser lets somebody choose a folder. */
export interface Folder {
  /** Whole files, by name, as base64. */
  readonly files: Record<string, string>;
  readonly removed: string[];
  /** From which file on the permission is gone; -1 for never. */
  lostFrom: number;
}

declare global {
  interface Window {
    folder?: Folder;
  }
}

/**
 * Runs in the page before its own code: a folder in memory, called Stills, in the place of a chosen one, as the File
 * System Access standard has it; files are opened by an input.
 */
export function withFolder(): void {
  for (const name of ['showOpenFilePicker', 'showSaveFilePicker']) Reflect.deleteProperty(window, name);
  const folder: Folder = { files: {}, removed: [], lostFrom: -1 };
  const asText = (bytes: Uint8Array<ArrayBuffer>): Promise<string> =>
    new Promise((resolve) => {
      const reader = new FileReader();
      reader.onload = () => resolve(String(reader.result).split(',')[1] ?? '');
      reader.readAsDataURL(new Blob([bytes]));
    });
  const handleOf = (name: string) => ({
    createWritable: async () => {
      let written: Uint8Array<ArrayBuffer> | null = null;
      return {
        write: async (bytes: Uint8Array<ArrayBuffer>) => {
          if (folder.lostFrom >= 0 && Object.keys(folder.files).length >= folder.lostFrom)
            throw new DOMException('The request is not allowed.', 'NotAllowedError');
          written = bytes;
        },
        close: async () => {
          if (written) folder.files[name] = await asText(written);
        },
        abort: async () => undefined,
      };
    },
  });
  const chosen = {
    name: 'Stills',
    getFileHandle: async (name: string, options?: { readonly create?: boolean }) => {
      if (!options?.create && !(name in folder.files)) throw new DOMException('no', 'NotFoundError');
      return handleOf(name);
    },
    removeEntry: async (name: string) => {
      folder.removed.push(name);
    },
  };
  Object.assign(window, { folder, showDirectoryPicker: async () => chosen });
}

/** The folder as it is now. */
export async function folderIn(page: Page): Promise<Folder> {
  const folder = await page.evaluate(() => window.folder);
  if (!folder) throw new Error('the page found no folder to be chosen');
  return folder;
}
