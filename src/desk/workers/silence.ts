import { toastStore } from '../toastStore';

let told = 0;

/**
 * Tells at the page when a worker has not answered for long, with another try, and takes that back once it does.
 * @param what what is waited for, as the start of a sentence: `The lens test`
 */
export function silenceOf(what: string): (isSilent: boolean, again: () => void) => void {
  told += 1;
  const about = `silence ${told}`;
  return (isSilent, again) => {
    const { say, toasts, dismiss } = toastStore.getState();
    if (isSilent) {
      const action = { word: 'Try again', act: again };
      say(`${what} has not answered for a minute.`, { tone: 'warn', about, action });
      return;
    }
    for (const toast of toasts) if (toast.about === about) dismiss(toast.id);
  };
}
