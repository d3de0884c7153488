import { polyline } from '../geometry/paths';
import type { GearOf } from './kinds';

/** A cable: round dots along its way. */
export function Cable({ gear }: { readonly gear: GearOf<'cable'> }) {
  return <path className="cable" d={polyline(gear.path)} />;
}
