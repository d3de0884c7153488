import { useRef } from 'react';
import type { MadeLink } from '../../../desk/share/shareStore';
import { CodeDialog } from './CodeDialog';
import { CodeSquares } from './CodeSquares';
import { noCodeSentence } from './words';

const SIDE = 128;

/** The link as a code: small here, large at a press. */
export function CodePart({ made }: { readonly made: MadeLink }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const { code } = made;
  if (!code) return <p className="no-code">{noCodeSentence(made)}</p>;
  return (
    <div className="code-part">
      <button
        type="button"
        className="code-small"
        aria-label="Show the code large"
        onClick={() => dialog.current?.showModal()}
      >
        <CodeSquares code={code} side={SIDE} />
      </button>
      <div>
        <p>Phones read it off this screen, or off a call sheet.</p>
        <p className="acts">
          <button type="button" onClick={() => dialog.current?.showModal()}>
            Show it large
          </button>
        </p>
      </div>
      <CodeDialog made={made} code={code} dialog={dialog} />
    </div>
  );
}
