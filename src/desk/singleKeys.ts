import { createStore } from 'zustand/vanilla';
import { readPreference, writePreference } from './preferences';

const KEY = 'single-keys';

/**
 * Whether a letter, digit or sign alone, without Control or the command key, does something wherever the focus is.
 * Whoever speaks to their computer, or strikes keys by accident, turns it off.
 */
export const singleKeysStore = createStore<{ readonly on: boolean }>()(() => ({
  on: readPreference(KEY, ['off']) === null,
}));

/** Turns single keys on or off, and keeps that in the browser. */
export function setSingleKeys(on: boolean): void {
  singleKeysStore.setState({ on });
  writePreference(KEY, on ? 'on' : 'off');
}

/** Whether a press of a key is of a letter, digit or sign alone while those are turned off. */
export function isTurnedOff({ key, ctrlKey, metaKey, altKey }: KeyboardEvent): boolean {
  const isAlone = key.length === 1 && key !== ' ' && !ctrlKey && !metaKey && !altKey;
  return isAlone && !singleKeysStore.getState().on;
}
