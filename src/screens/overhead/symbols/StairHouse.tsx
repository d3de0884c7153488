import { polygon, polyline } from '../geometry/paths';
import type { Spot } from '../geometry/spots';
import { type StairHousePlan, stairHousePlan } from '../geometry/stairHouse';
import type { PieceOf } from './kinds';

/** Going of a common stair; common practice, no source. Metres. */
const GOING = 0.27;

/** Walls in brick, the flight with its arrow up, and the door with its swing. */
export function StairHouse({ piece }: { readonly piece: PieceOf<'stair house'> }) {
  const [width, , depth] = piece.size;
  const plan = stairHousePlan(piece);
  const { own, wall, inside, door } = plan;
  const rectangle = (x: number, z: number): Spot[] => [own(-x, -z), own(x, -z), own(x, z), own(-x, z)];
  const front = -depth / 2;
  const [low, high] = [door.middle - door.half, door.middle + door.half];
  const swing = 2 * door.half;
  const [hinge, latch, open] = [own(low, front), own(high, front), own(low, front - swing)];
  return (
    <>
      <path className="piece brick" d={polygon(rectangle(width / 2, depth / 2))} />
      <path className="inner" d={polygon(rectangle(inside[0], inside[1]))} />
      <Flight plan={plan} />
      <path
        className="gap"
        d={polygon([
          own(low, front - 0.04),
          own(high, front - 0.04),
          own(high, front + wall + 0.04),
          own(low, front + wall + 0.04),
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

function Flight({ plan }: { readonly plan: StairHousePlan }) {
  const { own, inside, flight } = plan;
  const [left, back] = [-inside[0], inside[1]];
  const length = flight.end - left;
  const count = Math.max(2, Math.round(length / GOING));
  const treads = Array.from({ length: count }, (_, step) => left + (length * (step + 1)) / count);
  const middle = (flight.near + back) / 2;
  const tip = inside[0] - 0.12;
  return (
    <>
      <path
        className="thin"
        d={
          treads.map((x) => polyline([own(x, flight.near), own(x, back)])).join('') +
          polyline([own(left, flight.near), own(flight.end, flight.near)])
        }
      />
      <path className="hair" d={polyline([own(left + 0.1, middle), own(tip - 0.2, middle)])} />
      <path
        className="solid"
        d={polygon([own(tip, middle), own(tip - 0.25, middle - 0.1), own(tip - 0.25, middle + 0.1)])}
      />
    </>
  );
}
