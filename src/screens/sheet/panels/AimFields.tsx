import { whereabouts } from '../../../core/form/figure';
import { setAim } from '../../../core/plan/edits/setAim';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Point } from '../../../core/plan/schema/numbers';
import type { Plan } from '../../../core/plan/schema/plan';
import { withNames } from '../../../core/plan/withNames';
import { useLive } from '../../../desk/hooks';
import { liveStore } from '../../../desk/liveStore';
import { SelectField } from '../../parts/Field';
import { LengthField } from '../../parts/LengthField';
import { useEdit } from '../fields/edit';
import { aimedAt } from './aimedAt';

const AXES: readonly (readonly [axis: 0 | 1 | 2, label: string])[] = [
  [0, 'aim x, right'],
  [2, 'aim z, down'],
  [1, 'aim height'],
];

/** What the lamp is aimed at: a face as it is at the clock's time, or a point. */
export function AimFields({
  plan,
  head,
}: {
  readonly plan: Plan;
  readonly head: Extract<Gear, { kind: 'head' }>;
}) {
  const edit = useEdit();
  const at = useLive((state) => aimedAt(plan, head.aim, state.seconds));
  const { id, aim } = head;
  const aimAtFace = (performerId: string): void => {
    const performer = plan.cast.find((each) => each.id === performerId);
    const eyes = performer && whereabouts(performer, plan, liveStore.getState().seconds)?.eyes;
    if (!eyes) return;
    const [x, y, z] = eyes;
    edit(`aim at ${performer.label}`, (before) => setAim(before, { id, aim: [x, y, z] }));
  };
  return (
    <section className="group">
      <h4>Where it is aimed</h4>
      <div className="fields">
        <SelectField wide label="aimed at" value={at ?? ''} onChange={aimAtFace}>
          <option value="">a point</option>
          {withNames(plan)
            .cast.filter(({ marks }) => marks.length > 0)
            .map(({ id: performerId, label }) => (
              <option key={performerId} value={performerId}>
                the face of {label}
              </option>
            ))}
        </SelectField>
        {AXES.map(([axis, label]) => (
          <LengthField
            key={label}
            label={label}
            metres={aim[axis]}
            commit={(metres) => {
              const to: Point = [aim[0], aim[1], aim[2]];
              to[axis] = metres;
              return edit('aim', (before) => setAim(before, { id, aim: to }));
            }}
          />
        ))}
      </div>
    </section>
  );
}
