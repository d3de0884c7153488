import { useEffect, useRef } from 'react';
import { spanOf } from '../../core/optics/camera';
import type { Setup } from '../../core/plan/schema/setup';
import { formatSeconds } from '../../core/units/seconds';
import { FRAME_SECONDS, goToSeconds } from '../../desk/choose';
import { useLive, useLivePlan } from '../../desk/hooks';
import { liveStore } from '../../desk/liveStore';
import { Icon } from '../parts/Icon';
import { FocusBar } from './FocusBar';
import { MoveKeys } from './MoveKeys';
import { TimeBar } from './TimeBar';

/** A frame is 0.04 s: with fewer, a step of one would not be seen. */
const CLOCK_DECIMALS = 2;
/** While it plays, the clock and the slider under the playhead follow in steps of this: faster is not read, and is painted anew. */
const WRITTEN_SECONDS = 0.12;

/** The time of the move: play it, or take hold of it. The clock is written past React, and the playhead moved. */
export function Scrub({ setup }: { readonly setup: Setup }) {
  const plan = useLivePlan();
  const playing = useLive((state) => state.playing);
  const [from, to] = spanOf(plan, setup);
  const slider = useRef<HTMLInputElement>(null);
  const block = useRef<HTMLDivElement>(null);
  const clock = useRef<HTMLElement>(null);

  useEffect(() => {
    const show = (seconds: number): void => {
      // The clock may be beyond the move, while the whole action is looked at.
      const share = to > from ? Math.min(1, Math.max(0, (seconds - from) / (to - from))) : 0;
      for (const playhead of block.current?.querySelectorAll<HTMLElement>('.playhead') ?? [])
        playhead.style.transform = `translateX(${share * 100}cqw)`;
      const isPlaying = liveStore.getState().playing;
      if (isPlaying && Math.abs(seconds - written) < WRITTEN_SECONDS) return;
      written = seconds;
      if (clock.current) clock.current.textContent = formatSeconds(seconds, CLOCK_DECIMALS);
      if (!slider.current) return;
      slider.current.value = String(seconds);
      slider.current.setAttribute('aria-valuetext', formatSeconds(seconds, CLOCK_DECIMALS));
    };
    let written = -Infinity;
    show(liveStore.getState().seconds);
    return liveStore.subscribe((state, before) => {
      if (state.seconds !== before.seconds || state.playing !== before.playing) show(state.seconds);
    });
  }, [from, to]);

  const still = to <= from;
  return (
    <div className="scrub" ref={block}>
      <button
        type="button"
        className="icon"
        aria-label={playing ? 'Pause' : 'Play'}
        disabled={still}
        onClick={() => liveStore.getState().setPlaying(!playing)}
      >
        {playing ? (
          <svg className="i" aria-hidden="true">
            <path d="M8 5v14M16 5v14" />
          </svg>
        ) : (
          <Icon name="play" />
        )}
      </button>
      <span className="q from">{formatSeconds(from)}</span>
      <div className="time">
        <TimeBar setup={setup} from={from} to={to} />
        <i className="playhead" />
        <input
          ref={slider}
          type="range"
          aria-label="Time in the move"
          min={from}
          max={to}
          step={FRAME_SECONDS}
          disabled={still}
          onInput={(event) => {
            liveStore.getState().setPlaying(false);
            goToSeconds(Number(event.currentTarget.value));
          }}
        />
        <MoveKeys setup={setup} from={from} to={to} />
      </div>
      <span className="q to">{formatSeconds(to)}</span>
      <b className="clock" ref={clock} />
      <FocusBar setup={setup} from={from} to={to} />
    </div>
  );
}
