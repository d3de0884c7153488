import { type Backdrop, backdropOf, hiderOf, leastNearness, ownersIn, showsPane } from './backdrop';
import { cornersOf } from './corners';
import { touching } from './facing';
import type { PixelRect } from './filling';
import type { Look, Scratch } from './look';
import { type FacedMirror, reflected } from './mirrors';
import { rasterOf } from './raster';
import { type Group, grouped, rectAround } from './rects';
import { type Reflection, reflectionsIn, standingInSamples } from './reflections';
import type { Asking, Known } from './settled';
import type { StagePart } from './stage';
import { INSIDE } from './tally';
import { isSeenThrough, mayBeMet } from './thin';

/** The numbers of the parts that a look shows, directly or in a mirror. */
export const seenPartsOf = ({ direct, mirrored }: Look): readonly number[] =>
  Array.from(direct.partPixels.keys()).filter(
    (part) => direct.partPixels[part] > 0 || mirrored.partPixels[part] > 0,
  );

/** A backdrop, and what mirrors show in it, drawn when it is asked for. */
interface Scene {
  readonly backdrop: Backdrop;
  readonly mirrors: readonly FacedMirror[];
  readonly reflections: () => readonly Reflection[];
}

/** Whether any of some parts, by their numbers, is of an item: what a thing hides of itself tells nothing. */
const isOwn = ({ stage }: Backdrop, hiders: Iterable<number>, item: number): boolean =>
  [...hiders].some((each) => stage.parts[each].item === item);

/** The parts of a backdrop that each of an item's own lies behind where it may show directly; null where it may be seen. */
function hidersDirectly(
  item: number,
  { state, direct }: Known,
  { backdrop }: Scene,
): readonly number[] | null {
  if (direct.length === 0) return [];
  // What shows nowhere is inside the frame or not: only a look tells.
  if ((state & INSIDE) === 0) return null;
  const { parts, firstPart } = backdrop.stage;
  const way = { seen: rasterOf(backdrop, backdrop.buffer), screen: backdrop.screen, mirror: null };
  const hiders = new Set<number>();
  let isSampled = true;
  for (let k = firstPart[item]; k < firstPart[item + 1]; k += 1) {
    const corners = cornersOf(parts[k]);
    const hider = hiderOf(way.seen, corners);
    if (hider === 'out') continue;
    if (typeof hider === 'number') {
      hiders.add(hider);
      continue;
    }
    // Not all of the box is behind something, but all of what is in it may be.
    const standing = hider === 'several' ? 'behind' : standingInSamples(way, parts[k]);
    if (standing === 'open' || isSeenThrough(way, parts[k])) return null;
    isSampled &&= standing === 'behind';
    const around = rectAround(corners, backdrop.camera, backdrop.grid);
    const nearness = leastNearness(corners, backdrop.camera);
    for (const owner of ownersIn(way.seen, around ? [around] : [], nearness)) hiders.add(owner);
  }
  // What has no sample may be a sliver of a face, which a look tries.
  return isSampled && !isOwn(backdrop, hiders, item) ? [...hiders] : null;
}

/** Whether a mirror may show an item, before what it shows of a backdrop. */
function mayBeMirrored(item: number, way: Reflection): boolean {
  const { stage, rect } = way.seen;
  const { parts, firstPart, forms } = stage;
  const mayTouch = touching(way.screen, rect);
  for (let k = firstPart[item]; k < firstPart[item + 1]; k += 1) {
    if (parts[k] === way.mirror.part || !mayTouch(parts[k])) continue;
    if (standingInSamples(way, parts[k]) === 'open') return true;
    // In a mirror only what has a wish is worth rays.
    if (forms[item].wish !== 'either' && mayBeMet(way, parts[k]) && isSeenThrough(way, parts[k])) return true;
  }
  return false;
}

/** 1 over the depth of what is farthest away of an item's images in some mirrors. */
function leastNearnessOfImages(
  item: number,
  { stage: { parts, firstPart }, camera }: Backdrop,
  mirrors: readonly FacedMirror[],
): number {
  let least = Infinity;
  for (let k = firstPart[item]; k < firstPart[item + 1]; k += 1)
    for (const mirror of mirrors) {
      const image = cornersOf(parts[k]).map((corner) => reflected(corner, mirror));
      least = Math.min(least, leastNearness(image, camera));
    }
  return least;
}

/** The parts that stand before the mirrors, or in them before an item's image, where they may show it; null where they may. */
function hidersInMirrors(
  item: number,
  { mirrored }: Known,
  { backdrop, mirrors, reflections }: Scene,
): readonly number[] | null {
  if (mirrored.length === 0) return [];
  if (showsPane(backdrop, mirrored)) return null;
  const nearness = leastNearnessOfImages(item, backdrop, mirrors);
  const hiders = new Set(ownersIn(rasterOf(backdrop, backdrop.buffer), mirrored, nearness));
  if ([...hiders].some((owner) => backdrop.stage.parts[owner].shape.mirror)) {
    for (const way of reflections()) {
      if (!hiders.has(way.mirror.part.index)) continue;
      if (mayBeMirrored(item, way)) return null;
    }
    // All mirrors are drawn into one buffer.
    const [first] = reflections();
    if (first) for (const owner of ownersIn(first.seen, mirrored, nearness)) hiders.add(owner);
  }
  return isOwn(backdrop, hiders, item) ? null : [...hiders];
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
      const isMirrored = [...group.items].some((item) => known.get(item)?.mirrored.length);
      const scene = this.sceneFor(group, isMirrored ? asking : { ...asking, images: [] }, scratch);
      for (const item of group.items) {
        const each = known.get(item);
        const open = each ? this.openBefore(scene, item, each) : [];
        if (open.length > 0) left.push([item, open]);
      }
    }
    return left;
  }

  /** What hid the items of a group last, alone: draws neither them nor anything else. */
  private sceneFor({ items, rect }: Group, { stage, camera, images }: Asking, scratch: Scratch): Scene {
    const parts = new Set<StagePart>();
    const panes: StagePart[] = [];
    const mirrors = images.flatMap(({ mirror }) => mirror ?? []);
    for (const { part } of mirrors) {
      // Glass shows what it mirrors over what is behind it.
      if (part.shape.openness !== null) panes.push(part);
      else parts.add(part);
    }
    for (const item of items)
      for (const index of this.hiders[item] ?? this.shownAround(item))
        if (index < stage.parts.length) parts.add(stage.parts[index]);
    const backdrop = backdropOf(stage, camera, scratch, rect, [...parts], panes);
    let drawn: readonly Reflection[] | null = null;
    const reflections = (): readonly Reflection[] => {
      drawn ??= reflectionsIn(backdrop, scratch, mirrors, [...parts]);
      return drawn;
    };
    return { backdrop, mirrors, reflections };
  }

  private openBefore(scene: Scene, item: number, known: Known): readonly PixelRect[] {
    const directly = hidersDirectly(item, known, scene);
    const inMirrors = hidersInMirrors(item, known, scene);
    if (directly && inMirrors) {
      this.hiders[item] = [...new Set([...directly, ...inMirrors])];
      return [];
    }
    this.hiders[item] = null;
    this.patience[item] = PATIENCE_FRAMES;
    return [...(directly ? [] : known.direct), ...(inMirrors ? [] : known.mirrored)];
  }
}
