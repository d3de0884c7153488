import { fileOpen } from 'browser-fs-access';
import { changeUnderlay } from '../../core/plan/edits/changeUnderlay';
import { setModelFile } from '../../core/plan/edits/setModelFile';
import { named } from '../../core/plan/named';
import type { Piece } from '../../core/plan/schema/pieces';
import { planStore } from '../planStore';
import { toastStore } from '../toastStore';
import { IMPORTING, MODEL_FILES } from './importModel';
import { PHOTO_FILES, takeInPicture } from './importPhoto';
import { isAbort } from './isAbort';
import { takeInModel } from './takeInModel';

type Model = Extract<Piece, { kind: 'model' }>;

const say = (sentence: string, tone: 'plain' | 'warn', action: (() => void) | null = null): void =>
  toastStore.getState().say(sentence, {
    tone,
    about: IMPORTING,
    action: action ? { word: 'Undo', act: action } : null,
  });

async function chosen(options: typeof MODEL_FILES): Promise<File | null> {
  try {
    return await fileOpen(options);
  } catch (error) {
    if (!isAbort(error)) say('The file could not be opened. Choose it once more.', 'warn');
    return null;
  }
}

/**
 * Asks for the file of a model that this device lacks. The very file needs no edit; another one takes its place, as
 * one step that can be undone.
 */
export async function giveModelFile(model: Model): Promise<boolean> {
  const file = await chosen(MODEL_FILES);
  if (!file) return false;
  const taken = await takeInModel(file);
  if (!('asset' in taken)) {
    if (taken.sentence !== null) say(`${file.name} was not taken. ${taken.sentence}`, 'warn');
    return false;
  }
  const { edit, undo } = planStore.getState();
  if (taken.asset.sha256 === model.asset.sha256) {
    say(`${named(model.label)} has its file again.`, 'plain');
    return true;
  }
  const { asset, read } = taken;
  const { lowest, highest } = read.extent;
  const extent = { lowest: [...lowest], highest: [...highest] } satisfies Model['extent'];
  const faults = edit(`give ${model.label} another file`, (plan) =>
    setModelFile(plan, { id: model.id, asset, extent }),
  );
  if (faults[0]) {
    say(`${file.name} was not taken. ${faults[0].sentence}`, 'warn');
    return false;
  }
  say(
    `${asset.name} is another file than the one before, and stands for ${named(model.label)} now.`,
    'plain',
    undo,
  );
  return true;
}

/** The same for the picture under the roof. */
export async function givePictureFile(): Promise<boolean> {
  const { underlay } = planStore.getState().plan;
  const file = underlay && (await chosen(PHOTO_FILES));
  if (!underlay || !file) return false;
  const taken = await takeInPicture(file);
  if ('sentence' in taken) {
    say(`${file.name} was not taken. ${taken.sentence}`, 'warn');
    return false;
  }
  const { edit, undo } = planStore.getState();
  if (taken.asset.sha256 === underlay.asset.sha256) {
    say('The picture under the roof is there again.', 'plain');
    return true;
  }
  const [width, height] = taken.pixels;
  // As wide on the roof as the one before.
  const metresPerPixel = (underlay.metresPerPixel * underlay.pixels[0]) / width;
  edit('give the roof another picture', (plan) =>
    changeUnderlay(plan, { asset: taken.asset, pixels: [width, height], metresPerPixel }),
  );
  say(
    `${taken.asset.name} is another picture than the one before, and lies under the roof now.`,
    'plain',
    undo,
  );
  return true;
}
