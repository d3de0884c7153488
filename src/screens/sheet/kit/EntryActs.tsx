import { sameEntry } from '../../../core/plan/edits/putEntry';
import { named } from '../../../core/plan/named';
import type { Doings } from './about';
import type { Chosen } from './rows';

/** What can be done with a chosen body or lens, wherever it is. */
export function EntryActs<Entry extends { readonly id: string; readonly label: string }>(props: {
  readonly entry: Entry;
  readonly chosen: Chosen;
  readonly doings: Doings<Entry>;
  readonly inPlan: Entry | null;
  readonly kept: Entry | null;
  /** The setups that use the plan's, in words; nothing for none. */
  readonly used: string;
  /** The setup that is looked through, with its letter. */
  readonly setup: { readonly id: string; readonly letter: string } | null;
  readonly choose: (chosen: Chosen | null) => void;
  readonly say: (sentence: string, undo?: () => void) => void;
}) {
  const { entry, chosen, doings, inPlan, kept, used, setup, choose, say } = props;
  const { where } = chosen;
  const differs = inPlan !== null && !sameEntry(inPlan, entry);
  const keep = (what: Entry): void => {
    const sentence = doings.keep(what);
    if (sentence !== null) say(sentence);
    else choose({ where: 'kept', id: what.id });
  };
  return (
    <p className="acts">
      {setup ? (
        <button type="button" className="do" onClick={() => doings.give(setup.id, entry)}>
          Use it for setup {setup.letter}
        </button>
      ) : null}
      {where !== 'plan' && inPlan === null ? (
        <button type="button" onClick={() => doings.put(entry)}>
          Put it in the plan
        </button>
      ) : null}
      {where !== 'plan' && differs ? (
        <button type="button" onClick={() => doings.put(entry)}>
          Change the plan’s to this
        </button>
      ) : null}
      {where === 'plan' && (kept === null || !sameEntry(kept, entry)) ? (
        <button type="button" onClick={() => keep(entry)}>
          Keep it
        </button>
      ) : null}
      <button type="button" onClick={() => keep(doings.copy(entry))}>
        Copy it
      </button>
      {where === 'plan' && used === '' ? (
        <button
          type="button"
          className="bare"
          onClick={() => {
            doings.takeOut(entry.id);
            choose(null);
            say(`${named(entry.label)} is out of the plan.`, () => void doings.put(entry));
          }}
        >
          Take it out of the plan
        </button>
      ) : null}
      {where === 'kept' ? (
        <button
          type="button"
          className="bare"
          onClick={() => {
            doings.forget(entry.id);
            choose(null);
            say(`${named(entry.label)} is no longer kept.`, () => void doings.keep(entry));
          }}
        >
          Forget it
        </button>
      ) : null}
    </p>
  );
}
