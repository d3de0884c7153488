import type { Plan } from '../schema/plan';
import { editSetup } from './editRecord';

/** Sets the stop (T number) of a setup. */
export function setStop(
  plan: Plan,
  { setupId, stop }: { readonly setupId: string; readonly stop: number },
): Plan {
  return editSetup(plan, setupId, (setup) => (setup.stop === stop ? setup : { ...setup, stop }));
}
