import type { Plan } from '../../core/plan/schema/plan';
import type { Spot } from '../overhead/geometry/spots';

/** What an action is done to: the plan as it is seen, the items, the setup that is looked through, a place on the roof. */
export interface ActionContext {
  readonly plan: Plan;
  readonly ids: readonly string[];
  readonly setupId: string | null;
  /** The place that was pressed, metres; null where nothing was. */
  readonly at: Spot | null;
}

export const ACTION_GROUPS = ['shape', 'arrange', 'gear', 'view', 'plan'] as const;
export type ActionGroup = (typeof ACTION_GROUPS)[number];

/** One thing that can be done: from the menu of what is pressed, from a panel, by its keys. */
export interface Action {
  readonly id: string;
  readonly word: string | ((context: ActionContext) => string);
  /** As the key sheet and the menu show them; the first is the one for this keyboard. */
  readonly keys?: readonly string[];
  readonly matches?: (event: KeyboardEvent) => boolean;
  /** Holds while typing in a field, too. */
  readonly always?: boolean;
  readonly can: (context: ActionContext) => boolean;
  readonly act: (context: ActionContext) => void;
  readonly group: ActionGroup;
  /** Which menus and panels offer it: of things, of the empty ground; those without have their keys alone. */
  readonly over?: 'things' | 'ground' | 'both';
  /** Further choices, on a page of their own in the menu; `act` opens that page. */
  readonly more?: (context: ActionContext) => readonly Action[];
}

/** The word for an action as things are. */
export const wordOf = ({ word }: Action, context: ActionContext): string =>
  typeof word === 'string' ? word : word(context);
