import { useLive } from '../../../desk/hooks';

/** Whether the clock and the plan rest, so that a question about an instant is worth asking. */
export const useResting = (): boolean => useLive(({ playing, gesture }) => !playing && gesture === null);
