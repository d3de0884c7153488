import { LEAST_MEASURED_METRES, scaleModel } from '../../core/plan/edits/scaleModel';
import { scaleUnderlay } from '../../core/plan/edits/scaleUnderlay';
import { metresBetween } from '../../core/plan/runs';
import { planStore } from '../planStore';
import { putDown } from './drawing';
import { toolStore } from './toolStore';

/**
 * Says how far apart the two places that were pressed are in truth, metres: the model, or the picture under the roof,
 * is scaled to it, and the tool is put down. Returns a sentence that says what would work, or null when it was taken.
 */
export function answerDistance(metres: number): string | null {
  const { asksDistance } = toolStore.getState();
  if (!asksDistance) return null;
  const { purpose, from, to } = asksDistance;
  if (metres < LEAST_MEASURED_METRES) return 'A measured distance is at least 1 cm.';
  if (metresBetween(from, to) < LEAST_MEASURED_METRES)
    return 'The two places are one. Press two that lie apart.';
  const faults = planStore
    .getState()
    .edit(purpose.type === 'model' ? 'scale the model' : 'scale the picture under the roof', (plan) =>
      purpose.type === 'model'
        ? scaleModel(plan, { id: purpose.id, from, to, metres })
        : scaleUnderlay(plan, { from, to, metres }),
    );
  if (faults[0]) return faults[0].sentence;
  putDown();
  return null;
}
