import { usePlanState } from '../../desk/hooks';
import { PaneBoundary } from '../parts/PaneBoundary';
import { SetupCard } from './SetupCard';

/** Along the foot: every setup as the lens sees it, with its verdict. */
export function Strip() {
  const setups = usePlanState((state) => state.plan.setups);
  return (
    <nav className="strip" aria-label="Setups">
      <PaneBoundary name="The strip">
        {setups.length === 0 ? (
          <p className="none q">No setup yet. Each will stand here with its picture and its verdict.</p>
        ) : null}
        <ol>
          {setups.map((setup) => (
            <SetupCard key={setup.id} setup={setup} />
          ))}
        </ol>
      </PaneBoundary>
    </nav>
  );
}
