import { useMemo } from 'react';
import { cameraAt } from '../../../core/optics/camera';
import { projectPoint } from '../../../core/optics/project';
import type { Camera } from '../../../core/optics/types';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { useSession } from '../../../desk/hooks';
import { useSetupLight } from '../../../desk/lightStore';
import { type Shining, shiningAt, shiningWords } from '../../overhead/highlights/shining';
import { textWidth } from '../../overhead/measureText';
import { useSettledSeconds } from '../../overhead/useSettledSeconds';
import { type Box, boxOf } from '../pictureBox';
import { placeLabels } from '../placeLabels';

/** More words would hide the floor that they are about. */
const MOST_WORDS = 3;
const WORDS_HEIGHT = 18;

type Spot = readonly [number, number];

/** A streak in the picture, pixels; null where some of it is behind the lens. */
function drawnOf(
  camera: Camera,
  box: Box,
  outline: Shining['streaks'][number]['outline'],
): readonly Spot[] | null {
  const spots = outline.map((place): Spot | null => {
    const found = projectPoint(camera, place);
    return found && [box.left + found.x * box.width, box.top + found.y * box.height];
  });
  return spots.every((spot) => spot !== null) ? spots : null;
}

const boundsOf = (spots: readonly Spot[]): Box => {
  const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
};

/** What of a mark lies in the frame: words stand beside that, not beside what nobody sees. */
function inBox(mark: Box, box: Box): Box {
  const [left, top] = [Math.max(mark.left, box.left), Math.max(mark.top, box.top)];
  const [right, bottom] = [
    Math.min(mark.left + mark.width, box.left + box.width),
    Math.min(mark.top + mark.height, box.top + box.height),
  ];
  return right > left && bottom > top
    ? { left, top, width: right - left, height: bottom - top }
    : boxOf(box, [0.5, 0.5, 0.5, 0.5]);
}

/** A highlight as it is drawn, with the room for its words where there is any. */
export interface Drawn {
  readonly shining: Shining;
  readonly outlines: readonly (readonly Spot[])[];
  readonly words: Box | null;
}

/** The highlights in a setup's picture, brightest first, where they are to be drawn and the light is looked at; none otherwise. */
export function useFloorHighlights(plan: Plan, setup: Setup, box: Box, isDrawn: boolean): readonly Drawn[] {
  const light = useSetupLight(setup.id);
  const seconds = useSettledSeconds();
  const isLit = useSession((state) => state.sheet === 'light') && isDrawn;
  const { left, top, width, height } = box;
  return useMemo(() => {
    if (!light || !isLit || width === 0) return [];
    const frame: Box = { left, top, width, height };
    const camera = cameraAt(plan, setup, seconds);
    const drawn = shiningAt(plan, setup, seconds, light.highlights).flatMap((shining) => {
      const outlines = shining.streaks.flatMap(({ outline }) => {
        const spots = drawnOf(camera, frame, outline);
        return spots ? [spots] : [];
      });
      return outlines.length > 0 ? [{ shining, outlines }] : [];
    });
    const places = placeLabels(
      drawn.slice(0, MOST_WORDS).map(({ shining, outlines }) => ({
        mark: inBox(boundsOf(outlines[0]), frame),
        width: textWidth(shiningWords(shining), 'mark', false) + 14,
        height: WORDS_HEIGHT,
      })),
      frame,
    );
    return drawn.map((each, index) => ({ ...each, words: places[index] ?? null }));
  }, [plan, setup, seconds, light, isLit, left, top, width, height]);
}
