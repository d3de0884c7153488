import type { HeldModel } from '../../core/form/models/heldModel';
import type { Plan } from '../../core/plan/schema/plan';
import { sendModels } from '../assets/sendModels';
import { type PackedPlan, packPlan } from '../planWire';

/** The other end of a line: it takes models and plans over. */
interface PlanHolder {
  readonly holdModel: (sha256: string, model: HeldModel) => Promise<void>;
  readonly hold: (packed: PackedPlan) => Promise<void>;
}

/** Questions to a worker about plans: it is sent only what changed since the plan that it holds. */
export class PlanLine {
  readonly #models = new Set<string>();
  #held: Plan | null = null;
  #line: Promise<unknown> = Promise.resolve();

  constructor(private readonly holder: PlanHolder) {}

  /** Asks about a plan. Plans arrive in the order in which they are asked about, each before its question. */
  async about<Value>(plan: Plan, ask: () => Promise<Value>): Promise<Value> {
    const sent = this.#line.then(async () => {
      await sendModels(plan, this.#models, this.holder.holdModel);
      if (this.#held !== plan) {
        const packed = packPlan(this.#held, plan);
        this.#held = plan;
        await this.holder.hold(packed);
      }
      // The question goes off at once, its answer is not waited for: the next plan may follow it.
      return { answer: ask() };
    });
    this.#line = sent.catch(() => undefined);
    return (await sent).answer;
  }
}
