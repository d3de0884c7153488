import { letterOf } from '../../desk/choose';
import { useLivePlan, useReports } from '../../desk/hooks';
import { sessionStore } from '../../desk/sessionStore';
import { Glyph } from '../parts/Glyph';
import { concernOf } from '../report/concerns';
import { worstByItem } from '../report/summary';
import { useShownReports } from '../report/useSetupReports';

/** With nothing chosen, the whole night: in how many setups all is well, and which items stand in the way where. */
export function NightPanel() {
  const plan = useLivePlan();
  const setups = useShownReports();
  const notices = useReports((state) => state.night?.notices ?? null);
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
        <small>setups have nothing in the way</small>
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
      {notices && notices.length > 0 ? (
        <>
          <h3>Good to know</h3>
          <ul className="notices">
            {notices.map((notice) => (
              <li key={`${notice.where} ${notice.sentence}`}>
                <b>{notice.where}</b>: {notice.sentence}
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </>
  );
}
