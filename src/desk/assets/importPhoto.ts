import { fileOpen } from 'browser-fs-access';
import { tidyScale } from '../../core/plan/edits/scaleModel';
import { setUnderlay } from '../../core/plan/edits/setUnderlay';
import { type Asset, LARGEST_ASSET_BYTES } from '../../core/plan/schema/asset';
import type { Underlay } from '../../core/plan/schema/drawing';
import { planStore } from '../planStore';
import { sessionStore } from '../sessionStore';
import { toastStore } from '../toastStore';
import { keepFile } from './assetShelf';
import { setAssetState } from './assetStore';
import { fileLabel } from './fileLabel';
import { IMPORTING } from './importModel';
import { isAbort } from './isAbort';
import { deckBounds, roofMiddle } from './roofMiddle';
import { sha256Of } from './sha256';
import { shownPicture } from './shownPicture';

export const PHOTO_FILES = {
  description: 'Photos and drawings',
  mimeTypes: ['image/jpeg', 'image/png', 'image/webp'],
  extensions: ['.jpg', '.jpeg', '.png', '.webp'],
};
/** How strongly a picture shows at first, and how wide it lies where there is no deck, metres. */
const FIRST_STRENGTH = 0.5;
const FIRST_WIDTH_METRES = 20;
/** A picture is a little wider than the roof that it shows. */
const AROUND = 1.15;

const warn = (sentence: string): void =>
  toastStore.getState().say(sentence, { tone: 'warn', about: IMPORTING });

/** Asks for a photo or a drawing and lays it under the roof. Says whether it did. */
export async function choosePhotoFile(): Promise<boolean> {
  try {
    return await importPhoto(await fileOpen(PHOTO_FILES));
  } catch (error) {
    if (!isAbort(error)) warn('The file could not be opened. Choose it once more.');
    return false;
  }
}

/** A picture that is kept on this device and ready to be drawn, or why it is not, as a sentence. */
type Picture =
  | { readonly asset: Asset; readonly pixels: readonly [number, number] }
  | { readonly sentence: string };

/** Keeps a picture on this device; no plan is touched. */
export async function takeInPicture(file: File): Promise<Picture> {
  const name = fileLabel(file.name);
  if (file.size > LARGEST_ASSET_BYTES) return { sentence: 'The picture is larger than half a gigabyte.' };
  const shown = await shownPicture(file);
  if (!shown) {
    return {
      sentence: 'It is no JPEG, PNG or WebP that this browser opens, or it has more than 120 million pixels.',
    };
  }
  const sha256 = await sha256Of(await file.arrayBuffer());
  const refusal = await keepFile(sha256, file, name);
  if (refusal !== null) {
    URL.revokeObjectURL(shown.url);
    return { sentence: refusal };
  }
  setAssetState(sha256, { status: 'picture', url: shown.url });
  return { asset: { sha256, name, bytes: file.size }, pixels: shown.pixels };
}

/** Lays a photo or a drawing under the roof. Says whether it did; what went wrong is said in a toast. */
export async function importPhoto(file: File): Promise<boolean> {
  const { documentNumber } = planStore.getState();
  const taken = await takeInPicture(file);
  const name = fileLabel(file.name);
  if ('sentence' in taken) {
    warn(`${name} was not laid under the roof. ${taken.sentence}`);
    return false;
  }
  const { plan, edit, undo } = planStore.getState();
  if (planStore.getState().documentNumber !== documentNumber) {
    warn(`${name} was not laid under the roof, since another plan was opened meanwhile.`);
    return false;
  }
  const [width, height] = taken.pixels;
  const bounds = deckBounds(plan);
  const across = bounds ? bounds[2] - bounds[0] : FIRST_WIDTH_METRES;
  const along = bounds ? bounds[3] - bounds[1] : FIRST_WIDTH_METRES;
  const underlay: Underlay = {
    asset: taken.asset,
    pixels: [width, height],
    at: roofMiddle(plan),
    headingDegrees: 0,
    metresPerPixel: tidyScale(Math.max(across / width, along / height) * AROUND),
    strength: FIRST_STRENGTH,
  };
  const faults = edit(`lay ${name} under the roof`, (before) => setUnderlay(before, { underlay }));
  if (faults[0]) {
    warn(`${name} was not laid under the roof. ${faults[0].sentence}`);
    return false;
  }
  const { setRoofView, setSheet, setSelectedId } = sessionStore.getState();
  setRoofView('overhead');
  setSheet('set');
  setSelectedId(null);
  toastStore.getState().say(`${name} lies under the roof. Press two points that you know the distance of.`, {
    about: IMPORTING,
    action: { word: 'Undo', act: undo },
  });
  return true;
}
