import { cameraAt } from '../optics/camera';
import { formsThrough } from '../optics/riding';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { type Look, look, scratchFor } from '../sight/look';
import { stageOf } from '../sight/stage';

/** What is behind somebody in a picture: how much of the outline of what shows of them it fills, 0..1. */
export interface Behind {
  readonly itemId: string;
  readonly share: number;
}

/** Pixels along the frame's longer side: what fills less of an outline than is counted has some pixels still. */
const LONG_SIDE = 320;

const ownerId = ({ buffer, itemOfPart, stage }: Look, pixel: number): string | null => {
  const tag = buffer.owner[pixel];
  return tag === 0 ? null : stage.forms[itemOfPart[tag - 1]].id;
};

/**
 * What stands behind a performer as a setup sees them at an instant of the action's clock, largest first: whatever the
 * pixels that they take would show if they were away. Nothing for the open sky; what is seen through a mesh counts as
 * if the mesh were not there. Null where the performer does not show.
 */
export function backdropOf(
  plan: Plan,
  setup: Setup,
  performerId: string,
  seconds: number,
): readonly Behind[] | null {
  const camera = cameraAt(plan, setup, seconds);
  const forms = formsThrough(plan, setup, seconds);
  const scratch = scratchFor(camera, LONG_SIDE);
  // A lens that bends lines is drawn wider than its frame: what no pixel of the frame looks at does not count.
  const { weights } = scratch.grid;
  const seen = look(stageOf(forms), camera, scratch);
  const own: number[] = [];
  let all = 0;
  for (let pixel = 0; pixel < weights.length; pixel += 1) {
    if (weights[pixel] === 0 || ownerId(seen, pixel) !== performerId) continue;
    own.push(pixel);
    all += weights[pixel];
  }
  if (all === 0) return null;
  const without = look(stageOf(forms.filter(({ id }) => id !== performerId)), camera, scratch);
  const counts = new Map<string, number>();
  for (const pixel of own) {
    const id = ownerId(without, pixel);
    if (id !== null) counts.set(id, (counts.get(id) ?? 0) + weights[pixel]);
  }
  return [...counts]
    .map(([itemId, count]): Behind => ({ itemId, share: count / all }))
    .toSorted((a, b) => b.share - a.share);
}
