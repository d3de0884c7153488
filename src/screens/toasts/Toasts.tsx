import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import { planStore } from '../../desk/planStore';
import { type Toast, toastStore } from '../../desk/toastStore';

/** Long enough to read 24 words. A warning stays until it is put away or replaced. */
const READ_MS = 7000;
/** Long enough to read, think again and act. */
const ACT_MS = 20_000;

function ToastLine({ toast }: { readonly toast: Toast }) {
  const { dismiss } = toastStore.getState();
  const { id, tone, stays, isHeard, action } = toast;
  // Under a pointer or with the focus in it, a toast waits.
  const [held, setHeld] = useState(false);
  const staysMs = action ? ACT_MS : READ_MS;
  useEffect(() => {
    if (tone === 'warn' || stays || held) return;
    const timer = setTimeout(() => toastStore.getState().dismiss(id), staysMs);
    return () => clearTimeout(timer);
  }, [id, tone, stays, held, staysMs]);
  return (
    <li
      className={tone === 'warn' ? 'toast warn' : 'toast'}
      onPointerEnter={() => setHeld(true)}
      onPointerLeave={() => setHeld(false)}
      onFocus={() => setHeld(true)}
      onBlur={() => setHeld(false)}
    >
      <p role={isHeard ? (tone === 'warn' ? 'alert' : 'status') : undefined}>{toast.sentence}</p>
      {action ? (
        <button
          type="button"
          className="bare act"
          onClick={() => {
            action.act();
            dismiss(id);
          }}
        >
          {action.word}
        </button>
      ) : null}
      <button type="button" className="bare" onClick={() => dismiss(id)}>
        Put away
      </button>
    </li>
  );
}

/** Once another step was made, undo would take back that one: whoever offers it for the step before goes. */
function dropOvertaken(): void {
  const { undo } = planStore.getState();
  const { toasts, dismiss } = toastStore.getState();
  for (const { id, action } of toasts) if (action?.act === undo) dismiss(id);
}

/** What just happened, above the strip at the right. */
export function Toasts() {
  const toasts = useStore(toastStore, (state) => state.toasts);
  useEffect(
    () =>
      planStore.subscribe((state, before) => {
        if (state.plan !== before.plan) dropOvertaken();
      }),
    [],
  );
  return (
    <ul className="toasts">
      {toasts.map((toast) => (
        <ToastLine key={toast.id} toast={toast} />
      ))}
    </ul>
  );
}
