import { fileSave } from 'browser-fs-access';
import { isAbort } from '../assets/isAbort';
import { sentenceOf } from '../reasonOf';

/** A text that becomes a file. */
export interface TextFile {
  readonly text: string;
  /** Its media type. */
  readonly type: string;
  /** What it is, at the beginning of a sentence: `The calendar`. */
  readonly what: string;
  readonly fileName: string;
}

/** Saves a text as a file. What came of it, as a sentence; empty where somebody thought better of it. */
export async function saveText({ text, type, what, fileName }: TextFile): Promise<string> {
  try {
    const handle = await fileSave(new Blob([text], { type }), {
      description: what,
      mimeTypes: [type],
      extensions: [fileName.slice(fileName.lastIndexOf('.'))],
      fileName,
    });
    return `Saved as ${handle?.name ?? fileName}.`;
  } catch (error) {
    return isAbort(error) ? '' : sentenceOf(`${what} was not saved`, error);
  }
}
