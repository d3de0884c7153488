import type { DuskLight } from '../../../../core/night/dusk/lightThroughDusk';
import { formatLight, type LightUnit, LUX_PER_FOOTCANDLE } from '../../../../core/units/illuminance';
import { formatNumber, NBSP } from '../../../../core/units/numbers';
import { DAY_MINUTES } from '../../../../desk/night/duskStore';

/** A curve of lux against minutes of the night, drawn in a box: logarithmic upwards, a tenth of the light a step. */
interface DuskLine {
  readonly x: (minutes: number) => number;
  readonly y: (lux: number) => number;
  readonly from: number;
  readonly until: number;
  /** Powers of ten within it, lux. */
  readonly decades: readonly number[];
}

/** Less light than this is at the foot of the curve, lux: a night without moon or town. */
const LEAST_LUX = 0.0005;

/** The scales of a curve; null for no dusk. */
export function duskLine(dusk: readonly DuskLight[], width: number, height: number): DuskLine | null {
  if (dusk.length < 2) return null;
  const [from, until] = [dusk[0].minutes - DAY_MINUTES, dusk[dusk.length - 1].minutes];
  const all = dusk.map(({ skyLux }) => Math.max(LEAST_LUX, skyLux));
  const top = Math.ceil(Math.log10(Math.max(...all)));
  const foot = Math.min(top - 1, Math.floor(Math.log10(Math.min(...all))));
  return {
    from,
    until,
    x: (minutes) => ((minutes - from) / (until - from)) * width,
    y: (lux) => height - ((Math.log10(Math.max(10 ** foot, lux)) - foot) / (top - foot)) * height,
    decades: Array.from({ length: top - foot + 1 }, (_, k) => 10 ** (foot + k)),
  };
}

/** A level to read, of which two figures are left however dark it is: `0.0032 lx`. */
export function faintLight(lux: number, unit: LightUnit): string {
  const level = unit === 'lx' ? lux : lux / LUX_PER_FOOTCANDLE;
  if (level >= 0.0995 || level < 1e-6) return formatLight(lux, unit);
  return `${formatNumber(level, 1 - Math.floor(Math.log10(level)))}${NBSP}${unit}`;
}

/** The path of a curve. */
export const duskPath = (
  dusk: readonly DuskLight[],
  { x, y }: DuskLine,
  of: (light: DuskLight) => number,
): string =>
  dusk
    .map((light, k) => `${k === 0 ? 'M' : 'L'}${x(light.minutes).toFixed(1)} ${y(of(light)).toFixed(1)}`)
    .join('');
