import { createStore } from 'zustand/vanilla';
import type { Plan } from '../../core/plan/schema/plan';
import type { ConnectAnswer, PowerAnswer } from './powerApi';

interface PowerState {
  /** The last answer, perhaps still of a moment ago. */
  readonly answer: PowerAnswer | null;
  /** The last one about a committed plan: what is tried is tried from it. */
  readonly settled: PowerAnswer | null;
  /** What connecting everything would do, and of which plan that is. */
  readonly connection: (ConnectAnswer & { readonly plan: Plan }) | null;
  /** Whether ways for cables are being looked for. */
  readonly connecting: boolean;
  /** The source of which is asked what happens when it stops. */
  readonly stopId: string | null;
  /** Whether the power is looked at, so that the roof shows it. */
  readonly shown: boolean;
  /** Why nothing could be worked out, a sentence. */
  readonly trouble: string | null;
}

/** The power as it is worked out in its worker, and what is asked of it. */
export const powerStore = createStore<PowerState>()(() => ({
  answer: null,
  settled: null,
  connection: null,
  connecting: false,
  stopId: null,
  shown: false,
  trouble: null,
}));
