import { useId } from 'react';
import { useStore } from 'zustand';
import { usePlanState } from '../../../desk/hooks';
import { copyLink, makeLink } from '../../../desk/share/making';
import { canSend, sendLink } from '../../../desk/share/sending';
import { type MadeLink, shareStore } from '../../../desk/share/shareStore';
import { lengthSentence, nowhereSentence } from './words';

/** The link to mark, to copy, to send, and to look at as the crew does. */
function Made({ made }: { readonly made: MadeLink }) {
  const id = useId();
  const { address } = made;
  return (
    <>
      <div className="link-field">
        <label htmlFor={id}>The link</label>
        <input
          className="line-of-text"
          id={id}
          type="text"
          readOnly
          value={address}
          onFocus={(event) => event.currentTarget.select()}
        />
      </div>
      <div className="acts">
        <button type="button" onClick={() => void copyLink(address)}>
          Copy it
        </button>
        {canSend() ? (
          <button type="button" onClick={() => void sendLink(made)}>
            Send it
          </button>
        ) : null}
        <a className="button" href={address} target="_blank" rel="noopener">
          Open it as the crew does
        </a>
      </div>
    </>
  );
}

/** What came of copying, before what the link holds. */
const COPIED: Readonly<Record<string, string>> = {
  true: 'The link is copied. ',
  false: 'This browser lets no page copy: take the link from its field. ',
};

/** What is to be known about a link that was made. */
function ToKnow({ made }: { readonly made: MadeLink }) {
  const nowhere = nowhereSentence(made.address);
  return (
    <ul className="link-notes" aria-label="About the link">
      {nowhere === null ? null : <li className="warn">{nowhere}</li>}
      <li>{lengthSentence(made)}</li>
      {made.leftOut.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}

/** Whether the link is on the clipboard, and whether the plan is still what it holds. */
function Standing({ made }: { readonly made: MadeLink | null }) {
  const plan = usePlanState((state) => state.plan);
  const copied = useStore(shareStore, (state) => state.copied);
  const isOld = made !== null && made.plan !== plan;
  const words = !made
    ? ''
    : isOld
      ? 'The plan has changed since: the link still holds it as it was. Make a new one and send that.'
      : `${COPIED[String(copied)] ?? ''}It holds the plan as it is now.`;
  return (
    <p className={isOld ? 'link-standing old' : 'link-standing'} role="status">
      {words}
    </p>
  );
}

/** Makes the one link that all of the crew open, and says what it is. */
export function LinkPart({ made }: { readonly made: MadeLink | null }) {
  const making = useStore(shareStore, (state) => state.making);
  const planId = usePlanState((state) => state.planId);
  const trouble = useStore(shareStore, (state) => state.trouble);
  return (
    <section aria-labelledby="link-title">
      <h3 id="link-title">One link for the whole crew</h3>
      <p className="link-act">
        <button
          type="button"
          className={made ? undefined : 'do'}
          aria-disabled={making}
          onClick={() => void makeLink()}
        >
          {made ? 'Make a new link' : 'Make the link'}
        </button>
        <kbd>Shift L</kbd>
      </p>
      {trouble?.planId === planId ? (
        <p className="err" role="alert">
          {trouble.sentence}
        </p>
      ) : null}
      <Standing made={made} />
      {made ? <Made made={made} /> : null}
      {made ? <ToKnow made={made} /> : null}
      <p className="advice">
        The whole plan lies in the link itself, on no server. Anyone who has the link can read the plan. It is
        a frozen copy: what changes afterwards needs a new link.
      </p>
    </section>
  );
}
