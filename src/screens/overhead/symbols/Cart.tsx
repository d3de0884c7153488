import { polygon, polyline } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';
import type { GearOf } from './kinds';

/** A cart: its top with the edge of its shelf, and its monitors along the front. */
export function Cart({ gear }: { readonly gear: GearOf<'cart'> }) {
  const [width, , depth] = gear.size;
  const own = (x: number, z: number): Spot =>
    standing([gear.at[0], gear.at[2]], gear.headingDegrees, [(x * width) / 2, (z * depth) / 2]);
  const monitors = Array.from({ length: gear.monitors }, (_, k) => {
    const [from, to] = [(2 * (k + 0.06)) / gear.monitors - 1, (2 * (k + 0.94)) / gear.monitors - 1];
    return polyline([own(from, -0.15), own(to, -0.15)]);
  });
  return (
    <>
      <path className="item" d={polygon([own(-1, -1), own(1, -1), own(1, 1), own(-1, 1)])} />
      {gear.monitors > 0 ? (
        <path className="screen" d={monitors.join('')} />
      ) : (
        <path className="thin" d={polyline([own(-1, 0), own(1, 0)])} />
      )}
    </>
  );
}
