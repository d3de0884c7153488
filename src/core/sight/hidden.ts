import { backdropOf, hiderOf, ownersIn, showsPane } from './backdrop';
import type { Look, Scratch } from './look';
import { cornersOf, type Group } from './rects';
import type { Asking, Known } from './settled';
import type { StagePart } from './stage';
import { INSIDE } from './tally';

/** The numbers of the parts that a look shows, directly or in a mirror. */
export const seenPartsOf = ({ direct, mirrored }: Look): readonly number[] =>
  Array.from(direct.partPixels.keys()).filter(
    (part) => direct.partPixels[part] > 0 || mirrored.partPixels[part] > 0,
  );

/**
 * What stood before and around items that were not seen, to be tried first when they are asked again a moment later.
 * A part may have another number by then: whichever parts are tried, they only hide.
 */
export class Hidden {
  /** By item, the numbers of what the last look at it showed, and of what it was last found to be all behind. */
  private around: (readonly number[])[] = [];
  private hiders: (readonly number[] | null)[] = [];

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
   * Which items of a group are not known to be hidden by one part for each of theirs, nor the mirrors' faces to be out of
   * sight where they would be mirrored. Draws what hid them last, and neither them nor anything else.
   */
  open(
    { items, rect }: Group,
    { stage, camera, images }: Asking,
    scratch: Scratch,
    knownOf: ReadonlyMap<number, Known>,
  ): readonly number[] {
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
    const backdrop = backdropOf(stage, camera, scratch, rect, [...parts], panes);
    const isMirror = (part: number): boolean => stage.parts[part].shape.mirror !== null;

    const hidersOf = (item: number): readonly number[] | null => {
      const known = knownOf.get(item);
      const hiders = new Set<number>();
      if (!known) return null;
      if (known.direct.length > 0) {
        // What shows nowhere is inside the frame or not: only a look tells.
        if ((known.state & INSIDE) === 0) return null;
        for (let k = stage.firstPart[item]; k < stage.firstPart[item + 1]; k += 1) {
          const hider = hiderOf(backdrop, cornersOf(stage.parts[k]));
          if (hider === 'out') continue;
          if (hider === null || stage.parts[hider].item === item) return null;
          hiders.add(hider);
        }
      }
      if (showsPane(backdrop, known.mirrored)) return null;
      for (const owner of ownersIn(backdrop, known.mirrored)) {
        if (isMirror(owner)) return null;
        hiders.add(owner);
      }
      return [...hiders];
    };

    return [...items].filter((item) => {
      this.hiders[item] = hidersOf(item);
      return this.hiders[item] === null;
    });
  }
}
