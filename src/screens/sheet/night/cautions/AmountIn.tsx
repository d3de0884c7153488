import { formatNumber } from '../../../../core/units/numbers';
import { useSession } from '../../../../desk/hooks';
import { Field } from '../../../parts/Field';
import { printIn, readIn, type UnitPair } from './units';

/** An amount that may be left out, in the unit that goes with the lengths; either unit may be typed behind it. */
export function AmountIn(props: {
  readonly label: string;
  readonly units: UnitPair;
  /** In the plan's own unit. */
  readonly value: number | undefined;
  /** Stands where nothing is said. */
  readonly usual?: number;
  readonly most: number;
  readonly commit: (value: number | undefined) => string | null;
}) {
  const { label, units, value, usual, most, commit } = props;
  const lengths = useSession((state) => state.lengths);
  const { name, shown } = units[lengths];
  return (
    <Field
      label={label}
      text={value === undefined ? '' : printIn(units, lengths, value)}
      unit={name}
      empty={usual === undefined ? 'not said' : printIn(units, lengths, usual)}
      commit={(text) => {
        if (text.trim() === '') return commit(undefined);
        const read = readIn(units, lengths, text);
        if (read !== null && read >= 0 && read <= most) return commit(read);
        return `Type a number from 0 to ${formatNumber(Math.floor(shown(most)), 0)} ${name}, or nothing.`;
      }}
    />
  );
}
