import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Plan } from '../core/plan/schema/plan';
import type { SetupLight } from '../core/report/light/types';
import type { LengthSystem } from '../core/units/lengths';
import type { InstantLight } from './workers/reportApi';

/** What the light of setups is asked about: what changes any of it changes the answer. */
export interface LightAsked {
  readonly plan: Plan;
  readonly lengths: LengthSystem;
  /** How often the files at hand had changed: see `assetStore`. */
  readonly assetChanges: number;
}

/** What is known of the light. Computed by a worker while the Light sheet is open. */
export interface LightState {
  /** On the faces in the live plan at the clock last asked for; null until the first answer. */
  readonly now: InstantLight | null;
  /** Of what `asked` says, by setup id: those that are not there are being worked out. */
  readonly setups: ReadonlyMap<string, SetupLight>;
  readonly asked: LightAsked | null;
  /** Why it failed, as a sentence. */
  readonly trouble: string | null;
}

export const lightStore = createStore<LightState>()(() => ({
  now: null,
  setups: new Map(),
  asked: null,
  trouble: null,
}));

export const useLight = <Part>(select: (state: LightState) => Part): Part => useStore(lightStore, select);

/** The light of a setup over its span; null until it is known. It may be that of the plan before the last edit. */
export const useSetupLight = (setupId: string | null): SetupLight | null =>
  useLight(({ setups }) => (setupId === null ? null : (setups.get(setupId) ?? null)));
