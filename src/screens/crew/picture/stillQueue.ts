import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { pictureStore } from '../../../desk/crew/pictures/pictureStore';
import { keepStill, keptStill, STILL_TYPE } from '../../../desk/crew/pictures/stillShelf';
import type { CrewStage } from '../../../scene/crew/crewStage';
import { borrowStage, failureSentence, giveUp, returnStage } from './stageLife';
import { nextFrame, nextWanted } from './turns';

/** A still that a place of the page waits for. */
export interface WantedStill {
  readonly key: string;
  readonly plan: Plan;
  readonly setup: Setup;
  readonly seconds: number;
  /** Its setup's place in the night's order. */
  readonly order: number;
}

interface Waiting extends WantedStill {
  /** In how many places it waits, and in how many of these it is in sight. */
  readonly places: number;
  readonly seen: number;
}

const QUALITY = 0.9;

const waiting = new Map<string, Waiting>();
let planBefore: Plan | null = null;
let isWorking = false;
let pauses = 0;

/** Asks for a still for as long as a place needs it. Returns what ends that. */
export function wantStill(still: WantedStill): () => void {
  if (still.plan !== planBefore) forgetStills();
  planBefore = still.plan;
  const { places = 0, seen = 0 } = waiting.get(still.key) ?? {};
  waiting.set(still.key, { ...still, places: places + 1, seen });
  tally();
  void work();
  return () => {
    const known = waiting.get(still.key);
    if (known && known.places > 1) waiting.set(still.key, { ...known, places: known.places - 1 });
    else waiting.delete(still.key);
    tally();
  };
}

/** Another link has come: the stills of the one before are no longer asked for. */
function forgetStills(): void {
  for (const address of pictureStore.getState().stills.values()) URL.revokeObjectURL(address);
  pictureStore.setState({ stills: new Map() });
}

/** Says that a still's place has come in sight. Returns what says that it has gone. */
export function seeStill(key: string): () => void {
  const by = (step: number): void => {
    const known = waiting.get(key);
    if (known) waiting.set(key, { ...known, seen: Math.max(0, known.seen + step) });
  };
  by(1);
  return () => by(-1);
}

/** While a picture fills the window, it has the stage to itself. Returns what ends that. */
export function pauseStills(): () => void {
  pauses += 1;
  return () => {
    pauses -= 1;
    void work();
  };
}

pictureStore.subscribe(({ tries }, before) => {
  if (tries !== before.tries) void work();
});

function tally(): void {
  const { stills } = pictureStore.getState();
  const done = [...waiting.keys()].filter((key) => stills.has(key)).length;
  pictureStore.setState({ asked: waiting.size, done });
}

/** Draws one still after the other until all are there, or something is in the way. */
async function work(): Promise<void> {
  if (isWorking) return;
  isWorking = true;
  try {
    for (;;) {
      const { stills, refused } = pictureStore.getState();
      const next = nextWanted([...waiting.values()].filter(({ key }) => !stills.has(key)));
      if (!next || refused !== null || pauses > 0) return;
      pictureStore.setState({ drawingKey: next.key });
      const kept = await keptStill(next.key);
      const blob = kept ?? (await drawn(next));
      if (!blob || next.plan !== planBefore) continue;
      if (!kept) void keepStill(next.key, blob);
      pictureStore.setState((state) => ({
        stills: new Map(state.stills).set(next.key, URL.createObjectURL(blob)),
      }));
      tally();
    }
  } finally {
    isWorking = false;
    pictureStore.setState({ drawingKey: null });
  }
}

/** Draws a still; null when it was given up, for the stage's sake or for a larger picture's. */
async function drawn(still: WantedStill): Promise<Blob | null> {
  // The page comes first: what can be read is on the screen before the first picture keeps it busy.
  await nextFrame();
  const stage = await borrowStage();
  try {
    return stage && (await printed(stage, still));
  } catch (error) {
    giveUp(failureSentence(error));
    return null;
  } finally {
    returnStage();
  }
}

async function printed(stage: CrewStage, { plan, setup, seconds }: WantedStill): Promise<Blob | null> {
  const canvas = document.createElement('canvas');
  const width = stage.quality.stillWidth;
  const height = Math.round(width / setup.delivery);
  const still = { plan, setup, seconds, canvas, width, height, widths: 1 };
  const { tries } = pictureStore.getState();
  for (let isDone = false; !isDone; ) {
    await nextFrame();
    const now = pictureStore.getState();
    // Another try is another stage: what was refused may have been taken back while the page was hidden.
    if (pauses > 0 || now.refused !== null || now.tries !== tries) return null;
    isDone = stage.printStill(still);
    // Half a picture is not kept.
    if (stage.isLost) return null;
  }
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, STILL_TYPE, QUALITY));
  if (!blob) throw new Error('the browser made no file of it');
  return blob;
}
