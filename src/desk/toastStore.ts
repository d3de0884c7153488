import { createStore } from 'zustand/vanilla';

export interface Toast {
  readonly id: number;
  readonly sentence: string;
  /** `warn` carries the vermilion bar. */
  readonly tone: 'plain' | 'warn';
  /** A later toast about the same thing takes the place of this one. */
  readonly about: string | null;
  /** Whether it waits until somebody puts it away. */
  readonly stays: boolean;
  /** Whether it is read out; false where something else on the page says the same aloud. */
  readonly isHeard: boolean;
  readonly action: { readonly word: string; readonly act: () => void } | null;
}

interface ToastState {
  readonly toasts: readonly Toast[];
  readonly say: (
    sentence: string,
    options?: Partial<Pick<Toast, 'tone' | 'action' | 'about' | 'stays' | 'isHeard'>>,
  ) => void;
  readonly dismiss: (id: number) => void;
}

/** More would cover the sheet. */
const MOST_TOASTS = 3;
let nextId = 1;

export const toastStore = createStore<ToastState>()((set) => ({
  toasts: [],
  say: (sentence, options = {}) => {
    const toast: Toast = {
      id: nextId,
      sentence,
      tone: 'plain',
      about: null,
      stays: false,
      isHeard: true,
      action: null,
      ...options,
    };
    nextId += 1;
    set((state) => {
      const others = state.toasts.filter(({ about }) => about === null || about !== toast.about);
      return { toasts: [...others, toast].slice(-MOST_TOASTS) };
    });
  },
  dismiss: (id) => set((state) => ({ toasts: state.toasts.filter((toast) => toast.id !== id) })),
}));
