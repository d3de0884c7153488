import { setupsInOrder } from '../../../core/plan/nightOrder';
import { setupLetter } from '../../../core/plan/setupLetter';
import { useCrew, useCrewReading } from '../../../desk/crew/useCrew';
import { Waiting } from '../page/Waiting';
import { setupNeeds, toldNeeds } from './setupNeeds';

/** What each setup needs, in tonight's order, of whoever asks. */
export function SetupsPart() {
  const plan = useCrew((state) => state.plan);
  const asked = useCrew((state) => state.department);
  const lengths = useCrew((state) => state.lengths);
  const openSetup = useCrew((state) => state.openSetup);
  const sheets = useCrewReading((state) => state.sheets);
  const power = useCrewReading((state) => state.power);
  if (plan.setups.length === 0) return <p className="crew-section">This plan has no setup.</p>;
  if (sheets.size === 0) return <Waiting what="The setups are being read." />;
  const setups = setupsInOrder(plan);
  const letters = setups.map((setup) => setupLetter(plan.setups.indexOf(setup)));
  const needs = toldNeeds(
    setups.map((setup) => setupNeeds(plan, setup, sheets.get(setup.id), power, lengths)),
    letters,
  );
  return (
    <ul className="needs crew-section">
      {setups.map(({ id, label }, place) => {
        const own = needs[place].filter(({ department }) => asked === 'all' || department === asked);
        return (
          <li key={id}>
            <button type="button" className="need-setup" onClick={() => openSetup(id)}>
              <b>{letters[place]}</b>
              {label}
            </button>
            {own.length === 0 ? <p className="q">nothing of {asked}</p> : null}
            <dl>
              {own.map(({ department, words }) => (
                <div key={department}>
                  <dt>{department}</dt>
                  <dd>{words}</dd>
                </div>
              ))}
            </dl>
          </li>
        );
      })}
    </ul>
  );
}
