import { isWithin } from './areas';
import type { Ground, WetArea, Wetness } from './schema/ground';
import type { Spot } from './schema/numbers';
import type { Plan } from './schema/plan';

/** How wet a deck can be, driest first. */
export const WETNESSES: readonly Wetness[] = ['dry', 'damp', 'wet down', 'puddled'];

/** Whether a deck that is so wet mirrors. */
export const isMirroring = (wetness: Wetness): boolean => wetness === 'wet down' || wetness === 'puddled';

/** The area that lies uppermost at a place [x, z], metres, its edge included; null outside of all. */
export const areaAt = (ground: Ground, spot: Spot): WetArea | null =>
  ground.areas?.findLast(({ outline }) => isWithin(outline, spot)) ?? null;

/** How wet the decks are at a place [x, z], metres: as the uppermost area there says, else as the ground is. */
export const wetnessAt = ({ ground }: Plan, spot: Spot): Wetness =>
  areaAt(ground, spot)?.wetness ?? ground.wetness;

/** Each way in which the ground is wet somewhere, were all of its areas on a deck. */
export const wetnessesOf = ({ wetness, areas = [] }: Ground): readonly Wetness[] =>
  WETNESSES.filter((each) => each === wetness || areas.some((area) => area.wetness === each));

/** What a wet area is called: by its name, else by how wet it is and its number; *area* where it is not there. */
export function nameOfArea({ areas = [] }: Ground, id: string): string {
  const index = areas.findIndex((area) => area.id === id);
  if (index < 0) return 'area';
  const { label, wetness } = areas[index];
  return label ?? `${wetness.charAt(0).toUpperCase()}${wetness.slice(1)} area ${index + 1}`;
}
