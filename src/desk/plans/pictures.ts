import type { Plan } from '../../core/plan/schema/plan';
import { planStore } from '../planStore';
import { onShelf } from '../shelf';
import { viewStore } from '../viewStore';
import { drawRoof } from './roofPicture';

/** The plan of the picture that each kept plan has from this page: what has not changed keeps its own. */
const pictured = new Map<string, Plan>();

/** A canvas that nothing was drawn on is clear. */
function isDrawn(canvas: HTMLCanvasElement): boolean {
  const { width, height } = canvas;
  if (width === 0 || height === 0) return false;
  const middle = canvas.getContext('2d')?.getImageData(width >> 1, height >> 1, 1, 1).data;
  return middle !== undefined && middle[3] > 0;
}

/** What the first camera sees, as the strip shows it; the roof from above where there is no such picture. */
function pictureOf(plan: Plan): HTMLCanvasElement | null {
  const first = plan.setups[0];
  const thumb = first ? viewStore.getState().thumbElements.get(first.id) : undefined;
  return thumb && isDrawn(thumb) ? thumb : drawRoof(plan);
}

const blobOf = (canvas: HTMLCanvasElement): Promise<Blob | null> =>
  new Promise((resolve) => canvas.toBlob(resolve, 'image/webp', 0.8));

/** Puts the open plan's picture on the shelf, if it has changed. A list without pictures is still a list: what fails, fails. */
export async function takePicture(): Promise<void> {
  const { planId, plan, opened } = planStore.getState();
  if (!opened || pictured.get(planId) === plan) return;
  try {
    const canvas = pictureOf(plan);
    const picture = canvas && (await blobOf(canvas));
    if (!picture) return;
    await onShelf(['pictures'], 'readwrite', ({ store }) => store.put(picture, planId));
    pictured.set(planId, plan);
  } catch {
    // Pictures are the first that a full device gives up.
  }
}

/** Gives a copy of a plan the picture of the plan that it was made from. */
export async function copyPicture(from: string, to: string): Promise<void> {
  try {
    await onShelf(['pictures'], 'readwrite', async ({ store }) => {
      const picture = await store.get(from);
      if (picture) await store.put(picture, to);
    });
  } catch {
    // It is taken when the copy is open.
  }
}

/** The pictures of all kept plans, by plan. */
export async function readPictures(): Promise<ReadonlyMap<string, Blob>> {
  return onShelf(['pictures'], 'readonly', async ({ store }) => {
    const [keys, blobs] = await Promise.all([store.getAllKeys(), store.getAll()]);
    return new Map(keys.map((key, index) => [key, blobs[index]]));
  });
}
