import { formatLength, type LengthSystem, METRES_PER_INCH, parseLength } from '../../core/units/lengths';
import { formatNumber, NBSP, readNumber } from '../../core/units/numbers';
import { useSession } from '../../desk/hooks';
import { Field } from './Field';
import { firstSentence, inLengths } from './faultSentence';

interface LengthFieldProps {
  readonly label: string;
  /** Null where several things differ. */
  readonly metres: number | null;
  /** Stands where there is no length: `mixed`. */
  readonly empty?: string;
  /** Returns a sentence that says what would work, or null when the value was taken. */
  readonly commit: (metres: number) => string | null;
}

/** A length as its number and its unit: feet and inches carry their own signs. */
function printed(metres: number, lengths: LengthSystem): { readonly text: string; readonly unit?: string } {
  const [text = '', unit] =
    lengths === 'm' ? formatLength(metres, 'm').split(NBSP) : [formatLength(metres, lengths)];
  return unit === undefined ? { text } : { text, unit };
}

/** A length in metres, shown and typed in metres or in feet and inches. */
export function LengthField({ label, metres, empty, commit }: LengthFieldProps) {
  const lengths = useSession((state) => state.lengths);
  const shown = metres === null ? { text: '' } : printed(metres, lengths);
  return (
    <Field
      label={label}
      {...shown}
      {...(empty === undefined ? {} : { empty })}
      commit={(text) => {
        const read = parseLength(text, lengths);
        if (!read.ok) return firstSentence(read.faults);
        const sentence = commit(read.value);
        return sentence === null ? null : inLengths(sentence, lengths);
      }}
    />
  );
}

/** Millimetres or decimal inches, for wires, tubes and posts: a bare number is in those. */
const SMALL = {
  m: { metres: 0.001, unit: 'mm', decimals: 1 },
  'ft-in': { metres: METRES_PER_INCH, unit: 'in', decimals: 2 },
} as const;

/** A length that is too small for metres to say. */
export function SmallLengthField({ label, metres, empty, commit }: LengthFieldProps) {
  const lengths = useSession((state) => state.lengths);
  const small = SMALL[lengths];
  const number = (metres ?? 0) / small.metres;
  const decimals = small.unit === 'mm' && Math.abs(number - Math.round(number)) < 1e-6 ? 0 : small.decimals;
  return (
    <Field
      label={label}
      text={metres === null ? '' : formatNumber(number, decimals)}
      unit={small.unit}
      {...(empty === undefined ? {} : { empty })}
      commit={(text) => {
        const bare = readNumber(text, []);
        const read = parseLength(bare ? `${bare.value} ${small.unit}` : text, lengths);
        if (!read.ok) return firstSentence(read.faults);
        const sentence = commit(read.value);
        return sentence === null ? null : inLengths(sentence, lengths);
      }}
    />
  );
}
