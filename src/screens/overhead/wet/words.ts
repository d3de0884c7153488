import type { Ground } from '../../../core/plan/schema/ground';
import { nameOfArea } from '../../../core/plan/wetness';
import { nameInText } from '../words';

/** What the drawing letters an area with: how wet it is, after its name where it has one. */
export function areaLettering({ areas = [] }: Ground, id: string): string {
  const area = areas.find((each) => each.id === id);
  if (!area) return '';
  return area.label === undefined ? area.wetness : `${nameInText(area.label)}, ${area.wetness}`;
}

/** What a screen reader says of an area. */
export function spokenArea(ground: Ground, id: string): string {
  const area = ground.areas?.find((each) => each.id === id);
  if (!area) return '';
  const name = nameOfArea(ground, id);
  return area.label === undefined ? `${name} of the ground` : `${name}, ${area.wetness} area of the ground`;
}
