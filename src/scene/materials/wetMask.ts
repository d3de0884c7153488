import { DECK_SKINS, wetShare } from '../../core/light/wetness';
import type { Ground, Wetness } from '../../core/plan/schema/ground';
import type { Spot } from '../../core/plan/schema/numbers';
import type { Plan } from '../../core/plan/schema/plan';

/** Water whose slopes are less stands, and mirrors as one. */
const STANDING_SLOPE = 0.01;

const sharesOf = (wetness: Wetness): readonly [film: number, puddle: number] => [
  wetShare(wetness),
  DECK_SKINS[wetness].reduce((sum, { share, slope }) => (slope < STANDING_SLOPE ? sum + share : sum), 0),
];

/** Share of the deck under a film, standing water included, and under standing water, by how the ground is: core's skins. */
export const WET_SHARES: Readonly<Record<Wetness, readonly [film: number, puddle: number]>> = {
  dry: sharesOf('dry'),
  damp: sharesOf('damp'),
  'wet down': sharesOf('wet down'),
  puddled: sharesOf('puddled'),
};

/** The shares of film and standing water over a rectangle of the roof, two bytes a texel, row by row from the back. */
export interface WetMask {
  readonly width: number;
  readonly height: number;
  /** The corner at the left and the back, and the sides, metres. */
  readonly from: Spot;
  readonly size: Spot;
  readonly texels: Uint8Array;
}

/** As fine as the picture's edge may be soft, and as many as a card takes at ease. */
const TEXEL_METRES = 0.04;
const MOST_TEXELS = 1024;
/** Around the areas, so that the outermost texels are as the ground is. */
const AROUND_METRES = 0.5;

type Box = readonly [left: number, back: number, right: number, front: number];

function boxAround(spots: readonly Spot[]): Box {
  let [left, back, right, front] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, z] of spots) {
    [left, right] = [Math.min(left, x), Math.max(right, x)];
    [back, front] = [Math.min(back, z), Math.max(front, z)];
  }
  return [left, back, right, front];
}

/** Fills the texels whose middles lie in an outline, by the even-odd rule. */
function fill(mask: WetMask, outline: readonly Spot[], bytes: readonly [number, number]): void {
  const { width, height, from, size, texels } = mask;
  const perTexel: Spot = [size[0] / width, size[1] / height];
  for (let row = 0; row < height; row += 1) {
    const z = from[1] + (row + 0.5) * perTexel[1];
    const xs: number[] = [];
    outline.forEach(([ax, az], k) => {
      const [bx, bz] = outline[(k + 1) % outline.length];
      if (az > z !== bz > z) xs.push(ax + ((z - az) / (bz - az)) * (bx - ax));
    });
    xs.sort((a, b) => a - b);
    for (let k = 0; k + 1 < xs.length; k += 2) {
      const first = Math.max(0, Math.ceil((xs[k] - from[0]) / perTexel[0] - 0.5));
      const last = Math.min(width - 1, Math.ceil((xs[k + 1] - from[0]) / perTexel[0] - 0.5) - 1);
      for (let column = first; column <= last; column += 1) texels.set(bytes, 2 * (row * width + column));
    }
  }
}

const bytesOf = (wetness: Ground['wetness']): readonly [number, number] => {
  const [film, puddle] = WET_SHARES[wetness];
  return [Math.round(film * 255), Math.round(puddle * 255)];
};

/** How wet the decks are, as a picture over the areas that reach over them; null where none does. */
export function wetMaskOf({ ground, pieces }: Plan): WetMask | null {
  const { areas = [], wetness } = ground;
  if (areas.length === 0) return null;
  const around = boxAround(areas.flatMap(({ outline }) => outline));
  const decks = boxAround(pieces.flatMap((piece) => (piece.kind === 'deck' ? piece.outline : [])));
  const left = Math.max(around[0], decks[0]) - AROUND_METRES;
  const back = Math.max(around[1], decks[1]) - AROUND_METRES;
  const size: Spot = [
    Math.min(around[2], decks[2]) + AROUND_METRES - left,
    Math.min(around[3], decks[3]) + AROUND_METRES - back,
  ];
  if (!(size[0] > 2 * AROUND_METRES && size[1] > 2 * AROUND_METRES)) return null;
  const [width, height] = size.map((metres) => Math.min(MOST_TEXELS, Math.ceil(metres / TEXEL_METRES)));
  const mask: WetMask = {
    width,
    height,
    from: [left, back],
    size,
    texels: new Uint8Array(2 * width * height),
  };
  const [film, puddle] = bytesOf(wetness);
  for (let at = 0; at < mask.texels.length; at += 2) mask.texels.set([film, puddle], at);
  for (const area of areas) fill(mask, area.outline, bytesOf(area.wetness));
  return mask;
}
