import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { coverersIn, coverersOf } from './coverers';
import { eyesOf } from './eyes';
import type { Grid } from './grid';
import { Hidden, seenPartsOf, type Unsettled } from './hidden';
import { isSame } from './instant';
import { borrowScratch, type Look, look, type Scratch, scratchAs } from './look';
import type { FacedMirror } from './mirrors';
import { intervalOver, type Moments, momentsOf } from './moments';
import { type Nearest, nearestOf } from './nearest';
import { type Course, intervalsWithPeaks, sharesIn } from './peaks';
import { type Group, grouped, groupsOf } from './rects';
import { type Known, Settler, type Sighting, sightingOf } from './settled';
import type { SightStage, StagePart } from './stage';
import { type Interval, mayEnter, mirrorsIn } from './sweep';
import { ASKED, INSIDE, type ItemTally, MIRRORED, note, noteCoverers, SHOWS, tallyFor } from './tally';
import { findThin } from './thin';

/** Everything that sight says of one setup over its span. */
export interface Reading extends Pick<Moments, 'instants' | 'at'> {
  readonly stage: SightStage;
  readonly tallies: readonly ItemTally[];
  readonly nearest: readonly (Nearest | null)[];
}

/** Whether nothing at all moves at any frame of an interval. */
const isStill = ({ stages, motion }: Interval, grids: readonly Grid[]): boolean =>
  motion.metres === 0 &&
  motion.chord === 0 &&
  grids.every((grid) => grid === grids[0]) &&
  stages.every((stage) => stage === stages[0]);

/** Whether two states say the same of an item. */
const isAlike = (a: number, b: number): boolean => ((a ^ b) & ~ASKED) === 0;

/** Two asked frames, the mirrors that may come into view from one to the other, and who is to be looked at closer. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly mirrors: readonly FacedMirror[];
  readonly closer: Set<number>;
}

/**
 * Reads one setup over a span of the action's clock: which items show, when, how much. Asked fully every quarter of
 * a second. In between, every 1/24 s, each item that has a wish and may be in frame is settled by a place that is seen
 * again, else looked at in the pixels that it can touch; where its share may be larger in between than at both ends, it is
 * looked at too. What has no wish is asked in between only where its state changes.
 * `briefly` leaves out what stands before things that have no wish.
 * Yields the done share, 0..1, so that a caller can report progress, pause or give up.
 */
export function* readSetup(
  plan: Plan,
  setup: Setup,
  span: readonly [number, number],
  briefly = false,
): Generator<number, Reading, void> {
  const { instants, coarse, at } = momentsOf(plan, setup, span);
  const frames = instants.length;
  const { scratch, giveBack } = borrowScratch(at(0).camera);
  /** Of the frame that was asked last: that of a bending zoom takes buffers of its own. */
  let lent = { frame: 0, scratch };
  const scratchOf = (frame: number): Scratch => {
    if (lent.frame !== frame) lent = { frame, scratch: scratchAs(scratch, at(0).camera, at(frame).camera) };
    return lent.scratch;
  };
  const { stage } = at(0);
  const tallies = stage.forms.map(() => tallyFor(frames));
  const all = new Set(stage.forms.keys());
  const hasWish = (item: number): boolean => stage.forms[item].wish !== 'either';

  const courses = new Map<number, Course>();
  for (const item of all) if (hasWish(item)) courses.set(item, []);
  /** Where each item was seen by the latest look, and by the full one at the end of a quarter. */
  let seenLast: Sighting[] = [];
  let seenNext: Sighting[] = [];
  const hiding = new Hidden();
  const settler = new Settler();
  const stretches: Stretch[] = [];
  const intervals: Interval[] = [];
  let last: Look | null = null;
  try {
    for (const [index, frame] of coarse.entries()) {
      const before = index > 0 ? at(coarse[index - 1]) : null;
      const isNew = !last || !before || !isSame(before, at(frame));
      if (!last || isNew) {
        last = look(at(frame).stage, at(frame).camera, scratchOf(frame));
        findThin(last);
      }
      for (const item of all) note(tallies[item], last, item, frame);
      if (frames === 1) {
        for (const item of coveredItems())
          noteCoverers(tallies[item], coverersOf(last, item), last.grid.framePixels);
        break;
      }
      for (const [item, course] of courses)
        course.push(isNew ? sharesIn(last, item) : course[course.length - 1]);
      seenLast = seenNext;
      if (isNew) {
        const full = last;
        seenNext = Array.from(all, (item) => sightingOf(full, item));
        const shown = seenPartsOf(full);
        for (const item of all) hiding.saw(item, shown);
      }
      if (index > 0) refine(coarse[index - 1], frame);
      yield (0.8 * (index + 1)) / coarse.length;
    }
    for (const [item, course] of courses)
      for (const index of intervalsWithPeaks(course)) stretches[index].closer.add(item);
    for (const stretch of stretches) {
      if (stretch.closer.size === 0) continue;
      lookCloser(stretch);
      yield 0.8 + (0.1 * stretch.to) / frames;
    }
    if (frames > 1) tellCoverers();
  } finally {
    giveBack();
  }

  /** Asks the frames strictly between two asked ones for the items whose answer may change there. */
  function refine(from: number, to: number): void {
    const grids = Array.from({ length: to - from + 1 }, (_, k) => scratchOf(from + k).grid);
    const interval = intervalOver(at, from, to, grids);
    intervals.push(interval);
    const isStillAll = isStill(interval, grids);
    const mirrors = isStillAll ? [] : mirrorsIn(interval);
    const stretch: Stretch = { from, to, mirrors, closer: new Set() };
    stretches.push(stretch);
    if (isStillAll) {
      carry(from, to, all);
      return;
    }
    const open = new Set<number>();
    for (const item of all) {
      // Of what has no wish nothing is asked in between when both ends are the same.
      const isSettled = !hasWish(item) && isAlike(tallies[item].states[from], tallies[item].states[to]);
      if (!isSettled && mayEnter(item, interval, mirrors)) open.add(item);
    }
    carry(from, to, new Set([...all].filter((item) => !open.has(item))));
    for (let frame = from + 1; frame < to && open.size > 0; frame += 1) settle(frame, open, stretch);
    for (const item of courses.keys()) if (isBrief(item, stretch)) stretch.closer.add(item);
  }

  /** Whether an item shows, or is mirrored, between two asked frames and at neither of them. */
  function isBrief(item: number, { from, to }: Stretch): boolean {
    const { states } = tallies[item];
    let between = 0;
    for (let frame = from + 1; frame < to; frame += 1) between |= states[frame];
    return (between & ~(states[from] | states[to]) & (SHOWS | MIRRORED)) !== 0;
  }

  /** Frames that were not asked take the state of the asked one before them. */
  function carry(from: number, to: number, which: ReadonlySet<number>): void {
    for (const item of which) {
      const { states } = tallies[item];
      for (let frame = from + 1; frame < to; frame += 1) states[frame] = states[from] & ~ASKED;
    }
  }

  /** Tells some items' states at a frame: by where they were seen before and after, and by looks at the others. */
  function settle(frame: number, which: ReadonlySet<number>, { from, to, mirrors }: Stretch): void {
    const { grid } = scratchOf(frame);
    const [eye, ...images] = eyesOf(at(frame).camera, grid, mirrors);
    const asking = { ...at(frame), grid, eye, images };
    const hidden = new Map<number, Known>();
    const unsettled: Unsettled[] = [];
    for (const item of which) {
      const { states } = tallies[item];
      const isInside = ((states[from] | states[to]) & INSIDE) !== 0;
      const known = settler.known(item, asking, [seenLast[item], seenNext[item]], isInside);
      states[frame] = ASKED | known.state;
      if (known.direct.length + known.mirrored.length === 0) continue;
      if (known.isLikelyHidden) hidden.set(item, known);
      else unsettled.push([item, [...known.direct, ...known.mirrored]]);
    }
    const open = new Map(hiding.open(hidden, asking, scratchOf(frame)));
    const doubtful = grouped([...open]).flatMap((group) => stayHidden(frame, group));
    ask(frame, grouped([...unsettled, ...doubtful.map((item): Unsettled => [item, open.get(item) ?? []])]));
  }

  /** Looks at some items among what was seen before and around them last. Which of them that does not hide. */
  function stayHidden(frame: number, { items, rect }: Group): readonly number[] {
    const { stage, camera } = at(frame);
    // A mirror shows what is not seen without it.
    const among = new Set<StagePart>(stage.parts.filter(({ shape }) => shape.mirror));
    for (const item of items) {
      for (const index of hiding.shownAround(item))
        if (index < stage.parts.length) among.add(stage.parts[index]);
      for (let k = stage.firstPart[item]; k < stage.firstPart[item + 1]; k += 1) among.add(stage.parts[k]);
    }
    const seen = look(stage, camera, scratchOf(frame), { rect, items, parts: [...among] });
    findThin(seen, items);
    const shown = seenPartsOf(seen);
    return [...items].filter((item) => {
      if (seen.direct.itemPixels[item] > 0 || seen.mirrored.itemPixels[item] > 0) return true;
      if (seen.alone[item] > 0) tallies[item].states[frame] |= INSIDE;
      hiding.saw(item, shown);
      return false;
    });
  }

  /** Of what is covered at any time, whose coverers are told. */
  function coveredItems(): readonly number[] {
    return [...all].filter((item) => tallies[item].covered.frame >= 0 && (!briefly || hasWish(item)));
  }

  /** Tells who stands before what is covered, at the frame at which most of it is. */
  function tellCoverers(): void {
    const itemsAt = new Map<number, Set<number>>();
    for (const item of coveredItems()) {
      const { frame } = tallies[item].covered;
      itemsAt.set(frame, (itemsAt.get(frame) ?? new Set()).add(item));
    }
    for (const [frame, items] of itemsAt) {
      const now = at(frame);
      const { grid } = scratchOf(frame);
      for (const group of groupsOf(now.stage, items, now.camera, grid, []))
        for (const [item, coverers] of coverersIn(group, now, scratchOf(frame)))
          noteCoverers(tallies[item], coverers, grid.framePixels);
    }
  }

  /** Looks at what may be larger between two asked frames than at both. */
  function lookCloser({ from, to, mirrors, closer }: Stretch): void {
    for (let frame = from + 1; frame < to; frame += 1) {
      const { stage, camera } = at(frame);
      ask(frame, groupsOf(stage, closer, camera, scratchOf(frame).grid, mirrors));
    }
  }

  function ask(frame: number, groups: readonly Group[]): void {
    const now = at(frame);
    for (const { items: asked, rect } of groups) {
      const seen = look(now.stage, now.camera, scratchOf(frame), { rect, items: asked });
      findThin(seen, asked);
      const shown = seenPartsOf(seen);
      for (const item of asked) {
        const { states } = tallies[item];
        const settled = states[frame];
        note(tallies[item], seen, item, frame);
        // What was settled was not asked again.
        states[frame] |= settled;
        seenLast[item] = sightingOf(seen, item);
        hiding.saw(item, shown);
      }
    }
  }

  yield 0.9;

  const nearest = tallies.map(({ states }, item) =>
    states.some((state) => (state & INSIDE) !== 0) ? null : nearestOf(item, coarse, at, intervals),
  );
  yield 1;
  return { instants, stage, tallies, nearest, at };
}
