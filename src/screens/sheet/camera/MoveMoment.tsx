import { momentAs } from '../../../core/optics/heldKey';
import type { Plan } from '../../../core/plan/schema/plan';
import { withNames } from '../../../core/plan/withNames';
import { SelectField } from '../../parts/Field';
import { LegalField } from './LegalField';

/** A moment as plans say it: on the clock, or so long after a beat. */
export interface Moment {
  readonly atSeconds: number;
  readonly beat?: string | undefined;
}

/** When something is: on which beat's clock, and how many seconds on. Changing the beat leaves the moment where it is. */
export function MomentFields(props: {
  readonly plan: Plan;
  readonly moment: Moment;
  readonly seconds: number;
  readonly take: (moment: Moment) => string | null;
}) {
  const { plan, moment, seconds, take } = props;
  return (
    <>
      <SelectField
        label="counts from"
        value={moment.beat ?? ''}
        onChange={(beat) => {
          if (beat === '') take(momentAs(plan, seconds, undefined));
          else take({ beat, atSeconds: momentAs(plan, seconds, beat).atSeconds });
        }}
      >
        <option value="">the clock</option>
        {withNames(plan).beats.map(({ id, label }) => (
          <option key={id} value={id}>
            {label}
          </option>
        ))}
      </SelectField>
      <LegalField
        label={moment.beat === undefined ? 'at' : 'after it'}
        value={moment.atSeconds}
        legal={{ what: 'Moments', limits: [0, 3600], unit: 's', decimals: 2 }}
        take={(value) => (value === undefined ? null : take({ ...moment, atSeconds: value }))}
      />
    </>
  );
}
