import { OfferField } from '../../parts/OfferField';
import { fieldWord, type Legal, printed, readLegal } from './legal';

/** A number within limits; beyond them a sentence says so, and a button has the nearest that will do. */
export function LegalField(props: {
  readonly label: string;
  readonly value: number | undefined;
  readonly legal: Legal;
  readonly empty?: string;
  /** Whether the value may be left out: then an emptied field takes it away. */
  readonly optional?: boolean;
  /** Returns a sentence that says what would work, or null when the value was taken. */
  readonly take: (value: number | undefined) => string | null;
}) {
  const { label, value, legal, empty, optional = false, take } = props;
  return (
    <OfferField
      label={label}
      text={value === undefined ? '' : fieldWord(value, legal)}
      {...(legal.unit === undefined || value === undefined ? {} : { unit: legal.unit })}
      {...(empty === undefined ? {} : { empty })}
      commit={(text) => {
        if (optional && text.trim() === '') {
          const sentence = take(undefined);
          return sentence === null ? null : { sentence, offer: null };
        }
        const read = readLegal(text, legal);
        if (read.ok) {
          const sentence = take(read.value);
          return sentence === null ? null : { sentence, offer: null };
        }
        const { nearest, sentence } = read;
        return {
          sentence,
          offer:
            nearest === null
              ? null
              : { word: `Take ${printed(nearest, legal)}`, take: () => void take(nearest) },
        };
      }}
    />
  );
}
