import { formatNumber, readNumber } from '../../core/units/numbers';
import { Field } from './Field';

/** A plain number, with a unit after it or none. */
export function NumberField(props: {
  readonly label: string;
  readonly value: number | null;
  readonly unit?: string;
  /** Of the printed number; 0 unless said. */
  readonly decimals?: number;
  /** Stands where there is no value: `mixed`. */
  readonly empty?: string;
  /** Returns a sentence that says what would work, or null when the value was taken. */
  readonly commit: (value: number) => string | null;
}) {
  const { label, value, unit, decimals = 0, empty, commit } = props;
  return (
    <Field
      label={label}
      text={value === null ? '' : formatNumber(value, decimals)}
      {...(unit === undefined ? {} : { unit })}
      {...(empty === undefined ? {} : { empty })}
      commit={(text) => {
        const read = readNumber(text, unit === undefined ? [] : [unit]);
        if (read) return commit(read.value);
        return `${JSON.stringify(text.trim())} is not a number: type one such as ${formatNumber(value ?? 4, decimals)}.`;
      }}
    />
  );
}
