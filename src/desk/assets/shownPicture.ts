/** Longest side of a picture as it is drawn under the roof: sharp on any screen, and no burden. */
const LONGEST_SHOWN = 4096;
/** More pixels than any phone or scanner makes; a browser may stop working on more. */
const MOST_PIXELS = 120_000_000;

/** A picture, ready to be drawn. */
export interface ShownPicture {
  /** Of what is drawn, which may be smaller than the file. */
  readonly url: string;
  /** Of the file, [width, height]. */
  readonly pixels: readonly [number, number];
}

/** Opens a picture and makes it ready to be drawn; null for what is none, or is too large to open. */
export async function shownPicture(blob: Blob): Promise<ShownPicture | null> {
  let opened: ImageBitmap;
  try {
    opened = await createImageBitmap(blob);
  } catch {
    return null;
  }
  const { width, height } = opened;
  const isTooLarge = width * height > MOST_PIXELS || Math.max(width, height) > 32768;
  const scale = Math.min(1, LONGEST_SHOWN / Math.max(width, height));
  try {
    if (isTooLarge) return null;
    if (scale === 1) return { url: URL.createObjectURL(blob), pixels: [width, height] };
    const small = new OffscreenCanvas(Math.round(width * scale), Math.round(height * scale));
    small.getContext('2d')?.drawImage(opened, 0, 0, small.width, small.height);
    const shown = await small.convertToBlob({ type: 'image/webp', quality: 0.9 });
    return { url: URL.createObjectURL(shown), pixels: [width, height] };
  } finally {
    opened.close();
  }
}
