import type { Spot } from '../../core/plan/schema/numbers';
import type { Plan } from '../../core/plan/schema/plan';

/** An end of a tape that can be taken hold of. */
export interface TapeEnd {
  readonly tapeId: string;
  readonly end: 'from' | 'to';
  readonly at: Spot;
}

/** Both ends of every tape, in their order. */
export function tapeEnds(plan: Plan): readonly TapeEnd[] {
  return (plan.tapes ?? []).flatMap((tape): TapeEnd[] => [
    { tapeId: tape.id, end: 'from', at: tape.from },
    { tapeId: tape.id, end: 'to', at: tape.to },
  ]);
}
