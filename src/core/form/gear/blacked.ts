import type { PlacedPart, Substance } from '../types';

/** What black tape or cloth leaves as it is: what glows or is looked through, and cloths that give on light. */
const LEFT_BARE: ReadonlySet<Substance> = new Set([
  'glow',
  'window',
  'screen',
  'glass',
  'mirror',
  'diffusion',
  'white cloth',
  'card',
  'silver',
  'black cloth',
  'net',
]);

/** Whether black tape or cloth goes over a substance. */
export const takesBlack = (substance: Substance): boolean => !LEFT_BARE.has(substance);

/** Parts under black tape or cloth: the same shapes, of black cloth, so that picture and light both have it. */
export const blackedParts = (parts: readonly PlacedPart[]): readonly PlacedPart[] =>
  parts.map((part) =>
    takesBlack(part.shape.substance)
      ? { ...part, shape: { ...part.shape, substance: 'black cloth', colour: null } }
      : part,
  );
