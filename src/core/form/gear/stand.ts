import type { StandClass } from '../../plan/schema/kit';
import type { Plan } from '../../plan/schema/plan';
import { hypot } from '../../units/steadyMath';
import { AT_ORIGIN, moved, standingAt } from '../build/placement';
import type { ShapeBuilder } from '../build/shapeBuilder';
import { add, directionOf, mix, scale, type Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { type OwnPart, ownPart, placeParts } from './part';
import { type Stand, standClassOf } from './references';
import { addLathe, addPipe, addRod } from './rounds';
import { lobeOf } from './sandbag';
import { bagPlaces, bagsOnLegs, lobeAside, type PlaceOnLeg } from './standBags';
import { spigotTop, standTop } from './standTop';

/** Diameter and height of the common baby spigot: 5/8 in. Source: common practice, no source */
const SPIGOT_RADIUS = 0.0079;
const SPIGOT_LENGTH = 0.08;
/** How far a riser sits in the tube below it. */
const OVERLAP = 0.06;
const COLLAR_LENGTH = 0.05;
/** How far the collar of a riser reaches over its end, and that of the legs stands out from it. */
const COLLAR_PROUD = 0.002;
/** Below this collar the legs lie low and bend down to their feet, and need no braces. */
const LOW_COLLAR = 0.4;

/** The least that is left of the column above the collar of legs that are drawn in, metres. */
const ABOVE_COLLAR = 0.2;
const FOOT_METRES = 0.04;

/** How a stand's legs stand: their spread, and where they meet the column. Metres. */
export interface Legs {
  /** From the middle of the stand to the middle of a foot. */
  readonly reach: number;
  readonly collar: number;
  /** How much higher the collar is than with the legs opened as far as the class lets them. */
  readonly lift: number;
  /** Whether they lie low and bend down to their feet. */
  readonly isLow: boolean;
}

/**
 * The legs of a stand of a class. They keep their length when their feet are drawn in: the collar rises along the
 * column, as far as the column reaches above it. Opened wider than the class lets them they are drawn longer, since
 * the feet stand where the plan says.
 */
export function legsOfStand(stand: Stand, standClass: StandClass): Legs {
  const open = Math.min(standClass.collarMetres, stand.heightMetres * 0.6);
  const isLow = open < LOW_COLLAR;
  const { spreadMetres } = stand;
  const reach = (spreadMetres ?? standClass.footprintMetres) / 2;
  if (spreadMetres === undefined) return { reach, collar: open, lift: 0, isLow };
  const hub = standClass.baseTubeMetres / 2;
  const foot = Math.min(FOOT_METRES, standClass.collarMetres / 2);
  const length = hypot(standClass.footprintMetres / 2 - hub, standClass.collarMetres - foot);
  const aside = reach - hub;
  const folded = foot + Math.sqrt(Math.max(length * length - aside * aside, 0));
  const drawnIn = Math.min(1, Math.max(0, 2 * (1 - spreadMetres / standClass.footprintMetres)));
  const room = Math.max(stand.heightMetres - ABOVE_COLLAR, stand.heightMetres * 0.6);
  const highest = stand.heightMetres * 0.6 * (1 - drawnIn) + room * drawnIn;
  const collar = Math.max(Math.min(folded, highest), open * 0.5);
  return { reach, collar, lift: collar - open, isLow };
}

/** Where the feet of a stand stand, the first towards its heading; world metres. */
export function standFeet(stand: Stand, standClass: StandClass): readonly Vec3[] {
  const { reach } = legsOfStand(stand, standClass);
  return LEG_WAYS.map((way) => add(stand.at, scale(directionOf(stand.headingDegrees + way), reach)));
}

/** A bag over a leg as it is seen from above. */
export interface LegBag {
  /** World metres, on the axis of the leg. */
  readonly at: Vec3;
  /** Compass heading of the leg. */
  readonly headingDegrees: number;
  /** Half of what it takes across the leg and along it, metres. */
  readonly half: readonly [across: number, along: number];
}

/** The bags over a stand's legs. */
export function legBags(stand: Stand, standClass: StandClass): readonly LegBag[] {
  const { bags } = stand;
  if (!bags) return [];
  const legs = legsOfStand(stand, standClass);
  const placement = standingAt(stand.at, stand.headingDegrees);
  const { width, length } = lobeOf(bags.kilograms);
  return bagPlaces(bags.count).map(({ leg, share }) => {
    const place = placeOnLeg(standClass, legs, leg, share);
    return {
      at: moved(placement, place.at),
      headingDegrees: stand.headingDegrees + place.headingDegrees,
      half: [lobeAside(bags.kilograms, place.radius) + width / 2, length / 2],
    };
  });
}

/**
 * A stand: three legs to the circle of its feet, the first towards the heading; a column of risers, each thinner
 * than the one below; sandbags over the legs and an arm in a grip head where it has them. The spigot ends
 * `heightMetres` above the foot, also where that is beyond what the class reaches. All in world coordinates.
 */
export function standParts(stand: Stand, plan: Plan): PlacedPart[] {
  const standClass = standClassOf(stand, plan);
  const legs = legsOfStand(stand, standClass);
  const own = [
    ...legParts(standClass, legs),
    ...column(standClass, stand.heightMetres, legs),
    ...(stand.bags ? bagsOnLegs(stand.bags, (leg, share) => placeOnLeg(standClass, legs, leg, share)) : []),
  ];
  const placed = placeParts(own, standingAt(stand.at, stand.headingDegrees));
  return stand.arm ? [...placed, ...placeParts(arm(stand), AT_ORIGIN)] : placed;
}

/** Compass ways of the legs from the stand's heading, degrees. */
const LEG_WAYS = [0, 120, 240] as const;

/** The axis of a leg in the stand's own frame, from its root at the collar to its foot. */
function legAxis(standClass: StandClass, { reach, collar, isLow }: Legs, way: Vec3): readonly Vec3[] {
  const at = (out: number, height: number): Vec3 => add(scale(way, out), [0, height, 0]);
  const root = at(standClass.baseTubeMetres / 2, collar);
  const foot = at(reach, Math.min(FOOT_METRES, collar / 2));
  return isLow ? [root, at(reach * 0.72, collar * 0.85), foot] : [root, foot];
}

/** A place a share of the way from the column out to a foot, on the axis of a leg. */
function placeOnLeg(standClass: StandClass, legs: Legs, leg: number, share: number): PlaceOnLeg {
  const headingDegrees = LEG_WAYS[leg % LEG_WAYS.length];
  const axis = legAxis(standClass, legs, directionOf(headingDegrees));
  const out = (p: Vec3): number => hypot(p[0], p[2]);
  const wanted = out(axis[0]) + (out(axis[axis.length - 1]) - out(axis[0])) * share;
  const [from, to] = axis.length > 2 && wanted > out(axis[1]) ? [axis[1], axis[2]] : [axis[0], axis[1]];
  const run = out(to) - out(from);
  return {
    at: mix(from, to, Math.abs(run) > 1e-9 ? (wanted - out(from)) / run : share),
    headingDegrees,
    radius: standClass.legTubeMetres / 2,
  };
}

function legParts(standClass: StandClass, legs: Legs): OwnPart[] {
  const { reach, collar, isLow } = legs;
  const thickness = standClass.legTubeMetres / 2;
  const hub = standClass.baseTubeMetres / 2;
  const footHeight = Math.min(FOOT_METRES, collar / 2);
  const ways = LEG_WAYS.map((heading) => directionOf(heading));
  const at = (way: Vec3, out: number, height: number): Vec3 => add(scale(way, out), [0, height, 0]);
  const sleeve = columnFoot(legs) + 0.03;
  const tubes = ownPart('legs', { substance: 'metal' }, (builder) => {
    addCollar(builder, [0, collar, 0], hub + COLLAR_PROUD);
    for (const way of ways) {
      const axis = legAxis(standClass, legs, way);
      addPipe(builder, axis, thickness, 8);
      if (!isLow) addRod(builder, at(way, hub, sleeve), mix(axis[0], axis[1], 0.5), thickness * 0.6, 6);
    }
    if (!isLow) addCollar(builder, [0, sleeve, 0], hub + COLLAR_PROUD);
  });
  const feet = ownPart('legs', { substance: 'rubber' }, (builder) => {
    for (const way of ways) {
      addRod(builder, at(way, reach, 0), at(way, reach, footHeight + thickness), thickness * 1.5, 6);
    }
  });
  return [tubes, feet];
}

/** Height of the lower end of the column, which hangs free between the legs and rises as they are drawn in. */
const columnFoot = ({ collar, lift }: Legs): number =>
  Math.max((collar - lift) * 0.3 + lift, Math.min(0.02, collar * 0.3));

function addCollar(builder: ShapeBuilder, at: Vec3, tubeRadius: number): void {
  const half = COLLAR_LENGTH / 2;
  addRod(builder, add(at, [0, -half, 0]), add(at, [0, half, 0]), tubeRadius * 1.35 + 0.003, 6);
}

/** Lengths of tube, each from its foot to its head, bottom first; the last ends under the spigot. */
function sectionsOf(
  standClass: StandClass,
  height: number,
  legs: Legs,
): { readonly from: number; readonly to: number; readonly radius: number }[] {
  const foot = columnFoot(legs);
  const top = Math.max(height - SPIGOT_LENGTH, foot + 0.05);
  const baseTop = Math.max(
    Math.min(standClass.lowestMetres + legs.lift - SPIGOT_LENGTH - 0.08, top),
    Math.min(legs.collar + 0.05, top),
  );
  const risers = top - baseTop < 0.02 ? 0 : standClass.sections - 1;
  const baseEnd = risers === 0 ? top : baseTop;
  const rise = risers === 0 ? 0 : (top - baseTop) / risers;
  return Array.from({ length: risers + 1 }, (_, k) => ({
    from: k === 0 ? foot : baseEnd + rise * (k - 1) - OVERLAP,
    to: baseEnd + rise * k,
    radius: Math.max((standClass.baseTubeMetres - standClass.tubeStepMetres * k) / 2, 0.004),
  }));
}

function column(standClass: StandClass, height: number, legs: Legs): OwnPart[] {
  const sections = sectionsOf(standClass, height, legs);
  const top = sections[sections.length - 1];
  const tubes = ownPart('column', { substance: 'metal' }, (builder) => {
    for (const { from, to, radius } of sections) addRod(builder, [0, from, 0], [0, to, 0], radius);
    const spigot = Math.min(SPIGOT_RADIUS, top.radius);
    addRod(builder, [0, top.to, 0], [0, Math.max(height, top.to + 0.01), 0], spigot);
  });
  const knobs = ownPart('column', { substance: 'dark metal' }, (builder) => {
    for (const { to, radius } of sections) {
      const at: Vec3 = [0, to + COLLAR_PROUD - COLLAR_LENGTH / 2, 0];
      addCollar(builder, at, radius);
      addKnob(builder, at, [0.94, 0, 0.34], radius + 0.004);
    }
  });
  return [tubes, knobs];
}

/** A knob that clamps the riser above, standing off its tube. */
function addKnob(builder: ShapeBuilder, at: Vec3, way: Vec3, standOff: number): void {
  const axis = { at: add(at, scale(way, standOff)), along: way };
  addLathe(
    builder,
    axis,
    [
      [0, 0.008],
      [0.034, 0.014],
    ],
    6,
  );
}

/** Radius of a grip arm: 5/8 in tube. Source: common practice, no source */
export const ARM_RADIUS = 0.0079;

function arm(stand: Stand): OwnPart[] {
  const top = spigotTop(stand);
  const { at: end, headingDegrees, outward } = standTop(stand);
  const sideways = directionOf(headingDegrees + 90);
  return [
    ownPart('arm', { substance: 'metal' }, (builder) => {
      addRod(
        builder,
        add(top, scale(outward, -Math.min(0.12, (stand.arm?.lengthMetres ?? 0) / 4))),
        end,
        ARM_RADIUS,
      );
    }),
    ownPart('arm', { substance: 'dark metal' }, (builder) => {
      addGripHead(builder, top, sideways);
    }),
  ];
}

/** The pair of round plates that clamps an arm or the pin of a frame, turned by a handle. */
export function addGripHead(builder: ShapeBuilder, at: Vec3, sideways: Vec3): void {
  addLathe(
    builder,
    { at: add(at, scale(sideways, -0.03)), along: sideways },
    [
      [0, 0.025],
      [0.015, 0.032],
      [0.045, 0.032],
      [0.06, 0.025],
    ],
    10,
  );
  addRod(builder, add(at, scale(sideways, 0.03)), add(at, scale(sideways, 0.07)), 0.008, 6);
}
