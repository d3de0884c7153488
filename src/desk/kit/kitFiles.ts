import { fileOpen, fileSave } from 'browser-fs-access';
import { type OwnKit, ownKitText, readOwnKit } from '../../core/kit/ownKit';
import { bodiesCsv, lensesCsv, readBodiesCsv, readLensesCsv } from '../../exchange/kitFileCsv';

/** More than a kit of the allowed size takes. */
const LARGEST_BYTES = 8 * 1024 * 1024;

/** What a file holds of bodies and lenses, and what of it could not be read, a sentence each. */
export interface KitRead {
  readonly name: string;
  readonly kit: OwnKit;
  readonly faults: readonly string[];
}

const isAbort = (error: unknown): boolean => error instanceof DOMException && error.name === 'AbortError';

/** Reads bodies and lenses out of the text of a file: a kit in JSON, or a table of lenses or of bodies. */
export function readKitText(name: string, text: string): KitRead {
  const nothing: OwnKit = { bodies: [], lenses: [] };
  if (/^\ufeff?\s*[[{]/.test(text) || name.toLowerCase().endsWith('.json')) {
    const read = readOwnKit(text);
    return read.ok
      ? { name, kit: read.value, faults: [] }
      : { name, kit: nothing, faults: read.faults.map(({ sentence }) => sentence) };
  }
  const [header] = text.split(/[\r\n]/, 1);
  if (/gateWidthMm/.test(header)) {
    const { entries, faults } = readBodiesCsv(text);
    return { name, kit: { bodies: entries, lenses: [] }, faults: faults.map(({ sentence }) => sentence) };
  }
  const { entries, faults } = readLensesCsv(text);
  return { name, kit: { bodies: [], lenses: entries }, faults: faults.map(({ sentence }) => sentence) };
}

/** Asks for a file and reads it; null where none was chosen. */
export async function chooseKitFile(): Promise<KitRead | null> {
  try {
    const file = await fileOpen({
      description: 'Bodies and lenses',
      mimeTypes: ['application/json', 'text/csv'],
      extensions: ['.json', '.csv'],
    });
    if (file.size > LARGEST_BYTES) {
      const faults = [`The file: found ${file.size} bytes, expected at most ${LARGEST_BYTES}.`];
      return { name: file.name, kit: { bodies: [], lenses: [] }, faults };
    }
    return readKitText(file.name, await file.text());
  } catch (error) {
    if (isAbort(error)) return null;
    throw error;
  }
}

export type KitFormat = 'kit' | 'lenses' | 'bodies';

/** Writes the kept kit into a file: all of it in JSON, or its lenses or bodies as a table. Says under which name, or null. */
export async function saveKitFile(kit: OwnKit, format: KitFormat): Promise<string | null> {
  const texts: Readonly<Record<KitFormat, () => readonly [text: string, type: string, name: string]>> = {
    kit: () => [ownKitText(kit), 'application/json', 'standclear-kit.json'],
    lenses: () => [lensesCsv(kit.lenses), 'text/csv', 'standclear-lenses.csv'],
    bodies: () => [bodiesCsv(kit.bodies), 'text/csv', 'standclear-bodies.csv'],
  };
  const [text, type, fileName] = texts[format]();
  try {
    const handle = await fileSave(new Blob([text], { type }), {
      fileName,
      extensions: [fileName.slice(fileName.lastIndexOf('.'))],
    });
    return handle?.name ?? fileName;
  } catch (error) {
    if (isAbort(error)) return null;
    throw error;
  }
}
