import { useSession } from '../../desk/hooks';
import { type Standpoint, walkStore } from '../../desk/walkStore';

const stand = (standpoint: Standpoint) => (): void => walkStore.getState().stand(standpoint);

/** Places from where to look, beside the walk-round; what has nothing to stand at waits. */
export function Standpoints({ hasSetups }: { readonly hasSetups: boolean }) {
  const hasChosen = useSession((state) => state.selectedIds.length > 0);
  return (
    <fieldset className="seg standpoints">
      <legend className="vh">Look at the roof</legend>
      <button type="button" onClick={stand('from above')}>
        from above
      </button>
      <button type="button" onClick={stand('eye level')}>
        eye level
      </button>
      <button type="button" onClick={stand('from the camera')} disabled={!hasSetups}>
        from the camera
      </button>
      <button type="button" onClick={stand('at the chosen')} disabled={!hasChosen}>
        at the chosen
      </button>
    </fieldset>
  );
}
