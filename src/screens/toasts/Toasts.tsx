import { useEffect } from 'react';
import { useStore } from 'zustand';
import { type Toast, toastStore } from '../../desk/toastStore';

/** Long enough to read 24 words and act; a warning stays until it is put away or replaced. */
const STAYS_MS = 7000;

function ToastLine({ toast }: { readonly toast: Toast }) {
  const { dismiss } = toastStore.getState();
  const { id, tone, action } = toast;
  useEffect(() => {
    if (tone === 'warn') return;
    const timer = setTimeout(() => toastStore.getState().dismiss(id), STAYS_MS);
    return () => clearTimeout(timer);
  }, [id, tone]);
  return (
    <li className={tone === 'warn' ? 'toast warn' : 'toast'}>
      <p role={tone === 'warn' ? 'alert' : 'status'}>{toast.sentence}</p>
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

/** What just happened, above the strip at the right. */
export function Toasts() {
  const toasts = useStore(toastStore, (state) => state.toasts);
  return (
    <ul className="toasts">
      {toasts.map((toast) => (
        <ToastLine key={toast.id} toast={toast} />
      ))}
    </ul>
  );
}
