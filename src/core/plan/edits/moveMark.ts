import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';

/** Moves one mark of a performer to [x, z], metres; the other marks stay. */
export function moveMark(
  plan: Plan,
  args: { readonly performerId: string; readonly markId: string; readonly to: Spot },
): Plan {
  return editRecord(plan, args.performerId, {
    cast: (performer) => {
      const index = performer.marks.findIndex((mark) => mark.id === args.markId);
      const mark = performer.marks[index];
      return mark
        ? { ...performer, marks: performer.marks.with(index, { ...mark, at: args.to }) }
        : performer;
    },
  });
}
