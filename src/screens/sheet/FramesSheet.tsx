import { useState } from 'react';
import { useStore } from 'zustand';
import { itemOf } from '../../core/plan/items';
import type { Plan } from '../../core/plan/schema/plan';
import { letterOf } from '../../desk/choose';
import { useLivePlan, useSession } from '../../desk/hooks';
import { Column } from '../parts/Column';
import { lazily } from '../parts/lazily';
import { Segmented } from '../parts/Segmented';
import { Findings } from './Findings';
import { FramesSwitch } from './lensTest/FramesSwitch';
import { framesViewStore } from './lensTest/framesView';
import { NightPanel } from './NightPanel';
import { Notices } from './Notices';
import { useChosenArea } from './panels/useChosenArea';
import { AreaPanel, ItemPanel, SetupPanel, SeveralPanel } from './panelsLater';

const ContactSheet = lazily(async () => (await import('./contact/ContactSheet')).ContactSheet);
const LensTest = lazily(async () => (await import('./lensTest/LensTest')).LensTest);
const SolveView = lazily(async () => (await import('./solve/SolveView')).SolveView);

/** What each setup sees: its findings, what other lenses would see, all setups side by side, or what clears them all. */
export function FramesSheet() {
  const { view } = useStore(framesViewStore);
  if (view === 'lens test') return <LensTest />;
  if (view === 'clear all') return <SolveView />;
  return view === 'contact sheet' ? <ContactSheet /> : <FindingsView />;
}

/** At the left the chosen setup's findings, at the right the chosen item, or the whole night. */
function FindingsView() {
  const plan = useLivePlan();
  const selectedId = useSession((state) => state.selectedId);
  const selectedIds = useSession((state) => state.selectedIds);
  const item = selectedId === null ? null : itemOf(plan, selectedId);
  const several = selectedIds.length > 1;
  const area = useChosenArea(plan);
  return (
    <div className="two">
      <Column>
        <div className="frames-head">
          <FramesSwitch />
        </div>
        <Notices />
        <Findings />
      </Column>
      <Column>
        {several ? (
          <SeveralPanel plan={plan} items={selectedIds.flatMap((id) => itemOf(plan, id) ?? [])} />
        ) : item ? (
          <ItemPanel item={item} standing />
        ) : area ? (
          <AreaPanel plan={plan} area={area} />
        ) : (
          <About plan={plan} />
        )}
      </Column>
    </div>
  );
}

/** With nothing chosen: the whole night, or the camera that is looked through. */
function About({ plan }: { readonly plan: Plan }) {
  const [about, setAbout] = useState<'night' | 'setup'>('night');
  const setupId = useSession((state) => state.setupId);
  const setup = plan.setups.find((each) => each.id === setupId) ?? null;
  if (!setup) return <NightPanel />;
  return (
    <>
      <div className="column-head stays">
        <Segmented
          label="What the panel is about"
          choices={[
            { value: 'night', word: 'the night' },
            { value: 'setup', word: `setup ${letterOf(plan, setup.id)}` },
          ]}
          chosen={about}
          onChoose={setAbout}
        />
      </div>
      {about === 'setup' ? <SetupPanel setup={setup} /> : <NightPanel />}
    </>
  );
}
