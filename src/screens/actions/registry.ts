import { livePlan } from '../../desk/liveStore';
import { sessionStore } from '../../desk/sessionStore';
import type { Spot } from '../overhead/geometry/spots';
import { ARRANGE_ACTIONS } from './arrangeActions';
import { BLOCKING_ACTIONS } from './blockingActions';
import { CREW_ACTIONS } from './crewActions';
import { GROUND_ACTIONS } from './groundActions';
import { PLAN_ACTIONS } from './planActions';
import { SHAPE_ACTIONS } from './shapeActions';
import { ACTION_GROUPS, type Action, type ActionContext } from './types';
import { VIEW_ACTIONS } from './viewActions';
import { WET_ACTIONS } from './wetActions';

/** Everything that can be done by a word or a key; menus, panels, keys and the key sheet take it from here. */
export const ACTIONS: readonly Action[] = [
  ...SHAPE_ACTIONS,
  ...BLOCKING_ACTIONS,
  ...ARRANGE_ACTIONS,
  ...GROUND_ACTIONS,
  ...WET_ACTIONS,
  ...VIEW_ACTIONS,
  ...PLAN_ACTIONS,
  ...CREW_ACTIONS,
];

/** What a key press is meant for: what is chosen, through the setup that is looked through. */
export function contextNow(at: Spot | null = null): ActionContext {
  const { selectedIds, setupId } = sessionStore.getState();
  return { plan: livePlan(), ids: selectedIds, setupId, at };
}

/** The actions that a menu offers for a context, in the order of their groups. */
export function actionsFor(context: ActionContext): readonly Action[] {
  const over = context.ids.length > 0 ? 'things' : 'ground';
  return ACTIONS.filter(
    (action) => (action.over === over || action.over === 'both') && action.can(context),
  ).toSorted((a, b) => ACTION_GROUPS.indexOf(a.group) - ACTION_GROUPS.indexOf(b.group));
}

/** The action of that id, or null. */
export const actionOf = (id: string): Action | null => ACTIONS.find((action) => action.id === id) ?? null;
