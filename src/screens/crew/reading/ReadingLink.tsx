import { useStore } from 'zustand';
import { keptLinksStore } from '../../../desk/crew/kept/keptLinks';
import { stopReading } from '../../../desk/crew/openLink';
import { useCrew } from '../../../desk/crew/useCrew';
import { CrewFoot } from '../shell/CrewFoot';
import { CrewTimesRow } from '../shell/CrewTimesRow';

/** The frame of the sheet while its link is read: a tab can be chosen already, and the reading be stopped. */
export function ReadingLink() {
  const fragment = useCrew((state) => state.fragment);
  const known = useStore(keptLinksStore, ({ links }) => links.find((each) => each.fragment === fragment));
  return (
    <div className="crew">
      <header className="crew-top">
        <div>
          <h1>{known?.title ?? 'Standclear'}</h1>
          <p role="status">Reads the link</p>
        </div>
        <button type="button" className="crew-more-button" onClick={stopReading}>
          Stop
        </button>
      </header>
      <CrewTimesRow />
      <main className="crew-main" aria-busy="true" />
      <CrewFoot />
    </div>
  );
}
