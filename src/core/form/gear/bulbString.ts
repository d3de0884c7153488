import type { Plan } from '../../plan/schema/plan';
import { AT_ORIGIN } from '../build/placement';
import { add, mix, type Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { addGlass, addSocket, glassMetres } from './housings/bulb';
import { ownPart, placeParts } from './part';
import { type GearOf, headClassOf } from './references';
import { addPipe } from './rounds';

export type BulbString = GearOf<'bulb string'>;

/** Radius of the rubber flex of a festoon. Source: common practice, no source */
const WIRE_RADIUS = 0.004;
const WIRE_PIECES = 16;
/** From here on bulbs are turned with fewer sides. */
const MANY_BULBS = 12;

/** A point of the wire at a share of the way: a parabola that hangs `sagMetres` below the chord at its middle. */
function wireAt(string: BulbString, share: number): Vec3 {
  const drop = 4 * string.sagMetres * share * (1 - share);
  return add(mix(string.from, string.to, share), [0, -drop, 0]);
}

/** Where the sockets hang: evenly along the way, half a gap from either end. */
const socketShare = (string: BulbString, index: number): number => (index + 0.5) / string.bulbs;

/** The middle of each bulb's glass, which hangs below the wire by its socket. World metres. */
export function bulbPlaces(string: BulbString, size: Vec3): Vec3[] {
  const below = size[1] - glassMetres(size) / 2;
  return Array.from({ length: string.bulbs }, (_, index) =>
    add(wireAt(string, socketShare(string, index)), [0, -below, 0]),
  );
}

/** A string of bulbs: the wire, the sockets and the glass. World coordinates. */
export function bulbStringParts(string: BulbString, plan: Plan): PlacedPart[] {
  const { size } = headClassOf(string, plan);
  const sides = string.bulbs > MANY_BULBS ? 4 : 6;
  const places = bulbPlaces(string, size);
  return placeParts(
    [
      ownPart('wire', { substance: 'rubber' }, (builder) => {
        const path = Array.from({ length: WIRE_PIECES + 1 }, (_, k) => wireAt(string, k / WIRE_PIECES));
        addPipe(builder, path, WIRE_RADIUS, 5);
      }),
      ownPart('sockets', { substance: 'rubber' }, (builder) => {
        for (const place of places) addSocket(builder, place, [0, -1, 0], size, sides - 1);
      }),
      ownPart('bulbs', { substance: 'glow' }, (builder) => {
        for (const place of places) addGlass(builder, place, [0, -1, 0], size, sides);
      }),
    ],
    AT_ORIGIN,
  );
}
