import type { Plan } from '../schema/plan';
import type { Wire } from '../schema/power';
import { editRecord } from './editRecord';
import { orSame } from './motion';
import { kept, tidyMetres } from './tidy';

/** What a cable's conductors are, and the sheath that comes with them; null for what its diameter makes likely. */
export function setWire(
  plan: Plan,
  {
    id,
    to,
  }: { readonly id: string; readonly to: { readonly wire: Wire; readonly diameterMetres: number } | null },
): Plan {
  return editRecord(plan, id, {
    gear: (gear) => {
      if (gear.kind !== 'cable') return gear;
      const { wire: before, ...rest } = gear;
      if (!to) return before ? rest : gear;
      const diameterMetres = kept(tidyMetres(to.diameterMetres), 0.002, 0.2);
      return orSame(gear, { ...gear, wire: to.wire, diameterMetres });
    },
  });
}
