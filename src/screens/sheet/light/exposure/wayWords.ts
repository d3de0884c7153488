import type { GelAdvice, ScrimAdvice } from '../../../../core/light/advice';
import type { DistanceAdvice } from '../../../../core/light/keyDistance';
import { formatLength, type LengthSystem } from '../../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../../core/units/numbers';
import { formatStopCount } from '../../../../core/units/stops';
import { numberWord } from '../../camera/legal';
import { scrimWords } from '../../fields/beforeWords';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** `Two doubles and a single`, with what is in the lamp; null where less than a quarter of a stop has to go. */
export function scrimText({ doubles, singles, takenStops }: ScrimAdvice): string | null {
  return takenStops === 0 ? null : capital(scrimWords(doubles, singles));
}

/** What scrims leave over; null for next to nothing. */
export function scrimSmall({ leftStops }: ScrimAdvice): string | null {
  if (Math.abs(leftStops) < 0.05) return null;
  return `${formatStopCount(leftStops)} ${leftStops > 0 ? 'over' : 'under'} it then.`;
}

/** `Neutral gel of 0.75`; null where next to nothing has to go. */
export const gelText = ({ density }: GelAdvice): string | null =>
  density < 0.005 ? null : `Neutral gel of ${formatNumber(density, 2)}`;

/** `Back it off 1.30 m, to 5.20 m`, `Bring it 0.80 m nearer, to 3.10 m`. */
export function distanceText({ metres, backMetres }: DistanceAdvice, lengths: LengthSystem): string {
  const by = formatLength(Math.abs(backMetres), lengths);
  const to = formatLength(metres, lengths);
  return backMetres >= 0 ? `Back it off ${by}, to ${to}` : `Bring it ${by} nearer, to ${to}`;
}

/** `2 stops under`, `on the exposure`, `half a stop over` as a number. */
export function underText(stopsUnder: number): string {
  if (stopsUnder === 0) return 'on the exposure';
  const size = Math.abs(stopsUnder);
  return `${numberWord(size, 2)}${NBSP}${size === 1 ? 'stop' : 'stops'} ${stopsUnder > 0 ? 'under' : 'over'}`;
}

/** `21 lx, 0.9 stops under` of a key as it is. */
export const standsText = (stops: number): string => {
  const tenths = Math.round(stops * 10) / 10;
  return underText(tenths === 0 ? 0 : -tenths);
};
