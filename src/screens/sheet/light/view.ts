import { createStore } from 'zustand/vanilla';
import { LIGHT_SUBJECTS, type LightSubject } from '../../../core/report/light/types';

/** What the left column of the Light sheet is about. */
export const LIGHT_VIEWS = ['faces', 'exposure', 'floor', 'dark'] as const;
export type LightView = (typeof LIGHT_VIEWS)[number];

/** What each view says itself. */
const SAID_BY: Readonly<Record<LightView, readonly LightSubject[]>> = {
  faces: ['level', 'ratio', 'catch light', 'edge'],
  exposure: ['flicker'],
  floor: ['highlight'],
  dark: ['dark'],
};

export const saidBy = (view: LightView): readonly LightSubject[] => SAID_BY[view];

/** What a view does not say: at its foot stands what of that will not do. */
export const notSaidBy = (view: LightView): readonly LightSubject[] =>
  LIGHT_SUBJECTS.filter((subject) => !SAID_BY[view].includes(subject));

interface LightViewState {
  readonly view: LightView;
  /** Whose face the lamps are told for, where somebody was chosen. */
  readonly performerId: string | null;
  /** How far the key is to be under the exposure, stops. */
  readonly stopsUnder: number;
}

/** How the Light sheet was left, for when one comes back to it. */
export const lightViewStore = createStore<LightViewState>()(() => ({
  view: 'faces',
  performerId: null,
  stopsUnder: 1,
}));
