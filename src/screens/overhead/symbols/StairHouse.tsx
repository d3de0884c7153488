import { polygon, polyline } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';
import type { PieceOf } from './kinds';

const WALL = 0.2;
/** Going of a common stair; common practice, no source. */
const GOING = 0.27;

/** Walls in brick, the flight with its arrow up, and the door with its swing. */
export function StairHouse({ piece }: { readonly piece: PieceOf<'stair house'> }) {
  const [width, , depth] = piece.size;
  const own = (x: number, z: number): Spot =>
    standing([piece.at[0], piece.at[2]], piece.headingDegrees, [x, z]);
  const rectangle = (x: number, z: number): Spot[] => [own(-x, -z), own(x, -z), own(x, z), own(-x, z)];
  const wall = Math.min(WALL, Math.min(width, depth) * 0.2);
  const [inX, inZ] = [width / 2 - wall, depth / 2 - wall];
  const room = inX * 0.98;
  const half = Math.min(piece.door.widthMetres / 2, room);
  const door = Math.max(half - room, Math.min(room - half, -piece.door.alongMetres));
  const front = -depth / 2;
  const swing = 2 * half;
  const [hinge, latch, open] = [
    own(door - half, front),
    own(door + half, front),
    own(door - half, front - swing),
  ];
  return (
    <>
      <path className="piece brick" d={polygon(rectangle(width / 2, depth / 2))} />
      <path className="inner" d={polygon(rectangle(inX, inZ))} />
      <Flight inX={inX} inZ={inZ} own={own} />
      <path
        className="gap"
        d={polygon([
          own(door - half, front - 0.02),
          own(door + half, front - 0.02),
          own(door + half, front + wall + 0.02),
          own(door - half, front + wall + 0.02),
        ])}
      />
      <path
        className="thin"
        d={`${polyline([hinge, open])}A${swing} ${swing} 0 0 1 ${latch[0]} ${latch[1]}`}
      />
      {piece.overhangMetres > 0 && (
        <path
          className="dashhair"
          d={polygon(rectangle(width / 2 + piece.overhangMetres, depth / 2 + piece.overhangMetres))}
        />
      )}
    </>
  );
}

interface FlightProps {
  readonly inX: number;
  readonly inZ: number;
  readonly own: (x: number, z: number) => Spot;
}

/** A flight along the back, away from the door; it takes less than half of the room. */
function Flight({ inX, inZ, own }: FlightProps) {
  const deep = Math.min(1.2, inZ * 0.9);
  const near = inZ - deep;
  const length = 2 * inX * 0.8;
  const count = Math.max(2, Math.round(length / GOING));
  const treads = Array.from({ length: count }, (_, step) => -inX + (length * (step + 1)) / count);
  const middle = inZ - deep / 2;
  const tip = inX - 0.12;
  return (
    <>
      <path
        className="thin"
        d={
          treads.map((x) => polyline([own(x, near), own(x, inZ)])).join('') +
          polyline([own(-inX, near), own(-inX + length, near)])
        }
      />
      <path className="hair" d={polyline([own(-inX + 0.1, middle), own(tip - 0.2, middle)])} />
      <path
        className="solid"
        d={polygon([own(tip, middle), own(tip - 0.25, middle - 0.1), own(tip - 0.25, middle + 0.1)])}
      />
    </>
  );
}
