import type { Performer } from '../plan/schema/cast';
import type { Plan } from '../plan/schema/plan';

/**
 * What is asked of performers at instants of the action's clock, each worked out once. Setups share that clock and most of
 * the instants at which they are looked at, so that many of them cost little more than a few. For one piece of work: it
 * keeps all that it was asked.
 */
export class ByInstant<Value> {
  private readonly known = new Map<Plan, Map<Performer, Map<number, Value>>>();

  /** @param ask what of a performer, in a plan as a setup plays it, at an instant in seconds; the same when asked again */
  constructor(private readonly ask: (performer: Performer, scene: Plan, seconds: number) => Value) {}

  /** Whatever is asked, of a performer of a scene at an instant, seconds. */
  at(performer: Performer, scene: Plan, seconds: number): Value {
    const byPerformer = this.known.get(scene) ?? new Map<Performer, Map<number, Value>>();
    this.known.set(scene, byPerformer);
    const bySeconds = byPerformer.get(performer) ?? new Map<number, Value>();
    byPerformer.set(performer, bySeconds);
    const known = bySeconds.get(seconds);
    if (known !== undefined) return known;
    const found = this.ask(performer, scene, seconds);
    bySeconds.set(seconds, found);
    return found;
  }
}
