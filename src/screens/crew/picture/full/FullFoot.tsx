import { useEffect } from 'react';
import { useStore } from 'zustand';
import { formatSeconds } from '../../../../core/units/seconds';
import { Icon } from '../../../parts/Icon';
import { type FullStore, goTo, playOrPause, runClock } from './fullState';

/** A frame is 0.04 s: a step of one is seen. */
const STEP_SECONDS = 1 / 24;

/** The move's time: play it, or take hold of it. */
export function FullFoot({ store }: { readonly store: FullStore }) {
  const [from, to] = useStore(store, (state) => state.span);
  const seconds = useStore(store, (state) => state.seconds);
  const playing = useStore(store, (state) => state.playing);
  useEffect(() => runClock(store), [store]);
  const isStill = to <= from;
  const hold = (held: boolean) => () => store.setState({ held });
  return (
    <div className="foot">
      <button
        type="button"
        className="icon"
        aria-label={playing ? 'Pause' : 'Play'}
        disabled={isStill}
        onClick={() => playOrPause(store)}
      >
        {playing ? (
          <svg className="i" aria-hidden="true">
            <path d="M8 5v14M16 5v14" />
          </svg>
        ) : (
          <Icon name="play" />
        )}
      </button>
      <input
        type="range"
        aria-label="Time in the move"
        aria-valuetext={formatSeconds(seconds)}
        min={from}
        max={to}
        step={STEP_SECONDS}
        value={seconds}
        disabled={isStill}
        onPointerDown={hold(true)}
        onPointerUp={hold(false)}
        onPointerCancel={hold(false)}
        onChange={(event) => {
          store.setState({ playing: false });
          goTo(store, Number(event.currentTarget.value));
        }}
      />
      <b className="clock">{formatSeconds(seconds)}</b>
      <span className="q">{isStill ? 'one instant' : `to ${formatSeconds(to)}`}</span>
    </div>
  );
}
