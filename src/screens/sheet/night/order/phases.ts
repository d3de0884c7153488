import type { NightCost, NightPhase } from '../../../../core/plan/schema/night';

/** What a setup takes, one after the other, as the fields call it. */
export const PHASES: readonly { readonly phase: NightPhase; readonly word: string }[] = [
  { phase: 'rig', word: 'rig' },
  { phase: 'light', word: 'light' },
  { phase: 'rehearse', word: 'rehearse' },
  { phase: 'shoot', word: 'shoot' },
  { phase: 'move', word: 'move off' },
];

/** What changing over costs, as the fields call it. */
export const COSTS: readonly { readonly cost: NightCost; readonly word: string }[] = [
  { cost: 'lens', word: 'another lens' },
  { cost: 'body', word: 'another body' },
  { cost: 'filter', word: 'another filter' },
  { cost: 'support', word: 'another support' },
  { cost: 'lighting', word: 'another lighting' },
  { cost: 'head', word: 'each lamp' },
  { cost: 'halfTurn', word: 'a half turn' },
  { cost: 'tenMetres', word: 'each 10 metres' },
  { cost: 'wetDown', word: 'a wet-down' },
];
