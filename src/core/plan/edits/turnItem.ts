import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';
import { tidyHeading } from './tidy';

/** Turns an item to a compass heading in degrees; what has no heading of its own (runs, lines, heads, cast) stays. */
export function turnItem(plan: Plan, args: { readonly id: string; readonly headingDegrees: number }): Plan {
  const headingDegrees = tidyHeading(args.headingDegrees);
  return editRecord(plan, args.id, {
    piece: (piece) =>
      'headingDegrees' in piece && piece.headingDegrees !== headingDegrees
        ? { ...piece, headingDegrees }
        : piece,
    gear: (gear) =>
      'headingDegrees' in gear && gear.headingDegrees !== headingDegrees ? { ...gear, headingDegrees } : gear,
  });
}
