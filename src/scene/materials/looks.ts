import type { Substance } from '../../core/form/types';
import { FINISHES } from '../../core/light/finishes';
import { colourOfHex, type LinearColour, luminanceOf } from '../light/kelvin';

/** How a surface is laid: which of the drawn patterns covers it. */
export type Pattern =
  | 'plain'
  | 'slab'
  | 'grit'
  | 'strips'
  | 'tiles'
  | 'grain'
  | 'boards'
  | 'bricks'
  | 'stain'
  | 'spangle'
  | 'weave'
  | 'down';

/** How a substance takes light: its hue and pattern are the picture's own, how much it gives back is core's. */
export interface Look {
  /** Linear reflectance. */
  readonly colour: LinearColour;
  readonly roughness: number;
  readonly metalness: number;
  readonly pattern: Pattern;
  /** Share of the light from behind that comes through, over what comes back from the front. */
  readonly lets?: number;
  /** Share of what lies behind that is seen through it, as through glass. */
  readonly clear?: number;
}

/** Rough enough that nothing of a lamp is seen in it. */
const DULL_ROUGHNESS = 0.9;
/** Less than this a mirror's own texture would show. */
const SMOOTHEST = 0.05;

/** Whether a look has any sheen: what is dull gives back evenly and no more. */
export const isShiny = ({ roughness, metalness }: Look): boolean =>
  roughness < DULL_ROUGHNESS || metalness > 0;

/**
 * The look of a substance in a hue: as bright as core's finish of it, and as smooth, its slopes s as the width α = s √2
 * of the shading's own facets and the roughness √α. Of metal the colour is what its mirrors turn back.
 */
function look(
  substance: Substance,
  hue: string,
  pattern: Pattern,
  more: Partial<Pick<Look, 'lets' | 'clear'>> = {},
): Look {
  const { diffuse, sheen, slope } = FINISHES[substance];
  const own = colourOfHex(hue);
  const scale = (sheen ?? diffuse) / Math.max(1e-4, luminanceOf(own));
  return {
    colour: [own[0] * scale, own[1] * scale, own[2] * scale],
    roughness: slope === null ? DULL_ROUGHNESS : Math.max(SMOOTHEST, Math.sqrt(slope * Math.SQRT2)),
    metalness: sheen === null ? 0 : 1 - diffuse / sheen,
    pattern,
    ...more,
  };
}

/** Light that a lamp, a window or a screen gives off itself is added to these; here is only their unlit surface. */
export const LOOKS: Readonly<Record<Substance, Look>> = {
  concrete: look('concrete', '#8a8782', 'slab'),
  asphalt: look('asphalt', '#4a4a4b', 'grit'),
  felt: look('felt', '#56585c', 'strips'),
  tile: look('tile', '#8d7565', 'tiles'),
  timber: look('timber', '#8a6a4a', 'grain'),
  boards: look('boards', '#7d6249', 'boards'),
  brick: look('brick', '#8a5443', 'bricks'),
  render: look('render', '#a69c8c', 'stain'),
  metal: look('metal', '#9a9da0', 'spangle'),
  'dark metal': look('dark metal', '#26282b', 'spangle'),
  galvanised: look('galvanised', '#a5abad', 'spangle'),
  rubber: look('rubber', '#1b1b1c', 'plain'),
  'black cloth': look('black cloth', '#0e0e10', 'weave'),
  'white cloth': look('white cloth', '#dcdad4', 'weave'),
  card: look('card', '#ededed', 'plain'),
  diffusion: look('diffusion', '#e4e4e0', 'plain', { lets: 0.9 }),
  silver: look('silver', '#c9ccd0', 'spangle'),
  glass: look('glass', '#0b0e10', 'plain', { clear: 0.92 }),
  mirror: look('mirror', '#d9dde0', 'plain'),
  net: look('net', '#0e0e10', 'plain'),
  'wire mesh': look('wire mesh', '#7f8486', 'plain'),
  glow: look('glow', '#2a2a28', 'plain'),
  window: look('window', '#14171c', 'plain'),
  screen: look('screen', '#0c0e12', 'plain'),
  paint: look('paint', '#8d8f8c', 'plain'),
  skin: look('skin', '#b98a6c', 'plain'),
  hair: look('hair', '#2b211a', 'grain'),
  upper: look('upper', '#5a6068', 'weave'),
  lower: look('lower', '#3c4048', 'weave'),
  shoe: look('shoe', '#1c1a19', 'plain'),
  feather: look('feather', '#c9c8c6', 'down'),
  linen: look('linen', '#d5d0c4', 'weave', { lets: 0.35 }),
  terracotta: look('terracotta', '#a0583c', 'stain'),
};
