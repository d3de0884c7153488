import { bestSpot, heldFast } from '../../../core/clearance/useful/bestSpot';
import { LAMP_ROLES, type LampRole, type Range, type RoleRange } from '../../../core/clearance/useful/roles';
import { bestSentence } from '../../../core/clearance/useful/words';
import type { Plan } from '../../../core/plan/schema/plan';
import { withNames } from '../../../core/plan/withNames';
import { formatDegrees } from '../../../core/units/angles';
import { formatLength } from '../../../core/units/lengths';
import { formatStopCount, formatStops } from '../../../core/units/stops';
import { putInBestSpot } from '../../../desk/ground/acting';
import { groundStore, type UsefulWish, wishFor } from '../../../desk/ground/groundStore';
import { useGroundState } from '../../../desk/ground/useGroundState';
import { useSession } from '../../../desk/hooks';
import { SelectField } from '../../parts/Field';
import { LengthField } from '../../parts/LengthField';
import { NumberField } from '../../parts/NumberField';
import { Segmented } from '../../parts/Segmented';
import { rangeFault } from './heightFaults';

type RoleChoice = LampRole | 'none';

const ROLES: readonly { readonly value: RoleChoice; readonly word: string }[] = [
  { value: 'none', word: 'no lamp' },
  ...LAMP_ROLES.map((role) => ({ value: role, word: role === 'back' ? 'backlight' : role })),
];

const change = (patch: Partial<UsefulWish>): void =>
  groundStore.setState(({ wish }) => ({ wish: wish && { ...wish, ...patch } }));

/** Sets one end of a range; the other end stays. */
function setEnd(
  range: RoleRange,
  name: keyof RoleRange,
  end: 0 | 1,
  limits: Range,
  printed: (value: number) => string,
): (value: number) => string | null {
  return (value) => {
    const [from, to] = range[name];
    const next: Range = end === 0 ? [value, to] : [from, value];
    const fault = rangeFault(next, limits, printed);
    if (fault === null) change({ range: { ...range, [name]: next } });
    return fault;
  };
}

const BEARINGS: Range = [0, 180];
const ELEVATIONS: Range = [-90, 90];
const METRES: Range = [0.1, 100];
/** The most that a level may differ from the set stop, and that a level may be off. */
const MOST_STOPS = 10;

const inStops = (stops: number): string => formatStops(stops);

/** The angles and distances that make the role; whoever sees it otherwise types others. */
function RangeFields({ range }: { readonly range: RoleRange }) {
  const lengths = useSession((state) => state.lengths);
  const inDegrees = (value: number): string => formatDegrees(value, 0);
  const inLengths = (value: number): string => formatLength(value, lengths);
  const degrees = (name: 'bearingDegrees' | 'elevationDegrees', word: string, limits: Range) => (
    <>
      <NumberField
        label={`${word}, from`}
        unit="°"
        value={range[name][0]}
        commit={setEnd(range, name, 0, limits, inDegrees)}
      />
      <NumberField
        label="to"
        unit="°"
        value={range[name][1]}
        commit={setEnd(range, name, 1, limits, inDegrees)}
      />
    </>
  );
  return (
    <details className="role-range">
      <summary>Angles and distance</summary>
      <p className="advice">
        Round from the way that the face looks, 180° is behind; above the eyes. Common practice, to be set as
        you light.
      </p>
      <div className="fields">
        {degrees('bearingDegrees', 'round', BEARINGS)}
        {degrees('elevationDegrees', 'above', ELEVATIONS)}
        <LengthField
          label="away, from"
          metres={range.metres[0]}
          commit={setEnd(range, 'metres', 0, METRES, inLengths)}
        />
        <LengthField
          label="to"
          metres={range.metres[1]}
          commit={setEnd(range, 'metres', 1, METRES, inLengths)}
        />
      </div>
    </details>
  );
}

function WishFields({ plan, wish }: { readonly plan: Plan; readonly wish: UsefulWish }) {
  return (
    <>
      <div className="fields">
        <SelectField
          label="for"
          value={wish.performerId ?? plan.cast[0]?.id ?? ''}
          onChange={(performerId) => change({ performerId })}
        >
          {withNames(plan).cast.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </SelectField>
        <NumberField
          label="level, from the set stop"
          unit="stops"
          decimals={1}
          value={wish.stops}
          commit={(stops) => {
            const fault = rangeFault([stops, MOST_STOPS], [-MOST_STOPS, MOST_STOPS], inStops);
            if (fault === null) change({ stops });
            return fault;
          }}
        />
        <NumberField
          label="give or take"
          unit="stops"
          decimals={1}
          value={wish.toleranceStops}
          commit={(toleranceStops) => {
            if (toleranceStops <= 0 || toleranceStops > MOST_STOPS)
              return `Found ${inStops(toleranceStops)}, expected more than 0 and at most ${formatStopCount(MOST_STOPS, 0)}.`;
            change({ toleranceStops });
            return null;
          }}
        />
      </div>
      <Segmented
        label="From which side of the face"
        choices={[
          { value: 'either', word: 'either side' },
          { value: 'left', word: 'their left' },
          { value: 'right', word: 'their right' },
        ]}
        chosen={wish.side}
        onChoose={(side) => change({ side })}
      />
      <label className="with-dim">
        <input
          type="checkbox"
          checked={wish.mayDim}
          onChange={(event) => change({ mayDim: event.currentTarget.checked })}
        />
        set its dim to the level
      </label>
      <RangeFields range={wish.range} />
    </>
  );
}

/** Where on clear ground a lamp does what it should, and the way there. */
export function UsefulSection({ plan }: { readonly plan: Plan }) {
  const { wish, useful, usefulWhy } = useGroundState();
  const lengths = useSession((state) => state.lengths);
  const best = useful && bestSpot(useful);
  const held = useful && heldFast(plan, useful.question.lampId);
  const choose = (role: RoleChoice): void =>
    groundStore.setState(({ wish: before }) => {
      if (role === 'none') return { wish: null };
      const next = wishFor(role);
      return { wish: before ? { ...next, performerId: before.performerId } : next };
    });
  return (
    <section className="group">
      <h4>Where the chosen lamp can go</h4>
      <Segmented label="The chosen lamp as" choices={ROLES} chosen={wish?.role ?? 'none'} onChoose={choose} />
      {wish && (
        <>
          {usefulWhy !== null && <p className="advice">{usefulWhy}</p>}
          {best && <p className="advice">{bestSentence(best, lengths)}</p>}
          {held && <p className="advice">{held}</p>}
          <p className="acts">
            <button
              type="button"
              className="do"
              disabled={!best || held !== null}
              onClick={() => best && putInBestSpot(best)}
            >
              Put it in the best spot
            </button>
          </p>
          <WishFields plan={plan} wish={wish} />
        </>
      )}
    </section>
  );
}
