import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import { blockingStore } from '../../../desk/blocking/blockingStore';
import { useFaults } from '../../../desk/blocking/faultsStore';
import { useSession } from '../../../desk/hooks';
import { enterThing, removeThing } from './doing';
import { MendButton } from './panel/Faults';
import { spokenOf } from './words';

const REMOVABLE = new Set(['beat', 'mark', 'pass', 'line', 'key', 'cue', 'fade']);

/** What is chosen, in a sentence, with what can be done to it; else what asks for something; else how to begin. */
export function Foot({ plan }: { readonly plan: Plan }) {
  const chosen = useStore(blockingStore, (state) => state.chosen);
  const lengths = useSession((state) => state.lengths);
  const faults = useFaults();
  const words = chosen ? spokenOf(plan, chosen, lengths) : '';
  if (chosen && words !== '')
    return (
      <div className="blocking-foot">
        <p>{words}.</p>
        <button type="button" className="bare" onClick={() => enterThing(chosen)}>
          {chosen.type === 'beat' || chosen.type === 'performer' ? 'Rename it' : 'Change it'}
        </button>
        {REMOVABLE.has(chosen.type) ? (
          <button type="button" className="bare" onClick={() => removeThing(plan, chosen)}>
            Take it out
          </button>
        ) : null}
      </div>
    );
  // A caution waits behind what cannot be played at all.
  const first = faults.find(({ about }) => about !== 'edge') ?? faults[0];
  if (first)
    return (
      <div className="blocking-foot">
        <p title={first.sentence}>{first.sentence}</p>
        <MendButton fault={first} />
        <button type="button" className="bare" onClick={() => blockingStore.setState({ panel: true })}>
          {faults.length > 1 ? `All ${faults.length}` : 'Read it'}
        </button>
      </div>
    );
  const hint =
    plan.cast.length === 0
      ? 'Nobody plays yet. The sheet Set has people to put on the roof.'
      : 'Drag a beat, a mark or the end of a hold. Alt lets go of what it catches on.';
  return (
    <div className="blocking-foot">
      <p className="q">{hint}</p>
    </div>
  );
}
