import { useSession } from '../../desk/hooks';
import { viewStore } from '../../desk/viewStore';
import { Overhead } from '../overhead/Overhead';
import { PaneBoundary } from '../parts/PaneBoundary';
import { Segmented } from '../parts/Segmented';

const registerWalk = (element: HTMLElement | null): void => viewStore.getState().setWalkElement(element);

/** The place that the stage draws the walk-round into. */
function WalkRound() {
  return <section className="walk-round" aria-label="Walk round the roof" ref={registerWalk} />;
}

/** The roof, as a drawing to scale or to walk round; it stays at the left whatever sheet is open. */
export function RoofPane() {
  const view = useSession((state) => state.roofView);
  const setView = useSession((state) => state.setRoofView);
  return (
    <section className="roof" aria-label="The roof">
      <div className="bar">
        <h2>The roof</h2>
        <Segmented
          label="See the roof as"
          choices={[
            { value: 'overhead', word: 'overhead' },
            { value: 'walk round', word: 'walk round' },
          ]}
          chosen={view}
          onChoose={setView}
        />
      </div>
      <div className="board-wrap">
        <PaneBoundary name="The roof">{view === 'overhead' ? <Overhead /> : <WalkRound />}</PaneBoundary>
      </div>
    </section>
  );
}
