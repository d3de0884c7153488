import { createStore } from 'zustand/vanilla';

interface AwakeState {
  /** Whether this browser can keep the screen awake at all. */
  readonly offered: boolean;
  readonly on: boolean;
}

export const awakeStore = createStore<AwakeState>()(() => ({
  offered: typeof navigator !== 'undefined' && 'wakeLock' in navigator,
  on: false,
}));

let held: WakeLockSentinel | null = null;

async function letGo(): Promise<void> {
  const last = held;
  held = null;
  await last?.release();
}

async function hold(): Promise<void> {
  try {
    held = await navigator.wakeLock.request('screen');
    // Somebody may have pressed again meanwhile.
    if (!awakeStore.getState().on) await letGo();
  } catch {
    // An empty battery or a rule of the phone refuses: then the screen goes dark, and the button says so.
    awakeStore.setState({ on: false });
  }
}

/** The browser lets go of the screen whenever the page is out of sight. */
const onReturn = (): void => {
  if (document.visibilityState === 'visible' && awakeStore.getState().on) void hold();
};

/** Keeps the screen awake, or no longer. */
export async function keepAwake(on: boolean): Promise<void> {
  awakeStore.setState({ on });
  if (on) {
    document.addEventListener('visibilitychange', onReturn);
    await hold();
    return;
  }
  document.removeEventListener('visibilitychange', onReturn);
  await letGo();
}
