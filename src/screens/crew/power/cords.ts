import type { Plan } from '../../../core/plan/schema/plan';
import { nameIn } from '../../../core/report/power/powerWords';
import type { CableReport, PowerReport } from '../../../core/report/power/types';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { wireText } from '../../sheet/fields/wireText';

/** What a cord is, to be taken from the truck: `12.4 m of 2.5 mm²`. */
export const cordWords = ({ lengthMetres, wire }: CableReport, lengths: LengthSystem): string =>
  `${formatLength(lengthMetres, lengths, { decimals: 1 })} of ${wireText(wire, lengths)}`;

/** From where to where a cord is laid: `from Generator 1, circuit 2, to Head 3`. */
export function endsWords(plan: Plan, { fromId, toId, circuit }: CableReport): string {
  const at = (id: string | null): string => (id === null ? 'an open end' : nameIn(plan, id));
  return `from ${at(fromId)}${circuit === null ? '' : `, circuit ${circuit},`} to ${at(toId)}`;
}

/** What a crew minds when a cord is laid: who walks over it, how much of it lies in the wet; null for neither. */
export function mindWords(
  plan: Plan,
  { walkedBy, wetMetres }: CableReport,
  lengths: LengthSystem,
): string | null {
  const minds = [
    ...(walkedBy.length > 0
      ? [`${walkedBy.map((id) => nameIn(plan, id)).join(', ')} over it: cover it`]
      : []),
    ...(wetMetres > 0 ? [`${formatLength(wetMetres, lengths, { decimals: 1 })} of it in the wet`] : []),
  ];
  return minds.length === 0 ? null : minds.join(', ');
}

/** Cords in the order in which they are laid: by the supply they come from, sources' own first. */
export function cordsToLay({ cables, sources, distros }: PowerReport): readonly CableReport[] {
  const owners = [...sources, ...distros].map(({ id }) => id);
  const placeOf = ({ fromId }: CableReport): number => {
    const place = fromId === null ? -1 : owners.indexOf(fromId);
    return place < 0 ? owners.length : place;
  };
  return cables.toSorted((a, b) => placeOf(a) - placeOf(b) || (a.circuit ?? 0) - (b.circuit ?? 0));
}
