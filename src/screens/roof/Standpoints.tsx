import { usePlanState, useSession } from '../../desk/hooks';
import { type Standpoint, walkStore } from '../../desk/walkStore';

const PLACES: readonly {
  readonly standpoint: Standpoint;
  readonly word: string;
  readonly name: string;
}[] = [
  { standpoint: 'from above', word: 'above', name: 'Look from above' },
  { standpoint: 'eye level', word: 'eye level', name: 'Look from eye level' },
  { standpoint: 'from the camera', word: 'camera', name: 'Look from the camera' },
  { standpoint: 'at the chosen', word: 'chosen', name: 'Look at what is chosen' },
];

/** Places from where to look, beside the walk-round; where there is no camera, or nothing is chosen, its button waits. */
export function Standpoints() {
  const hasSetups = usePlanState((state) => state.plan.setups.length > 0);
  const hasChosen = useSession((state) => state.selectedIds.length > 0);
  const waits = {
    'from above': false,
    'eye level': false,
    'from the camera': !hasSetups,
    'at the chosen': !hasChosen,
  };
  return (
    <fieldset className="seg standpoints">
      <legend className="vh">Look at the roof</legend>
      {PLACES.map(({ standpoint, word, name }) => (
        <button
          key={standpoint}
          type="button"
          aria-label={name}
          title={name}
          disabled={waits[standpoint]}
          onClick={() => walkStore.getState().stand(standpoint)}
        >
          {word}
        </button>
      ))}
    </fieldset>
  );
}
