import { calledBy } from '../../../../core/plan/named';
import type { Performer } from '../../../../core/plan/schema/cast';
import type { Plan } from '../../../../core/plan/schema/plan';
import { blockingStore } from '../../../../desk/blocking/blockingStore';
import { beatsInTime } from '../../../../desk/blocking/things';
import { SelectField } from '../../../parts/Field';

interface Props {
  readonly label: string;
  readonly value: string;
  readonly onChange: (id: string) => void;
}

/** The beats to choose among, by number and name. */
export const BeatOptions = ({ plan }: { readonly plan: Plan }) =>
  beatsInTime(plan).map(({ id, label }, k) => (
    <option key={id} value={id}>
      {k + 1} {label}
    </option>
  ));

/** One of the beats, by its number and name. */
export function BeatChoice({ plan, ...props }: Props & { readonly plan: Plan }) {
  return (
    <SelectField {...props}>
      <BeatOptions plan={plan} />
    </SelectField>
  );
}

/** One of some performers; `none` stands first where nobody need be chosen. */
export function PersonChoice(
  props: Props & { readonly people: readonly Performer[]; readonly none?: string },
) {
  const { people, none, ...field } = props;
  return (
    <SelectField {...field}>
      {none === undefined ? null : <option value="">{none}</option>}
      {people.map(({ id, label }) => (
        <option key={id} value={id}>
          {calledBy(label, 'performer')}
        </option>
      ))}
    </SelectField>
  );
}

/** What the panel is about, and the way back to everybody. */
export function PanelHead({ title }: { readonly title: string }) {
  return (
    <div className="panel-head">
      <h3 title={title}>{title}</h3>
      <button type="button" className="bare" onClick={() => blockingStore.setState({ chosen: null })}>
        everybody
      </button>
    </div>
  );
}
