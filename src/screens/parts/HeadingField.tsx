import { formatHeading, parseDegrees } from '../../core/units/angles';
import { Field } from './Field';
import { firstSentence } from './LengthField';

/** A compass heading in degrees, clockwise from the top of the sheet. */
export function HeadingField(props: {
  readonly label: string;
  readonly degrees: number;
  readonly commit: (degrees: number) => string | null;
}) {
  return (
    <Field
      label={props.label}
      text={formatHeading(props.degrees, 1).replace('°', '')}
      unit="°"
      commit={(text) => {
        const read = parseDegrees(text);
        return read.ok ? props.commit(read.value) : firstSentence(read.faults);
      }}
    />
  );
}
