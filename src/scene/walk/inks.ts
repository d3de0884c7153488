import type { LineBasicMaterial, MeshBasicMaterial } from 'three';
import { colourOfHex } from '../light/kelvin';
import type { Exposure } from '../picture/exposure';

type Colour = ReturnType<typeof colourOfHex>;

/** The sheet's paper; what is drawn to help is never the colour of light. */
export const PAPER = colourOfHex('#f1e8d6');
/** What is proposed, on paper and on the roof. */
export const VERDIGRIS = colourOfHex('#63c6ab');
/** What shows against its wish, on the sheet too. */
export const VERMILION = colourOfHex('#ff7759');

/** Gives a material as much light as comes out as a colour at this exposure and balance. */
export function ink(
  material: LineBasicMaterial | MeshBasicMaterial,
  colour: Colour,
  { perCandela, gains }: Exposure,
): void {
  const [red, green, blue] = [0, 1, 2].map((k) => colour[k] / (perCandela * gains[k]));
  material.color.setRGB(red, green, blue);
}
