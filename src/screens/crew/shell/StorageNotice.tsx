import { useState } from 'react';
import { useStore } from 'zustand';
import { storageStore } from '../../../desk/crew/kept/storage';
import { useCrewReading } from '../../../desk/crew/useCrew';

/** Says once that this browser keeps nothing, and while readings do not come, why. */
export function StorageNotice() {
  const refused = useStore(storageStore, (state) => state.refused);
  const trouble = useCrewReading((state) => state.trouble);
  const again = useCrewReading((state) => state.again);
  const [read, setRead] = useState(false);
  const isSaid = refused && !read;
  return (
    <div role="status" className="crew-notices">
      {trouble === '' ? null : (
        <p>
          {trouble}
          {again ? (
            <button type="button" onClick={again}>
              Try again
            </button>
          ) : null}
        </p>
      )}
      {isSaid ? (
        <p>
          This browser keeps nothing for the page. Ticks last until it is closed.
          <button type="button" onClick={() => setRead(true)}>
            Understood
          </button>
        </p>
      ) : null}
    </div>
  );
}
