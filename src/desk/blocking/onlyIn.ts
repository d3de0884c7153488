import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { played } from '../../core/plan/played';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { livePlan } from '../liveStore';
import { sessionStore } from '../sessionStore';

/** The setup whose marks a hand on the roof cheats, in place of moving the master's; null for none. */
export const onlyInStore = createStore<{ readonly setupId: string | null }>()(() => ({ setupId: null }));

/** It holds only while the blocking is looked at, and through that very setup. */
function onlyInId(): string | null {
  const { sheet, setupId } = sessionStore.getState();
  const asked = onlyInStore.getState().setupId;
  return sheet === 'blocking' && asked === setupId ? asked : null;
}

const setupIn = (plan: Plan, id: string | null): Setup | null =>
  id === null ? null : (plan.setups.find((setup) => setup.id === id) ?? null);

/** The setup that alone is changed by what is done to marks now; null where that is the master. */
export const onlyInSetup = (plan: Plan): Setup | null => setupIn(plan, onlyInId());

/** A plan as the roof has its cast: as one setup plays it, or as the master has it. */
export function seenOf(plan: Plan): Plan {
  const setup = onlyInSetup(plan);
  return setup ? played(plan, setup) : plan;
}

/** The plan as it is seen now, with the cast where the roof has it. */
export const seenPlan = (): Plan => seenOf(livePlan());

/** The same for what is drawn: the setup that is cheated for in a plan. */
export function useOnlyIn(plan: Plan): Setup | null {
  useStore(onlyInStore);
  useStore(sessionStore, ({ sheet, setupId }) => `${sheet} ${setupId}`);
  return onlyInSetup(plan);
}
