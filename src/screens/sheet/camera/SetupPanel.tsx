import { removeSetup } from '../../../core/plan/edits/removeSetup';
import { named } from '../../../core/plan/named';
import type { Setup } from '../../../core/plan/schema/setup';
import { letterOf } from '../../../desk/choose';
import { useLivePlan } from '../../../desk/hooks';
import { planStore } from '../../../desk/planStore';
import { toastStore } from '../../../desk/toastStore';
import { Icon } from '../../parts/Icon';
import { ExposureSection } from './ExposureSection';
import { FilterSection } from './FilterSection';
import { FocusSection } from './FocusSection';
import { GlassSection } from './GlassSection';
import { useDepartmentFaults } from './MoveFaults';
import { MoveSection } from './MoveSection';
import { OwnLinesSection } from './OwnLinesSection';
import { PlaceSection } from './PlaceSection';
import { ReadingSection } from './ReadingSection';
import { SupportSection } from './SupportSection';
import './camera.css';

function takeOut(setup: Setup): void {
  const { edit: make, undo } = planStore.getState();
  make(`take out ${setup.label}`, (plan) => removeSetup(plan, { setupId: setup.id }));
  toastStore
    .getState()
    .say(`${named(setup.label)} is out of the plan.`, { action: { word: 'Undo', act: undo } });
}

/** The chosen camera, section by section: its glass, how much light it takes, where it stands, what is read off it. */
export function SetupPanel({ setup }: { readonly setup: Setup }) {
  const plan = useLivePlan();
  const faults = useDepartmentFaults(plan, setup);
  return (
    <>
      <h3 className="of-item">
        <Icon name="camera" />
        Setup {letterOf(plan, setup.id)}, {setup.support}
        {setup.move.keys.length > 1 ? `, a move of ${setup.move.keys.length} keys` : ''}
      </h3>
      <div className="sections" key={setup.id}>
        <GlassSection plan={plan} setup={setup} />
        <ExposureSection plan={plan} setup={setup} faults={faults} />
        <FilterSection setup={setup} />
        <PlaceSection plan={plan} setup={setup} />
        <SupportSection plan={plan} setup={setup} faults={faults} />
        <MoveSection plan={plan} setup={setup} faults={faults} />
        <FocusSection plan={plan} setup={setup} faults={faults} />
        <ReadingSection plan={plan} setup={setup} />
        <OwnLinesSection plan={plan} />
      </div>
      <p className="acts">
        <button type="button" className="bare" onClick={() => takeOut(setup)}>
          Take it out
        </button>
      </p>
    </>
  );
}
