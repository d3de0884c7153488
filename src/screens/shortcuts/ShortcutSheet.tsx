import { useStore } from 'zustand';
import { hintStore } from '../../desk/hints/hintStore';
import { setSingleKeys, singleKeysStore } from '../../desk/singleKeys';
import './shortcuts.css';
import { ACTIONS, contextNow } from '../actions/registry';
import { ACTION_GROUPS, type ActionGroup, wordOf } from '../actions/types';
import { DRAG_KEYS } from './dragKeys';
import { NUDGE_KEYS } from './nudge';

interface KeyLine {
  readonly keys: readonly string[];
  readonly word: string;
}

/** What the hand and the drawing have for themselves, and what opens this sheet. */
const OTHER_KEYS: Readonly<Partial<Record<ActionGroup, readonly KeyLine[]>>> = {
  arrange: [
    { keys: ['Shift click', 'Ctrl click'], word: 'choose beside what is chosen, or no longer' },
    { keys: ['Alt click'], word: 'choose one of a group' },
    { keys: ['Shift drag'], word: 'on the empty ground: choose what the rectangle takes in' },
    ...NUDGE_KEYS,
  ],
  view: [
    { keys: ['+', '\u2212', '0'], word: 'on the overhead: nearer, farther, the whole roof' },
    { keys: ['Menu', 'Shift F10'], word: 'what can be done with what is chosen' },
  ],
  plan: [{ keys: ['?'], word: 'these keys' }],
};

const HEADINGS: Readonly<Record<ActionGroup, string>> = {
  shape: 'What is chosen',
  arrange: 'Choosing and arranging',
  gear: 'Gear',
  view: 'Looking',
  plan: 'The plan',
};

/** The lines of one group, as things are with nothing chosen. */
function linesOf(group: ActionGroup): readonly KeyLine[] {
  const context = contextNow();
  const own = ACTIONS.flatMap((action): KeyLine[] =>
    action.group === group && action.keys && action.id !== 'fit'
      ? [{ keys: action.keys, word: small(wordOf(action, context)) }]
      : [],
  );
  return [...own, ...(OTHER_KEYS[group] ?? [])];
}

const small = (word: string): string => word.charAt(0).toLowerCase() + word.slice(1);

const SHEET_ID = 'shortcut-sheet';

/** Opens the list of keys. */
export function openShortcutSheet(): void {
  const dialog = document.getElementById(SHEET_ID);
  hintStore.setState({ readKeys: true });
  if (dialog instanceof HTMLDialogElement && !dialog.open) dialog.showModal();
}

/** Lets letters, digits and signs alone do nothing, for whoever speaks or strikes them without meaning it. */
function SingleKeys() {
  const on = useStore(singleKeysStore, (state) => state.on);
  return (
    <label className="single-keys">
      <input type="checkbox" checked={on} onChange={(event) => setSingleKeys(event.currentTarget.checked)} />
      Letters, digits and signs alone do something
    </label>
  );
}

/** How what a hand drags is moved by keys. */
function Drags() {
  return (
    <section className="drags">
      <h3>What a hand drags, by keys</h3>
      <p>Tab comes to all of it. Arrows move what has the focus, with Shift farther, with Alt less.</p>
      <dl>
        {DRAG_KEYS.map(({ what, keys, word }) => (
          <div key={what}>
            <dt>
              {keys.map((key) => (
                <kbd key={key}>{key}</kbd>
              ))}
            </dt>
            <dd>
              <b>{what}</b>: {word}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

/** The keys, on a sheet of their own. */
export function ShortcutSheet() {
  return (
    <dialog id={SHEET_ID} className="shortcuts" aria-labelledby="shortcut-title">
      <form method="dialog">
        <h2 id="shortcut-title">Keys</h2>
        <div className="key-groups">
          {ACTION_GROUPS.map((group) => {
            const lines = linesOf(group);
            return lines.length === 0 ? null : (
              <section key={group}>
                <h3>{HEADINGS[group]}</h3>
                <dl>
                  {lines.map(({ keys, word }) => (
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
              </section>
            );
          })}
          <Drags />
        </div>
        <div className="foot">
          <SingleKeys />
          <button type="submit">Close</button>
        </div>
      </form>
    </dialog>
  );
}
