import type { Plan } from '../../../../core/plan/schema/plan';
import { useSession } from '../../../../desk/hooks';
import { useLitFace } from '../litFace';
import { isLighting } from '../words';
import { LampRow } from './LampRow';

/** All that gives light or gives it on, in the plan's order, with what each gives to the face that is looked at. */
export function LampList({ plan }: { readonly plan: Plan }) {
  const face = useLitFace(plan);
  const selectedId = useSession((state) => state.selectedId);
  const lights = plan.gear.filter(isLighting);
  if (lights.length === 0)
    return (
      <p className="advice">
        No lamps on the roof yet. Take a head from the palette of the Set sheet, and dim it here.
      </p>
    );
  return (
    <>
      <h3>Heads and practicals{face ? `, as they light ${face.name}` : ''}</h3>
      <ul className="lamps">
        {lights.map((gear) => (
          <LampRow key={gear.id} plan={plan} gear={gear} face={face} chosen={gear.id === selectedId} />
        ))}
      </ul>
    </>
  );
}
