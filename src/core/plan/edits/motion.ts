import { cos, sin } from '../../units/steadyMath';
import type { Looks, Mark, Towards } from '../schema/cast';
import type { Gear } from '../schema/gear';
import { FARTHEST_METRES, type Point, type Spot } from '../schema/numbers';
import type { Piece } from '../schema/pieces';
import type { Cheat } from '../schema/setup';
import { sameSpot, tidyCoordinate, tidyHeading, tidySpot } from './tidy';

/** A rigid motion over the deck, either handed: what it does to places, headings and aims. Results are tidy. */
export interface Motion {
  readonly spot: (spot: Spot) => Spot;
  readonly heading: (degrees: number) => number;
  /** What lamps are aimed at; where it stays, a moved lamp still lights what it lit. */
  readonly aim: (spot: Spot) => Spot;
  readonly mirrored: boolean;
}

/** An axis to mirror at: a place on it, and its compass bearing. */
export interface Axis {
  readonly at: Spot;
  readonly bearingDegrees: number;
}

const stays = <Value>(value: Value): Value => value;
/** A number moved by nothing keeps the digits that the file has. */
const shifted = (metres: number, by: number): number => (by === 0 ? metres : tidyCoordinate(metres + by));

/** A move by [x, z], metres. Headings and aims stay. */
export function translation([dx, dz]: Spot): Motion {
  return {
    spot: ([x, z]) => [shifted(x, dx), shifted(z, dz)],
    heading: stays,
    aim: stays,
    mirrored: false,
  };
}

/** Sine and cosine of an angle in degrees, exact at quarter turns. */
function turnOf(degrees: number): readonly [number, number] {
  const quarters = (((degrees / 90) % 4) + 4) % 4;
  if (quarters === 0) return [0, 1];
  if (quarters === 1) return [1, 0];
  if (quarters === 2) return [0, -1];
  if (quarters === 3) return [-1, 0];
  return [sin((degrees * Math.PI) / 180), cos((degrees * Math.PI) / 180)];
}

/** A turn about a place, clockwise seen from above. Aims turn along. */
export function rotation(about: Spot, degrees: number): Motion {
  const [sine, cosine] = turnOf(degrees);
  const spot = (from: Spot): Spot => {
    if (sameSpot(from, about)) return from;
    const [x, z] = [from[0] - about[0], from[1] - about[1]];
    return tidySpot([about[0] + x * cosine - z * sine, about[1] + x * sine + z * cosine]);
  };
  return { spot, heading: (before) => tidyHeading(before + degrees), aim: spot, mirrored: false };
}

/** A reflection at an axis. Aims are reflected. */
export function reflection({ at, bearingDegrees }: Axis): Motion {
  const [sine, cosine] = turnOf(2 * bearingDegrees);
  const spot = (from: Spot): Spot => {
    const [x, z] = [from[0] - at[0], from[1] - at[1]];
    return tidySpot([at[0] - x * cosine - z * sine, at[1] - x * sine + z * cosine]);
  };
  return { spot, heading: (before) => tidyHeading(2 * bearingDegrees - before), aim: spot, mirrored: true };
}

/** One motion after another. */
export function after(second: Motion, first: Motion): Motion {
  return {
    spot: (spot) => second.spot(first.spot(spot)),
    heading: (degrees) => second.heading(first.heading(degrees)),
    aim: (spot) => second.aim(first.aim(spot)),
    mirrored: first.mirrored !== second.mirrored,
  };
}

/** A point moved over the deck, and raised. */
function moved(point: Point, to: (spot: Spot) => Spot, by: number): Point {
  const [x, z] = to([point[0], point[2]]);
  return [x, shifted(point[1], by), z];
}

/** A set piece moved, and raised by so many metres. */
export function movedPiece(piece: Piece, motion: Motion, by: number): Piece {
  const { spot, heading } = motion;
  if (piece.kind === 'deck') {
    return {
      ...piece,
      outline: piece.outline.map(spot),
      ...(piece.holes && {
        holes: piece.holes.map((hole) => ({ ...hole, outline: hole.outline.map(spot) })),
      }),
      topMetres: shifted(piece.topMetres, by),
    };
  }
  if ('path' in piece)
    return { ...piece, path: piece.path.map(spot), baseMetres: shifted(piece.baseMetres, by) };
  if ('from' in piece) return { ...piece, from: moved(piece.from, spot, by), to: moved(piece.to, spot, by) };
  const standing = { at: moved(piece.at, spot, by), headingDegrees: heading(piece.headingDegrees) };
  if (piece.kind === 'stair house' && motion.mirrored) {
    const door = { ...piece.door, alongMetres: 0 - piece.door.alongMetres };
    return { ...piece, ...standing, door };
  }
  return { ...piece, ...standing };
}

/** A piece of gear moved, and raised by so many metres; what a stand carries only turns. */
export function movedGear(gear: Gear, motion: Motion, by: number): Gear {
  const { spot, heading } = motion;
  const placed = (place: Extract<Gear, { readonly place: unknown }>['place']) =>
    'at' in place ? { at: moved(place.at, spot, by) } : place;
  switch (gear.kind) {
    case 'head':
      return { ...gear, place: placed(gear.place), aim: moved(gear.aim, motion.aim, 0) };
    case 'flag':
    case 'frame':
    case 'bounce':
    case 'monitor':
      return { ...gear, place: placed(gear.place), headingDegrees: heading(gear.headingDegrees) };
    case 'bulb string':
      return { ...gear, from: moved(gear.from, spot, by), to: moved(gear.to, spot, by) };
    case 'cable':
      return { ...gear, path: gear.path.map(spot), baseMetres: shifted(gear.baseMetres, by) };
    default: {
      const standing = { at: moved(gear.at, spot, by), headingDegrees: heading(gear.headingDegrees) };
      if (gear.kind === 'stand' && gear.arm) {
        const arm = { ...gear.arm, headingDegrees: heading(gear.arm.headingDegrees) };
        return { ...gear, ...standing, arm };
      }
      if (gear.kind === 'track' && gear.bendMetres !== undefined && motion.mirrored)
        return { ...gear, ...standing, bendMetres: 0 - gear.bendMetres };
      return { ...gear, ...standing };
    }
  }
}

/** What a body faces, moved: a point like what a lamp is aimed at, which stays where the motion is a plain move. */
const towards = (to: Towards, motion: Motion): Towards =>
  'who' in to ? to : { point: moved(to.point, motion.aim, 0) };

/** The same for the head; one turned by angles turns the other way in a mirror. */
function lookingTo(to: Looks, motion: Motion): Looks {
  if (!('turnDegrees' in to)) return towards(to, motion);
  return motion.mirrored ? { ...to, turnDegrees: 0 - to.turnDegrees } : to;
}

/** A mark that turns where it has to once its performer has moved; with the way to it where that moves too. */
export function turnedMark(mark: Mark, motion: Motion, withWay: boolean): Mark {
  const { faces, looks, facesOnTheWay, looksOnTheWay, way } = mark;
  return {
    ...mark,
    ...(faces && { faces: towards(faces, motion) }),
    ...(looks && { looks: lookingTo(looks, motion) }),
    ...(way && withWay && { way: { ...way, through: way.through.map(motion.spot) } }),
    ...(facesOnTheWay && withWay && { facesOnTheWay: towards(facesOnTheWay, motion) }),
    ...(looksOnTheWay && withWay && { looksOnTheWay: lookingTo(looksOnTheWay, motion) }),
  };
}

/** A setup's cheated mark moved. */
export const movedCheat = (cheat: Cheat, motion: Motion): Cheat => ({
  ...cheat,
  at: motion.spot(cheat.at),
  ...(cheat.headingDegrees !== undefined && { headingDegrees: motion.heading(cheat.headingDegrees) }),
});

/** A mark moved, its floor raised by so many metres. */
export function movedMark(mark: Mark, motion: Motion, by: number): Mark {
  const floorMetres = shifted(mark.floorMetres ?? 0, by);
  const { floorMetres: _, ...rest } = mark;
  const at = motion.spot(mark.at);
  const headingDegrees = motion.heading(mark.headingDegrees);
  // A floor at 0 is left out, as it is in a new mark, unless the file says it.
  return floorMetres === 0 && mark.floorMetres !== 0
    ? { ...rest, at, headingDegrees }
    : { ...mark, at, headingDegrees, floorMetres };
}

/** The record before where nothing in it changed: who caches by record need not work anew. */
export const orSame = <Entry extends object>(before: Entry, now: Entry): Entry =>
  before !== now && JSON.stringify(before) === JSON.stringify(now) ? before : now;

/** The list with every entry changed; the same list when none was. */
export function changed<Entry>(list: Entry[], change: (entry: Entry) => Entry): Entry[] {
  const next = list.map(change);
  return next.some((entry, index) => entry !== list[index]) ? next : list;
}

/** How far something may still move by, so that none of its coordinates leaves what a plan may hold. */
export function withinReach(coordinates: readonly number[], by: number): number {
  const lowest = Math.min(...coordinates);
  const highest = Math.max(...coordinates);
  if (coordinates.length === 0) return by;
  return Math.min(Math.max(by, -FARTHEST_METRES - lowest), FARTHEST_METRES - highest);
}
