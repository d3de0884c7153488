import { createStore } from 'zustand/vanilla';
import { readPreferences, writePreference } from '../preferences';
import { HINT_IDS, type HintId } from './hints';

/** Which hints are over, for this person. */
export interface HintState {
  readonly gone: readonly HintId[];
  readonly readKeys: boolean;
  readonly putAway: (ids: readonly HintId[]) => void;
  readonly showAgain: () => void;
}

export const hintStore = createStore<HintState>()((set, get) => {
  const keep = (gone: readonly HintId[]): void => {
    writePreference('hints', gone.join(' '));
    set({ gone });
  };
  return {
    gone: readPreferences('hints', HINT_IDS),
    readKeys: false,
    putAway: (ids) => keep([...new Set([...get().gone, ...ids])]),
    showAgain: () => {
      set({ readKeys: false });
      keep([]);
    },
  };
});
