import { SUPPORTS, supportOf } from '../../../core/kit/supports';
import { stateAt } from '../../../core/optics/camera';
import { keysOf } from '../../../core/optics/cameraKey';
import { layTrack, putDollyUnder, putOnTrack, setSupport, takeOffTrack } from '../../../core/optics/onTrack';
import { changeKeys } from '../../../core/plan/edits/changeKeys';
import { moveItems } from '../../../core/plan/edits/moveItems';
import { setRides } from '../../../core/plan/edits/setRides';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { surfaceUnder } from '../../../core/plan/surfaces';
import { withNames } from '../../../core/plan/withNames';
import type { DepartmentFault } from '../../../core/report/cameraNotices';
import { tightTrack } from '../../../core/report/trackRoom';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { useSession } from '../../../desk/hooks';
import { SelectField } from '../../parts/Field';
import { edit } from './editing';
import { MoveFaults } from './MoveFaults';

/** `The lens goes from 0.30 m to 1.90 m high, and 1.20 m from where it stands.` */
function reachWords(support: Setup['support'], lengths: LengthSystem): string {
  const { lowestMetres, highestMetres, travelMetres } = supportOf(support);
  const say = (metres: number): string => formatLength(metres, lengths, { decimals: 1 });
  const height = `The lens goes from ${say(lowestMetres)} to ${say(highestMetres)} high`;
  if (travelMetres === null) return `${height} and wherever it is carried.`;
  return travelMetres === 0
    ? `${height} and stays where it stands.`
    : `${height} and ${say(travelMetres)} from where it stands.`;
}

/** Every key raised or lowered by as much. */
const raised = (plan: Plan, setupId: string, byMetres: number): Plan =>
  changeKeys(plan, {
    setupId,
    change: (keys) =>
      keys.map((key) => ({
        ...key,
        position: [key.position[0], Math.round((key.position[1] + byMetres) * 1e4) / 1e4, key.position[2]],
      })),
  });

/** By how much the key that is worst off misses the nearest height that would do. */
function heightOff(plan: Plan, setup: Setup, nearest: number): number {
  const offs = keysOf(plan, setup).map(({ atSeconds }) => {
    const [x, y, z] = stateAt(plan, setup, atSeconds).position;
    return nearest - (y - surfaceUnder(plan, [x, z], { belowMetres: y }).metres);
  });
  return nearest === supportOf(setup.support).lowestMetres ? Math.max(...offs) : Math.min(...offs);
}

/** The track of a dolly, what can be laid for it, and the dolly itself. */
function DollyFields({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const setupId = setup.id;
  const tracks = withNames(plan).gear.filter(({ kind }) => kind === 'track');
  const dollies = plan.gear.filter((gear) => gear.kind === 'dolly');
  const ridden = dollies.find(({ rides }) => rides === setupId);
  return (
    <>
      <div className="fields">
        <SelectField
          label="track"
          value={setup.track ?? ''}
          onChange={(trackId) =>
            edit(trackId === '' ? 'take the camera off its track' : 'put the camera on a track', (before) =>
              trackId === '' ? takeOffTrack(before, { setupId }) : putOnTrack(before, { setupId, trackId }),
            )
          }
        >
          <option value="">none, on the floor</option>
          {tracks.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </SelectField>
        <SelectField
          label="dolly"
          value={ridden?.id ?? ''}
          onChange={(id) =>
            edit(id === '' ? 'take the camera off its dolly' : 'put the camera on a dolly', (before) =>
              id === ''
                ? ridden
                  ? setRides(before, { id: ridden.id, setupId: null })
                  : before
                : setRides(before, { id, setupId }),
            )
          }
        >
          <option value="">not in the plan</option>
          {dollies.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </SelectField>
      </div>
      <p className="acts">
        <button
          type="button"
          onClick={() =>
            edit('lay track under the move', (before) => layTrack(before, { setupId, bent: false }))
          }
        >
          {setup.track === undefined ? 'Lay track under it' : 'Lay another under it'}
        </button>
        {setup.move.keys.length >= 3 ? (
          <button
            type="button"
            onClick={() =>
              edit('lay curved track under the move', (before) => layTrack(before, { setupId, bent: true }))
            }
          >
            Lay it in a curve
          </button>
        ) : null}
        {ridden ? null : (
          <button
            type="button"
            onClick={() => edit('put the dolly in', (before) => putDollyUnder(before, { setupId }))}
          >
            Put the dolly in
          </button>
        )}
      </p>
    </>
  );
}

/** The plan with a setup's track where its dolly has room, locked or not; the camera goes with it. */
function withRoom(plan: Plan, setupId: string): Plan {
  const setup = plan.setups.find(({ id }) => id === setupId);
  const tight = setup && tightTrack(plan, setup);
  return tight?.away ? moveItems(plan, { ids: [tight.track.id], by: tight.away.by, evenLocked: true }) : plan;
}

/** What carries a camera, how far it reaches, and for a dolly its track. */
export function SupportSection(props: {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly faults: readonly DepartmentFault[];
}) {
  const { plan, setup, faults } = props;
  const lengths = useSession((state) => state.lengths);
  const setupId = setup.id;
  return (
    <section className="group">
      <h4>Support</h4>
      <div className="fields">
        <SelectField
          wide
          label="support"
          value={setup.support}
          onChange={(value) => {
            const found = SUPPORTS.find(({ support }) => support === value);
            if (found)
              edit('change the support', (before) => setSupport(before, { setupId, support: found.support }));
          }}
        >
          {SUPPORTS.map(({ support, label }) => (
            <option key={support} value={support}>
              {label}
            </option>
          ))}
        </SelectField>
      </div>
      <p className="advice">{reachWords(setup.support, lengths)}</p>
      <MoveFaults
        faults={faults}
        about="height"
        word={(nearest) => `Take ${formatLength(nearest, lengths)}`}
        take={(nearest) =>
          edit('bring the lens within reach', (before) =>
            raised(before, setupId, heightOff(before, setup, nearest)),
          )
        }
      />
      <MoveFaults faults={faults} about="travel" />
      {setup.support === 'dolly' ? <DollyFields plan={plan} setup={setup} /> : null}
      <MoveFaults
        faults={faults}
        about="room"
        word={(nearest) => `Move the track ${formatLength(nearest, lengths)} away`}
        take={() => edit('give the dolly room', (before) => withRoom(before, setupId))}
      />
    </section>
  );
}
