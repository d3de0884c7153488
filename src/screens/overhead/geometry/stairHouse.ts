import type { Piece } from '../../../core/plan/schema/pieces';
import { type Spot, standing } from './spots';

type StairHouse = Extract<Piece, { kind: 'stair house' }>;

/** Thickness of the walls, as the house's form has it, metres. */
const WALL = 0.2;

/** A stair house in plan. */
export interface StairHousePlan {
  /** From the house's own plan (it faces −z) to the roof. */
  readonly own: (x: number, z: number) => Spot;
  readonly wall: number;
  /** Half the width and depth of the room. */
  readonly inside: Spot;
  /** Along the front, in the house's own x: the middle of the door and half its width. */
  readonly door: { readonly middle: number; readonly half: number };
  /** The flight: along the back of the room, from its left wall to `end`, its near edge at `near`. */
  readonly flight: { readonly near: number; readonly end: number };
}

export function stairHousePlan(house: StairHouse): StairHousePlan {
  const [width, , depth] = house.size;
  const wall = Math.min(WALL, Math.min(width, depth) * 0.2);
  const inside: Spot = [width / 2 - wall, depth / 2 - wall];
  const room = inside[0] * 0.98;
  const half = Math.min(house.door.widthMetres / 2, room);
  return {
    own: (x, z) => standing([house.at[0], house.at[2]], house.headingDegrees, [x, z]),
    wall,
    inside,
    // To the right as one faces the front is −x.
    door: { half, middle: Math.max(half - room, Math.min(room - half, -house.door.alongMetres)) },
    // It takes less than half of the room, and leaves a landing before the far wall.
    flight: { near: inside[1] - Math.min(1.2, inside[1] * 0.9), end: inside[0] * 0.6 },
  };
}

/** The corners of the flight, metres on the roof. */
export function flightOf(house: StairHouse): Spot[] {
  const { own, inside, flight } = stairHousePlan(house);
  return [
    own(-inside[0], flight.near),
    own(inside[0], flight.near),
    own(inside[0], inside[1]),
    own(-inside[0], inside[1]),
  ];
}
