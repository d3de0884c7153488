import { named } from '../../plan/named';
import type { Power } from '../../power/powerOf';
import { NBSP } from '../../units/numbers';
import type { PowerSentence } from './types';

/** Loads on a cord that draw nothing as the plan has them, so that nothing is reckoned for them. */
export const zeroSentences = ({ network }: Power): readonly PowerSentence[] =>
  [...network.loads.values()]
    .filter(({ id, watts }) => watts === 0 && network.feeding.get(id) !== 'own')
    .map(({ id, label }) => ({
      about: 'plugs',
      standing: 'said',
      itemIds: [id],
      sentence: `${named(label)} draws 0${NBSP}W as the plan has it, so nothing is reckoned for it. Say what its plate says.`,
    }));
