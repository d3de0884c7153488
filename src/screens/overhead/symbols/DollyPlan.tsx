import type { GearOf } from './kinds';

/** A dolly around the origin, facing up the sheet: its plate, its wheels, its column, its push bar behind. */
export function DollyPlan({ gear }: { readonly gear: GearOf<'dolly'> }) {
  const [width, , length] = gear.size;
  const [x, z] = [width / 2, length / 2];
  const wheel = (side: number, end: number): string =>
    `M${side * x * 0.94} ${end * z * 0.97}V${end * z * 0.6}`;
  const wheels = [-1, 1].flatMap((side) => [-1, 1].map((end) => wheel(side, end)));
  return (
    <>
      <path className="item" d={`M${-x * 0.78} ${-z * 0.94}H${x * 0.78}V${z * 0.86}H${-x * 0.78}Z`} />
      <path className="screen" d={wheels.join('')} />
      <path className="thin" d={`M${-x * 0.62} ${z * 0.86}V${z}H${x * 0.62}V${z * 0.86}`} />
      <circle className="item" cx={0} cy={Math.min(0.22, z * 0.4)} r={Math.min(0.08, width / 5)} />
    </>
  );
}
