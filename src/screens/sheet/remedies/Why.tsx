import { useEffect, useId } from 'react';
import { useStore } from 'zustand';
import { explanationWords } from '../../../core/clearance/explain/words';
import { spanOf } from '../../../core/optics/camera';
import { formatSeconds } from '../../../core/units/seconds';
import { FRAME_SECONDS, goToSeconds, letterOf } from '../../../desk/choose';
import { useLive, useLivePlan, useSession } from '../../../desk/hooks';
import { liveStore } from '../../../desk/liveStore';
import { explainFinding } from '../../../desk/remedies/explainFinding';
import { explainStore, explanationNow } from '../../../desk/remedies/explaining';
import { type FindingKey, isFinding } from '../../../desk/remedies/remediesStore';

/** Draws the line of sight to a finding on the roof, with a sentence and the moment that it is about. */
export function Why({ setupId, itemId, label }: FindingKey & { readonly label: string }) {
  const on = useStore(explainStore, ({ about }) => isFinding(about, { setupId, itemId }));
  useEffect(
    () => () => {
      if (isFinding(explainStore.getState().about, { setupId, itemId })) explainFinding(null);
    },
    [setupId, itemId],
  );
  return (
    <>
      <button
        type="button"
        className="why"
        aria-pressed={on}
        aria-label={`Why: ${label}`}
        onClick={() => {
          liveStore.getState().setPlaying(false);
          explainFinding(on ? null : { setupId, itemId });
        }}
      >
        Why
      </button>
      {on ? <Moment setupId={setupId} /> : null}
    </>
  );
}

function Moment({ setupId }: { readonly setupId: string }) {
  const plan = useLivePlan();
  const lengths = useSession((state) => state.lengths);
  const seconds = useLive((state) => state.seconds);
  const playing = useLive((state) => state.playing);
  const id = useId();
  const setup = plan.setups.find((each) => each.id === setupId);
  if (!setup) return null;
  const [from, to] = spanOf(plan, setup);
  const told = explanationNow(plan, seconds);
  return (
    <div className="why-told">
      <p role="status">
        {told
          ? explanationWords(plan, told, lengths)
          : playing
            ? 'The line of sight is drawn once the action rests.'
            : 'It is not on the roof at that moment.'}
      </p>
      {to > from ? (
        <div className="why-moment">
          <label htmlFor={id}>moment of {letterOf(plan, setupId)}</label>
          <input
            id={id}
            type="range"
            min={from}
            max={to}
            step={FRAME_SECONDS}
            value={Math.min(Math.max(seconds, from), to)}
            aria-valuetext={formatSeconds(seconds)}
            onChange={(event) => goToSeconds(event.currentTarget.valueAsNumber)}
          />
          <span className="value">{formatSeconds(Math.min(Math.max(seconds, from), to))}</span>
        </div>
      ) : null}
    </div>
  );
}
