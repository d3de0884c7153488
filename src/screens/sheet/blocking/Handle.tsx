import { type CSSProperties, type ReactNode, useRef } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import { blockingStore } from '../../../desk/blocking/blockingStore';
import { chooseThing, editBlocking, visitThing } from '../../../desk/blocking/choosing';
import { momentOf, type Nudge, nudgedTo, retime } from '../../../desk/blocking/retime';
import { isSame, keyOf, type Timed } from '../../../desk/blocking/things';
import { livePlan, liveStore } from '../../../desk/liveStore';
import { planStore } from '../../../desk/planStore';
import { toastStore } from '../../../desk/toastStore';
import { enterThing, removeThing } from './doing';
import { useDrawn } from './drawing';
import { caughtText, momentText, spokenOf } from './words';

/** A press that moves less than this chooses and moves nothing, pixels. */
const STILL_PIXELS = 3;
/** How near catches, pixels. */
const REACH_PIXELS = 8;

const NAMES: Readonly<Record<Timed['type'], string>> = {
  beat: 'move a beat',
  mark: 'move a mark to a beat',
  hold: 'change how long a mark is held',
  pass: 'move a pass to a beat',
  span: 'change what a setup covers',
  key: 'retime a key',
  cue: 'move a cue',
  fade: 'change how long a lamp fades',
};

/** The item that a drag is about: the roof and the report look to it. */
const itemIdOf = (thing: Timed): string =>
  'performerId' in thing
    ? thing.performerId
    : 'setupId' in thing
      ? thing.setupId
      : 'itemId' in thing
        ? thing.itemId
        : keyOf(thing);

const nudgeBy = (event: {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
}): Nudge => (event.key.startsWith('Page') || event.ctrlKey ? 'beat' : event.shiftKey ? 'second' : 'frame');

const WAYS: Readonly<Record<string, -1 | 1>> = { ArrowLeft: -1, ArrowRight: 1, PageUp: -1, PageDown: 1 };

interface Hold {
  readonly fromX: number;
  readonly seconds: number;
  readonly plan: Plan;
  moved: boolean;
}

/** Nudges a thing by a press of a key, one step of the history. */
function nudge(thing: Timed, way: -1 | 1, by: Nudge): void {
  const { ripples } = blockingStore.getState();
  const done = editBlocking(
    NAMES[thing.type],
    (plan) =>
      retime(plan, thing, nudgedTo(plan, thing, way, by), {
        reachSeconds: by === 'beat' ? 1e-4 : -1,
        ripples,
      }).plan,
  );
  if (!done && thing.type === 'mark')
    toastStore.getState().say('There is no free beat there to move this mark to.', { about: 'nudge' });
}

interface Props {
  readonly thing: Timed;
  readonly plan: Plan;
  /** Where it lies, pixels along the timeline. */
  readonly x: number;
  /** How far to either side of that it takes a press, pixels. */
  readonly before: number;
  readonly after: number;
  readonly className?: string;
  readonly style?: CSSProperties;
  readonly children?: ReactNode;
}

/**
 * Something at a moment that can be taken hold of: dragged in time, nudged by arrows (a frame, with Shift a second, with
 * Page keys from beat to beat), named or opened by Enter, taken out by Delete. A finger chooses first and then drags, so
 * that the timeline can be pushed along by whatever lies under the finger.
 */
export function Handle(props: Props) {
  const { thing, plan, x, before, after, className = '', style, children } = props;
  const { scale, lengths } = useDrawn();
  const chosen = useStore(blockingStore, (state) => isSame(state.chosen, thing));
  const hold = useRef<Hold | null>(null);
  const { pixelsPerSecond } = scale;
  const seconds = momentOf(plan, thing);

  const move = (clientX: number, free: boolean, shift: boolean): void => {
    const held = hold.current;
    if (!held) return;
    const by = clientX - held.fromX;
    if (!held.moved && Math.abs(by) < STILL_PIXELS) return;
    if (!held.moved) {
      liveStore.getState().setPlaying(false);
      liveStore.getState().beginGesture(itemIdOf(thing));
    }
    held.moved = true;
    const { snaps, ripples } = blockingStore.getState();
    const at = retime(held.plan, thing, held.seconds + by / pixelsPerSecond, {
      reachSeconds: snaps && !free ? REACH_PIXELS / pixelsPerSecond : -1,
      ripples: ripples !== shift,
    });
    liveStore.getState().moveGesture(at.plan);
    const words = caughtText(at.plan, at.seconds, at.caught);
    blockingStore.setState({ held: { seconds: at.seconds, caught: at.caught, words } });
  };
  const up = (): void => {
    const held = hold.current;
    hold.current = null;
    blockingStore.setState({ held: null });
    if (!held) return;
    if (!held.moved) {
      visitThing(thing);
      return;
    }
    const [fault] = liveStore.getState().commitGesture(NAMES[thing.type]);
    if (fault) toastStore.getState().say(fault.sentence, { tone: 'warn' });
    chooseThing(thing);
  };
  const cancel = (): void => {
    if (hold.current?.moved) liveStore.getState().dropGesture();
    hold.current = null;
    blockingStore.setState({ held: null });
  };
  return (
    <div
      className={`handle ${thing.type} ${className}${chosen ? ' chosen' : ''}`}
      role="slider"
      tabIndex={0}
      aria-label={spokenOf(plan, thing, lengths)}
      aria-orientation="horizontal"
      aria-valuemin={0}
      aria-valuemax={Math.max(scale.until, seconds)}
      aria-valuenow={seconds}
      aria-valuetext={momentText(seconds)}
      data-thing={keyOf(thing)}
      data-x={Math.round(x)}
      style={{ left: x - before, width: before + after, ...style }}
      onPointerDown={(event) => {
        if (event.button !== 0 || liveStore.getState().gesture) return;
        event.stopPropagation();
        // Not yet chosen, it lets a finger push the timeline along; a tap chooses it.
        if (event.pointerType === 'touch' && !chosen) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        const { plan: committed } = planStore.getState();
        hold.current = { fromX: event.clientX, seconds, plan: committed, moved: false };
      }}
      onPointerMove={(event) => move(event.clientX, event.altKey, event.shiftKey)}
      onPointerUp={up}
      onPointerCancel={cancel}
      onClick={(event) => {
        if (event.detail > 0 && !chosen) visitThing(thing);
      }}
      onDoubleClick={() => enterThing(thing)}
      onKeyDown={(event) => {
        const way = WAYS[event.key];
        if (way !== undefined && !event.altKey && !event.metaKey) {
          event.preventDefault();
          nudge(thing, way, nudgeBy(event));
        } else if (event.key === 'Enter' || event.key === 'F2') {
          event.preventDefault();
          visitThing(thing);
          enterThing(thing);
        } else if (event.key === 'Delete' || event.key === 'Backspace') {
          event.preventDefault();
          removeThing(livePlan(), thing);
        }
      }}
    >
      {children}
    </div>
  );
}
