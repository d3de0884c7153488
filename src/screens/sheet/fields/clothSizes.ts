const INCH = 0.0254;
const FOOT = 12 * INCH;

/** Sizes that flags, frames and bounces are made in. Source: common practice, no source */
export const CLOTH_SIZES: readonly { readonly word: string; readonly size: readonly [number, number] }[] = [
  { word: '18 × 24 in', size: [18 * INCH, 24 * INCH] },
  { word: '24 × 36 in', size: [24 * INCH, 36 * INCH] },
  { word: '4 × 4 ft', size: [4 * FOOT, 4 * FOOT] },
  { word: '6 × 6 ft', size: [6 * FOOT, 6 * FOOT] },
  { word: '8 × 8 ft', size: [8 * FOOT, 8 * FOOT] },
  { word: '12 × 12 ft', size: [12 * FOOT, 12 * FOOT] },
];

/** Half a centimetre: a size in rounded metres is still that size. */
const ALIKE_METRES = 0.005;

/** The word of the made size that a cloth has, to within half a centimetre; `free` for any other. */
export function clothSizeWord([width, height]: readonly [number, number]): string {
  const found = CLOTH_SIZES.find(
    ({ size }) => Math.abs(size[0] - width) < ALIKE_METRES && Math.abs(size[1] - height) < ALIKE_METRES,
  );
  return found?.word ?? 'free';
}
