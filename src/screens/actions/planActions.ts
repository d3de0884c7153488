import { choosePlanFile, savePlanFile } from '../../desk/files';
import { planStore } from '../../desk/planStore';
import { command, commandKeys } from './keys';
import type { Action } from './types';

/** What is done to the plan as a whole. */
export const PLAN_ACTIONS: readonly Action[] = [
  {
    id: 'undo',
    word: 'undo',
    keys: commandKeys('Z'),
    matches: command('z', false),
    group: 'plan',
    can: () => true,
    act: () => planStore.getState().undo(),
  },
  {
    id: 'redo',
    word: 'redo',
    keys: commandKeys('Shift Z'),
    matches: command('z', true),
    group: 'plan',
    can: () => true,
    act: () => planStore.getState().redo(),
  },
  {
    id: 'save',
    word: 'save the plan',
    keys: commandKeys('S'),
    always: true,
    matches: (event) => command('s', event.shiftKey)(event),
    group: 'plan',
    can: () => true,
    act: () => void savePlanFile(),
  },
  {
    id: 'open',
    word: 'open a plan',
    keys: commandKeys('O'),
    always: true,
    matches: (event) => command('o', event.shiftKey)(event),
    group: 'plan',
    can: () => true,
    act: () => void choosePlanFile(),
  },
];
