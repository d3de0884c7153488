import { formatNumber, readNumber } from '../../../../core/units/numbers';
import { Field } from '../../../parts/Field';

/**
 * An amount that may be left out, and then is the usual one, which stands there in the second voice. Typed empty, what
 * was said is taken away.
 */
export function AmountField(props: {
  readonly label: string;
  readonly unit: string;
  readonly own: number | undefined;
  readonly usual: number;
  readonly least: number;
  readonly most: number;
  /** Of the printed number; 0 unless said, and then only whole ones are taken. */
  readonly decimals?: number;
  readonly commit: (amount: number | undefined) => string | null;
}) {
  const { label, unit, own, usual, least, most, decimals = 0, commit } = props;
  const print = (amount: number): string => formatNumber(amount, decimals);
  const range = `${print(least)} to ${print(most)}`;
  return (
    <Field
      label={label}
      text={own === undefined ? '' : print(own)}
      unit={unit}
      empty={print(usual)}
      commit={(text) => {
        if (text.trim() === '') return commit(undefined);
        const read = readNumber(text, [unit]);
        const isFit = read !== null && read.value >= least && read.value <= most;
        if (isFit && (decimals > 0 || Number.isInteger(read.value))) return commit(read.value);
        return `Type ${decimals > 0 ? 'a number' : 'a whole number'} from ${range}, or nothing for the usual ${print(usual)}.`;
      }}
    />
  );
}

/** Whole minutes that something takes, the usual ones where nothing is said. */
export function MinutesField(props: {
  readonly label: string;
  readonly own: number | undefined;
  readonly usual: number;
  readonly commit: (minutes: number | undefined) => string | null;
}) {
  return <AmountField {...props} unit="min" least={0} most={600} />;
}
