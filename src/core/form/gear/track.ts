import { standingAt } from '../build/placement';
import type { PlacedPart } from '../types';
import { ownPart, placeParts } from './part';
import type { GearOf } from './references';
import { addRod } from './rounds';

/** Rails of round tube on sleepers. Source: common practice, no source */
const RAIL_RADIUS = 0.02;
const SLEEPER_HEIGHT = 0.04;
const SLEEPER_WIDTH = 0.06;
const SLEEPER_GAP = 0.6;
const MOST_SLEEPERS = 50;

/** Straight dolly track, `at` its middle, its rails along the heading; the gauge runs from rail to rail. */
export function trackParts(track: GearOf<'track'>): PlacedPart[] {
  const half = track.lengthMetres / 2;
  const x = track.gaugeMetres / 2;
  const rails = ownPart('rails', { substance: 'metal' }, (builder) => {
    const y = SLEEPER_HEIGHT + RAIL_RADIUS;
    for (const side of [-x, x]) addRod(builder, [side, y, half], [side, y, -half], RAIL_RADIUS);
  });
  const sleepers = ownPart('sleepers', { substance: 'dark metal', smooth: false }, (builder) => {
    const gaps = Math.min(Math.max(Math.round(track.lengthMetres / SLEEPER_GAP), 1), MOST_SLEEPERS - 1);
    const run = Math.max(track.lengthMetres - SLEEPER_WIDTH, 0);
    for (let k = 0; k <= gaps; k += 1) {
      const z = run / 2 - (run * k) / gaps;
      builder.box(
        [0, SLEEPER_HEIGHT / 2, z],
        [track.gaugeMetres + 4 * RAIL_RADIUS, SLEEPER_HEIGHT, SLEEPER_WIDTH],
      );
    }
  });
  return placeParts([rails, sleepers], standingAt(track.at, track.headingDegrees));
}
