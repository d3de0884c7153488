import type { ContinuityFinding } from '../../continuity/continuity';
import type { Plan } from '../../plan/schema/plan';
import type { LengthSystem } from '../../units/lengths';
import { cheatSentence } from './cheatSentence';
import { dirtySentence } from './dirtySentence';
import { eyelineSentence } from './eyelineSentence';
import { headroomSentence } from './headroomSentence';
import { keySideSentence } from './keySideSentence';
import { lineSentence } from './lineSentence';
import { sizeChangeSentence, thirtyDegreesSentence } from './neighboursSentence';
import { screenDirectionSentence } from './screenDirectionSentence';
import { singlesSentence } from './singlesSentence';

/** A finding of continuity as a sentence of the house. It begins with the letter of its setup. */
export function continuitySentence(
  plan: Plan,
  finding: ContinuityFinding,
  lengths: LengthSystem = 'm',
): string {
  switch (finding.kind) {
    case 'line':
      return lineSentence(plan, finding, lengths);
    case 'eyeline':
      return eyelineSentence(plan, finding);
    case 'screen direction':
      return screenDirectionSentence(plan, finding);
    case 'thirty degrees':
      return thirtyDegreesSentence(plan, finding);
    case 'size change':
      return sizeChangeSentence(plan, finding);
    case 'matching singles':
      return singlesSentence(plan, finding, lengths);
    case 'dirty single':
      return dirtySentence(plan, finding);
    case 'headroom':
      return headroomSentence(plan, finding);
    case 'key side':
      return keySideSentence(plan, finding);
    case 'cheat':
      return cheatSentence(plan, finding, lengths);
  }
}
