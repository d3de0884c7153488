import {
  degreesPerPixel,
  type FullStore,
  panBy,
  playOrPause,
  turnBy,
  zoomBy,
  zoomOrWhole,
} from './fullState';
import { WHOLE } from './zoom';

type Place = readonly [x: number, y: number];

/** Two taps within this time, milliseconds, and this far from each other, pixels, are one double tap. */
const TAP_MILLISECONDS = 320;
const TAP_PIXELS = 32;
/** A finger that has gone further has not tapped, pixels. */
const SLOP_PIXELS = 8;
/** What a press of a key moves by, pixels, turns by, degrees, and enlarges by. */
const KEY_PIXELS = 48;
const KEY_DEGREES = 5;
const KEY_FACTOR = 1.25;

const apart = (a: Place, b: Place): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
const between = (a: Place, b: Place): Place => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

/** Lets hands, wheel and keys move what fills the window. Returns what lets go of the element. */
export function listenTo(element: HTMLElement, store: FullStore): () => void {
  const fingers = new Map<number, Place>();
  let travelled = 0;
  let tapped: { readonly at: number; readonly place: Place } | null = null;

  const placeOf = ({ clientX, clientY }: MouseEvent): Place => {
    const { left, top } = element.getBoundingClientRect();
    return [clientX - left, clientY - top];
  };

  const dragged = (by: Place): void => {
    const { looking, area } = store.getState();
    if (looking === 'lens') panBy(store, by);
    else turnBy(store, -by[0] * degreesPerPixel(area), by[1] * degreesPerPixel(area));
  };

  const pinched = (before: readonly Place[], now: readonly Place[]): void => {
    const [from, to] = [between(before[0], before[1]), between(now[0], now[1])];
    dragged([to[0] - from[0], to[1] - from[1]]);
    const factor = apart(now[0], now[1]) / Math.max(1, apart(before[0], before[1]));
    if (store.getState().looking === 'lens') zoomBy(store, factor, to);
  };

  const down = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    element.setPointerCapture(event.pointerId);
    if (fingers.size === 0) travelled = 0;
    fingers.set(event.pointerId, placeOf(event));
    store.setState({ held: true });
  };

  const move = (event: PointerEvent): void => {
    const from = fingers.get(event.pointerId);
    if (!from) return;
    const to = placeOf(event);
    travelled += apart(from, to);
    const before = [...fingers.values()];
    fingers.set(event.pointerId, to);
    if (fingers.size === 1) dragged([to[0] - from[0], to[1] - from[1]]);
    else if (fingers.size === 2) pinched(before, [...fingers.values()]);
  };

  const up = (event: PointerEvent): void => {
    if (!fingers.delete(event.pointerId) || fingers.size > 0) return;
    store.setState({ held: false });
    if (event.type !== 'pointerup' || travelled > SLOP_PIXELS) return;
    const place = placeOf(event);
    const isSecond =
      tapped !== null &&
      event.timeStamp - tapped.at < TAP_MILLISECONDS &&
      apart(tapped.place, place) < TAP_PIXELS;
    tapped = isSecond ? null : { at: event.timeStamp, place };
    if (isSecond && store.getState().looking === 'lens') zoomOrWhole(store, place);
  };

  const wheel = (event: WheelEvent): void => {
    event.preventDefault();
    if (store.getState().looking === 'lens') zoomBy(store, 1.0015 ** -event.deltaY, placeOf(event));
  };

  const key = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const act = acts[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  };
  const steer = (x: number, y: number) => (): void => {
    if (store.getState().looking === 'lens') panBy(store, [-x * KEY_PIXELS, -y * KEY_PIXELS]);
    else turnBy(store, x * KEY_DEGREES, -y * KEY_DEGREES);
  };
  const closer = (): void => zoomBy(store, KEY_FACTOR);
  const acts: Readonly<Record<string, () => void>> = {
    ArrowLeft: steer(-1, 0),
    ArrowRight: steer(1, 0),
    ArrowUp: steer(0, -1),
    ArrowDown: steer(0, 1),
    '+': closer,
    '=': closer,
    '-': () => zoomBy(store, 1 / KEY_FACTOR),
    '0': () => store.setState({ zoom: WHOLE }),
    ' ': () => playOrPause(store),
  };

  // Its keys need a focus to come to.
  element.tabIndex = 0;
  element.addEventListener('pointerdown', down);
  element.addEventListener('pointermove', move);
  element.addEventListener('pointerup', up);
  element.addEventListener('pointercancel', up);
  element.addEventListener('keydown', key);
  // Said as not passive: the page itself must not be enlarged.
  element.addEventListener('wheel', wheel, { passive: false });
  return () => {
    element.removeEventListener('pointerdown', down);
    element.removeEventListener('pointermove', move);
    element.removeEventListener('pointerup', up);
    element.removeEventListener('pointercancel', up);
    element.removeEventListener('keydown', key);
    element.removeEventListener('wheel', wheel);
  };
}
