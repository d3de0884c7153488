import { stateAt } from '../../core/optics/camera';
import { middleOf } from '../../core/plan/edits/extent';
import { mirrorItems } from '../../core/plan/edits/mirrorItems';
import type { Plan } from '../../core/plan/schema/plan';
import { letterOf } from '../../desk/choose';
import { liveStore } from '../../desk/liveStore';
import { sessionStore } from '../../desk/sessionStore';
import { decksOf } from '../overhead/geometry/roof';
import { segmentsOf } from '../overhead/geometry/runs';
import { distance, headingOf, minus } from '../overhead/geometry/spots';
import { calledOf, change } from './doing';
import type { Action, ActionContext } from './types';

/** The bearing of the longest side of a deck, degrees; null where there is no deck. */
function longSideDegrees(plan: Plan): number | null {
  const sides = decksOf(plan).flatMap(({ outline }) => segmentsOf(outline, true));
  const [longest] = sides.toSorted((a, b) => distance(b.from, b.to) - distance(a.from, a.to));
  return longest ? headingOf(minus(longest.to, longest.from)) : null;
}

/** The lines through the middle of what is chosen that it can be mirrored at. */
export function mirrorChoices(context: ActionContext, copy: boolean): readonly Action[] {
  const { plan, setupId } = context;
  const setup = plan.setups.find(({ id }) => id === setupId);
  const side = longSideDegrees(plan);
  const axes: { readonly id: string; readonly word: string; readonly bearingDegrees: number }[] = [
    { id: 'left-right', word: 'Left to right on the plan', bearingDegrees: 0 },
    { id: 'up-down', word: 'Top to bottom on the plan', bearingDegrees: 90 },
  ];
  if (side !== null && Math.abs(((side % 90) + 90) % 90) > 0.01) {
    axes.push(
      { id: 'along-roof', word: 'At the line of the roof’s long side', bearingDegrees: side },
      { id: 'across-roof', word: 'Square to that', bearingDegrees: side + 90 },
    );
  }
  if (setup) {
    const heading = stateAt(plan, setup, liveStore.getState().seconds).headingDegrees;
    axes.push({
      id: 'frame',
      word: `Left to right in the frame of ${letterOf(plan, setup.id)}`,
      bearingDegrees: heading,
    });
  }
  return axes.map(({ id, word, bearingDegrees }) => ({
    id: `mirror-${id}${copy ? '-copy' : ''}`,
    word,
    group: 'shape',
    can: ({ ids }) => ids.length > 0,
    act: ({ plan: before, ids }) => {
      const at = middleOf(before, ids);
      if (!at) return;
      let brought: readonly string[] = [];
      const done = change(`mirror ${calledOf(before, ids)}`, (now) => {
        const mirrored = mirrorItems(now, { ids, axis: { at, bearingDegrees }, copy });
        brought = mirrored.ids;
        return mirrored.plan;
      });
      if (done && copy) sessionStore.getState().setSelectedIds(brought);
    },
  }));
}
