import { useStore } from 'zustand';
import { itemOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import { withNames } from '../../../core/plan/withNames';
import { letterOf } from '../../../desk/choose';
import { saveGroundPicture } from '../../../desk/ground/acting';
import { type GroundOf, groundStore } from '../../../desk/ground/groundStore';
import { useGroundState } from '../../../desk/ground/useGroundState';
import { useSession } from '../../../desk/hooks';
import { LengthField } from '../../parts/LengthField';
import { Segmented } from '../../parts/Segmented';
import { heightFault, highFault, lowFault } from './heightFaults';
import { UsefulSection } from './UsefulSection';
import './ground.css';

type Heights = Pick<ReturnType<typeof groundStore.getState>, 'heightMetres' | 'lowMetres' | 'highMetres'>;

const THINGS: readonly { readonly value: GroundOf; readonly word: string }[] = [
  { value: 'height', word: 'a stand' },
  { value: 'chosen', word: 'what is chosen' },
  { value: 'hanging', word: 'what hangs' },
];

/** Takes a height where nothing is wrong with it. */
function taken(fault: string | null, heights: Partial<Heights>): string | null {
  if (fault === null) groundStore.setState(heights);
  return fault;
}

/** For what the ground is read: its height, or between which heights it hangs. */
function ThingFields({ plan }: { readonly plan: Plan }) {
  const { of, heightMetres, lowMetres, highMetres } = useGroundState();
  const chosenId = useSession((state) => state.selectedId);
  const lengths = useSession((state) => state.lengths);
  if (of === 'height')
    return (
      <div className="fields">
        <LengthField
          label="height"
          metres={heightMetres}
          commit={(metres) => taken(heightFault(metres, lengths), { heightMetres: metres })}
        />
      </div>
    );
  if (of === 'hanging')
    return (
      <div className="fields">
        <LengthField
          label="hangs from"
          metres={lowMetres}
          commit={(metres) => taken(lowFault(metres, highMetres, lengths), { lowMetres: metres })}
        />
        <LengthField
          label="up to"
          metres={highMetres}
          commit={(metres) => taken(highFault(metres, lowMetres, lengths), { highMetres: metres })}
        />
      </div>
    );
  const chosen = chosenId === null ? null : itemOf(plan, chosenId);
  return (
    <p className="advice">
      {chosen
        ? `${chosen.record.label} as it stands, with its arm and what it carries.`
        : 'Choose a stand or a lamp on the roof.'}
    </p>
  );
}

/** Which setups it has to stay clear of. */
function SetupChecks({ plan }: { readonly plan: Plan }) {
  const without = useStore(groundStore, (state) => state.without);
  const toggle = (id: string, counts: boolean): void =>
    groundStore.setState({ without: counts ? without.filter((each) => each !== id) : [...without, id] });
  return (
    <fieldset className="setup-checks">
      <legend className="q">clear of</legend>
      {withNames(plan).setups.map(({ id, label }) => (
        <label key={id} title={label}>
          <input
            type="checkbox"
            aria-label={`${letterOf(plan, id)}, ${label}`}
            checked={!without.includes(id)}
            onChange={(event) => toggle(id, event.currentTarget.checked)}
          />
          {letterOf(plan, id)}
        </label>
      ))}
      {plan.setups.length > 1 && (
        <button
          type="button"
          className="bare"
          onClick={() =>
            groundStore.setState({ without: without.length === 0 ? plan.setups.map(({ id }) => id) : [] })
          }
        >
          {without.length === 0 ? 'None' : 'All'}
        </button>
      )}
    </fieldset>
  );
}

/** What clear ground is asked for, and what a lamp should do there. */
export function GroundPanel({ plan }: { readonly plan: Plan }) {
  const { shows, of, ground } = useGroundState();
  return (
    <div className="ground-panel">
      <section className="group">
        <h4>Clear ground</h4>
        <Segmented
          label="What the roof shows of it"
          choices={[
            { value: 'clear', word: 'where it is clear' },
            { value: 'limits', word: 'how tall a stand may be' },
          ]}
          chosen={shows}
          onChoose={(value) => groundStore.setState({ shows: value })}
        />
        {shows === 'clear' && (
          <>
            <Segmented
              label="For what"
              choices={THINGS}
              chosen={of}
              onChoose={(value) => groundStore.setState({ of: value })}
            />
            <ThingFields plan={plan} />
          </>
        )}
        <SetupChecks plan={plan} />
        {shows === 'clear' && (
          <p className="acts">
            <button type="button" disabled={!ground} onClick={() => void saveGroundPicture()}>
              Save the picture
            </button>
          </p>
        )}
      </section>
      <UsefulSection plan={plan} />
    </div>
  );
}
