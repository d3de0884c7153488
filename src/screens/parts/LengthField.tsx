import type { PlanFault } from '../../core/plan/faults';
import { formatLength, parseLength } from '../../core/units/lengths';
import { NBSP } from '../../core/units/numbers';
import { useSession } from '../../desk/hooks';
import { Field } from './Field';

/** The sentence of the first fault, or null. */
export const firstSentence = (faults: readonly { readonly sentence: string }[]): string | null =>
  faults[0]?.sentence ?? null;

/** What the schema expected, as a short sentence under a field: the field itself says where. */
export const expectedSentence = (faults: readonly PlanFault[]): string | null =>
  faults[0] ? `This takes ${faults[0].expected}.` : null;

/** A length in metres, shown and typed in metres or in feet and inches. */
export function LengthField(props: {
  readonly label: string;
  readonly metres: number;
  /** Returns a sentence that says what would work, or null when the value was taken. */
  readonly commit: (metres: number) => string | null;
}) {
  const lengths = useSession((state) => state.lengths);
  const [number, unit] =
    lengths === 'm' ? formatLength(props.metres, 'm').split(NBSP) : [formatLength(props.metres, lengths)];
  return (
    <Field
      label={props.label}
      text={number ?? ''}
      {...(unit === undefined ? {} : { unit })}
      commit={(text) => {
        const read = parseLength(text, lengths);
        return read.ok ? props.commit(read.value) : firstSentence(read.faults);
      }}
    />
  );
}
