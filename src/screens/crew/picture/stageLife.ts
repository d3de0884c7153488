import { pictureStore, refusePictures, tryPicturesAgain } from '../../../desk/crew/pictures/pictureStore';
import { sentenceOf } from '../../../desk/reasonOf';
import type { CrewStage } from '../../../scene/crew/crewStage';
import { offersWebGl } from '../../../scene/drive/offersWebGl';

const REST_WORKS = 'Everything else on this sheet works without them.';
const NO_WEBGL = `This browser offers no WebGL 2, so there are no pictures. ${REST_WORKS}`;
const NOT_LOADED = `What draws the pictures could not be loaded, so there are none yet. Try again with a signal. ${REST_WORKS}`;
const LOST = `The graphics card dropped the pictures. Close what else draws on this device, then try again. ${REST_WORKS}`;

/** A stage that nobody needs stays for so long, milliseconds: who opens a picture next need not wait for it anew. */
const LINGER = 4000;

let opening: Promise<CrewStage | null> | null = null;
let borrowers = 0;
let ending: ReturnType<typeof setTimeout> | undefined;

/**
 * The stage, with all that draws loaded on the first call; null, with the reason in pictureStore, where there is none.
 * Whoever asks gives it back with `returnStage`, whatever came.
 */
export async function borrowStage(): Promise<CrewStage | null> {
  borrowers += 1;
  clearTimeout(ending);
  opening ??= openStage();
  const asked = opening;
  const found = await asked;
  // Whoever asks next tries again.
  if (!found && opening === asked) opening = null;
  return found;
}

/** The last who gives the stage back lets it go, with its canvas and all that it holds on the card. */
export function returnStage(): void {
  borrowers -= 1;
  clearTimeout(ending);
  if (borrowers === 0) ending = setTimeout(endStage, LINGER);
}

/** Lets the stage go at once, and says why there are no pictures. */
export function giveUp(sentence: string): void {
  endStage();
  refusePictures(sentence);
}

function endStage(): void {
  void opening?.then((stage) => stage?.dispose());
  opening = null;
}

async function openStage(): Promise<CrewStage | null> {
  // Asked first: where nothing can be drawn, nothing of it need be loaded.
  if (!offersWebGl()) return refused(NO_WEBGL);
  const scene = await import('../../../scene/crew/crewStage').catch(() => null);
  if (!scene) return refused(NOT_LOADED);
  try {
    return new scene.CrewStage(hearLost);
  } catch (error) {
    return refused(`${sentenceOf('The pictures do not start here', error)} ${REST_WORKS}`);
  }
}

function refused(sentence: string): null {
  refusePictures(sentence);
  return null;
}

/** Why a picture was not drawn, as a sentence. */
export const failureSentence = (error: unknown): string =>
  `${sentenceOf('A picture could not be drawn', error)} ${REST_WORKS}`;

function hearLost(): void {
  giveUp(LOST);
  if (!document.hidden) return;
  // A phone takes the card away from a page that nobody looks at, and gives it back with the next look.
  const again = (): void => {
    if (document.hidden) return;
    document.removeEventListener('visibilitychange', again);
    if (pictureStore.getState().refused === LOST) tryPicturesAgain();
  };
  document.addEventListener('visibilitychange', again);
}
