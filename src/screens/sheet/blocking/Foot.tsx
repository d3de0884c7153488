import { useMemo } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import { blockingStore } from '../../../desk/blocking/blockingStore';
import { useSession } from '../../../desk/hooks';
import { enterThing, removeThing } from './doing';
import { lanesOf } from './lanes';
import { speedText, spokenOf } from './words';

/** The first walk that nobody manages, in a sentence; null where all can be walked. */
function fastest(plan: Plan, lengths: 'm' | 'ft-in'): string | null {
  for (const lane of lanesOf(plan, false)) {
    if (lane.type !== 'performer') continue;
    const walk = lane.walks.find(({ tooFast }) => tooFast);
    const stay = lane.stays.find(({ mark }) => mark.id === walk?.toMark);
    if (walk && stay)
      return `${lane.performer.label} would have to run to ${stay.name} at ${speedText(walk.cruisingMetresPerSecond, lengths)}. Leave earlier, or move the beat.`;
  }
  return null;
}

const REMOVABLE = new Set(['beat', 'mark', 'pass', 'line', 'key']);

/** What is chosen, in a sentence, with what can be done to it; else what asks for something; else how to begin. */
export function Foot({ plan }: { readonly plan: Plan }) {
  const chosen = useStore(blockingStore, (state) => state.chosen);
  const lengths = useSession((state) => state.lengths);
  const trouble = useMemo(() => fastest(plan, lengths), [plan, lengths]);
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
  const hint =
    plan.cast.length === 0
      ? 'Nobody plays yet. The sheet Set has people to put on the roof.'
      : 'Drag a beat, a mark or the end of a hold. Alt lets go of what it catches on.';
  return (
    <div className="blocking-foot">
      <p className={trouble === null ? 'q' : ''}>{trouble ?? hint}</p>
    </div>
  );
}
