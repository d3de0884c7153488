import type { Vec3 } from '../form/build/vector';
import { onPlane } from './illuminance';
import { type GridQuestion, meteredAt } from './levelGrid';
import type { LightScene } from './lightScene';
import { deckAt } from './wetness';

/** What a meter reads over a place of the roof. */
export interface PlaceReading {
  /** Sky, streets and moon included. */
  readonly lux: number;
  /** What of it comes from which item, strongest first; what gives next to nothing is left out. */
  readonly shares: readonly { readonly itemId: string; readonly label: string; readonly lux: number }[];
}

/** Less than this, lux, is not named and left to all else; an estimate, no source. */
const LEAST_NAMED_LUX = 0.05;

/** What a meter reads at a height over a spot of a deck; null beside all decks. */
export function placeReading(
  scene: LightScene,
  spot: readonly [number, number],
  { heightMetres, of }: Pick<GridQuestion, 'heightMetres' | 'of'>,
): PlaceReading | null {
  const deck = deckAt(scene.plan, [spot[0], spot[1]]);
  if (!deck) return null;
  const place: Vec3 = [spot[0], deck.topMetres + heightMetres, spot[1]];
  const { light, normal } = meteredAt(scene, place, of);
  const { lux, shares } = onPlane(light, normal);
  const byItem = new Map<string, number>();
  for (const share of shares) byItem.set(share.itemId, (byItem.get(share.itemId) ?? 0) + share.lux);
  const labels = new Map(scene.plan.gear.map(({ id, label }) => [id, label]));
  return {
    lux,
    shares: [...byItem]
      .filter(([, each]) => each >= LEAST_NAMED_LUX)
      .sort((a, b) => b[1] - a[1])
      .map(([itemId, each]) => ({ itemId, label: labels.get(itemId) ?? itemId, lux: each })),
  };
}
