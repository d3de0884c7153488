import { useSyncExternalStore } from 'react';

/** From here on a setup lies beside its list: what fits a tablet held upright does not. */
const WIDE = '(min-width: 900px)';

function follow(changed: () => void): () => void {
  const query = matchMedia(WIDE);
  query.addEventListener('change', changed);
  return () => query.removeEventListener('change', changed);
}

/** Whether there is room for two columns. */
export const useWide = (): boolean => useSyncExternalStore(follow, () => matchMedia(WIDE).matches);
