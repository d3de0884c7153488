import { useState } from 'react';
import { useStore } from 'zustand';
import { leaveMerge, mergeStore } from '../../desk/merge/mergeStore';
import { chooseFileToCompare, compareWithLink } from '../../desk/merge/merging';
import { Head } from './Head';

/** Asks for the copy to compare the open plan with: a file, or a link. */
export function AskForCopy() {
  const trouble = useStore(mergeStore, (state) => state.trouble);
  const [link, setLink] = useState('');
  return (
    <>
      <div className="line merge-head">
        <Head>Compare with a copy</Head>
        <button type="button" onClick={leaveMerge}>
          Leave it
        </button>
      </div>
      <div className="merge-body">
        <p>
          Somebody else has changed a copy of this plan. Open it here or drop its file, and choose item by
          item whose is taken.
        </p>
        {trouble === null ? null : (
          <p className="err" role="alert">
            {trouble}
          </p>
        )}
        <p className="acts">
          <button type="button" className="do" onClick={() => void chooseFileToCompare()}>
            Compare with a file
          </button>
        </p>
        <form
          className="merge-link"
          onSubmit={(event) => {
            event.preventDefault();
            void compareWithLink(link.trim());
          }}
        >
          <label>
            a link
            <input
              className="line-of-text"
              type="text"
              value={link}
              onChange={(event) => setLink(event.currentTarget.value)}
            />
          </label>
          <button type="submit" disabled={link.trim() === ''}>
            Compare with the link
          </button>
        </form>
      </div>
    </>
  );
}
