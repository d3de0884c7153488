import { modelHeld } from '../../core/form/models/modelShelf';
import type { Plan } from '../../core/plan/schema/plan';
import { modelFilesIn } from './assetsIn';
import { withoutSkins } from './withoutSkins';

/** Takes over a model at the other end, by the SHA-256 of its file. */
type Hold = (sha256: string, model: ReturnType<typeof withoutSkins>) => Promise<void>;

/**
 * Sends a worker the models of a plan that are at hand and not among those that it was sent: each goes over once. What
 * lenses and light need of it is copied, the page keeps drawing its own.
 */
export async function sendModels(plan: Plan, sent: Set<string>, hold: Hold): Promise<void> {
  for (const { sha256 } of modelFilesIn(plan)) {
    const model = sent.has(sha256) ? null : modelHeld(sha256);
    if (!model) continue;
    sent.add(sha256);
    await hold(sha256, withoutSkins(model));
  }
}
