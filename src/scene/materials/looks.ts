import type { Substance } from '../../core/form/types';

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

/** How a substance takes light. Colours are diffuse reflectances as `#rrggbb`; estimates by eye, no source. */
export interface Look {
  readonly colour: string;
  readonly roughness: number;
  readonly metalness: number;
  readonly pattern: Pattern;
  /** Share of the light from behind that comes through, over what comes back from the front. */
  readonly lets?: number;
  /** Share of what lies behind that is seen through it, as through glass. */
  readonly clear?: number;
}

const look = (
  colour: string,
  roughness: number,
  pattern: Pattern,
  more: Partial<Pick<Look, 'metalness' | 'lets' | 'clear'>> = {},
): Look => ({ colour, roughness, metalness: 0, pattern, ...more });

/** Light that a lamp, a window or a screen gives off itself is added to these; here is only their unlit surface. */
export const LOOKS: Readonly<Record<Substance, Look>> = {
  concrete: look('#8a8782', 0.86, 'slab'),
  asphalt: look('#4a4a4b', 0.9, 'grit'),
  felt: look('#56585c', 0.92, 'strips'),
  tile: look('#8d7565', 0.6, 'tiles'),
  timber: look('#8a6a4a', 0.78, 'grain'),
  boards: look('#7d6249', 0.82, 'boards'),
  brick: look('#8a5443', 0.88, 'bricks'),
  render: look('#a69c8c', 0.9, 'stain'),
  metal: look('#9a9da0', 0.42, 'spangle', { metalness: 0.85 }),
  'dark metal': look('#26282b', 0.5, 'spangle', { metalness: 0.35 }),
  galvanised: look('#a5abad', 0.5, 'spangle', { metalness: 0.75 }),
  rubber: look('#1b1b1c', 0.75, 'plain'),
  'black cloth': look('#0e0e10', 0.95, 'weave'),
  'white cloth': look('#dcdad4', 0.9, 'weave'),
  card: look('#ededed', 0.96, 'plain'),
  diffusion: look('#e4e4e0', 0.85, 'plain', { lets: 0.9 }),
  silver: look('#c9ccd0', 0.3, 'spangle', { metalness: 0.95 }),
  glass: look('#0b0e10', 0.06, 'plain', { clear: 0.92 }),
  mirror: look('#d9dde0', 0.05, 'plain', { metalness: 1 }),
  'wire mesh': look('#7f8486', 0.5, 'plain', { metalness: 0.6 }),
  glow: look('#2a2a28', 0.4, 'plain'),
  window: look('#14171c', 0.3, 'plain'),
  screen: look('#0c0e12', 0.25, 'plain'),
  paint: look('#8d8f8c', 0.55, 'plain'),
  skin: look('#b98a6c', 0.55, 'plain'),
  hair: look('#2b211a', 0.62, 'grain'),
  upper: look('#5a6068', 0.88, 'weave'),
  lower: look('#3c4048', 0.88, 'weave'),
  shoe: look('#1c1a19', 0.5, 'plain'),
  feather: look('#c9c8c6', 0.8, 'down'),
  linen: look('#d5d0c4', 0.92, 'weave', { lets: 0.35 }),
  terracotta: look('#a0583c', 0.85, 'stain'),
};
