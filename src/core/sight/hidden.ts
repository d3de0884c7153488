import { type Backdrop, backdropOf, hiderOf, ownersIn, showsPane } from './backdrop';
import { cornersOf } from './corners';
import type { PixelRect } from './filling';
import type { Look, Scratch } from './look';
import { type Group, grouped, rectAround } from './rects';
import type { Asking, Known } from './settled';
import type { StagePart } from './stage';
import { INSIDE } from './tally';
import { isSeenThrough } from './thin';

/** The numbers of the parts that a look shows, directly or in a mirror. */
export const seenPartsOf = ({ direct, mirrored }: Look): readonly number[] =>
  Array.from(direct.partPixels.keys()).filter(
    (part) => direct.partPixels[part] > 0 || mirrored.partPixels[part] > 0,
  );

/** The parts of a backdrop that each of an item's own lies behind where it may show directly; null where it may be seen. */
function hidersDirectly(
  item: number,
  { state, direct }: Known,
  backdrop: Backdrop,
): readonly number[] | null {
  if (direct.length === 0) return [];
  // What shows nowhere is inside the frame or not: only a look tells.
  if ((state & INSIDE) === 0) return null;
  const { parts, firstPart } = backdrop.stage;
  const hiders: number[] = [];
  for (let k = firstPart[item]; k < firstPart[item + 1]; k += 1) {
    const corners = cornersOf(parts[k]);
    const hider = hiderOf(backdrop, corners);
    if (hider === 'out') continue;
    if (hider === null || (hider === 'several' && isSeenThrough(backdrop, parts[k]))) return null;
    const around = hider === 'several' ? rectAround(corners, backdrop.camera, backdrop.grid) : null;
    const behind = typeof hider === 'number' ? [hider] : [...ownersIn(backdrop, around ? [around] : [])];
    if (behind.some((each) => parts[each].item === item)) return null;
    hiders.push(...behind);
  }
  return hiders;
}

/** The parts of a backdrop that stand before the mirrors where they may show an item; null where a mirror is seen. */
function hidersInMirrors({ mirrored }: Known, backdrop: Backdrop): readonly number[] | null {
  if (showsPane(backdrop, mirrored)) return null;
  const owners = [...ownersIn(backdrop, mirrored)];
  return owners.some((owner) => backdrop.stage.parts[owner].shape.mirror) ? null : owners;
}

/** An item and the pixels in which it has to be looked at. */
export type Unsettled = readonly [item: number, rects: readonly PixelRect[]];

/** All pixels in which something is open. */
const openIn = ({ direct, mirrored }: Known): readonly PixelRect[] => [...direct, ...mirrored];

/** So many frames, a second, after a backdrop that did not hide an item none is drawn for it. */
const PATIENCE_FRAMES = 24;

/**
 * What stood before and around items that were not seen, to be tried first when they are asked again a moment later.
 * A part may have another number by then: whichever parts are tried, they only hide.
 */
export class Hidden {
  /** By item, the numbers of what the last look at it showed, and of what it was last found to be all behind. */
  private around: (readonly number[])[] = [];
  private hiders: (readonly number[] | null)[] = [];
  /** By item, how many frames more none is drawn. */
  private patience: number[] = [];

  /** Notes what a look at an item showed. */
  saw(item: number, shown: readonly number[]): void {
    this.around[item] = shown;
    this.hiders[item] = null;
  }

  /** What the last look at an item showed. */
  shownAround(item: number): readonly number[] {
    return this.around[item] ?? [];
  }

  /**
   * What is open of some items after a backdrop of what hid them last: where they are not known to be hidden part by
   * part, and where the faces of mirrors that would show them are in sight.
   */
  open(known: ReadonlyMap<number, Known>, asking: Asking, scratch: Scratch): readonly Unsettled[] {
    const tried: Unsettled[] = [];
    const left: Unsettled[] = [];
    for (const [item, each] of known) {
      const patience = this.patience[item] ?? 0;
      this.patience[item] = Math.max(0, patience - 1);
      (patience > 0 ? left : tried).push([item, openIn(each)]);
    }
    for (const group of grouped(tried)) {
      const backdrop = this.backdropFor(group, asking, scratch);
      for (const item of group.items) {
        const each = known.get(item);
        const open = each ? this.openBefore(backdrop, item, each) : [];
        if (open.length > 0) left.push([item, open]);
      }
    }
    return left;
  }

  /** What hid the items of a group last, alone: draws neither them nor anything else. */
  private backdropFor({ items, rect }: Group, { stage, camera, images }: Asking, scratch: Scratch): Backdrop {
    const parts = new Set<StagePart>();
    const panes: StagePart[] = [];
    for (const { mirror } of images) {
      if (!mirror) continue;
      // Glass shows what it mirrors over what is behind it.
      if (mirror.part.shape.openness !== null) panes.push(mirror.part);
      else parts.add(mirror.part);
    }
    for (const item of items)
      for (const index of this.hiders[item] ?? this.shownAround(item))
        if (index < stage.parts.length) parts.add(stage.parts[index]);
    return backdropOf(stage, camera, scratch, rect, [...parts], panes);
  }

  private openBefore(backdrop: Backdrop, item: number, known: Known): readonly PixelRect[] {
    const directly = hidersDirectly(item, known, backdrop);
    const inMirrors = hidersInMirrors(known, backdrop);
    if (directly && inMirrors) {
      this.hiders[item] = [...new Set([...directly, ...inMirrors])];
      return [];
    }
    this.hiders[item] = null;
    this.patience[item] = PATIENCE_FRAMES;
    return [...(directly ? [] : known.direct), ...(inMirrors ? [] : known.mirrored)];
  }
}
