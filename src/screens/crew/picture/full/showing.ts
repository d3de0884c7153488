import { stateAt } from '../../../../core/optics/camera';
import { poseOf } from '../../../../core/optics/pose';
import type { CameraPose } from '../../../../core/optics/types';
import type { Plan } from '../../../../core/plan/schema/plan';
import type { Setup } from '../../../../core/plan/schema/setup';
import type { CrewStage, CrewView } from '../../../../scene/crew/crewStage';
import { borrowStage, failureSentence, giveUp, returnStage } from '../stageLife';
import { pauseStills } from '../stillQueue';
import { type FullState, type FullStore, halvesOf, type Turn } from './fullState';
import { pictureIn } from './zoom';

/** An eye in the place of a setup's camera that looks its own way, level. */
export const lookOf = (plan: Plan, setup: Setup, seconds: number, turn: Turn): CameraPose =>
  poseOf(stateAt(plan, setup, seconds).position, turn.headingDegrees, turn.tiltDegrees, 0);

function viewOf(plan: Plan, setup: Setup, state: FullState): CrewView {
  const { looking, area, aspect, zoom, seconds, turn } = state;
  return looking === 'lens'
    ? { picture: pictureIn(area, aspect, zoom) }
    : { look: lookOf(plan, setup, seconds, turn), halves: halvesOf(area) };
}

/**
 * Draws what a store says into a place of the page, whenever that changes and never else. `shown` hears of the first
 * picture. Returns what ends it.
 */
export function showIn(
  place: HTMLElement,
  { plan, setup, store }: { readonly plan: Plan; readonly setup: Setup; readonly store: FullStore },
  shown: () => void,
): () => void {
  const goOn = pauseStills();
  let stage: CrewStage | null = null;
  let asked = 0;
  let hasEnded = false;
  let paintings = 0;

  const draw = (): void => {
    asked = 0;
    const state = store.getState();
    const { area, seconds, playing, held } = state;
    if (!stage || area.width < 1 || area.height < 1) return;
    try {
      stage.show({ plan, setup, seconds, isMoving: playing || held }, viewOf(plan, setup, state), area);
    } catch (error) {
      giveUp(failureSentence(error));
      return;
    }
    // What tests and a worried battery can read: it stands still while nothing changes.
    paintings += 1;
    place.dataset.paintings = String(paintings);
    if (paintings === 1) shown();
  };
  const ask = (): void => {
    if (asked === 0) asked = requestAnimationFrame(draw);
  };
  const stop = store.subscribe(ask);

  void borrowStage().then((found) => {
    if (hasEnded || !found) return;
    stage = found;
    place.append(found.canvas);
    ask();
  });

  return () => {
    hasEnded = true;
    stop();
    cancelAnimationFrame(asked);
    stage?.canvas.remove();
    stage = null;
    returnStage();
    goOn();
  };
}
