import { cameraWise } from '../../../core/continuity/cameraWise';
import { spanOf, stateAt } from '../../../core/optics/camera';
import { played } from '../../../core/plan/played';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import type { LengthSystem } from '../../../core/units/lengths';
import { tapesOf } from '../../../desk/blocking/tape';
import { headingAt } from '../../../desk/blocking/tapeShape';
import { secondsOfBeat } from '../../../desk/blocking/things';
import { letterOf } from '../../../desk/choose';
import { distance, type Spot } from '../geometry/spots';
import { cheatWords } from './words';

/** A mark that a setup plays elsewhere, and where the master has it. */
export interface DrawnCheat {
  readonly performerId: string;
  readonly markId: string;
  readonly master: { readonly at: Spot; readonly headingDegrees: number };
  readonly cheated: { readonly at: Spot; readonly headingDegrees: number };
  readonly words: string;
}

/** What a setup cheats, each piece of tape once. `plan` is the master. */
export function cheatsOn(plan: Plan, setup: Setup, lengths: LengthSystem): readonly DrawnCheat[] {
  if (!setup.cheats) return [];
  const shot = played(plan, setup);
  const [from, until] = spanOf(plan, setup);
  return shot.cast.flatMap((performer): DrawnCheat[] => {
    const own = plan.cast.find(({ id }) => id === performer.id);
    if (!own || performer.hidden || own === performer) return [];
    return tapesOf(shot, performer).flatMap((tape): DrawnCheat[] => {
      const mark = tape.find((each) => !own.marks.includes(each));
      const before = mark && own.marks.find(({ id }) => id === mark.id);
      if (!mark || !before) return [];
      const moment = Math.min(Math.max(secondsOfBeat(plan, mark.beat), from), until);
      const master = { at: before.at, headingDegrees: headingAt(plan, own, before) };
      const cheated = { at: mark.at, headingDegrees: headingAt(shot, performer, mark) };
      const isTurned = mark.headingDegrees !== before.headingDegrees || mark.faces !== before.faces;
      const turn = ((cheated.headingDegrees - master.headingDegrees + 540) % 360) - 180;
      const words = cheatWords(
        cameraWise(master.at, cheated.at, stateAt(plan, setup, moment).headingDegrees),
        isTurned ? turn : 0,
        letterOf(plan, setup.id),
        lengths,
      );
      return [{ performerId: performer.id, markId: mark.id, master, cheated, words }];
    });
  });
}

/** Whether a cheat goes anywhere, and not only turns. */
export const goes = ({ master, cheated }: DrawnCheat): boolean => distance(master.at, cheated.at) >= 0.005;
