import { besideTrack, SLEEPER_PAST_METRES, sleepersOf, trackRails } from '../../../core/form/gear/track';
import { polyline } from '../geometry/paths';
import type { Spot } from '../geometry/spots';
import type { GearOf } from './kinds';

const flat = ([x, , z]: readonly [number, number, number]): Spot => [x, z];

/** Two rails on their sleepers, straight or in their bend. */
export function Track({ gear }: { readonly gear: GearOf<'track'> }) {
  const past = gear.gaugeMetres / 2 + SLEEPER_PAST_METRES;
  const sleepers = sleepersOf(gear).map((along) =>
    polyline([-past, past].map((right) => flat(besideTrack(gear, along, right, 0)))),
  );
  const rails = trackRails(gear).map((rail) => polyline(rail.map(flat)));
  return (
    <>
      <path className="thin" d={sleepers.join('')} />
      <path className="rail" d={rails.join('')} />
    </>
  );
}
