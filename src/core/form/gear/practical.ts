import type { HeadClass } from '../../plan/schema/kit';
import type { Plan } from '../../plan/schema/plan';
import { compose, movedBy, type Placement, rolledBy, standingAt, tiltedBy } from '../build/placement';
import type { Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { housingOf } from './housings';
import { lanternSize } from './housings/street';
import { type OwnPart, ownPart, placeParts } from './part';
import { type GearOf, headClassOf } from './references';
import { addLathe, addPipe, addRod } from './rounds';

export type Practical = GearOf<'practical'>;

/** How far the light of a street lamp leans out from straight down. Source: common practice, no source */
const LANTERN_TILT_DEGREES = -80;
const POST_RADIUS = 0.06;
const ARM_RADIUS = 0.03;

/**
 * How a practical of a class is fixed, seen in its own frame (facing −z): own frame from housing.
 * A bulkhead lamp and a tube are screwed to a wall: `at` is the middle of their back. A bulb hangs: `at` is where its
 * flex is fixed, its socket 5 cm below. A street lamp stands on `at` with its arm towards the heading; its class's
 * size is [width of the lantern, height of the post, reach of the arm]. All else stands with the middle of its base
 * on `at`.
 */
function fixingOf({ form, size }: HeadClass): Placement {
  const [width, height, depth] = size;
  switch (form) {
    case 'bulkhead':
      return movedBy([0, 0, -depth / 2 - PLATE_DEPTH]);
    case 'tube':
      return movedBy([0, 0, -depth / 2]);
    case 'bulb':
      return compose(movedBy([0, -FLEX - height / 2, 0]), rolledBy(180));
    case 'street':
      return compose(movedBy([0, height, -lanternReach(size)]), tiltedBy(LANTERN_TILT_DEGREES));
    default:
      return movedBy([0, height / 2 + (form === 'sign' ? 0 : Math.min(0.02, width)), 0]);
  }
}

const FLEX = 0.05;
const PLATE_DEPTH = 0.02;
const lanternReach = ([width, , reach]: Vec3): number => reach + lanternSize(width)[1] * 0.4;

/** World from a practical's housing, the axis of its light along the housing's −z. */
export const practicalPlacement = (practical: Practical, headClass: HeadClass): Placement =>
  compose(standingAt(practical.at, practical.headingDegrees), fixingOf(headClass));

/** A lamp that belongs to the place, with what fixes it there. Its tint colours what glows. World coordinates. */
export function practicalParts(practical: Practical, plan: Plan): PlacedPart[] {
  const headClass = headClassOf(practical, plan);
  const housing = housingOf(headClass, practical.tint ?? null);
  return [
    ...placeParts([...housing.parts, ...housing.glow], practicalPlacement(practical, headClass)),
    ...placeParts(fixtures(headClass), standingAt(practical.at, practical.headingDegrees)),
  ];
}

function fixtures({ form, size }: HeadClass): OwnPart[] {
  const [width, height, depth] = size;
  switch (form) {
    case 'bulkhead':
      return [
        ownPart('plate', { substance: 'dark metal', smooth: false }, (builder) => {
          builder.box([0, 0, -PLATE_DEPTH / 2], [width * 1.1, height * 1.1, PLATE_DEPTH]);
        }),
      ];
    case 'bulb':
      return [
        ownPart('flex', { substance: 'rubber' }, (builder) => {
          addRod(builder, [0, 0, 0], [0, -FLEX - height * 0.1, 0], 0.004, 5);
        }),
      ];
    case 'street':
      return lampPost(size);
    case 'spot':
    case 'fresnel':
    case 'panel':
      return [
        ownPart('foot', { substance: 'dark metal', smooth: false }, (builder) => {
          builder.box([0, 0.005, 0], [width * 0.6, 0.01, Math.max(depth, width * 0.5)]);
          builder.box([0, 0.015, 0], [width * 0.12, 0.03, depth * 0.4]);
        }),
      ];
    default:
      return [];
  }
}

function lampPost(size: Vec3): OwnPart[] {
  const [, height] = size;
  const reach = lanternReach(size);
  const bend = Math.min(height * 0.12, reach * 0.6);
  return [
    ownPart('post', { substance: 'galvanised' }, (builder) => {
      addRod(builder, [0, 0, 0], [0, height * 0.2, 0], POST_RADIUS * 1.4, 10);
      addRod(builder, [0, height * 0.2, 0], [0, height - bend, 0], POST_RADIUS, 10);
      addLathe(
        builder,
        { at: [0, 0, 0], along: [0, 1, 0] },
        [
          [0, POST_RADIUS * 2.2],
          [0.03, POST_RADIUS * 2.2],
          [0.08, POST_RADIUS * 1.4],
        ],
        10,
      );
    }),
    ownPart('arm', { substance: 'galvanised' }, (builder) => {
      addPipe(
        builder,
        [
          [0, height - bend - 0.05, 0],
          [0, height - bend * 0.6, -bend * 0.08],
          [0, height - bend * 0.25, -bend * 0.35],
          [0, height - bend * 0.05, -bend * 0.8],
          [0, height, -Math.max(reach * 0.7, bend)],
          [0, height + 0.02, -reach],
        ],
        ARM_RADIUS,
        8,
      );
    }),
  ];
}
