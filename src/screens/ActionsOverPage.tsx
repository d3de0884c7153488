import { useStore } from 'zustand';
import { contextStore } from '../desk/contextStore';
import { askStore } from './actions/askStore';
import { lazily, useWasOpen } from './parts/lazily';

const AskForm = lazily(async () => (await import('./actions/AskForm')).AskForm);
const ContextMenu = lazily(async () => (await import('./actions/ContextMenu')).ContextMenu);

/** The menu of what can be done to what was pressed, and what an action asks; each from when it is first opened. */
export function ActionsOverPage() {
  const asked = useWasOpen(useStore(askStore, (state) => state.asked !== null));
  const open = useWasOpen(useStore(contextStore, (state) => state.open !== null));
  return (
    <>
      {asked && <AskForm />}
      {open && <ContextMenu />}
    </>
  );
}
