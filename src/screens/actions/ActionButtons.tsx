import { useMemo } from 'react';
import { useLivePlan, useSession } from '../../desk/hooks';
import { openPage } from './pages';
import { actionsFor } from './registry';
import { type Action, type ActionContext, type ActionGroup, wordOf } from './types';
import './actions.css';

/** Buttons for all that can be done to some items, in the order of the menu; only some groups where said. */
export function ActionButtons({
  ids,
  groups,
}: {
  readonly ids: readonly string[];
  readonly groups?: readonly ActionGroup[];
}) {
  const plan = useLivePlan();
  const setupId = useSession((state) => state.setupId);
  const context = useMemo((): ActionContext => ({ plan, ids, setupId, at: null }), [plan, ids, setupId]);
  const offered = actionsFor(context).filter(({ group }) => groups?.includes(group) ?? true);
  return (
    <p className="action-buttons">
      {offered.map((action) => (
        <ActionButton key={action.id} action={action} context={context} />
      ))}
    </p>
  );
}

function ActionButton({ action, context }: { readonly action: Action; readonly context: ActionContext }) {
  const [key] = action.keys ?? [];
  return (
    <button
      type="button"
      className="bare"
      title={key}
      aria-haspopup={action.more ? 'menu' : undefined}
      onClick={(event) => {
        if (!action.more) {
          action.act(context);
          return;
        }
        const { left, bottom } = event.currentTarget.getBoundingClientRect();
        openPage(context, action.id, { clientX: left, clientY: bottom });
      }}
    >
      {wordOf(action, context)}
    </button>
  );
}
