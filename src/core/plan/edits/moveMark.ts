import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { surfaceOfFoot, surfaceUnder } from '../surfaces';
import { editRecord } from './editRecord';
import { movedMark, translation } from './motion';
import { sameSpot, tidySpot } from './tidy';

/** Moves one mark of a performer to [x, z], metres; on a floor it lands on what is there. The other marks stay. */
export function moveMark(
  plan: Plan,
  args: { readonly performerId: string; readonly markId: string; readonly to: Spot },
): Plan {
  const to = tidySpot(args.to);
  return editRecord(plan, args.performerId, {
    cast: (performer) => {
      const index = performer.marks.findIndex((mark) => mark.id === args.markId);
      const mark = performer.marks[index];
      if (!mark || sameSpot(mark.at, to)) return performer;
      const floor = surfaceOfFoot(plan, mark.at, mark.floorMetres ?? 0);
      const lift = floor ? surfaceUnder(plan, to).metres - floor.metres : 0;
      const landed = { ...movedMark(mark, translation([0, 0]), lift), at: to };
      return { ...performer, marks: performer.marks.with(index, landed) };
    },
  });
}
