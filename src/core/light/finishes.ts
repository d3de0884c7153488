import type { PartShape, Substance } from '../form/types';
import { pow } from '../units/steadyMath';
import { luminanceOf } from './glows';

/** How a surface takes light. */
export interface Finish {
  /** Share of the light that comes back evenly. */
  readonly diffuse: number;
  /** Share that small mirrors turn back, of metal; null for what turns back as a clear surface does, by Fresnel. */
  readonly sheen: number | null;
  /** Root mean square of the mirrors' slopes; null for what has no sheen to speak of. */
  readonly slope: number | null;
  readonly source: 'pavement-reflectance' | 'common practice, no source';
}

const dull = (diffuse: number): Finish => ({
  diffuse,
  sheen: null,
  slope: null,
  source: 'common practice, no source',
});
const glossy = (diffuse: number, slope: number): Finish => ({ ...dull(diffuse), slope });
const metal = (diffuse: number, sheen: number, slope: number): Finish => ({ ...dull(diffuse), sheen, slope });
const paved = (diffuse: number): Finish => ({ ...dull(diffuse), source: 'pavement-reflectance' });

/**
 * What things on a roof are made of. The figures of pavements are measured; all others are estimates by eye, the same as
 * the picture is drawn with, and good for a stop or so. Source: [pavement-reflectance]
 */
export const FINISHES: Readonly<Record<Substance, Finish>> = {
  concrete: paved(0.294),
  asphalt: paved(0.078),
  felt: dull(0.097),
  tile: glossy(0.193, 0.25),
  timber: dull(0.162),
  boards: dull(0.136),
  brick: dull(0.121),
  render: dull(0.338),
  metal: metal(0.05, 0.335, 0.125),
  'dark metal': metal(0.014, 0.05, 0.177),
  galvanised: metal(0.1, 0.4, 0.177),
  rubber: dull(0.011),
  'black cloth': dull(0.03),
  'white cloth': dull(0.7),
  card: dull(0.847),
  diffusion: dull(0.774),
  silver: metal(0.03, 0.6, 0.064),
  glass: glossy(0.004, 0.01),
  mirror: metal(0, 0.718, 0.01),
  net: dull(0.03),
  'wire mesh': metal(0.09, 0.23, 0.177),
  glow: glossy(0.023, 0.11),
  window: glossy(0.008, 0.064),
  screen: glossy(0.004, 0.044),
  paint: glossy(0.272, 0.21),
  skin: glossy(0.296, 0.21),
  hair: dull(0.017),
  upper: dull(0.115),
  lower: dull(0.051),
  shoe: glossy(0.011, 0.177),
  feather: dull(0.578),
  linen: dull(0.632),
  terracotta: dull(0.148),
};

/** What black tape or cloth leaves: parts under it are made of black cloth (core/form/gear/blacked). */
export const BLACKED: Finish = FINISHES['black cloth'];

const linear = (byte: number): number => {
  const value = byte / 255;
  return value <= 0.04045 ? value / 12.92 : pow((value + 0.055) / 1.055, 2.4);
};

/** Luminance of an sRGB colour `#rrggbb` as a share of white. */
export function shareOfHex(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => linear(Number.parseInt(colour.slice(at, at + 2), 16)));
  return luminanceOf([red, green, blue]);
}

/** The finish of a shape: its substance's, with the diffuse share of its own colour where it has one. */
export function finishOf({ substance, colour }: PartShape): Finish {
  const finish = FINISHES[substance];
  return colour === null || substance === 'window' || substance === 'glow'
    ? finish
    : { ...finish, diffuse: shareOfHex(colour) };
}
