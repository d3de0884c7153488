import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import type { LightUnit } from '../../units/illuminance';
import type { LengthSystem } from '../../units/lengths';
import type { SetupReport } from '../types';
import { catchSentences } from './catchSentences';
import { darkSentences } from './darkSentences';
import { edgeSentences } from './edgeSentences';
import { flickerSentence } from './flickerSentence';
import { highlightSentences } from './highlightSentences';
import { levelSentences } from './levelSentences';
import type { LightSentence, SetupLight } from './types';

/** How lengths and levels are said; metres and lux unless said. */
export interface LightUnits {
  readonly lengths?: LengthSystem;
  readonly unit?: LightUnit;
}

const RANK: Readonly<Record<LightSentence['standing'], number>> = { breaks: 0, said: 1, holds: 2 };

/** What the report says of a setup's light, as sentences of the house: what breaks first, then by subject. */
export function lightSentences(
  plan: Plan,
  setup: Setup,
  light: Omit<SetupLight, 'sentences'>,
  seen: SetupReport,
  { lengths = 'm', unit = 'lx' }: LightUnits = {},
): readonly LightSentence[] {
  const story = { plan, setup, light, seen, lengths, unit };
  const flicker = flickerSentence(story);
  return [
    ...(flicker ? [flicker] : []),
    ...darkSentences(story),
    ...levelSentences(story),
    ...catchSentences(story),
    ...edgeSentences(story),
    ...highlightSentences(story),
  ].sort((a, b) => RANK[a.standing] - RANK[b.standing]);
}
