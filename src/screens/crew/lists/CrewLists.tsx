import { DEPARTMENTS } from '../../../desk/crew/crewStore';
import { CREW_LISTS } from '../../../desk/crew/place';
import { useCrew } from '../../../desk/crew/useCrew';
import { Segmented } from '../../parts/Segmented';
import { Waiting } from '../page/Waiting';
import { coming } from '../parts/coming/coming';
import { PackingPart } from './PackingPart';
import { SetupsPart } from './SetupsPart';
import './lists.css';

/** With the list of sources, which is long: it comes when somebody looks. */
const CautionsPart = coming(async () => (await import('./CautionsPart')).default, {
  meanwhile: () => <Waiting what="The cautions are being laid out." />,
});

/** What is packed, what each setup needs, and what to be careful with. */
export function CrewLists() {
  const list = useCrew((state) => state.list);
  const setList = useCrew((state) => state.setList);
  const asked = useCrew((state) => state.department);
  const setDepartment = useCrew((state) => state.setDepartment);
  return (
    <div className="crew-page crew-lists">
      <h2 className="vh">Lists</h2>
      <Segmented
        label="Which list"
        choices={CREW_LISTS.map((value) => ({ value, word: value }))}
        chosen={list}
        onChoose={setList}
      />
      {list === 'cautions' ? null : (
        <fieldset className="departments">
          <legend className="vh">Whose things</legend>
          {DEPARTMENTS.map((department) => (
            <button
              key={department}
              type="button"
              className="department"
              aria-pressed={department === asked}
              onClick={() => setDepartment(department)}
            >
              {department}
            </button>
          ))}
        </fieldset>
      )}
      {list === 'packing' ? <PackingPart /> : null}
      {list === 'by setup' ? <SetupsPart /> : null}
      {list === 'cautions' ? <CautionsPart /> : null}
    </div>
  );
}
