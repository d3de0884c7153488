import { createStore } from 'zustand/vanilla';

export interface Toast {
  readonly id: number;
  readonly sentence: string;
  /** `warn` carries the vermilion bar. */
  readonly tone: 'plain' | 'warn';
  readonly action: { readonly word: string; readonly act: () => void } | null;
}

interface ToastState {
  readonly toasts: readonly Toast[];
  readonly say: (sentence: string, options?: Partial<Pick<Toast, 'tone' | 'action'>>) => void;
  readonly dismiss: (id: number) => void;
}

/** More would cover the sheet. */
const MOST_TOASTS = 3;
let nextId = 1;

export const toastStore = createStore<ToastState>()((set) => ({
  toasts: [],
  say: (sentence, options = {}) => {
    const toast: Toast = { id: nextId, sentence, tone: 'plain', action: null, ...options };
    nextId += 1;
    set((state) => ({ toasts: [...state.toasts, toast].slice(-MOST_TOASTS) }));
  },
  dismiss: (id) => set((state) => ({ toasts: state.toasts.filter((toast) => toast.id !== id) })),
}));
