import type { StandClass } from '../../plan/schema/kit';
import type { Plan } from '../../plan/schema/plan';
import { AT_ORIGIN, standingAt } from '../build/placement';
import type { ShapeBuilder } from '../build/shapeBuilder';
import { add, directionOf, mix, scale, type Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { type OwnPart, ownPart, placeParts } from './part';
import { type Stand, standClassOf } from './references';
import { addLathe, addPipe, addRod } from './rounds';
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

/**
 * A stand: three legs to the circle of its feet, the first towards the heading; a column of risers, each thinner
 * than the one below; an arm in a grip head where it has one. The spigot ends `heightMetres` above the foot,
 * also where that is beyond what the class reaches. All in world coordinates.
 */
export function standParts(stand: Stand, plan: Plan): PlacedPart[] {
  const standClass = standClassOf(stand, plan);
  const collar = Math.min(standClass.collarMetres, stand.heightMetres * 0.6);
  const own = [...legs(standClass, collar), ...column(standClass, stand.heightMetres, collar)];
  const placed = placeParts(own, standingAt(stand.at, stand.headingDegrees));
  return stand.arm ? [...placed, ...placeParts(arm(stand), AT_ORIGIN)] : placed;
}

function legs(standClass: StandClass, collar: number): OwnPart[] {
  const reach = standClass.footprintMetres / 2;
  const thickness = standClass.legTubeMetres / 2;
  const hub = standClass.baseTubeMetres / 2;
  const footHeight = Math.min(0.04, collar / 2);
  const isLow = collar < LOW_COLLAR;
  const ways = [0, 120, 240].map((heading) => directionOf(heading));
  const at = (way: Vec3, out: number, height: number): Vec3 => add(scale(way, out), [0, height, 0]);
  const tubes = ownPart('legs', { substance: 'metal' }, (builder) => {
    addCollar(builder, [0, collar, 0], hub + COLLAR_PROUD);
    for (const way of ways) {
      const [root, foot] = [at(way, hub, collar), at(way, reach, footHeight)];
      addPipe(
        builder,
        isLow ? [root, at(way, reach * 0.72, collar * 0.85), foot] : [root, foot],
        thickness,
        8,
      );
      if (!isLow) {
        const [inner, outer] = [at(way, hub, columnFoot(collar) + 0.03), mix(root, foot, 0.5)];
        addRod(builder, inner, outer, thickness * 0.6, 6);
      }
    }
    if (!isLow) addCollar(builder, [0, columnFoot(collar) + 0.03, 0], hub + COLLAR_PROUD);
  });
  const feet = ownPart('legs', { substance: 'rubber' }, (builder) => {
    for (const way of ways) {
      addRod(builder, at(way, reach, 0), at(way, reach, footHeight + thickness), thickness * 1.5, 6);
    }
  });
  return [tubes, feet];
}

/** Height of the lower end of the column, which hangs free between the legs. */
const columnFoot = (collar: number): number => collar * 0.3;

function addCollar(builder: ShapeBuilder, at: Vec3, tubeRadius: number): void {
  const half = COLLAR_LENGTH / 2;
  addRod(builder, add(at, [0, -half, 0]), add(at, [0, half, 0]), tubeRadius * 1.35 + 0.003, 6);
}

/** Lengths of tube, each from its foot to its head, bottom first; the last ends under the spigot. */
function sectionsOf(
  standClass: StandClass,
  height: number,
  collar: number,
): { readonly from: number; readonly to: number; readonly radius: number }[] {
  const foot = columnFoot(collar);
  const top = Math.max(height - SPIGOT_LENGTH, foot + 0.05);
  const baseTop = Math.max(
    Math.min(standClass.lowestMetres - SPIGOT_LENGTH - 0.08, top),
    Math.min(collar + 0.05, top),
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

function column(standClass: StandClass, height: number, collar: number): OwnPart[] {
  const sections = sectionsOf(standClass, height, collar);
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
