import type { Verdict } from './types';

/** Whether an item with this verdict is in frame, as it is lit or in any light. */
export const isSeen = (verdict: Verdict): boolean =>
  verdict === 'showing' || verdict === 'mirrored' || verdict === 'lost in the dark';
