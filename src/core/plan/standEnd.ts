import { cos, sin } from '../units/steadyMath';
import { headingWay } from './runs';
import type { Gear } from './schema/gear';
import type { Point } from './schema/numbers';

export type Stand = Extract<Gear, { readonly kind: 'stand' }>;

/** Where a stand holds what it carries, world metres: the top of its spigot, or the far end of its arm. */
export function standEnd({ at, heightMetres, arm }: Stand): Point {
  const top: Point = [at[0], at[1] + heightMetres, at[2]];
  if (!arm) return top;
  const tilt = (arm.tiltDegrees * Math.PI) / 180;
  const [east, south] = headingWay(arm.headingDegrees);
  const out = cos(tilt) * arm.lengthMetres;
  return [top[0] + east * out, top[1] + sin(tilt) * arm.lengthMetres, top[2] + south * out];
}
