import { type PointerEvent, type RefObject, useRef } from 'react';
import { blockingStore } from '../../../desk/blocking/blockingStore';
import { stepBeat } from '../../../desk/blocking/choosing';
import { clockSpan } from '../../../desk/blocking/clock';
import { snapTime } from '../../../desk/blocking/snapTime';
import { goToSeconds, setupOf, stepFrames } from '../../../desk/choose';
import { livePlan, liveStore } from '../../../desk/liveStore';
import { sessionStore } from '../../../desk/sessionStore';
import { useDriver } from '../../overhead/useDriver';
import { useDrawn } from './drawing';
import { secondsAt, xOf } from './scale';
import { caughtText, momentText } from './words';

/** How near catches, pixels. */
const REACH_PIXELS = 8;
/** Where the playhead comes to lie when the view follows it, from the left edge of the lanes, pixels. */
const FOLLOWED_AT = 48;

/**
 * The line of the clock through all lanes, and its handle on the ruler. Both are moved by the clock itself, past React;
 * while it plays the view goes on by a page where the line leaves it.
 */
export function Playhead(props: {
  readonly scroller: RefObject<HTMLDivElement | null>;
  readonly names: number;
}) {
  const { scroller, names } = props;
  const { scale } = useDrawn();
  const grip = useRef<HTMLDivElement>(null);
  const [from, to] = clockSpan(livePlan(), setupOf(livePlan(), sessionStore.getState().setupId));

  useDriver(() => {
    const { seconds, playing } = liveStore.getState();
    const x = xOf(scale, seconds);
    const outer = scroller.current;
    outer?.style.setProperty('--playhead', `${names + x}px`);
    grip.current?.setAttribute('aria-valuenow', String(seconds));
    grip.current?.setAttribute('aria-valuetext', momentText(seconds));
    if (!outer || !playing) return;
    const seen = outer.clientWidth - names;
    if (x < outer.scrollLeft || x > outer.scrollLeft + seen) outer.scrollLeft = Math.max(0, x - FOLLOWED_AT);
  });
  return (
    <div
      ref={grip}
      className="playhead-grip"
      role="slider"
      tabIndex={0}
      aria-label="Playhead"
      aria-orientation="horizontal"
      aria-valuemin={from}
      aria-valuemax={to}
      aria-valuenow={liveStore.getState().seconds}
      onKeyDown={(event) => {
        const way = { ArrowLeft: -1, ArrowRight: 1, PageUp: -1, PageDown: 1 }[event.key];
        if (way === undefined || event.altKey || event.metaKey) return;
        event.preventDefault();
        if (event.key.startsWith('Page') || event.ctrlKey) stepBeat(way < 0 ? -1 : 1);
        else if (event.shiftKey) goToSeconds(liveStore.getState().seconds + way);
        else stepFrames(way);
      }}
    >
      <svg viewBox="0 0 12 9" aria-hidden="true">
        <path d="M0 0h12v2.5L6 9 0 2.5z" />
      </svg>
    </div>
  );
}

/** Takes the clock along under a hand on the ruler: pressed anywhere, it comes there. */
export function useSeeking(names: number) {
  const { scale } = useDrawn();
  const seek = (event: PointerEvent<HTMLElement>): void => {
    const { left } = event.currentTarget.getBoundingClientRect();
    const { snaps } = blockingStore.getState();
    const plan = livePlan();
    const at = snapTime(
      secondsAt(scale, event.clientX - left - names),
      plan.beats,
      snaps && !event.altKey ? REACH_PIXELS / scale.pixelsPerSecond : -1,
    );
    goToSeconds(at.seconds);
    const { seconds } = liveStore.getState();
    const caught = seconds === at.seconds ? at.caught : null;
    blockingStore.setState({ held: { seconds, caught, words: caughtText(plan, seconds, caught) } });
  };
  const isHeld = (event: PointerEvent<HTMLElement>): boolean =>
    event.currentTarget.hasPointerCapture(event.pointerId);
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>): void => {
      if (event.button !== 0 || liveStore.getState().gesture) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      liveStore.getState().setPlaying(false);
      seek(event);
    },
    onPointerMove: (event: PointerEvent<HTMLElement>): void => {
      if (isHeld(event)) seek(event);
    },
    onPointerUp: (): void => blockingStore.setState({ held: null }),
    onPointerCancel: (): void => blockingStore.setState({ held: null }),
  };
}
