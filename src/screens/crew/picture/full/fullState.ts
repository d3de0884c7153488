import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Area, Zoom } from './zoom';
import { panned, WHOLE, zoomedAt } from './zoom';

/** Through the lens, or around from where the camera stands. */
export type Looking = 'lens' | 'around';

/** Which way an eye looks, degrees. */
export interface Turn {
  readonly headingDegrees: number;
  readonly tiltDegrees: number;
}

/** A picture that fills the window, for as long as it does. */
export interface FullState {
  readonly span: readonly [from: number, to: number];
  /** Width over height of the picture. */
  readonly aspect: number;
  /** On the action's clock, within the span. */
  readonly seconds: number;
  readonly playing: boolean;
  readonly looking: Looking;
  readonly zoom: Zoom;
  readonly turn: Turn;
  /** Of the place that the picture has, CSS pixels; zeros until it is on the page. */
  readonly area: Area;
  /** Whether a hand is on it: more of the same follows at once. */
  readonly held: boolean;
}

export type FullStore = StoreApi<FullState>;

/** What is as high as this is looked up or down at, degrees: further the neck does not go. */
const STEEPEST = 80;

export const createFullState = (span: FullState['span'], aspect: number): FullStore =>
  createStore<FullState>()(() => ({
    span,
    aspect,
    seconds: span[0],
    playing: false,
    looking: 'lens',
    zoom: WHOLE,
    turn: { headingDegrees: 0, tiltDegrees: 0 },
    area: { width: 0, height: 0 },
    held: false,
  }));

/** Sets the clock, within the span. */
export function goTo(store: FullStore, seconds: number): void {
  const [from, to] = store.getState().span;
  store.setState({ seconds: Math.min(to, Math.max(from, seconds)) });
}

/** Plays from here, from the beginning where it stands at the end, or stops. */
export function playOrPause(store: FullStore): void {
  const { playing, seconds, span } = store.getState();
  const [from, to] = span;
  if (to <= from) return;
  store.setState({ playing: !playing, seconds: !playing && seconds >= to ? from : seconds });
}

/** Longest step of the clock: after a pause of the whole page the action goes on, it does not leap. */
const LONGEST_STEP_SECONDS = 0.25;

/** Runs the clock while it plays, and stops at the end: a picture that nobody looks at costs nothing. Returns what ends it. */
export function runClock(store: FullStore): () => void {
  let before: number | null = null;
  let asked = 0;
  const step = (now: number): void => {
    const { playing, seconds, span } = store.getState();
    if (!playing) {
      before = null;
      return;
    }
    const passed = before === null ? 0 : Math.min((now - before) / 1000, LONGEST_STEP_SECONDS);
    before = now;
    const at = Math.min(span[1], seconds + passed);
    store.setState({ seconds: at, playing: at < span[1] });
    asked = requestAnimationFrame(step);
  };
  const stop = store.subscribe(({ playing }, old) => {
    if (!playing || old.playing) return;
    // Stopped and started within a frame: the one that is asked for already would run beside it.
    cancelAnimationFrame(asked);
    asked = requestAnimationFrame(step);
  });
  return () => {
    stop();
    cancelAnimationFrame(asked);
  };
}

/** Looks another way; what is looked at follows a hand by so many degrees for each pixel. */
export function turnBy(store: FullStore, headingDegrees: number, tiltDegrees: number): void {
  const { turn } = store.getState();
  store.setState({
    turn: {
      headingDegrees: turn.headingDegrees + headingDegrees,
      tiltDegrees: Math.min(STEEPEST, Math.max(-STEEPEST, turn.tiltDegrees + tiltDegrees)),
    },
  });
}

/** Moves the enlarged picture, CSS pixels. */
export const panBy = (store: FullStore, by: readonly [number, number]): void =>
  store.setState(({ area, aspect, zoom }) => ({ zoom: panned(area, aspect, zoom, by) }));

/** Enlarges about a place of the area, CSS pixels from its upper left; about its middle without one. */
export const zoomBy = (store: FullStore, factor: number, at?: readonly [number, number]): void =>
  store.setState(({ area, aspect, zoom }) => ({
    zoom: zoomedAt(area, aspect, zoom, at ?? [area.width / 2, area.height / 2], factor),
  }));

/** How much a double tap enlarges. */
const TAPPED = 3;

/** Enlarges a place that was tapped twice, or shows all of the picture again. */
export const zoomOrWhole = (store: FullStore, at: readonly [number, number]): void =>
  store.getState().zoom.scale > 1.01 ? store.setState({ zoom: WHOLE }) : zoomBy(store, TAPPED, at);

/** The wider side takes in about 80 degrees, as much as one sees without moving one's head. */
const WIDE_TANGENT = 0.84;

/** Tangents of half the angles that an eye takes in over an area, across and up. */
export function halvesOf({ width, height }: Area): readonly [number, number] {
  const longest = Math.max(width, height, 1);
  return [(WIDE_TANGENT * Math.max(1, width)) / longest, (WIDE_TANGENT * Math.max(1, height)) / longest];
}

/** How many degrees a hand turns the eye by for each pixel, so that what is under it stays there, in the middle. */
export function degreesPerPixel({ width, height }: Area): number {
  return ((2 * WIDE_TANGENT) / Math.max(width, height, 1)) * (180 / Math.PI);
}
