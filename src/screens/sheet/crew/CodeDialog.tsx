import { type RefObject, useEffect, useState } from 'react';
import { saveCode } from '../../../desk/share/sending';
import type { CodeOutline } from '../../../desk/share/shareApi';
import type { MadeLink } from '../../../desk/share/shareStore';
import { QUIET_SQUARES } from '../../../exchange/link/qrRuns';
import { CodeSquares } from './CodeSquares';

/** What stands around the code in its dialog, pixels. */
const BESIDE = 48;
const ABOVE = 176;

/** As large as the window has room for, every square as many whole pixels: uneven squares are read less well. */
function sideOf({ size }: CodeOutline): number {
  const all = size + 2 * QUIET_SQUARES;
  const room = Math.min(window.innerWidth - BESIDE, window.innerHeight - ABOVE);
  return all * Math.max(1, Math.floor(room / all));
}

/** The code as large as the window, for phones that are held before it. */
export function CodeDialog(props: {
  readonly made: MadeLink;
  readonly code: CodeOutline;
  readonly dialog: RefObject<HTMLDialogElement | null>;
}) {
  const { made, code, dialog } = props;
  const [side, setSide] = useState(() => sideOf(code));
  useEffect(() => {
    const look = (): void => setSide(sideOf(code));
    look();
    window.addEventListener('resize', look);
    return () => window.removeEventListener('resize', look);
  }, [code]);
  return (
    <dialog ref={dialog} className="code-dialog" aria-labelledby="code-title">
      <form method="dialog">
        <h2 id="code-title">{made.plan.title}, for the crew</h2>
        <CodeSquares code={code} side={side} />
        <p className="q">Point a phone’s camera at it and open what it reads.</p>
        <div className="acts">
          <button type="submit" className="do">
            Close
          </button>
          <button type="button" onClick={() => void saveCode(made, code)}>
            Save the code
          </button>
        </div>
      </form>
    </dialog>
  );
}
