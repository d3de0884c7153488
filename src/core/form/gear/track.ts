import { trackPointAt } from '../../plan/trackLine';
import { AT_ORIGIN, standingAt } from '../build/placement';
import { directionOf, type Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { ownPart, placeParts } from './part';
import type { GearOf } from './references';
import { addPipe } from './rounds';

type Track = GearOf<'track'>;

/** Rails of round tube on sleepers. Source: common practice, no source */
const RAIL_RADIUS = 0.02;
const SLEEPER_HEIGHT = 0.04;
const SLEEPER_WIDTH = 0.06;
const SLEEPER_GAP = 0.6;
const MOST_SLEEPERS = 50;
/** How far the chords of a bent rail may lie from its arc, metres, and the most of them. */
const CHORD_METRES = 0.005;
const MOST_CHORDS = 96;

/** From what a track lies on up to the top of its rails, metres. */
export const RAIL_TOP_METRES = SLEEPER_HEIGHT + 2 * RAIL_RADIUS;

/** How far the sleepers run past the axes of the rails, metres. */
export const SLEEPER_PAST_METRES = 2 * RAIL_RADIUS;

/** The rails as points on their axes, the left one first. */
export const trackRails = (track: Track): readonly (readonly Vec3[])[] =>
  [-1, 1].map((side) => {
    const radius = track.bendMetres === undefined ? 0 : track.bendMetres - (side * track.gaugeMetres) / 2;
    return stepsOf(track, Math.abs(radius)).map((along) =>
      besideTrack(track, along, (side * track.gaugeMetres) / 2, SLEEPER_HEIGHT + RAIL_RADIUS),
    );
  });

/** Where the middles of the sleepers lie along the track, metres from its start. */
export function sleepersOf({ lengthMetres }: Track): readonly number[] {
  const gaps = Math.min(Math.max(Math.round(lengthMetres / SLEEPER_GAP), 1), MOST_SLEEPERS - 1);
  const run = Math.max(lengthMetres - SLEEPER_WIDTH, 0);
  return Array.from({ length: gaps + 1 }, (_, k) => (lengthMetres - run) / 2 + (run * k) / gaps);
}

/** A place so far to the right of the middle line and so far above its ground, metres. */
export function besideTrack(track: Track, alongMetres: number, rightMetres: number, above: number): Vec3 {
  const { at, headingDegrees } = trackPointAt(track, alongMetres);
  const aside = directionOf(headingDegrees + 90);
  return [at[0] + aside[0] * rightMetres, at[1] + above, at[2] + aside[2] * rightMetres];
}

/** Even steps along the middle line, so short that the chords of an arc of a radius keep to it; two for a straight. */
function stepsOf({ lengthMetres, bendMetres }: Track, radius: number): readonly number[] {
  if (bendMetres === undefined) return [0, lengthMetres];
  // A chord over an angle a lies r (1 − cos(a / 2)) ≈ r a² / 8 within its arc.
  const angle = lengthMetres / Math.abs(bendMetres);
  const chords = Math.ceil(angle * Math.sqrt(radius / (8 * CHORD_METRES)));
  const count = Math.min(Math.max(chords, Math.ceil(angle / 0.5), 2), MOST_CHORDS);
  return Array.from({ length: count + 1 }, (_, k) => (lengthMetres * k) / count);
}

/**
 * Dolly track, `at` its middle, where it runs along the heading; straight, or in an arc that is as long as the record
 * along its middle line. The gauge runs from rail to rail.
 */
export function trackParts(track: Track): PlacedPart[] {
  const rails = ownPart('rails', { substance: 'metal' }, (builder) => {
    for (const rail of trackRails(track)) addPipe(builder, rail, RAIL_RADIUS, rail.length > 2 ? 6 : 8);
  });
  const sleepers = ownPart('sleepers', { substance: 'dark metal', smooth: false }, (builder) => {
    for (const along of sleepersOf(track)) {
      const { at, headingDegrees } = trackPointAt(track, along);
      builder.box(
        [0, SLEEPER_HEIGHT / 2, 0],
        [track.gaugeMetres + 2 * SLEEPER_PAST_METRES, SLEEPER_HEIGHT, SLEEPER_WIDTH],
        standingAt(at, headingDegrees),
      );
    }
  });
  return placeParts([rails, sleepers], AT_ORIGIN);
}
