import { formatLength } from '../../../core/units/lengths';
import { NBSP } from '../../../core/units/numbers';
import { formatShare, parseShare } from '../../../core/units/shares';
import { parseStops } from '../../../core/units/stops';
import { useSession } from '../../../desk/hooks';
import { ColourField } from '../../parts/ColourField';
import { Field, SelectField, ShownField } from '../../parts/Field';
import { firstSentence } from '../../parts/faultSentence';
import { HeadingField } from '../../parts/HeadingField';
import { LengthField, SmallLengthField } from '../../parts/LengthField';
import { NumberField } from '../../parts/NumberField';
import { useEdit } from './edit';
import { shareOfStops, stopsText } from './lightLoss';
import type { FieldGroup, FieldSpec, Reach } from './types';

type SpecOf<Form extends FieldSpec['form']> = Extract<FieldSpec, { form: Form }>;

function LengthOf({ spec }: { readonly spec: SpecOf<'length'> }) {
  const edit = useEdit();
  const lengths = useSession((state) => state.lengths);
  const beyond = (reach: Reach): string => {
    const [low, high] = [reach.lowestMetres, reach.highestMetres].map((end) => formatLength(end, lengths));
    return `${reach.sentence} from ${low} to ${high}.`;
  };
  const commit = (metres: number): string | null => {
    const { reach } = spec;
    if (reach && (metres < reach.lowestMetres || metres > reach.highestMetres)) return beyond(reach);
    return edit(`set ${spec.label}`, (plan) => spec.change(plan, metres));
  };
  const Shape = spec.small ? SmallLengthField : LengthField;
  return <Shape label={spec.label} metres={spec.metres} commit={commit} />;
}

function ShareOf({ spec }: { readonly spec: SpecOf<'share'> }) {
  const edit = useEdit();
  return (
    <Field
      label={spec.label}
      text={formatShare(spec.share).replace(`${NBSP}%`, '')}
      unit="%"
      commit={(text) => {
        const read = parseShare(text);
        if (!read.ok) return firstSentence(read.faults);
        if (read.value < 0 || read.value > 1) return `This takes 0 to 100${NBSP}%.`;
        return edit(`set ${spec.label}`, (plan) => spec.change(plan, read.value));
      }}
    />
  );
}

function StopsOf({ spec }: { readonly spec: SpecOf<'stops'> }) {
  const edit = useEdit();
  return (
    <Field
      label={spec.label}
      text={stopsText(spec.share)}
      commit={(text) => {
        const read = parseStops(text);
        if (!read.ok) return firstSentence(read.faults);
        // A loss may be typed with its minus or without.
        return edit(`set ${spec.label}`, (plan) => spec.change(plan, shareOfStops(-Math.abs(read.value))));
      }}
    />
  );
}

/** A field as its form asks; a new value is one named step. */
export function FieldOf({ spec }: { readonly spec: FieldSpec }) {
  const edit = useEdit();
  const name = `set ${spec.label}`;
  switch (spec.form) {
    case 'length':
      return <LengthOf spec={spec} />;
    case 'share':
      return <ShareOf spec={spec} />;
    case 'stops':
      return <StopsOf spec={spec} />;
    case 'heading':
      return (
        <HeadingField
          label={spec.label}
          degrees={spec.degrees}
          commit={(degrees) => edit(name, (plan) => spec.change(plan, degrees))}
        />
      );
    case 'number':
      return (
        <NumberField
          label={spec.label}
          value={spec.value}
          {...(spec.unit === undefined ? {} : { unit: spec.unit })}
          decimals={spec.decimals ?? 0}
          commit={(value) => edit(name, (plan) => spec.change(plan, value))}
        />
      );
    case 'choice':
      return (
        <SelectField
          label={spec.label}
          value={spec.value}
          wide={spec.wide ?? false}
          onChange={(value) => edit(name, (plan) => spec.change(plan, value))}
        >
          {spec.choices.map(([value, word]) => (
            <option key={value} value={value}>
              {word}
            </option>
          ))}
        </SelectField>
      );
    case 'colour':
      return (
        <ColourField
          label={spec.label}
          colour={spec.colour}
          commit={(colour) => edit(name, (plan) => spec.change(plan, colour))}
        />
      );
    case 'shown':
      return <ShownField label={spec.label} text={spec.text} wide={spec.wide ?? false} />;
  }
}

/** Fields under their small headings, two beside each other. */
export function FieldGroups({ groups }: { readonly groups: readonly FieldGroup[] }) {
  return groups.map(({ heading, fields }) => (
    <section key={heading} className="group">
      <h4>{heading}</h4>
      <div className="fields">
        {fields.map((spec) => (
          <FieldOf key={spec.label} spec={spec} />
        ))}
      </div>
    </section>
  ));
}
