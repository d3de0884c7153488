import { polyline } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';
import type { GearOf } from './kinds';

/** Spacing of sleepers, and how far they run past the rails, as the track's form has them; metres. */
const SLEEPER_GAP = 0.6;
const SLEEPER_PAST = 0.04;

/** Two rails on their sleepers. */
export function Track({ gear }: { readonly gear: GearOf<'track'> }) {
  const half = gear.lengthMetres / 2;
  const x = gear.gaugeMetres / 2;
  const own = (across: number, along: number): Spot =>
    standing([gear.at[0], gear.at[2]], gear.headingDegrees, [across, along]);
  const gaps = Math.min(Math.max(Math.round(gear.lengthMetres / SLEEPER_GAP), 1), 49);
  const sleepers = Array.from({ length: gaps + 1 }, (_, k) => {
    const along = (half - 0.03) * (1 - (2 * k) / gaps);
    return polyline([own(-x - SLEEPER_PAST, along), own(x + SLEEPER_PAST, along)]);
  });
  return (
    <>
      <path className="thin" d={sleepers.join('')} />
      <path
        className="rail"
        d={[-x, x].map((side) => polyline([own(side, -half), own(side, half)])).join('')}
      />
    </>
  );
}
