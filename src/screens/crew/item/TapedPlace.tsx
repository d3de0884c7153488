import type { TapedSet } from '../../../core/form/tape/tape';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { TapeSketch } from './TapeSketch';
import { tapedNotes } from './tapedPart';

/** A place by two tapes: drawn, in figures, and with what has to be said of them. */
export function TapedPlace(props: {
  readonly plan: Plan;
  readonly set: TapedSet;
  readonly label: string;
  readonly lengths: LengthSystem;
}) {
  const { plan, set, label, lengths } = props;
  return (
    <div className="crew-taped">
      <TapeSketch plan={plan} set={set} label={label} lengths={lengths} />
      <ol className="crew-tape-list">
        {set.tapes.map(({ metres, from, fromLabel }) => (
          <li key={`${from.x} ${from.z}`}>
            <b>{formatLength(metres, lengths)}</b> from {fromLabel}
          </li>
        ))}
      </ol>
      <p className="crew-second">{tapedNotes(set, lengths).join(' ')}</p>
    </div>
  );
}
