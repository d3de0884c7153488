import { formatHeading, parseDegrees } from '../../core/units/angles';
import { Field } from './Field';
import { firstSentence } from './faultSentence';

/** A compass heading in degrees, clockwise from the top of the sheet. */
export function HeadingField(props: {
  readonly label: string;
  /** Null where several things differ. */
  readonly degrees: number | null;
  /** Stands where there is no heading: `mixed`. */
  readonly empty?: string;
  readonly commit: (degrees: number) => string | null;
}) {
  return (
    <Field
      label={props.label}
      text={props.degrees === null ? '' : formatHeading(props.degrees, 1).replace('°', '')}
      unit="°"
      {...(props.empty === undefined ? {} : { empty: props.empty })}
      commit={(text) => {
        const read = parseDegrees(text);
        return read.ok ? props.commit(read.value) : firstSentence(read.faults);
      }}
    />
  );
}
