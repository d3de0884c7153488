import { useStore } from 'zustand';
import type { Night } from '../../../../core/night/types';
import { breachSentence } from '../../../../core/night/words/demandWords';
import type { Plan } from '../../../../core/plan/schema/plan';
import { setupOf } from '../../../../desk/choose';
import { useSession } from '../../../../desk/hooks';
import { nightStore } from '../../../../desk/night/nightStore';
import { saveCalendar } from '../../../../desk/night/savingNight';
import { useNight } from '../../../../desk/night/useNight';
import { Column } from '../../../parts/Column';
import { Glyph } from '../../../parts/Glyph';
import { Segmented } from '../../../parts/Segmented';
import { CastTimes } from './CastTimes';
import { ChangeCosts } from './ChangeCosts';
import { NightFields } from './NightFields';
import { NightLine } from './NightLine';
import { ORDER_FIELDS, orderStore } from './orderStore';
import { SetupFields } from './SetupFields';
import { SetupList } from './SetupList';
import { Suggest } from './Suggest';
import './order.css';

const FIELD_WORDS = { night: 'the night', setup: 'the setup', cast: 'cast', changes: 'changes' } as const;

/** What does not hold, and what is only said of the night; while a hand drags, only what the order breaks. */
function Notes({ plan, night }: { readonly plan: Plan; readonly night: Night }) {
  const answer = useStore(nightStore, (state) => state.answer);
  const isWorkedOut = answer?.night === night;
  const notes = isWorkedOut
    ? night.notes
    : night.schedule.breaches.map((breach) => ({
        standing: 'breaks' as const,
        sentence: breachSentence(plan, night.clock, night.schedule, breach),
      }));
  return (
    <ul className="night-notes" aria-label="What there is to say of the night" aria-busy={!isWorkedOut}>
      {notes.map(({ standing, sentence }) => (
        <li key={sentence} className={standing === 'breaks' ? 'breaks' : undefined}>
          {standing === 'breaks' ? <Glyph verdict="showing" /> : null}
          <span>{sentence}</span>
        </li>
      ))}
    </ul>
  );
}

function Fields({ plan }: { readonly plan: Plan }) {
  const fields = useStore(orderStore, (state) => state.fields);
  const setup = setupOf(
    plan,
    useSession((state) => state.setupId),
  );
  return (
    <>
      <div className="order-about">
        <Segmented
          label="What the fields are about"
          choices={ORDER_FIELDS.map((value) => ({ value, word: FIELD_WORDS[value] }))}
          chosen={fields}
          onChoose={(chosen) => orderStore.setState({ fields: chosen })}
        />
      </div>
      {fields === 'night' ? <NightFields plan={plan} /> : null}
      {fields === 'setup' && setup ? <SetupFields plan={plan} setup={setup} /> : null}
      {fields === 'cast' ? <CastTimes plan={plan} /> : null}
      {fields === 'changes' ? <ChangeCosts plan={plan} /> : null}
    </>
  );
}

/** The order of the night against dusk: when everyone wraps, what changes in between, and what it should be. */
export function OrderView({ plan }: { readonly plan: Plan }) {
  const night = useNight(plan);
  if (plan.setups.length === 0)
    return (
      <p className="night-empty">
        No setup yet. Place a camera on the roof, and the night is put in order here.
      </p>
    );
  if (!night) return <p className="night-empty">The night is being worked out.</p>;
  return (
    <Column>
      <NightLine plan={plan} night={night} />
      <div className="night-columns">
        <div>
          <SetupList plan={plan} night={night} />
        </div>
        <div>
          <Suggest plan={plan} night={night} />
          <Notes plan={plan} night={night} />
          <p className="acts order-files">
            <button type="button" onClick={() => void saveCalendar(plan, night)}>
              Save as a calendar
            </button>
            <button type="button" onClick={() => window.print()}>
              Print
            </button>
          </p>
          <Fields plan={plan} />
        </div>
      </div>
    </Column>
  );
}
