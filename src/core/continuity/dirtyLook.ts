import type { ItemForm } from '../form/types';
import { cameraFromWorld } from '../optics/project';
import type { Camera } from '../optics/types';
import { type Look, look, type Scratch, scratchFor } from '../sight/look';
import { type SightStage, stageOf } from '../sight/stage';

/** How much of the frame an item takes in a look. */
export const shareOf = ({ direct, grid }: Look, item: number): number =>
  direct.itemPixels[item] / grid.framePixels;

/** Which item is seen where a point of the world falls; null outside the frame, and where nothing is. */
function itemAt({ screen, buffer, grid, itemOfPart }: Look, point: readonly number[]): number | null {
  const row = (k: number): number =>
    screen[k] * point[0] + screen[k + 1] * point[1] + screen[k + 2] * point[2] + screen[k + 3];
  const [x, y] = [Math.floor(row(0) / row(8)), Math.floor(row(4) / row(8))];
  if (x < 0 || y < 0 || x >= grid.width || y >= grid.height) return null;
  const tag = buffer.owner[x * buffer.height + y];
  return tag === 0 ? null : itemOfPart[tag - 1];
}

/** Who of some performers stands before somebody's eyes in a look; null where nobody does. */
export function beforeEyes(seen: Look, eyes: readonly number[], ids: readonly string[]): string | null {
  const item = itemAt(seen, eyes);
  const id = item === null ? null : seen.stage.forms[item].id;
  return id !== null && ids.includes(id) ? id : null;
}

/** How much of the frame a performer takes in a look; 0 for nobody there. */
export function shareIn(seen: Look, performerId: string): number {
  const item = seen.stage.forms.findIndex(({ id }) => id === performerId);
  return item < 0 ? 0 : shareOf(seen, item);
}

/** A form with those of its parts that pass; itself where all do, null where none does. */
function someParts(form: ItemForm, passes: (partOfForm: number) => boolean): ItemForm | null {
  const parts = form.parts.filter((_, k) => passes(k));
  if (parts.length === form.parts.length) return form;
  return parts.length > 0 ? { ...form, parts } : null;
}

/**
 * Looks through cameras at who is in the way of whom: only at what may be nearer than the farthest of those who are
 * asked for, which is all that can hide them. Buffers are used again from look to look.
 */
export class Eye {
  private scratch: { readonly of: Camera['frame']; readonly scratch: Scratch } | null = null;
  private whole: SightStage | null = null;

  constructor(private readonly longSide: number) {}

  /** `ids`: whose shares and places are asked for. */
  see(forms: readonly ItemForm[], camera: Camera, ids: readonly string[]): Look {
    const { frame } = camera;
    const known = this.scratch;
    const isSame =
      known?.of.tanHalfWidth === frame.tanHalfWidth && known.of.tanHalfHeight === frame.tanHalfHeight;
    const scratch = known && isSame ? known.scratch : scratchFor(camera, this.longSide);
    if (!known || !isSame) this.scratch = { of: frame, scratch };
    // Parts without triangles are in no stage: forms go without them, so that the numbers agree.
    this.whole = stageOf(forms.map(drawn), this.whole);
    return look(stageOf(this.nearForms(this.whole, camera, ids)), camera, scratch);
  }

  private nearForms(stage: SightStage, camera: Camera, ids: readonly string[]): readonly ItemForm[] {
    const depths = stage.parts.map(({ centre }) => cameraFromWorld(camera.pose, centre)[2]);
    let farthest = 0;
    for (const part of stage.parts) {
      if (ids.includes(stage.forms[part.item].id)) {
        farthest = Math.max(farthest, depths[part.index] + part.radius);
      }
    }
    return stage.forms.flatMap((form, item) => {
      const first = stage.firstPart[item];
      const near = someParts(form, (k) => {
        const [depth, { radius }] = [depths[first + k], stage.parts[first + k]];
        return depth + radius > 0 && depth - radius <= farthest;
      });
      return near ? [near] : [];
    });
  }
}

const drawnKept = new WeakMap<ItemForm, ItemForm>();

/** A form without those of its parts that have no triangles; the same object for the same form. */
function drawn(form: ItemForm): ItemForm {
  const known = drawnKept.get(form);
  if (known) return known;
  const made = someParts(form, (k) => form.parts[k].shape.indices.length > 0) ?? { ...form, parts: [] };
  drawnKept.set(form, made);
  return made;
}
