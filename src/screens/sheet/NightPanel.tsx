import { letterOf } from '../../desk/choose';
import { useLivePlan } from '../../desk/hooks';
import { sessionStore } from '../../desk/sessionStore';
import { Glyph } from '../parts/Glyph';
import { concernOf } from '../report/concerns';
import { worstByItem } from '../report/summary';
import { useShownReports } from '../report/useSetupReports';

/** With nothing chosen, the whole night: how many setups need nothing done, and which items stand in the way where. */
export function NightPanel() {
  const plan = useLivePlan();
  const setups = useShownReports();
  if (plan.setups.length === 0) return null;
  if (setups.length === 0) return <h3>The night, being read</h3>;
  const wellSetups = setups.filter((setup) => setup.items.every((item) => concernOf(item) === null));
  const troubles = [...worstByItem(setups).values()]
    .filter(({ troubledIds }) => troubledIds.length > 0)
    .toSorted((a, b) => b.troubledIds.length - a.troubledIds.length);
  return (
    <>
      <h3>The night, all setups</h3>
      <p className={wellSetups.length === setups.length ? 'figure verd' : 'figure'}>
        {wellSetups.length} of {setups.length}
        <small>{wellSetups.length === 1 ? 'setup needs nothing done' : 'setups need nothing done'}</small>
      </p>
      <ul className="rows standing">
        {troubles.map(({ worst, troubledIds }) => (
          <li key={worst.id}>
            <button type="button" onClick={() => sessionStore.getState().setSelectedId(worst.id)}>
              <Glyph verdict={worst.verdict} />
              <span className="sentence">
                <b>{worst.label}</b> in{' '}
                {troubledIds
                  .map((id) => letterOf(plan, id))
                  .toSorted()
                  .join(', ')}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
