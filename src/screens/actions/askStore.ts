import { createStore } from 'zustand/vanilla';

/** How a row is laid: along a straight way at a bearing, or along a run of the plan. */
export interface RowAsked {
  readonly type: 'row';
  readonly ids: readonly string[];
  /** The things themselves counted. */
  readonly count: number;
  /** From one to the next, metres; null lays them evenly over the whole run. */
  readonly spacingMetres: number | null;
  readonly bearingDegrees: number;
  /** Id of the run that it goes along; null for the straight way. */
  readonly runId: string | null;
  /** Whether they turn with the way. */
  readonly follow: boolean;
}

/** What is asked on a small form over the roof: a new name, or how a row is laid. */
export type Asked = { readonly type: 'name'; readonly ids: readonly string[] } | RowAsked;

export const askStore = createStore<{ readonly asked: Asked | null }>()(() => ({ asked: null }));

export const ask = (asked: Asked | null): void => askStore.setState({ asked });
