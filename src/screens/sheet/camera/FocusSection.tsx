import { focusGlassOf, focusSampleAt } from '../../../core/continuity/focusTrack';
import { glassOf } from '../../../core/optics/camera';
import { hyperfocalMetres } from '../../../core/optics/focus';
import { changeSetup } from '../../../core/plan/edits/changeSetup';
import type { Plan } from '../../../core/plan/schema/plan';
import type { FocusOn, Setup } from '../../../core/plan/schema/setup';
import { withNames } from '../../../core/plan/withNames';
import type { DepartmentFault } from '../../../core/report/cameraNotices';
import { formatLength } from '../../../core/units/lengths';
import { useLive, useSession } from '../../../desk/hooks';
import { liveStore } from '../../../desk/liveStore';
import { SelectField, ShownField } from '../../parts/Field';
import { edit } from './editing';
import { FocusDistance, FocusOnField } from './FocusOnField';
import { FocusRacks } from './FocusRacks';
import { blurWords, distanceWords } from './focusWords';
import { MoveFaults } from './MoveFaults';

/** The numbers are worked out anew this often while the clock runs, times a second. */
const PER_SECOND = 8;
const RACKS = 'racks';

/** The racks that begin with what is in focus now. */
function firstRacks(on: FocusOn): Setup['focus'] {
  return { racks: [{ atSeconds: 0, pullSeconds: 0, on }] };
}

/** What is in focus now, as a distance where nobody else says. */
function heldNow(plan: Plan, setup: Setup): FocusOn {
  if (!('racks' in setup.focus)) return setup.focus;
  const metres = focusSampleAt(plan, setup, liveStore.getState().seconds).focusMetres ?? 5;
  return { metres: Math.round(metres * 1000) / 1000 };
}

/** Near, far, hyperfocal, and how sharp everybody is, at the instant of the clock. */
function FocusNumbers({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const lengths = useSession((state) => state.lengths);
  const seconds = useLive((state) => Math.round(state.seconds * PER_SECOND) / PER_SECOND);
  const sample = focusSampleAt(plan, setup, seconds);
  const hyperfocal = hyperfocalMetres(focusGlassOf(plan, setup, seconds));
  const { gateMm } = glassOf(plan, setup);
  return (
    <>
      <div className="fields">
        <ShownField label="near" text={distanceWords(sample.nearMetres, lengths)} />
        <ShownField label="far" text={distanceWords(sample.farMetres, lengths)} />
        <ShownField label="focus now" text={distanceWords(sample.focusMetres, lengths)} />
        <ShownField label="hyperfocal" text={formatLength(hyperfocal, lengths)} />
      </div>
      <ul className="lines">
        {sample.performers.map((performer) => (
          <li key={performer.performerId}>
            <span>{withNames(plan).cast.find(({ id }) => id === performer.performerId)?.label}</span>
            <span className={performer.sharp ? undefined : 'q'}>
              {blurWords(performer, gateMm[1], lengths)}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

/** What a lens is focused on, and what that keeps sharp. Distances are from the image plane. */
export function FocusSection(props: {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly faults: readonly DepartmentFault[];
}) {
  const { plan, setup, faults } = props;
  const lengths = useSession((state) => state.lengths);
  const setupId = setup.id;
  const { focus } = setup;
  const put = (next: Setup['focus']): string | null =>
    edit('change the focus', (before) => changeSetup(before, { setupId, patch: { focus: next } }));
  return (
    <section className="group" aria-label="Focus">
      <h4>Focus, from the image plane</h4>
      <div className="fields">
        {'racks' in focus ? (
          <SelectField
            wide
            label="focus"
            value={RACKS}
            onChange={(value) => {
              if (value !== RACKS) put(heldNow(plan, setup));
            }}
          >
            <option value={RACKS}>racks, one after another</option>
            <option value="held">held as it is now</option>
          </SelectField>
        ) : (
          <FocusOnField
            plan={plan}
            label="focus"
            on={focus}
            now={() => heldDistance(plan, setup)}
            take={put}
          />
        )}
        {'metres' in focus ? (
          <FocusDistance plan={plan} setup={setup} metres={focus.metres} take={(metres) => put({ metres })} />
        ) : null}
      </div>
      <MoveFaults
        faults={faults}
        about="focus"
        word={(nearest) => `Focus at ${formatLength(nearest, lengths)}`}
        take={(nearest) => void put({ metres: nearest })}
      />
      {'racks' in focus ? (
        <FocusRacks plan={plan} setup={setup} racks={focus.racks} put={put} />
      ) : (
        <p className="acts">
          <button type="button" onClick={() => put(firstRacks(focus))}>
            Rack in this setup
          </button>
        </p>
      )}
      <FocusNumbers plan={plan} setup={setup} />
    </section>
  );
}

function heldDistance(plan: Plan, setup: Setup): number {
  const metres = focusSampleAt(plan, setup, liveStore.getState().seconds).focusMetres ?? 5;
  return Math.round(Math.max(0.05, metres) * 1000) / 1000;
}
