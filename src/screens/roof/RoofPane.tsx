import { useRef } from 'react';
import { flushSync } from 'react-dom';
import { useSession, useViews } from '../../desk/hooks';
import type { RoofView } from '../../desk/sessionStore';
import { viewStore } from '../../desk/viewStore';
import { Hints } from '../hints/Hints';
import { Overhead } from '../overhead/Overhead';
import { OverWalk } from '../overhead/strokes/OverWalk';
import { SnapWords } from '../overhead/strokes/SnapWords';
import { lazily } from '../parts/lazily';
import { PaneBoundary } from '../parts/PaneBoundary';
import { Segmented } from '../parts/Segmented';
import { GroundOnRoof } from './GroundOnRoof';
import { LightOnRoof } from './LightOnRoof';
import { OnlyIn } from './OnlyIn';
import { Standpoints } from './Standpoints';
import './walk.css';

const registerWalk = (element: HTMLElement | null): void => viewStore.getState().setWalkElement(element);

/** The arrow keys turn the view once it has the focus. */
const TAKING_KEYS = { tabIndex: 0 } as const;

/** The place that the stage draws the walk-round into: here only once the script is that draws it. */
const WalkPlace = lazily(
  async () => {
    await import('../../scene/walk/walkStage');
    return () => (
      <section className="walk-round" aria-label="Walk round the roof" {...TAKING_KEYS} ref={registerWalk} />
    );
  },
  <section className="walk-round" aria-label="Walk round the roof" aria-busy="true">
    <p>The roof to walk round is on its way.</p>
  </section>,
);

function WalkRound() {
  const refused = useViews((state) => state.pictureRefused);
  if (refused === null) return <WalkPlace />;
  return (
    <div className="walk-round">
      <p>{refused}</p>
    </div>
  );
}

const goPast = (): void =>
  document.querySelector<HTMLElement>('.sheet [role="tab"][aria-selected="true"]')?.focus();

/** The roof, as a drawing to scale or to walk round; it stays at the left whatever sheet is open. */
export function RoofPane() {
  const view = useSession((state) => state.roofView);
  const setView = useSession((state) => state.setRoofView);
  const pane = useRef<HTMLElement>(null);
  const change = (to: RoofView): void => {
    flushSync(() => setView(to));
    // On a phone the walk-round takes the whole window; who comes back is still at the roof.
    pane.current?.scrollIntoView({ block: 'nearest' });
  };
  return (
    <section className="roof" aria-label="The roof" ref={pane}>
      <div className="bar">
        <h2>The roof</h2>
        <button type="button" className="skip" onClick={goPast}>
          Past the drawing
        </button>
        <Segmented
          label="See the roof as"
          choices={[
            { value: 'overhead', word: 'overhead' },
            { value: 'walk round', word: 'walk round' },
          ]}
          chosen={view}
          onChoose={change}
        />
        {view === 'overhead' && <LightOnRoof />}
        {view === 'overhead' && <GroundOnRoof />}
        <OnlyIn />
        <SnapWords />
        {view === 'walk round' && <Standpoints />}
      </div>
      <Hints />
      <div className="board-wrap">
        <PaneBoundary key={view} name="The roof">
          {view === 'overhead' ? <Overhead /> : <WalkRound />}
          {view === 'walk round' && <OverWalk />}
        </PaneBoundary>
      </div>
    </section>
  );
}
