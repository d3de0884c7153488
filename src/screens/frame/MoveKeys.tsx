import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { keysOf } from '../../core/optics/cameraKey';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { formatSeconds } from '../../core/units/seconds';
import { retimed } from '../../desk/blocking/retimeKey';
import { FRAME_SECONDS, goToSeconds } from '../../desk/choose';
import { useLivePlan } from '../../desk/hooks';
import { livePlan, liveStore } from '../../desk/liveStore';
import { planStore } from '../../desk/planStore';
import { toastStore } from '../../desk/toastStore';

/** A key that comes this near to a beat is put on it, pixels. */
const BEAT_PIXELS = 8;
/** A press that moves less than this goes to the key and leaves it where it is, pixels. */
const STILL_PIXELS = 3;

interface Hold {
  readonly keyIndex: number;
  readonly fromX: number;
  readonly width: number;
  readonly seconds: number;
  readonly plan: Plan;
  moved: boolean;
}

/** The keys of a move as diamonds on its time: filled on a beat. A drag retimes one, arrows by a frame, with Shift by a second. */
export function MoveKeys(props: { readonly setup: Setup; readonly from: number; readonly to: number }) {
  const { setup, from, to } = props;
  const plan = useLivePlan();
  const hold = useRef<Hold | null>(null);
  const keys = keysOf(plan, setup);
  if (keys.length < 2 || to <= from) return null;

  const down = (event: PointerEvent<HTMLElement>, keyIndex: number): void => {
    const bar = event.currentTarget.parentElement?.getBoundingClientRect();
    if (!bar || event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    liveStore.getState().setPlaying(false);
    hold.current = {
      keyIndex,
      fromX: event.clientX,
      width: bar.width,
      seconds: keys[keyIndex].atSeconds,
      plan: livePlan(),
      moved: false,
    };
  };
  const move = (event: PointerEvent<HTMLElement>): void => {
    const held = hold.current;
    if (!held) return;
    const by = event.clientX - held.fromX;
    if (!held.moved && Math.abs(by) < STILL_PIXELS) return;
    if (!held.moved) liveStore.getState().beginGesture(setup.id);
    held.moved = true;
    const perPixel = (to - from) / held.width;
    liveStore.getState().moveGesture(
      retimed(held.plan, {
        setupId: setup.id,
        keyIndex: held.keyIndex,
        seconds: held.seconds + by * perPixel,
        span: [from, to],
        reachSeconds: event.altKey ? -1 : BEAT_PIXELS * perPixel,
      }),
    );
  };
  const up = (): void => {
    const held = hold.current;
    hold.current = null;
    if (!held) return;
    if (!held.moved) {
      goToSeconds(held.seconds);
      return;
    }
    const [fault] = liveStore.getState().commitGesture('retime a key');
    if (fault) toastStore.getState().say(fault.sentence, { tone: 'warn' });
  };
  const cancel = (): void => {
    if (hold.current?.moved) liveStore.getState().dropGesture();
    hold.current = null;
  };
  const typed = (event: KeyboardEvent<HTMLElement>, keyIndex: number): void => {
    const way = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    if (event.key === 'Enter' || event.key === ' ') goToSeconds(keys[keyIndex].atSeconds);
    if (way === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    const seconds = keys[keyIndex].atSeconds + way * (event.shiftKey ? 1 : FRAME_SECONDS);
    planStore.getState().edit('retime a key', (before) =>
      retimed(before, {
        setupId: setup.id,
        keyIndex,
        seconds,
        span: [from, to],
        reachSeconds: FRAME_SECONDS / 4,
      }),
    );
  };
  return keys.map((key, index) => {
    // A key that is dragged stays the same button while its moment changes.
    const place = `key ${index}`;
    const beat = plan.beats.find(({ id }) => id === setup.move.keys[index]?.beat);
    return (
      <button
        key={place}
        type="button"
        className="move-key"
        role="slider"
        aria-label={`Key ${index + 1} of ${keys.length}`}
        aria-valuemin={from}
        aria-valuemax={to}
        aria-valuenow={key.atSeconds}
        aria-valuetext={
          beat ? `${formatSeconds(key.atSeconds)}, ${beat.label}` : formatSeconds(key.atSeconds)
        }
        data-beat={beat?.id}
        style={{ left: `${Math.min(1, Math.max(0, (key.atSeconds - from) / (to - from))) * 100}%` }}
        onPointerDown={(event) => down(event, index)}
        onPointerMove={move}
        onPointerUp={up}
        onPointerCancel={cancel}
        onKeyDown={(event) => typed(event, index)}
      />
    );
  });
}
