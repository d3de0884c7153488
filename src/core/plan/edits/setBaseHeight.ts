import type { Point } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';

const raised = (point: Point, metres: number): Point => [point[0], metres, point[2]];

/** Puts the foot of a standing thing, or the middle of a hanging one, so many metres above the deck; others stay. */
export function setBaseHeight(
  plan: Plan,
  { id, metres }: { readonly id: string; readonly metres: number },
): Plan {
  return editRecord(plan, id, {
    piece: (piece) =>
      'at' in piece && piece.at[1] !== metres ? { ...piece, at: raised(piece.at, metres) } : piece,
    gear: (gear) => {
      if ('at' in gear) return gear.at[1] === metres ? gear : { ...gear, at: raised(gear.at, metres) };
      if ('place' in gear && 'at' in gear.place && gear.place.at[1] !== metres)
        return { ...gear, place: { at: raised(gear.place.at, metres) } };
      return gear;
    },
  });
}
