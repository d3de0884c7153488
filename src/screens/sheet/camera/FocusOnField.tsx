import { glassOf } from '../../../core/optics/camera';
import type { Plan } from '../../../core/plan/schema/plan';
import type { FocusOn, Setup } from '../../../core/plan/schema/setup';
import { withNames } from '../../../core/plan/withNames';
import { formatLength, parseLength } from '../../../core/units/lengths';
import { useSession } from '../../../desk/hooks';
import { SelectField } from '../../parts/Field';
import { firstSentence } from '../../parts/faultSentence';
import { OfferField } from '../../parts/OfferField';

const DISTANCE = 'a distance';

/** What to focus on: somebody's eyes, or a distance. */
export function FocusOnField(props: {
  readonly plan: Plan;
  readonly label: string;
  readonly on: FocusOn;
  /** The distance that is held when nobody is followed any more, metres. */
  readonly now: () => number;
  readonly take: (on: FocusOn) => string | null;
}) {
  const { plan, label, on, now, take } = props;
  return (
    <SelectField
      wide
      label={label}
      value={'follow' in on ? on.follow : DISTANCE}
      onChange={(value) => void take(value === DISTANCE ? { metres: now() } : { follow: value })}
    >
      <option value={DISTANCE}>at a distance</option>
      {withNames(plan).cast.map(({ id, label: name }) => (
        <option key={id} value={id}>
          on the eyes of {name}
        </option>
      ))}
    </SelectField>
  );
}

/** A typed focus distance; nearer than the lens goes is refused with the nearest that it takes. */
export function FocusDistance(props: {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly metres: number;
  readonly take: (metres: number) => string | null;
}) {
  const { plan, setup, metres, take } = props;
  const lengths = useSession((state) => state.lengths);
  const { closeFocusMetres } = glassOf(plan, setup).lens;
  return (
    <OfferField
      wide
      label="distance"
      text={formatLength(metres, lengths)}
      commit={(text) => {
        const read = parseLength(text, lengths);
        if (!read.ok) return { sentence: firstSentence(read.faults) ?? '', offer: null };
        const nearest = formatLength(closeFocusMetres, lengths);
        if (read.value < closeFocusMetres)
          return {
            sentence: `This lens focuses from ${nearest} on.`,
            offer: { word: `Focus at ${nearest}`, take: () => void take(closeFocusMetres) },
          };
        const sentence = take(read.value);
        return sentence === null ? null : { sentence, offer: null };
      }}
    />
  );
}
