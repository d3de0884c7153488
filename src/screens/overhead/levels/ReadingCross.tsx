import { type CSSProperties, type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import './spot.css';
import { ARROWS } from '../geometry/arrows';

type Place = readonly [number, number];

/** How far an arrow moves the cross, and with Shift, CSS pixels. */
const STEP = 8;
const COARSE = 40;
/** How long a finger rests before it reads, milliseconds, and how far it may roll meanwhile, CSS pixels. */
const REST_MS = 450;
const ROLL = 10;
/** Room that a reading takes beside its cross, CSS pixels. */
const CHIP = [190, 56] as const;

/** Calls with the place under a mouse that hovers over an element, and under a finger that rests on it. */
export function useHovering(element: HTMLElement | null, read: (at: Place) => void): void {
  const latest = useRef(read);
  latest.current = read;
  useEffect(() => {
    if (!element) return;
    let rests: ReturnType<typeof setTimeout> | undefined;
    let from: Place = [0, 0];
    const placeOf = (event: globalThis.PointerEvent): Place => {
      const { left, top } = element.getBoundingClientRect();
      return [event.clientX - left, event.clientY - top];
    };
    const stop = (): void => clearTimeout(rests);
    const move = (event: globalThis.PointerEvent): void => {
      const at = placeOf(event);
      if (Math.hypot(at[0] - from[0], at[1] - from[1]) > ROLL) stop();
      if (event.pointerType === 'mouse' && event.buttons === 0) latest.current(at);
    };
    const down = (event: globalThis.PointerEvent): void => {
      if (event.pointerType === 'mouse') return;
      from = placeOf(event);
      stop();
      rests = setTimeout(() => latest.current(from), REST_MS);
    };
    element.addEventListener('pointermove', move);
    element.addEventListener('pointerdown', down);
    element.addEventListener('pointerup', stop);
    element.addEventListener('pointercancel', stop);
    return () => {
      stop();
      element.removeEventListener('pointermove', move);
      element.removeEventListener('pointerdown', down);
      element.removeEventListener('pointerup', stop);
      element.removeEventListener('pointercancel', stop);
    };
  }, [element]);
}

/** The cross of a meter with what it reads; moved by the arrows, dragged by a finger, under a mouse wherever that is. */
export function ReadingCross(props: {
  readonly name: string;
  /** CSS pixels of the pane that it lies in, whose size is `room`. */
  readonly at: Place;
  readonly room: Place;
  readonly figure: string;
  readonly words: string;
  readonly onMove: (at: Place) => void;
}) {
  const { name, at, room, figure, words, onMove } = props;
  const held = useRef<Place | null>(null);
  const within = ([x, y]: Place): Place => [
    Math.min(room[0] - 1, Math.max(1, x)),
    Math.min(room[1] - 1, Math.max(1, y)),
  ];
  const down = (event: PointerEvent<HTMLElement>): void => {
    if (event.button !== 0) return;
    event.stopPropagation();
    event.currentTarget.setPointerCapture(event.pointerId);
    held.current = [event.clientX - at[0], event.clientY - at[1]];
  };
  const move = (event: PointerEvent<HTMLElement>): void => {
    if (!held.current) return;
    event.stopPropagation();
    onMove(within([event.clientX - held.current[0], event.clientY - held.current[1]]));
  };
  const letGo = (): void => {
    held.current = null;
  };
  const typed = (event: KeyboardEvent<HTMLElement>): void => {
    const way = ARROWS[event.key];
    if (!way || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    event.stopPropagation();
    const step = event.shiftKey ? COARSE : STEP;
    onMove(within([at[0] + way[0] * step, at[1] + way[1] * step]));
  };
  const side = at[0] + CHIP[0] > room[0] ? 'left' : 'right';
  const end = at[1] + CHIP[1] > room[1] ? 'up' : 'down';
  const place: CSSProperties = { left: at[0], top: at[1] };
  return (
    <>
      <button
        type="button"
        className="spot-cross"
        aria-label={`${name}: ${figure}, ${words}`}
        style={place}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={letGo}
        onPointerCancel={letGo}
        onKeyDown={typed}
      >
        <svg viewBox="-16 -16 32 32" aria-hidden="true">
          <path className="halo" d="M-12 0H-3M3 0H12M0-12V-3M0 3V12" />
          <path d="M-12 0H-3M3 0H12M0-12V-3M0 3V12" />
        </svg>
      </button>
      <output className={`spot-words ${side} ${end}`} style={place}>
        <strong>{figure}</strong>
        <span>{words}</span>
      </output>
    </>
  );
}
