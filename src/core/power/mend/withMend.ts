import { plugCable } from '../../plan/edits/plugCable';
import { reshapeItem } from '../../plan/edits/reshapeItem';
import { setWire } from '../../plan/edits/setWire';
import type { Plan } from '../../plan/schema/plan';
import type { Mend } from './types';

/** The plan with a mend done. Connecting all is `connectAll`'s, which looks for ways, and what a plate says a person's: here they change nothing. */
export function withMend(plan: Plan, mend: Mend): Plan {
  switch (mend.act) {
    case 'pull': {
      const begun = plugCable(plan, { id: mend.cableId, end: 'from', to: null });
      return plugCable(begun, { id: mend.cableId, end: 'to', to: null });
    }
    case 'pull end':
      return plugCable(plan, { id: mend.cableId, end: mend.end, to: null });
    case 'own':
      return mend.itemIds.reduce((so, id) => reshapeItem(so, { id, patch: { supply: 'own' } }), plan);
    case 'any circuit':
      return mend.cableIds.reduce((so, id) => reshapeItem(so, { id, patch: { circuit: undefined } }), plan);
    case 'unwind':
      return reshapeItem(plan, { id: mend.cableId, patch: { coiledShare: undefined } });
    case 'thicker':
      return mend.cables.reduce(
        (so, { id, wire, diameterMetres }) => setWire(so, { id, to: { wire, diameterMetres } }),
        plan,
      );
    case 'say':
    case 'connect':
      return plan;
  }
}
