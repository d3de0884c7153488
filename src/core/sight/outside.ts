import type { ItemForm } from '../form/types';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { frameKey, type Grid, gridAs } from './grid';
import type { Instant } from './instant';
import { borrowScratch } from './look';
import { intervalOver, momentsOf } from './moments';
import { nearestOf } from './nearest';
import type { Reading } from './reading';
import { rectsOf } from './rects';
import { type Interval, mayEnter, mirrorsIn } from './sweep';
import { tallyFor } from './tally';

const isMirror = ({ parts }: ItemForm): boolean => parts.some(({ shape }) => shape.mirror !== null);

/** Whether the same items are there at two instants. */
const areAlike = ({ stage: { forms: a } }: Instant, { stage: { forms: b } }: Instant): boolean =>
  a === b || (a.length === b.length && a.every(({ id }, item) => id === b[item].id));

/** Whether the field behind the frame is of another size: a zoom through a lens that bends lines, whose fields are dear. */
const isBent = ({ camera: { frame: a } }: Instant, { camera: { frame: b } }: Instant): boolean =>
  b.distortion !== null && frameKey(a) !== frameKey(b);

/**
 * Reads some items of a setup over a span, seconds, as long as none of them can touch the frame, directly or in a mirror,
 * at any frame. What comes back is what `readSetup` tells of them, and all that it tells of the others is the same
 * without them. Asks the boxes around their parts, so that nothing is drawn. Null where one of them may be in frame, is a
 * mirror, or is not there all the time, and for a zoom through a lens that bends lines.
 * Yields now and then; returns a stage and lists by item with those of the ids, and the mirrors, of which nothing is told.
 */
export function* readOutside(
  plan: Plan,
  setup: Setup,
  span: readonly [number, number],
  ids: ReadonlySet<string>,
): Generator<number, Reading | null, void> {
  const { instants, coarse, at } = momentsOf(plan, setup, span, (form) => ids.has(form.id) || isMirror(form));
  const { stage, camera } = at(0);
  const own = [...stage.forms.keys()].filter((item) => ids.has(stage.forms[item].id));
  const { scratch, giveBack } = borrowScratch(camera);

  /** Whether one of the items may touch the frame, or cannot be told apart from what is asked in full. */
  function isDoubtful(from: number, grids: readonly Grid[], interval: Interval): boolean {
    if (interval.stages.some(({ forms }) => own.some((item) => isMirror(forms[item])))) return true;
    const mirrors = mirrorsIn(interval);
    return own.some(
      (item) =>
        mayEnter(item, interval, mirrors) &&
        grids.some((grid, k) => {
          const now = at(from + k);
          return rectsOf(now.stage, item, now.camera, grid, mirrors).length > 0;
        }),
    );
  }

  try {
    const intervals: Interval[] = [];
    for (const [index, from] of coarse.entries()) {
      const to = coarse[index + 1] ?? from;
      const frames = Array.from({ length: to - from + 1 }, (_, k) => from + k);
      if (frames.some((frame) => !areAlike(at(0), at(frame)) || isBent(at(0), at(frame)))) return null;
      const grids = frames.map((frame) => gridAs(scratch.grid, camera, at(frame).camera));
      const interval = intervalOver(at, from, to, grids);
      if (isDoubtful(from, grids, interval)) return null;
      if (to > from) intervals.push(interval);
      yield 0;
    }
    return {
      instants,
      stage,
      at,
      tallies: stage.forms.map(() => tallyFor(instants.length)),
      nearest: stage.forms.map((_, item) =>
        own.includes(item) ? nearestOf(item, coarse, at, intervals) : null,
      ),
    };
  } finally {
    giveBack();
  }
}
