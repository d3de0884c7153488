import { createStore } from 'zustand/vanilla';
import { formatLength, type LengthSystem, METRES_PER_INCH } from '../../core/units/lengths';
import { readPreference, writePreference } from '../preferences';

/** Steps of the grid that can be chosen, metres: in metres, and in inches where lengths are read in feet. */
export const GRID_METRES = [0.05, 0.1, 0.25, 0.5, 1] as const;
export const GRID_INCHES = [1, 2, 3, 6, 12] as const;

/** The kinds of snaps that can be switched off, each with its word. */
export const SNAP_KINDS = {
  grid: 'the grid',
  edges: 'edges',
  points: 'ends and middles',
  square: 'right angles',
  inLine: 'in line with others',
  distances: 'same distance as',
} as const;
export type SnapSwitch = keyof typeof SNAP_KINDS;

/** What a hand catches on; kept for the person, not with the plan. */
export interface SnapSettings extends Readonly<Record<SnapSwitch, boolean>> {
  /** Step of the grid where lengths are read in metres, metres. */
  readonly gridMetres: number;
  /** Step of the grid where lengths are read in feet, inches. */
  readonly gridInches: number;
  readonly setSwitch: (name: SnapSwitch, on: boolean) => void;
  /** Chooses the step of the grid in the system that lengths are read in: metres or inches. */
  readonly setGrid: (system: LengthSystem, step: number) => void;
}

const wasOn = (name: SnapSwitch): boolean => readPreference(`snap-${name}`, ['on', 'off']) !== 'off';
const keptStep = (key: string, steps: readonly number[], otherwise: number): number =>
  Number(readPreference(key, steps.map(String)) ?? otherwise);

export const snapSettings = createStore<SnapSettings>()((set) => ({
  grid: wasOn('grid'),
  edges: wasOn('edges'),
  points: wasOn('points'),
  square: wasOn('square'),
  inLine: wasOn('inLine'),
  distances: wasOn('distances'),
  gridMetres: keptStep('snap-grid-metres', GRID_METRES, 0.1),
  gridInches: keptStep('snap-grid-inches', GRID_INCHES, 3),
  setSwitch: (name, on) => {
    writePreference(`snap-${name}`, on ? 'on' : 'off');
    set({ [name]: on });
  },
  setGrid: (system, step) => {
    writePreference(system === 'm' ? 'snap-grid-metres' : 'snap-grid-inches', String(step));
    set(system === 'm' ? { gridMetres: step } : { gridInches: step });
  },
}));

/** The chosen step of the grid, metres, whether or not the grid is on. */
export function stepMetres(settings: SnapSettings, lengths: LengthSystem): number {
  return lengths === 'm' ? settings.gridMetres : settings.gridInches * METRES_PER_INCH;
}

/** What it snaps to, as the roof's bar says it: `snaps to 0.10 m and to pieces`. */
export function snapWords(settings: SnapSettings, lengths: LengthSystem): string {
  const pieces =
    settings.edges || settings.points || settings.square || settings.inLine || settings.distances;
  const grid = formatLength(stepMetres(settings, lengths), lengths);
  if (settings.grid) return `snaps to ${grid}${pieces ? ' and to pieces' : ''}`;
  return pieces ? 'snaps to pieces' : 'snaps to nothing';
}

/** The same where there is no room for a sentence: `snaps 0.10 m`. */
export function snapWordsShort(settings: SnapSettings, lengths: LengthSystem): string {
  return settings.grid
    ? `snaps ${formatLength(stepMetres(settings, lengths), lengths)}`
    : snapWords(settings, lengths);
}
