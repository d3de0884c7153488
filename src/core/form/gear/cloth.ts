import type { Gear } from '../../plan/schema/gear';
import type { Plan } from '../../plan/schema/plan';
import { AT_ORIGIN, compose, type Placement, standingAt, tiltedBy, turned } from '../build/placement';
import { add, dot, scale, type Vec3 } from '../build/vector';
import type { PlacedPart, Substance } from '../types';
import { type OwnPart, ownPart, placeParts } from './part';
import { carrierOf, type GearOf } from './references';
import { addPipe, addRod } from './rounds';
import { ARM_RADIUS, addGripHead } from './stand';
import { standTop } from './standTop';

export type Cloth = GearOf<'flag'> | GearOf<'frame'> | GearOf<'bounce'>;

export const isCloth = (gear: Gear): gear is Cloth =>
  gear.kind === 'flag' || gear.kind === 'frame' || gear.kind === 'bounce';

const CLOTH_THICKNESS = 0.004;
/** Wire of a flag up to a metre, tubing of a larger frame. Source: common practice, no source */
const WIRE_RADIUS = 0.005;
const TUBING_RADIUS = 0.0125;
const LARGEST_WIRE_FRAME = 1.3;
/** A bounce that reflects more than this is drawn as silver. */
const SILVER_REFLECTANCE = 0.85;
/** What a stand grips nearer to the edge than this is held by the frame itself, without a bar across. */
const AT_THE_EDGE = 0.03;

interface ClothPlace {
  /** World from the cloth's own frame: its middle at the origin, its normal along −z. */
  readonly placement: Placement;
  /** Where the stand grips it, in its own frame [x, y]; null where nothing carries it. */
  readonly grip: readonly [number, number] | null;
}

/**
 * Where a cloth hangs. With a place of its own its middle is there. Carried, it goes on from what carries it: on a
 * spigot an upright cloth stands on the middle of its lower edge and a level one lies on its middle; on an arm that
 * runs along the cloth it is held by the middle of the edge that meets the arm, on an arm square to it by its middle;
 * in between, in between. The normal runs along heading and tilt.
 */
export function clothPlace(cloth: Cloth, plan: Plan): ClothPlace {
  const turn = compose(standingAt([0, 0, 0], cloth.headingDegrees), tiltedBy(cloth.tiltDegrees));
  const stand = carrierOf(cloth, plan);
  if (!stand) {
    const at: Vec3 = 'at' in cloth.place ? cloth.place.at : [0, 0, 0];
    return { placement: movedTo(turn, at), grip: null };
  }
  const { at, outward } = standTop(stand);
  const [right, up] = [turned(turn, [1, 0, 0]), turned(turn, [0, 1, 0])];
  const grip = [(-cloth.size[0] / 2) * dot(outward, right), (-cloth.size[1] / 2) * dot(outward, up)] as const;
  const middle = add(at, add(scale(right, -grip[0]), scale(up, -grip[1])));
  return { placement: movedTo(turn, middle), grip };
}

const movedTo = (turn: Placement, at: Vec3): Placement => [
  turn[0],
  turn[1],
  turn[2],
  at[0],
  turn[4],
  turn[5],
  turn[6],
  at[1],
  turn[8],
  turn[9],
  turn[10],
  at[2],
];

/** Share of the light that comes straight through a cloth; null where none does, as through a flag or a bounce. */
export const netOpenness = (cloth: Cloth): number | null =>
  cloth.kind === 'flag' && cloth.transmission ? cloth.transmission : null;

/** How much of its frame's width and height a cloth covers, metres. */
function clothExtent({ size: [width, height] }: Cloth): readonly [number, number] {
  const radius = frameRadius(width, height);
  return [width - 2 * radius, height - 2 * radius];
}

const frameRadius = (width: number, height: number): number =>
  Math.max(width, height) > LARGEST_WIRE_FRAME ? TUBING_RADIUS : WIRE_RADIUS;

/** The corners of a cloth's sheet in world metres: its middle, and the ways from there to its right and its upper side. */
export function clothSheet(
  cloth: Cloth,
  plan: Plan,
): { readonly middle: Vec3; readonly right: Vec3; readonly up: Vec3 } {
  const { placement } = clothPlace(cloth, plan);
  const [width, height] = clothExtent(cloth);
  return {
    middle: [placement[3], placement[7], placement[11]],
    right: turned(placement, [width / 2, 0, 0]),
    up: turned(placement, [0, height / 2, 0]),
  };
}

/** A net is one porous layer, so that light is counted once through it; any other cloth is a thin solid. */
function sheetOf(cloth: Cloth): OwnPart {
  const [width, height] = clothExtent(cloth);
  const openness = netOpenness(cloth);
  if (openness === null)
    return ownPart('cloth', { substance: substanceOf(cloth), smooth: false }, (builder) => {
      builder.box([0, 0, 0], [width, height, CLOTH_THICKNESS]);
    });
  return ownPart('cloth', { substance: 'net', smooth: false, openness }, (builder) => {
    const [x, y] = [width / 2, height / 2];
    builder.quad([-x, -y, 0], [x, -y, 0], [x, y, 0], [-x, y, 0]);
  });
}

/** A flag, a net, a diffusion frame or a bounce: its cloth, the frame round it, and what the stand grips. World coordinates. */
export function clothParts(cloth: Cloth, plan: Plan): PlacedPart[] {
  const { placement, grip } = clothPlace(cloth, plan);
  const [width, height] = cloth.size;
  const radius = frameRadius(width, height);
  const [x, y] = [width / 2 - radius, height / 2 - radius];
  const frame = ownPart('frame', { substance: cloth.kind === 'flag' ? 'dark metal' : 'metal' }, (builder) => {
    addPipe(
      builder,
      [
        [0, -y, 0],
        [x, -y, 0],
        [x, y, 0],
        [-x, y, 0],
        [-x, -y, 0],
        [0, -y, 0],
      ],
      radius,
    );
  });
  const held = grip ? [holder(grip, [x, y])] : [];
  return [...placeParts([sheetOf(cloth), frame, ...held], placement), ...gripHead(cloth, plan)];
}

function substanceOf(cloth: Cloth): Substance {
  if (cloth.kind === 'flag') return 'black cloth';
  if (cloth.kind === 'frame') return 'diffusion';
  return cloth.reflectance > SILVER_REFLECTANCE ? 'silver' : 'white cloth';
}

/** The bar behind the cloth that what carries it grips, where that is not the frame's own edge. */
function holder([gripX, gripY]: readonly [number, number], [x, y]: readonly [number, number]): OwnPart {
  return ownPart('arm', { substance: 'metal' }, (builder) => {
    const behind = CLOTH_THICKNESS / 2 + ARM_RADIUS;
    const isAtEdge = x - Math.abs(gripX) < AT_THE_EDGE || y - Math.abs(gripY) < AT_THE_EDGE;
    if (isAtEdge) return;
    addRod(builder, [-x, gripY, behind], [x, gripY, behind], ARM_RADIUS);
  });
}

/** The grip head between the spigot or the arm and the frame. */
function gripHead(cloth: Cloth, plan: Plan): PlacedPart[] {
  const stand = carrierOf(cloth, plan);
  if (!stand) return [];
  const { at } = standTop(stand);
  const turn = standingAt([0, 0, 0], cloth.headingDegrees);
  const knuckle = ownPart('arm', { substance: 'dark metal' }, (builder) => {
    addGripHead(builder, at, turned(turn, [0, 0, 1]));
  });
  return placeParts([knuckle], AT_ORIGIN);
}
