import { whereabouts } from '../../../core/form/figure/whereabouts';
import { cameraAt } from '../../../core/optics/camera';
import { projectPoint } from '../../../core/optics/project';
import { changeSetup } from '../../../core/plan/edits/changeSetup';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Operator, Setup } from '../../../core/plan/schema/setup';
import { withNames } from '../../../core/plan/withNames';
import { liveStore } from '../../../desk/liveStore';
import { SelectField } from '../../parts/Field';
import { edit } from './editing';
import { LegalField } from './LegalField';

const THIRD = 1 / 3;

/** Where the eyes of a performer are in the frame now, to the per cent; a third where they are out of it. */
function placeNow(plan: Plan, setup: Setup, performerId: string): Operator['at'] {
  const { seconds } = liveStore.getState();
  const performer = plan.cast.find(({ id }) => id === performerId);
  const place = performer && whereabouts(performer, plan, seconds);
  const seen = place && projectPoint(cameraAt(plan, setup, seconds), place.eyes);
  const share = (value: number): number => Math.round(value * 100) / 100;
  if (!seen || seen.x < 0 || seen.x > 1 || seen.y < 0 || seen.y > 1) return [share(0.5), share(THIRD)];
  return [share(seen.x), share(seen.y)];
}

/** Whom the operator keeps where in the frame: pan and tilt are worked out from it at every instant. */
export function OperatorFields({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const setupId = setup.id;
  const { operator } = setup;
  const put = (next: Operator | undefined): string | null =>
    edit('hold somebody in frame', (before) => changeSetup(before, { setupId, patch: { operator: next } }));
  const percent = (axis: 0 | 1, label: string) =>
    operator ? (
      <LegalField
        label={label}
        value={operator.at[axis] * 100}
        legal={{ what: 'Places in the frame', limits: [0, 100], unit: '%', decimals: 1 }}
        take={(value) =>
          value === undefined
            ? null
            : put({
                ...operator,
                at: axis === 0 ? [value / 100, operator.at[1]] : [operator.at[0], value / 100],
              })
        }
      />
    ) : null;
  return (
    <>
      <div className="fields">
        <SelectField
          wide
          label="operator holds"
          value={operator?.hold ?? ''}
          onChange={(hold) =>
            put(hold === '' ? undefined : { hold, at: operator?.at ?? placeNow(plan, setup, hold) })
          }
        >
          <option value="">nobody</option>
          {withNames(plan).cast.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </SelectField>
        {percent(0, 'from frame left')}
        {percent(1, 'from the top')}
      </div>
      {operator ? (
        <p className="advice">
          Pan and tilt are worked out for every instant. Drag the cross in the frame to another place.
        </p>
      ) : null}
    </>
  );
}
