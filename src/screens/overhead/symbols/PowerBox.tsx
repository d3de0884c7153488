import { polygon } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';
import type { GearOf } from './kinds';
import { Dots } from './Marks';

/** How many sockets are drawn along the front. */
const SOCKETS = { distro: 4, outlet: 2, battery: 3, appliance: 1 } as const;

/** A generator with its wave, whatever else has sockets with those. */
export function PowerBox({ gear }: { readonly gear: GearOf<'generator' | keyof typeof SOCKETS> }) {
  const [width, , depth] = gear.size;
  const own = (x: number, z: number): Spot =>
    standing([gear.at[0], gear.at[2]], gear.headingDegrees, [(x * width) / 2, (z * depth) / 2]);
  const body = polygon([own(-1, -1), own(1, -1), own(1, 1), own(-1, 1)]);
  if (gear.kind !== 'generator') {
    const count = SOCKETS[gear.kind];
    const outlets = Array.from({ length: count }, (_, k) => own(((2 * k + 1) / count - 1) * 0.8, -0.55));
    return (
      <>
        <path className="item" d={body} />
        <Dots at={outlets} kind="outlet" />
      </>
    );
  }
  const [from, crest, middle, trough, to] = [
    own(-0.6, 0),
    own(-0.3, -0.9),
    own(0, 0),
    own(0.3, 0.9),
    own(0.6, 0),
  ];
  return (
    <>
      <path className="item" d={body} />
      <path
        className="thin"
        d={`M${from.join(' ')}Q${crest.join(' ')} ${middle.join(' ')}Q${trough.join(' ')} ${to.join(' ')}`}
      />
    </>
  );
}
