import { fileSave } from 'browser-fs-access';
import { QUIET_SQUARES } from '../../exchange/link/qrRuns';
import { isAbort } from '../assets/isAbort';
import { fileWord } from '../fileWord';
import { sentenceOf } from '../reasonOf';
import { toastStore } from '../toastStore';
import type { CodeOutline } from './shareApi';
import type { MadeLink } from './shareStore';

/** Pixels of a square in the saved picture: sharp on a call sheet. */
const PIXELS = 8;

const warn = (sentence: string): void => toastStore.getState().say(sentence, { tone: 'warn', about: 'link' });

/** Whether this device has a sheet of its own that sends links. */
export const canSend = (): boolean => typeof navigator.share === 'function';

/** Sends the link by the device's own sheet. */
export async function sendLink({ address, plan }: MadeLink): Promise<void> {
  try {
    await navigator.share({ title: plan.title, url: address });
  } catch (error) {
    if (!isAbort(error)) warn(sentenceOf('The link was not sent', error));
  }
}

/** The code as a picture, black on white with its quiet zone. */
function codePicture({ size, path }: CodeOutline): Promise<Blob> {
  const canvas = document.createElement('canvas');
  canvas.width = (size + 2 * QUIET_SQUARES) * PIXELS;
  canvas.height = canvas.width;
  const context = canvas.getContext('2d');
  if (context) {
    context.fillStyle = '#fff';
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.scale(PIXELS, PIXELS);
    context.translate(QUIET_SQUARES, QUIET_SQUARES);
    context.fillStyle = '#000';
    context.fill(new Path2D(path));
  }
  return new Promise((resolve, reject) =>
    canvas.toBlob(
      (blob) => (blob ? resolve(blob) : reject(new Error('this browser makes no pictures'))),
      'image/png',
    ),
  );
}

/** Saves the code as a picture, to send or to print. */
export async function saveCode({ plan }: MadeLink, code: CodeOutline): Promise<void> {
  const fileName = `${fileWord(plan.title)}-code.png`;
  try {
    const handle = await fileSave(codePicture(code), {
      description: 'The code',
      mimeTypes: ['image/png'],
      extensions: ['.png'],
      fileName,
    });
    toastStore.getState().say(`Saved as ${handle?.name ?? fileName}.`, { about: 'link' });
  } catch (error) {
    if (!isAbort(error)) warn(sentenceOf('The code was not saved', error));
  }
}
