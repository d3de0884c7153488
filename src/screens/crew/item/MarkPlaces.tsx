import type { TapedSet } from '../../../core/form/tape/tape';
import { metresBetween } from '../../../core/plan/runs';
import type { Performer } from '../../../core/plan/schema/cast';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { headingAt } from '../../../desk/blocking/tapeShape';
import { markNames } from '../../overhead/words';
import { compassWords, noTape } from './facts';
import { TapedPlace } from './TapedPlace';

/** Marks nearer to one before than this are laid as that one, metres. */
const SAME_MARK = 0.02;

/** A performer's marks by their beats, each by two tapes; one that lies where another does says so. */
export function MarkPlaces(props: {
  readonly plan: Plan;
  readonly performer: Performer;
  readonly sets: readonly TapedSet[];
  readonly lengths: LengthSystem;
}) {
  const { plan, performer, sets, lengths } = props;
  if (performer.marks.length === 0) return <p className="crew-second">No marks.</p>;
  return (
    <ol className="crew-marks">
      {performer.marks.map((mark, place) => {
        const set = sets.find(({ key }) => key === mark.id);
        const before = performer.marks
          .slice(0, place)
          .findIndex(({ at }) => metresBetween(at, mark.at) < SAME_MARK);
        const beat = plan.beats.find(({ id }) => id === mark.beat)?.label ?? '';
        const up = mark.floorMetres ? `, ${formatLength(mark.floorMetres, lengths)} up` : '';
        const name = markNames(performer.label, [place]);
        return (
          <li key={mark.id}>
            <h4>
              {name} <span className="crew-second">{beat}</span>
            </h4>
            <p className="crew-second">
              {mark.stance}, faces {compassWords(plan, headingAt(plan, performer, mark))}
              {up}
            </p>
            {before >= 0 ? (
              <p>On the tape of {markNames(performer.label, [before])}.</p>
            ) : set ? (
              <TapedPlace plan={plan} set={set} label={name} lengths={lengths} />
            ) : (
              <p className="crew-second">{noTape(lengths)}</p>
            )}
          </li>
        );
      })}
    </ol>
  );
}
