import { loopSpan } from './blocking/clock';
import { setupOf } from './choose';
import { livePlan, liveStore } from './liveStore';
import { sessionStore } from './sessionStore';

/** Longest step of the clock: after a pause of the whole page the action goes on, it does not leap. */
const LONGEST_STEP_SECONDS = 0.25;

/** Runs the action's clock while it plays, over and over: through the chosen setup's span, or as the blocking sheet says. */
export function startPlayback(): void {
  let before: number | null = null;

  const step = (now: number): void => {
    const { playing, seconds, setSeconds, setPlaying } = liveStore.getState();
    const plan = livePlan();
    const setup = setupOf(plan, sessionStore.getState().setupId);
    if (!playing) {
      before = null;
      return;
    }
    const [from, to] = loopSpan(plan, setup);
    if (to <= from) {
      setPlaying(false);
      return;
    }
    const passed = before === null ? 0 : Math.min((now - before) / 1000, LONGEST_STEP_SECONDS);
    before = now;
    const isWithin = seconds >= from && seconds + passed <= to;
    setSeconds(isWithin ? seconds + passed : from);
    requestAnimationFrame(step);
  };

  liveStore.subscribe((state, old) => {
    if (state.playing && !old.playing) requestAnimationFrame(step);
  });
}
