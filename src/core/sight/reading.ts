import { cameraAt } from '../optics/camera';
import { formsThrough } from '../optics/riding';
import type { Camera } from '../optics/types';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { instantsOf } from './frames';
import { type Grid, reachOf } from './grid';
import { borrowScratch, type Look, look, scratchAs } from './look';
import { type Outside, outsideOf } from './margin';
import type { Mirror } from './mirrors';
import { groupsOf } from './rects';
import { type SightStage, stageOf } from './stage';
import { type Interval, mayEnter, mirrorsIn, motionOver } from './sweep';
import { ASKED, INSIDE, type ItemTally, note, tallyFor } from './tally';
import { findThin } from './thin';

/** Frames between two instants that are always asked: a quarter of a second. */
const COARSE_FRAMES = 6;

/** A low point this much farther than the lowest is still worth a closer look, metres. */
const NEAR_BEST_METRES = 0.3;

/** How far outside the frame an item is at its nearest, and when. */
interface Nearest {
  readonly outside: Outside;
  readonly frame: number;
}

/** Everything that sight says of one setup over its span. */
export interface Reading {
  readonly instants: Float64Array;
  readonly stage: SightStage;
  readonly tallies: readonly ItemTally[];
  readonly nearest: readonly (Nearest | null)[];
  /** Stage and camera at a frame. */
  readonly at: (frame: number) => { readonly stage: SightStage; readonly camera: Camera };
}

interface Instant {
  readonly stage: SightStage;
  readonly camera: Camera;
}

/** Whether a zoom has not moved between two instants. */
const isSameFrame = ({ frame: a }: Camera, { frame: b }: Camera): boolean =>
  a.tanHalfWidth === b.tanHalfWidth && a.tanHalfHeight === b.tanHalfHeight;

/** Whether nothing at all moved between two instants. */
function isSame(a: Instant, b: Instant): boolean {
  const [p, q] = [a.camera.pose, b.camera.pose];
  for (let k = 0; k < 3; k += 1) {
    if (p.position[k] !== q.position[k] || p.forward[k] !== q.forward[k] || p.up[k] !== q.up[k]) return false;
  }
  if (!isSameFrame(a.camera, b.camera) || a.stage.parts.length !== b.stage.parts.length) return false;
  return a.stage.parts.every((part, index) => {
    const other = b.stage.parts[index];
    if (part.shape !== other.shape) return false;
    if (part.worldFromPart === other.worldFromPart) return true;
    if (!part.worldFromPart || !other.worldFromPart) return false;
    return part.worldFromPart.every((value, k) => value === other.worldFromPart?.[k]);
  });
}

/** Whether nothing at all moves at any frame of an interval. */
const isStill = ({ stages, motion }: Interval, grids: readonly Grid[]): boolean =>
  motion.metres === 0 &&
  motion.chord === 0 &&
  grids.every((grid) => grid === grids[0]) &&
  stages.every((stage) => stage === stages[0]);

/** The widest field of some grids. */
const widest = (grids: readonly Grid[]): Interval['field'] => {
  const reaches = [...new Set(grids)].map(reachOf);
  return {
    tanX: Math.max(...reaches.map(({ tanX }) => tanX)),
    tanY: Math.max(...reaches.map(({ tanY }) => tanY)),
  };
};

/**
 * Reads one setup over a span of the action's clock: which items show, when, how much. Asked fully every quarter of
 * a second; in between, every 1/24 s, the items that have a wish and may be in frame, in the pixels that they can touch.
 * What has no wish is asked in between only where its state changes.
 * `briefly` leaves out what stands before things that have no wish.
 * Yields the done share, 0..1, so that a caller can report progress, pause or give up.
 */
export function* readSetup(
  plan: Plan,
  setup: Setup,
  span: readonly [number, number],
  briefly = false,
): Generator<number, Reading, void> {
  const instants = instantsOf(span[0], span[1]);
  const frames = instants.length;
  const known = new Map<number, Instant>();
  let latest: SightStage | null = null;
  const at = (frame: number): Instant => {
    let instant = known.get(frame);
    if (!instant) {
      latest = stageOf(formsThrough(plan, setup, instants[frame]), latest);
      instant = { stage: latest, camera: cameraAt(plan, setup, instants[frame]) };
      known.set(frame, instant);
    }
    return instant;
  };
  const { scratch, giveBack } = borrowScratch(at(0).camera);
  const scratchOf = (frame: number) => scratchAs(scratch, at(0).camera, at(frame).camera);
  const { stage } = at(0);
  const items = stage.forms.length;
  const tallies = stage.forms.map(() => tallyFor(frames));
  const all = new Set(stage.forms.keys());
  const tellsCoverers = (item: number): boolean => !briefly || stage.forms[item].wish !== 'either';

  const coarse: number[] = [];
  for (let frame = 0; frame < frames; frame += COARSE_FRAMES) coarse.push(frame);
  if (coarse[coarse.length - 1] !== frames - 1) coarse.push(frames - 1);

  let last: Look | null = null;
  try {
    for (const [index, frame] of coarse.entries()) {
      const before = index > 0 ? at(coarse[index - 1]) : null;
      if (!last || !before || !isSame(before, at(frame))) {
        last = look(at(frame).stage, at(frame).camera, scratchOf(frame));
        findThin(last);
      }
      for (let item = 0; item < items; item += 1) note(tallies[item], last, item, frame, tellsCoverers(item));
      if (index > 0) refine(coarse[index - 1], frame);
      yield (0.8 * (index + 1)) / coarse.length;
    }
  } finally {
    giveBack();
  }

  /** Asks the frames strictly between two asked ones for the items whose answer may change there. */
  function refine(from: number, to: number): void {
    if (to - from < 2) return;
    const grids = Array.from({ length: to - from + 1 }, (_, k) => scratchOf(from + k).grid);
    const interval: Interval = {
      stages: Array.from({ length: to - from + 1 }, (_, k) => at(from + k).stage),
      camera: at(from).camera,
      field: widest(grids),
      motion: motionOver(Array.from({ length: to - from + 1 }, (_, k) => at(from + k).camera)),
    };
    if (isStill(interval, grids)) {
      carry(from, to, all);
      return;
    }
    const mirrors = mirrorsIn(interval);
    const open = new Set<number>();
    for (let item = 0; item < items; item += 1) {
      // Of what has no wish nothing is asked in between when both ends are the same.
      const isSettled =
        stage.forms[item].wish === 'either' && tallies[item].states[from] === tallies[item].states[to];
      if (!isSettled && mayEnter(item, interval, mirrors)) open.add(item);
    }
    const closed = new Set([...all].filter((item) => !open.has(item)));
    carry(from, to, closed);
    for (let frame = from + 1; frame < to && open.size > 0; frame += 1) ask(frame, open, mirrors);
  }

  /** Frames that were not asked take the state of the asked one before them. */
  function carry(from: number, to: number, which: ReadonlySet<number>): void {
    for (const item of which) {
      const { states } = tallies[item];
      for (let frame = from + 1; frame < to; frame += 1) states[frame] = states[from] & ~ASKED;
    }
  }

  function ask(frame: number, which: ReadonlySet<number>, mirrors: readonly Mirror[]): void {
    const now = at(frame);
    for (const item of which) tallies[item].states[frame] = ASKED;
    for (const { items: asked, rect } of groupsOf(
      now.stage,
      which,
      now.camera,
      scratchOf(frame).grid,
      mirrors,
    )) {
      const seen = look(now.stage, now.camera, scratchOf(frame), { rect });
      findThin(seen, asked);
      for (const item of asked) note(tallies[item], seen, item, frame, tellsCoverers(item));
    }
  }

  yield 0.9;

  const nearest = stage.forms.map((_, item) => nearestOf(item));
  yield 1;
  return { instants, stage, tallies, nearest, at };

  /** The least distance outside the frame over the span; null when inside at some frame, or always behind. */
  function nearestOf(item: number): Nearest | null {
    if (tallies[item].states.some((state) => (state & INSIDE) !== 0)) return null;
    let best: Nearest | null = null;
    const distanceAt = (frame: number): number => {
      const now = at(frame);
      const outside = outsideOf(now.stage, item, now.camera);
      if (outside === null) return Infinity;
      // Inside by less than any sample and any ray: at the frame line, to all intents.
      const found: Outside =
        outside === 'inside' ? { metres: 0, frameWidths: 0, edge: best?.outside.edge ?? 'right' } : outside;
      if (!best || found.metres < best.outside.metres) best = { outside: found, frame };
      return found.metres;
    };
    const distances: number[] = [];
    for (const [index, frame] of coarse.entries()) {
      const isStill = index > 0 && isSame(at(coarse[index - 1]), at(frame));
      distances.push(isStill ? distances[index - 1] : distanceAt(frame));
    }
    // From every quarter that is nearer than those beside it, on to the frames around it.
    for (const [index, frame] of coarse.entries()) {
      const here = distances[index];
      const isLow = here <= (distances[index - 1] ?? Infinity) && here <= (distances[index + 1] ?? Infinity);
      const least: number = (best as Nearest | null)?.outside.metres ?? Infinity;
      if (!isLow || here > least + NEAR_BEST_METRES) continue;
      for (const step of [-1, 1]) {
        for (let k = frame + step, last = here; k >= 0 && k < frames; k += step) {
          if (isSame(at(k), at(k - step))) break;
          const next = distanceAt(k);
          if (next > last || Math.abs(k - frame) >= COARSE_FRAMES) break;
          last = next;
        }
      }
    }
    return best;
  }
}
