import { sessionStore } from '../../desk/sessionStore';
import { makeLink } from '../../desk/share/making';
import { letter } from './keys';
import type { Action } from './types';

/** What goes to the crew. */
export const CREW_ACTIONS: readonly Action[] = [
  {
    id: 'make-link',
    word: 'make the link for the crew, and copy it',
    keys: ['Shift L'],
    matches: letter('l', true),
    group: 'plan',
    can: () => true,
    act: () => {
      sessionStore.getState().setSheet('crew');
      void makeLink();
    },
  },
];
