import type { Vec3 } from '../../../core/form/build/vector';
import { whereabouts } from '../../../core/form/figure';
import { cameraAt } from '../../../core/optics/camera';
import { carrierOf } from '../../../core/plan/edits/anchorOf';
import { type Item, itemOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Ray } from '../../../core/sight/rays';
import { nearestOnSegment } from '../closeness';
import { roomOf, runOf } from '../grounds';
import type { Picker, PickOptions } from '../picking';

/** What a pointer takes hold of in the walk-round. */
export type Target =
  | { readonly type: 'item'; readonly id: string }
  | { readonly type: 'mark'; readonly performerId: string; readonly markId: string }
  | { readonly type: 'camera'; readonly setupId: string };

/** A target under the pointer, and where. */
export interface Hit {
  readonly target: Target;
  readonly place: Vec3;
}

export const isSame = (a: Target | null, b: Target | null): boolean =>
  JSON.stringify(a) === JSON.stringify(b);

/** Of a camera's body behind its entrance pupil, metres; how far around its middle a press still means it. */
const BODY_METRES = 0.38;
const BODY_RADIUS = 0.1;
/** A mark lies on the floor, a hair under what is drawn over it, metres. */
const FLOOR_METRES = 0.2;

/** What the ray of a pointer meets: a thing, the body of a camera, a taped mark. */
export function hitAlong(
  picker: Picker,
  plan: Plan,
  seconds: number,
  ray: Ray,
  options: PickOptions,
): Hit | null {
  const { picked, openMetres } = picker.look(plan, seconds, ray, options);
  const farthest = Math.min(picked?.distance ?? Infinity, openMetres) + FLOOR_METRES;
  const own = ownHit(plan, seconds, ray, options, farthest);
  if (own) return own;
  return picked && { target: { type: 'item', id: picked.id }, place: picked.place };
}

/** Cameras and marks are no items: they are looked for by how near the ray passes them. */
function ownHit(plan: Plan, seconds: number, ray: Ray, options: PickOptions, farthest: number): Hit | null {
  let best: { readonly hit: Hit; readonly pixels: number } | null = null;
  const consider = (target: Target, from: Vec3, to: Vec3, radius: number): void => {
    const [along, away] = nearestOnSegment(ray, from, to);
    if (along <= 0.1 || along > farthest) return;
    const pixels = Math.max(0, away - radius) / (options.widthAtOne * along);
    if (pixels > options.tolerance || (best && best.pixels <= pixels)) return;
    best = { hit: { target, place: from }, pixels };
  };
  for (const setup of plan.setups) {
    const { position, forward } = cameraAt(plan, setup, seconds).pose;
    const back: Vec3 = [
      position[0] - forward[0] * BODY_METRES,
      position[1] - forward[1] * BODY_METRES,
      position[2] - forward[2] * BODY_METRES,
    ];
    consider({ type: 'camera', setupId: setup.id }, position, back, BODY_RADIUS);
  }
  for (const performer of plan.cast) {
    if (performer.hidden) continue;
    for (const mark of performer.marks) {
      const place: Vec3 = [mark.at[0], mark.floorMetres ?? 0, mark.at[1]];
      consider({ type: 'mark', performerId: performer.id, markId: mark.id }, place, place, 0);
    }
  }
  return (best as { readonly hit: Hit } | null)?.hit ?? null;
}

/** Where a target touches what it stands on, metres; null for what is nowhere. */
export function footOfTarget(plan: Plan, target: Target, seconds: number, place: Vec3 | null): Vec3 | null {
  if (target.type === 'camera') {
    const setup = plan.setups.find(({ id }) => id === target.setupId);
    return setup ? cameraAt(plan, setup, seconds).pose.position : null;
  }
  if (target.type === 'mark') {
    const mark = plan.cast
      .find(({ id }) => id === target.performerId)
      ?.marks.find(({ id }) => id === target.markId);
    return mark ? [mark.at[0], mark.floorMetres ?? 0, mark.at[1]] : null;
  }
  const item = itemOf(plan, carrierOf(plan, target.id) ?? target.id);
  return item && footOfItem(plan, item, seconds, place);
}

/** `place` is where it was pressed: what runs over the roof is held there, and not by a corner far away. */
function footOfItem(plan: Plan, item: Item, seconds: number, place: Vec3 | null): Vec3 | null {
  const { record } = item;
  if (item.section === 'cast') return whereabouts(item.record, plan, seconds)?.at ?? null;
  if ('at' in record) return record.at;
  if ('place' in record && 'at' in record.place) return record.place.at;
  const run = runOf(item);
  const room = roomOf(plan, record.id, seconds);
  if (!run || !room) return null;
  // A line hangs: it moves on its own level.
  const level =
    'from' in record ? record.from[1] : 'baseMetres' in record ? record.baseMetres : room.lowMetres;
  const [x, z] = place ? [place[0], place[2]] : run.corners[0];
  return [x, level, z];
}
