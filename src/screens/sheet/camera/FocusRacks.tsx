import { spanOf } from '../../../core/optics/camera';
import { momentAs } from '../../../core/optics/heldKey';
import { momentOf } from '../../../core/optics/moments';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { formatSeconds } from '../../../core/units/seconds';
import { goToSeconds } from '../../../desk/choose';
import { liveStore } from '../../../desk/liveStore';
import { FocusDistance, FocusOnField } from './FocusOnField';
import { LegalField } from './LegalField';
import { MomentFields } from './MoveMoment';

type Rack = Extract<Setup['focus'], { readonly racks: unknown }>['racks'][number];

/** A pull that nobody has timed yet, seconds. Source: common practice, no source */
const USUAL_PULL = 1;
const SAME_SECONDS = 0.02;

/** A rack at the playhead, at a beat where one is there, on whoever is not in focus before it. */
function rackHere(plan: Plan, setup: Setup, racks: readonly Rack[]): Rack {
  const [from, to] = spanOf(plan, setup);
  const seconds = Math.min(to, Math.max(from, liveStore.getState().seconds));
  const beat = plan.beats.find(({ atSeconds }) => Math.abs(atSeconds - seconds) < SAME_SECONDS);
  const last = racks.at(-1)?.on;
  const other = plan.cast.find(({ id }) => !(last && 'follow' in last && last.follow === id));
  return {
    ...momentAs(plan, seconds, beat?.id),
    pullSeconds: USUAL_PULL,
    on: other ? { follow: other.id } : { metres: 5 },
  };
}

/** The racks of a setup in their order: when each ends, how long it takes, and what it ends on. */
export function FocusRacks(props: {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly racks: readonly Rack[];
  readonly put: (focus: Setup['focus']) => string | null;
}) {
  const { plan, setup, racks, put } = props;
  const change = (index: number, rack: Rack): string | null =>
    put({ racks: racks.map((each, k) => (k === index ? rack : each)) });
  const whom = ({ on }: Rack): string =>
    'follow' in on ? (plan.cast.find(({ id }) => id === on.follow)?.label ?? '') : 'a distance';
  return (
    <>
      <ul className="parts-of">
        {racks.map((rack, index) => {
          const seconds = momentOf(plan, rack);
          // Racks have no ids, and their fields show what they are given.
          const place = `rack ${index}`;
          return (
            <li key={place}>
              <div className="of-part">
                <button type="button" className="bare" onClick={() => goToSeconds(seconds)}>
                  {index === 0
                    ? `Begins on ${whom(rack)}`
                    : `Racks to ${whom(rack)}, ${formatSeconds(seconds)}`}
                </button>
                {racks.length > 1 ? (
                  <button
                    type="button"
                    className="bare"
                    onClick={() => put({ racks: racks.toSpliced(index, 1) })}
                  >
                    Take it out<span className="vh"> rack {index + 1}</span>
                  </button>
                ) : null}
              </div>
              <div className="fields">
                <FocusOnField
                  plan={plan}
                  label={index === 0 ? 'begins' : 'racks'}
                  on={rack.on}
                  now={() => 5}
                  take={(on) => change(index, { ...rack, on })}
                />
                {'metres' in rack.on ? (
                  <FocusDistance
                    plan={plan}
                    setup={setup}
                    metres={rack.on.metres}
                    take={(metres) => change(index, { ...rack, on: { metres } })}
                  />
                ) : null}
                {index === 0 ? null : (
                  <>
                    <MomentFields
                      plan={plan}
                      moment={rack}
                      seconds={seconds}
                      take={({ atSeconds, beat }) => {
                        const { beat: _, ...rest } = rack;
                        return change(index, { ...rest, atSeconds, ...(beat !== undefined && { beat }) });
                      }}
                    />
                    <LegalField
                      label="pull takes"
                      value={rack.pullSeconds}
                      legal={{ what: 'Pulls', limits: [0, 60], unit: 's', decimals: 2 }}
                      take={(pullSeconds) =>
                        pullSeconds === undefined ? null : change(index, { ...rack, pullSeconds })
                      }
                    />
                  </>
                )}
              </div>
            </li>
          );
        })}
      </ul>
      <p className="acts">
        <button type="button" onClick={() => put({ racks: [...racks, rackHere(plan, setup, racks)] })}>
          Rack it here
        </button>
      </p>
    </>
  );
}
