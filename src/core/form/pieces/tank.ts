import { type Placement, standingAt } from '../build/placement';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';

const DRUM_SIDES = 24;
/** Sizes of a common roof tank, as shares of its own where they grow with it; common practice, no source. */
const LID_OVERHANG_METRES = 0.08;
const LID_RISE_SHARE = 0.22;
const HOOP_METRES = 0.035;
const HOOP_PROUD_METRES = 0.012;
const PLATFORM_METRES = 0.16;
const LEG_RADIUS_METRES = 0.06;
const BRACE_RADIUS_METRES = 0.02;

/**
 * A water tank: `drum` of the record's diameter and height on `legs` of the record's height, four of them and
 * splayed, with crossed `braces` and a `platform` under the drum; `hoops` around it and a conical `lid` above.
 */
export function tankParts(tank: PieceOf<'tank'>): readonly PlacedPart[] {
  const placement = standingAt(tank.at, tank.headingDegrees);
  const radius = tank.diameterMetres / 2;
  const [low, high] = [tank.legMetres, tank.legMetres + tank.drumMetres];
  const drum = new ShapeBuilder().cone([0, low, 0], [0, high, 0], radius, radius, DRUM_SIDES);
  const lidRadius = radius + LID_OVERHANG_METRES;
  const rise = tank.diameterMetres * LID_RISE_SHARE;
  const lid = new ShapeBuilder().sweep(
    [
      { at: [0, high, 0], radii: [lidRadius, lidRadius] },
      { at: [0, high + rise * 0.12, 0], radii: [lidRadius, lidRadius] },
      { at: [0, high + rise, 0], radii: [radius * 0.06, radius * 0.06] },
    ],
    DRUM_SIDES,
  );
  return [
    ...standParts(tank, radius, placement),
    fixed('drum', drum.finish({ substance: 'boards', smooth: true }, placement)),
    fixed('hoops', hoops(radius, low, high).finish({ substance: 'dark metal', smooth: true }, placement)),
    fixed('lid', lid.finish({ substance: 'felt', smooth: true }, placement)),
  ];
}

/** Hoops stand closer towards the foot, where the water presses most. */
function hoops(radius: number, low: number, high: number): ShapeBuilder {
  const builder = new ShapeBuilder();
  const outer = radius + HOOP_PROUD_METRES;
  const width = Math.min(HOOP_METRES, (high - low) / 12);
  for (const share of [0.08, 0.24, 0.42, 0.63, 0.88]) {
    const height = low + (high - low) * share;
    builder.cone([0, height - width / 2, 0], [0, height + width / 2, 0], outer, outer, DRUM_SIDES);
  }
  return builder;
}

function standParts(tank: PieceOf<'tank'>, radius: number, placement: Placement): readonly PlacedPart[] {
  const height = tank.legMetres;
  if (height <= 0) return [];
  const platform = Math.min(PLATFORM_METRES, height / 4);
  const legRadius = Math.min(LEG_RADIUS_METRES, radius / 6);
  const braceRadius = Math.min(BRACE_RADIUS_METRES, radius / 16);
  const top = height - platform;
  const corners = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ];
  /** A place on a leg's axis, from its foot (0) to its top (1). */
  const onLeg = (leg: number, share: number): Vec3 => {
    const out = radius * (0.74 - 0.14 * share);
    return [corners[leg % 4][0] * out, top * share, corners[leg % 4][1] * out];
  };
  const [legs, braces, deck] = [new ShapeBuilder(), new ShapeBuilder(), new ShapeBuilder()];
  for (let leg = 0; leg < 4; leg += 1) {
    legs.tube(onLeg(leg, 0), onLeg(leg, 1), legRadius);
    braces.tube(onLeg(leg, 0.08), onLeg(leg + 1, 0.92), braceRadius);
    braces.tube(onLeg(leg, 0.92), onLeg(leg + 1, 0.08), braceRadius);
  }
  deck.box([0, top + platform / 2, 0], [radius * 1.5, platform, radius * 1.5]);
  return [
    fixed('legs', legs.finish({ substance: 'dark metal', smooth: true }, placement)),
    fixed('braces', braces.finish({ substance: 'dark metal', smooth: true }, placement)),
    fixed('platform', deck.finish({ substance: 'timber' }, placement)),
  ];
}
