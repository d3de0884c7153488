import { spanOf } from '../../core/optics/camera';
import type { Plan } from '../../core/plan/schema/plan';
import { askStill } from '../contactStills';
import { viewStore } from '../viewStore';

/** Pixels along a picture's width: sharp on paper half a page wide. */
const PAPER_WIDTH = 900;
/** Sharp on a phone, and still sent at once. */
const FILE_WIDTH = 960;
/** Of 1, as browsers count it: no blocks to be seen in the dark of a night. */
const FILE_QUALITY = 0.82;

const blobOf = (canvas: HTMLCanvasElement, type: string, quality?: number): Promise<Blob | null> =>
  new Promise((resolve) => canvas.toBlob(resolve, type, quality));

/** A picture of each setup as its span begins, made into something, by its id; none where this browser draws no pictures or it was called off. */
async function stillsOf<Made>(
  plan: Plan,
  width: number,
  make: (canvas: HTMLCanvasElement) => Promise<Made | null>,
  signal: AbortSignal,
): Promise<ReadonlyMap<string, Made>> {
  const stills = new Map<string, Made>();
  for (const setup of plan.setups) {
    if (signal.aborted || viewStore.getState().pictureRefused !== null) return stills;
    const canvas = document.createElement('canvas');
    const height = Math.round(width / setup.delivery);
    const [seconds] = spanOf(plan, setup);
    const drawn = await askStill({ plan, setup, seconds, canvas, width, height, widths: 1 }, signal);
    const made = drawn ? await make(canvas) : null;
    if (made !== null) stills.set(setup.id, made);
  }
  return stills;
}

/** Pictures for paper, PNG files. */
export const packStills = (plan: Plan, signal: AbortSignal): Promise<ReadonlyMap<string, Uint8Array>> =>
  stillsOf(
    plan,
    PAPER_WIDTH,
    async (canvas) => {
      const blob = await blobOf(canvas, 'image/png');
      return blob && new Uint8Array(await blob.arrayBuffer());
    },
    signal,
  );

/** Pictures for a file that has them in it, JPEG as addresses that hold their data. */
export const crewFilePictures = (plan: Plan, signal: AbortSignal): Promise<ReadonlyMap<string, string>> =>
  stillsOf(plan, FILE_WIDTH, async (canvas) => canvas.toDataURL('image/jpeg', FILE_QUALITY), signal);
