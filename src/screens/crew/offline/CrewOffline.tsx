import { useStore } from 'zustand';
import { offlineStore } from '../../../offline/page/offlineStore';
import { openNewerBuild } from '../../../offline/page/startOffline';
import './crewOffline.css';

/** Whether the sheet works with no signal, once that is certain: nothing moves when it is said. */
export function CrewOffline() {
  const isKept = useStore(offlineStore, ({ kept }) => kept === 'crew' || kept === 'all');
  return (
    <span className="crew-offline" role="status" data-kept={isKept}>
      , <span>kept for offline</span>
    </span>
  );
}

/** A newer version, where there is one. */
export function NewerSheet() {
  const isNewerHere = useStore(offlineStore, (state) => state.isNewerHere);
  if (!isNewerHere) return null;
  return (
    <p className="crew-newer" role="status">
      A newer version is here.{' '}
      <button type="button" className="bare act" onClick={() => void openNewerBuild()}>
        Use it now
      </button>
    </p>
  );
}
