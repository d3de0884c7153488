import type { ItemForm } from '../../form/types';
import { cameraAt, spanOf } from '../../optics/camera';
import { formsThrough, formThrough } from '../../optics/riding';
import type { Camera } from '../../optics/types';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import type { Verdict } from '../../report/types';
import { Blocks } from '../../sight/blocks';
import { eyesOf } from '../../sight/eyes';
import type { PixelRect } from '../../sight/filling';
import { instantsOf } from '../../sight/frames';
import { reachOf } from '../../sight/grid';
import { borrowScratch, look, type Scratch, scratchAs } from '../../sight/look';
import type { FacedMirror } from '../../sight/mirrors';
import { groupsOf, rectsOf, unionOf } from '../../sight/rects';
import { type SightStage, stageOf } from '../../sight/stage';
import { mirrorsIn } from '../../sight/sweep';
import { findThin } from '../../sight/thin';
import type { KnownSetup } from './known';
import { NO_BERTH, staysOut, type Watch } from './watch';

/** Frames of a quarter of a second: those at its ends are asked before those between them. */
const COARSE_FRAMES = 6;

/** The frames of a span, every sixth first: what shows mostly does so for longer than a quarter of a second. */
function inOrder(count: number): number[] {
  const frames = Array.from({ length: count }, (_, frame) => frame);
  return [...frames.filter((k) => k % COARSE_FRAMES === 0), ...frames.filter((k) => k % COARSE_FRAMES !== 0)];
}

/** What stands still from frame to frame, by itself; null for who acts and what a camera rides on. */
function stillStage(plan: Plan, setup: Setup, id: string): SightStage | null {
  const moves = plan.cast.some((each) => each.id === id);
  const rides = plan.gear.some((gear) => gear.id === id && gear.kind === 'dolly' && gear.rides !== undefined);
  const form = moves || rides ? null : formThrough(plan, setup, id, spanOf(plan, setup)[0]);
  return form && stageOf([form]);
}

/** The forms of an instant but those of the cast, which are not worked out where nothing asks for it. */
function withoutCast(plan: Plan, setup: Setup): (seconds: number) => readonly ItemForm[] {
  if (plan.gear.some((gear) => gear.kind === 'dolly' && gear.rides !== undefined))
    return (seconds) => formsThrough(plan, setup, seconds).filter(({ section }) => section !== 'cast');
  const empty: Plan = { ...plan, cast: [] };
  return (seconds) => formsThrough(empty, setup, seconds);
}

/** The pixels in which something has gone that was there before a change of things, and what else is known of an item. */
export interface Uncovering {
  /** Things as they were before, each by itself. */
  readonly gone: readonly SightStage[];
  /** Items that were hidden, or in no frame, all through. */
  readonly hiddenBefore: ReadonlyMap<string, Verdict>;
}

/** Pixels that a look takes in beyond those that are asked, since thin things ask their neighbours. */
const ROUND_PIXELS = 4;

/** The pixels of an item that lie over some others, as one rectangle; null for none. */
function meetingRect(
  own: readonly PixelRect[],
  others: readonly PixelRect[],
  { width, height }: { readonly width: number; readonly height: number },
): PixelRect | null {
  let rect: PixelRect | null = null;
  for (const a of own)
    for (const b of others) {
      const both = {
        left: Math.max(0, Math.max(a.left, b.left) - ROUND_PIXELS),
        top: Math.max(0, Math.max(a.top, b.top) - ROUND_PIXELS),
        right: Math.min(width, Math.min(a.right, b.right) + ROUND_PIXELS),
        bottom: Math.min(height, Math.min(a.bottom, b.bottom) + ROUND_PIXELS),
      };
      if (both.right - both.left <= ROUND_PIXELS || both.bottom - both.top <= ROUND_PIXELS) continue;
      rect = rect ? unionOf(rect, both) : both;
    }
  return rect;
}

/** Reads what some items do in a setup, frame by frame; see `readItems`. */
class Reader {
  readonly verdicts: Map<string, Verdict>;
  private readonly still: ReadonlyMap<string, SightStage | null>;
  private readonly entering = new Map<string, Map<Watch, boolean>>();
  private readonly settled = new Map<string, Map<Watch, boolean>>();
  private readonly blocks = new Blocks();

  constructor(
    plan: Plan,
    setup: Setup,
    readonly ids: readonly string[],
    private readonly uncovering: Uncovering,
  ) {
    const { hiddenBefore } = uncovering;
    this.verdicts = new Map(
      ids.map((id) => [id, hiddenBefore.get(id) === 'covered' ? 'covered' : ('clear' as Verdict)]),
    );
    this.still = new Map(ids.map((id) => [id, stillStage(plan, setup, id)]));
  }

  /** Whether any of an item may be in a camera's frame, or its image in the plane of a mirror. */
  mayEnter(id: string, watch: Watch | undefined): boolean {
    const stage = this.still.get(id);
    if (!stage || !watch) return true;
    const known = this.entering.get(id) ?? new Map<Watch, boolean>();
    this.entering.set(id, known);
    const may = known.get(watch) ?? !staysOut(stage, watch, NO_BERTH);
    known.set(watch, may);
    return may;
  }

  /** What of an open item has to be looked at in a frame: nothing of what is hidden for certain. */
  private askedOf(frame: Frame, item: number): 'all' | PixelRect | null {
    const { stage, camera, now, mirrors } = frame;
    const { id } = stage.forms[item];
    const { gone, hiddenBefore } = this.uncovering;
    const isHidden = hiddenBefore.has(id);
    if (!isHidden && this.verdicts.get(id) === 'clear') return 'all';
    const over = isHidden
      ? gone.flatMap((thing) => rectsOf(thing, 0, camera, now.grid, mirrors))
      : [{ left: 0, top: 0, right: now.grid.width, bottom: now.grid.height }];
    if (isHidden) {
      const own = rectsOf(stage, item, camera, now.grid, mirrors);
      if (!meetingRect(own, over, now.grid)) return null;
    }
    const open = this.blocks.open(stage, item, eyesOf(camera, now.grid, mirrors), camera, now.grid);
    return meetingRect(open, over, now.grid);
  }

  /**
   * Settles what stands still, where it can be, by a look at the stage without the cast: the cast only hides, so what is
   * not seen without it is not seen at any frame of that camera, and what is mirrored there shows at none.
   */
  settle(frame: Frame, watch: Watch, open: readonly string[]): void {
    const fresh = open.filter((id) => this.still.get(id) && !this.hasSettled(id, watch));
    if (fresh.length === 0) return;
    const before = new Map(fresh.map((id) => [id, this.verdicts.get(id) ?? 'clear']));
    // Whatever was inside a frame once need not be found inside again: what blocks hide of it is not looked at.
    for (const [id, verdict] of before) this.verdicts.set(id, verdict === 'clear' ? 'clear' : 'covered');
    this.read(frame, fresh);
    for (const [id, verdict] of before) {
      const found = this.verdicts.get(id) ?? 'clear';
      const isUnseen = found === 'clear' || found === 'covered';
      const isSettled = isUnseen || (verdict === 'mirrored' && found === 'mirrored');
      this.settled.set(id, (this.settled.get(id) ?? new Map<Watch, boolean>()).set(watch, isSettled));
      this.verdicts.set(id, isUnseen && verdict === 'clear' ? found : verdict);
    }
  }

  private hasSettled(id: string, watch: Watch): boolean {
    return this.settled.get(id)?.has(watch) === true;
  }

  /** Whether nothing that is not known can be seen of an item by a camera. */
  isSettled(id: string, watch: Watch): boolean {
    return this.settled.get(id)?.get(watch) === true;
  }

  /** Looks at the open items of a frame. */
  read(frame: Frame, open: readonly string[]): void {
    const { stage, camera, now, mirrors } = frame;
    const whole = new Set<number>();
    for (const [item, { id }] of stage.forms.entries()) {
      if (!open.includes(id)) continue;
      const asked = this.askedOf(frame, item);
      if (asked === 'all') whole.add(item);
      else if (asked) this.lookAt(frame, new Set([item]), asked);
    }
    for (const { items, rect } of groupsOf(stage, whole, camera, now.grid, mirrors))
      this.lookAt(frame, items, rect);
  }

  private lookAt({ stage, camera, now }: Frame, items: ReadonlySet<number>, rect: PixelRect): void {
    const seen = look(stage, camera, now, { rect });
    findThin(seen, items);
    for (const item of items) {
      const { id } = stage.forms[item];
      if (seen.direct.itemPixels[item] > 0) this.verdicts.set(id, 'showing');
      else if (seen.mirrored.itemPixels[item] > 0) this.verdicts.set(id, 'mirrored');
      else if (seen.alone[item] > 0 && this.verdicts.get(id) === 'clear') this.verdicts.set(id, 'covered');
    }
  }
}

/** One frame of a setup, ready to be looked at. */
interface Frame {
  readonly stage: SightStage;
  readonly camera: Camera;
  readonly now: Scratch;
  readonly mirrors: readonly FacedMirror[];
}

/** A setup with its cameras, and the instants at which it is looked at: all frames, unless some are asked for. */
type Watched = Pick<KnownSetup, 'setup' | 'watches'> & { readonly instants?: Float64Array };

const NOTHING_GONE: Uncovering = { gone: [], hiddenBefore: new Map() };

/**
 * What some items do in a setup, by the looks that the report takes, at every frame in which they are not by measure
 * out of the picture and its mirrors, nor for certain behind something, in the pixels that they can touch:
 * showing, mirrored, covered, or clear where none of it is ever inside. An item that shows is not asked on. What was
 * hidden before a change of things is asked only where something has gone.
 * Yields the done share, 0..1.
 */
export function* readItems(
  plan: Plan,
  { setup, watches, instants = instantsOf(...spanOf(plan, setup)) }: Watched,
  ids: readonly string[],
  uncovering: Uncovering = NOTHING_GONE,
): Generator<number, ReadonlyMap<string, Verdict>, void> {
  const reader = new Reader(plan, setup, ids, uncovering);
  if (ids.length === 0) return reader.verdicts;
  const first = cameraAt(plan, setup, instants[0]);
  const { scratch, giveBack } = borrowScratch(first);
  const watchAt = Array.from(instants, (at) => watches.findLast(({ seconds }) => seconds <= at));
  const stillForms = withoutCast(plan, setup);
  let latest: SightStage | null = null;
  let latestStill: SightStage | null = null;
  try {
    for (const [k, frame] of inOrder(instants.length).entries()) {
      const left = ids.filter((id) => reader.verdicts.get(id) !== 'showing');
      if (left.length === 0) break;
      const watch = watchAt[frame];
      const isUnsettled = (id: string): boolean => !watch || !reader.isSettled(id, watch);
      const entering = left.filter((id) => isUnsettled(id) && reader.mayEnter(id, watch));
      if (entering.length === 0) continue;
      const camera = cameraAt(plan, setup, instants[frame]);
      const now = scratchAs(scratch, first, camera);
      const field = reachOf(now.grid);
      const viewOf = (stage: SightStage): Frame => {
        const mirrors = mirrorsIn({ stages: [stage], camera, field, motion: { metres: 0, chord: 0 } });
        return { stage, camera, now, mirrors };
      };
      if (watch) {
        latestStill = stageOf(stillForms(instants[frame]), latestStill);
        reader.settle(viewOf(latestStill), watch, entering);
      }
      const open = entering.filter(isUnsettled);
      if (open.length > 0) {
        latest = stageOf(formsThrough(plan, setup, instants[frame]), latest);
        reader.read(viewOf(latest), open);
      }
      if (k % COARSE_FRAMES === 0) yield k / instants.length;
    }
  } finally {
    giveBack();
  }
  return reader.verdicts;
}
