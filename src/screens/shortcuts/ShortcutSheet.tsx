import { hintStore } from '../../desk/hints/hintStore';
import { NUDGE_KEYS } from './nudge';
import { SHORTCUTS } from './shortcuts';

/** What the overhead has for itself while it has the focus, and what opens this sheet. */
const OTHER_KEYS = [
  { keys: ['+', '\u2212', '0'], word: 'on the overhead: nearer, farther, the whole roof' },
  { keys: ['?'], word: 'these keys' },
] as const;

const SHEET_ID = 'shortcut-sheet';

/** Opens the list of keys. */
export function openShortcutSheet(): void {
  const dialog = document.getElementById(SHEET_ID);
  hintStore.setState({ readKeys: true });
  if (dialog instanceof HTMLDialogElement && !dialog.open) dialog.showModal();
}

/** The keys, on a sheet of their own. */
export function ShortcutSheet() {
  return (
    <dialog id={SHEET_ID} className="shortcuts" aria-labelledby="shortcut-title">
      <form method="dialog">
        <h2 id="shortcut-title">Keys</h2>
        <dl>
          {[...NUDGE_KEYS, ...SHORTCUTS, ...OTHER_KEYS].map(({ keys, word }) => (
            <div key={word}>
              <dt>
                {keys.map((key) => (
                  <kbd key={key}>{key}</kbd>
                ))}
              </dt>
              <dd>{word}</dd>
            </div>
          ))}
        </dl>
        <button type="submit">Close</button>
      </form>
    </dialog>
  );
}
