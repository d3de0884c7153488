import { createStore } from 'zustand/vanilla';
import type { Tolerance } from '../../core/clearance/remedies/types';
import { readStored, writePreference } from '../preferences';

/** How far a lamp may be changed until somebody says otherwise. Source: common practice, no source */
export const FIRST_TOLERANCE: Tolerance = { levelStops: 0.5, angleDegrees: 15 };
/** The most that may be asked for. */
export const MOST_TOLERANCE: Tolerance = { levelStops: 6, angleDegrees: 180 };

const KEY = 'tolerance';

const within = (value: number, most: number): boolean => value >= 0 && value <= most;

/** What is written of a tolerance, stops and degrees with a blank between; the first one for anything else. */
export function toleranceOfWords(words: string | null): Tolerance {
  const [levelStops = Number.NaN, angleDegrees = Number.NaN] = (words ?? '').split(' ').map(Number);
  return within(levelStops, MOST_TOLERANCE.levelStops) && within(angleDegrees, MOST_TOLERANCE.angleDegrees)
    ? { levelStops, angleDegrees }
    : FIRST_TOLERANCE;
}

/** How far a lamp may be changed for a remedy, kept in the browser. */
export const toleranceStore = createStore<Tolerance>()(() => toleranceOfWords(readStored(KEY)));

/** Sets and keeps it. */
export function setTolerance(tolerance: Tolerance): void {
  toleranceStore.setState(tolerance);
  writePreference(KEY, `${tolerance.levelStops} ${tolerance.angleDegrees}`);
}
