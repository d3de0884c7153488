import { createStore } from 'zustand/vanilla';
import type { HeldModel } from '../../core/form/models/heldModel';

/** How a file that the plan names stands on this device. */
export type AssetState =
  | { readonly status: 'reading' }
  | { readonly status: 'missing' }
  | { readonly status: 'unreadable'; readonly sentence: string }
  | { readonly status: 'model'; readonly model: HeldModel }
  | { readonly status: 'picture'; readonly url: string };

/** A file that is being taken in. */
export interface Importing {
  readonly name: string;
  /** 0..1. */
  readonly share: number;
  readonly stop: () => void;
}

interface AssetStore {
  /** By SHA-256; what nobody has looked for yet is not in it. */
  readonly states: ReadonlyMap<string, AssetState>;
  readonly importing: Importing | null;
  /** Counts the models that came or went: forms are others after each. */
  readonly changes: number;
  /** Counts the pictures on models that came to be drawn. */
  readonly painted: number;
}

export const assetStore = createStore<AssetStore>()(() => ({
  states: new Map(),
  importing: null,
  changes: 0,
  painted: 0,
}));

/** Notes how a file stands. */
export function setAssetState(sha256: string, state: AssetState): void {
  const { states, changes } = assetStore.getState();
  const isOther = states.get(sha256)?.status !== state.status;
  assetStore.setState({
    states: new Map(states).set(sha256, state),
    changes: isOther ? changes + 1 : changes,
  });
}
