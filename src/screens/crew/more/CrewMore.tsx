import { useStore } from 'zustand';
import { awakeStore, keepAwake } from '../../../desk/crew/awake';
import { storageStore } from '../../../desk/crew/kept/storage';
import { useCrew } from '../../../desk/crew/useCrew';
import { openEditor } from '../../../desk/crew/ways';
import { keysOf } from '../../parts/keysOf';
import { Segmented } from '../../parts/Segmented';
import { Layer } from '../shell/Layer';
import { KeptLinks } from './KeptLinks';
import { MakeMine } from './MakeMine';

/** Whether the screen stays on while the sheet is looked at. */
function KeepAwake() {
  const offered = useStore(awakeStore, (state) => state.offered);
  const on = useStore(awakeStore, (state) => state.on);
  if (!offered) return null;
  return (
    <label className="crew-switch">
      <span>Keep the screen awake</span>
      <input type="checkbox" checked={on} onChange={() => void keepAwake(!on)} />
    </label>
  );
}

/** What can be done with a sheet besides reading it, and what its link leaves out. */
export function CrewMore() {
  const lengths = useCrew((state) => state.lengths);
  const setLengths = useCrew((state) => state.setLengths);
  const leftOut = useCrew((state) => state.leftOut);
  const fragment = useCrew((state) => state.fragment);
  const refused = useStore(storageStore, (state) => state.refused);
  const keys = keysOf(leftOut);
  return (
    <Layer label="This sheet">
      <div className="crew-part">
        <KeepAwake />
        <Segmented
          label="Lengths"
          choices={[
            { value: 'm', word: 'Metres' },
            { value: 'ft-in', word: 'Feet and inches' },
          ]}
          chosen={lengths}
          onChoose={setLengths}
        />
      </div>
      {leftOut.length === 0 ? null : (
        <section className="crew-part" aria-label="Not in this link">
          <h3>Not in this link</h3>
          <ul>
            {leftOut.map((sentence, place) => (
              <li key={keys[place]}>{sentence}</li>
            ))}
          </ul>
        </section>
      )}
      {refused ? (
        <p className="crew-part">
          This browser keeps nothing for the page: ticks and the link itself are gone once it is closed.
        </p>
      ) : null}
      <MakeMine />
      <KeptLinks openFragment={fragment} />
      <section className="crew-part" aria-label="Editor">
        <button type="button" onClick={openEditor}>
          Open the editor
        </button>
      </section>
    </Layer>
  );
}
