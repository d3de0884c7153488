import { whereabouts } from '../../core/form/figure/whereabouts';
import { stateAt } from '../../core/optics/camera';
import { keysOf } from '../../core/optics/cameraKey';
import { moveCamera } from '../../core/optics/onTrack';
import { anchorOf, carrierOf, standUnder } from '../../core/plan/edits/anchorOf';
import { moveArea } from '../../core/plan/edits/moveArea';
import { moveItem } from '../../core/plan/edits/moveItem';
import { itemOf } from '../../core/plan/items';
import type { WetArea } from '../../core/plan/schema/ground';
import type { Plan } from '../../core/plan/schema/plan';
import type { SnapReason } from '../../core/plan/snap/types';
import { nameOfArea } from '../../core/plan/wetness';
import { onlyInSetup } from '../../desk/blocking/onlyIn';
import { markNow, moveTape, tapeOf } from '../../desk/blocking/tape';
import { letterOf } from '../../desk/choose';
import { isMovable } from '../../desk/selecting';
import { sessionStore } from '../../desk/sessionStore';
import type { Spot } from './geometry/spots';
import { nameInText } from './words';

/** What is being dragged: what was pressed, and all that goes with it. */
export interface Dragged {
  readonly target: Target;
  /** Ids of the items that move; none for a camera, a mark or a wet area. */
  readonly ids: readonly string[];
  /** What it catches on. */
  readonly why: readonly SnapReason[];
}

/** What a finger or a pointer can take hold of. */
export type Target =
  | { readonly type: 'item'; readonly id: string }
  | { readonly type: 'mark'; readonly performerId: string; readonly markId: string }
  | { readonly type: 'camera'; readonly setupId: string }
  | { readonly type: 'area'; readonly areaId: string };

export function keyOf(target: Target): string {
  switch (target.type) {
    case 'item':
      return target.id;
    case 'mark':
      return `mark:${target.performerId}:${target.markId}`;
    case 'camera':
      return `camera:${target.setupId}`;
    case 'area':
      return `area:${target.areaId}`;
  }
}

/** The wet area that a key stands for; null for that of anything else. */
export const areaOfKey = (plan: Plan, key: string): WetArea | null =>
  plan.ground.areas?.find(({ id }) => key === keyOf({ type: 'area', areaId: id })) ?? null;

/** What the building is made of stays where it is under a hand that only wants to pan. */
const FIXED = new Set(['deck', 'parapet', 'skyline block']);

/** Whether an item is part of the building itself. */
export function isBuiltIn(plan: Plan, id: string): boolean {
  const item = itemOf(plan, id);
  return item?.section === 'piece' && FIXED.has(item.record.kind);
}

/** The point [x, z] that a drag moves, metres; null where the target does not let itself be dragged. */
export function anchorOfTarget(plan: Plan, target: Target): Spot | null {
  if (target.type === 'camera') {
    const setup = plan.setups.find(({ id }) => id === target.setupId);
    if (!setup) return null;
    const { position } = stateAt(plan, setup, keysOf(plan, setup)[0].atSeconds);
    return [position[0], position[2]];
  }
  if (target.type === 'mark') {
    const performer = plan.cast.find(({ id }) => id === target.performerId);
    const mark = performer?.marks.find(({ id }) => id === target.markId);
    return mark && !performer?.locked ? [mark.at[0], mark.at[1]] : null;
  }
  if (target.type === 'area') return areaOfKey(plan, keyOf(target))?.outline[0] ?? null;
  if (isBuiltIn(plan, target.id)) return null;
  return isMovable(plan, target.id) ? anchorOf(plan, target.id) : null;
}

/** The plan with the target's anchor at [x, z], metres. */
export function movedTo(plan: Plan, target: Target, [x, z]: Spot): Plan {
  const to: [number, number] = [x, z];
  if (target.type === 'camera') return moveCamera(plan, { setupId: target.setupId, to });
  if (target.type === 'mark') {
    return moveTape(plan, target, to, onlyInSetup(plan));
  }
  if (target.type === 'area') {
    const from = anchorOfTarget(plan, target) ?? to;
    return moveArea(plan, { id: target.areaId, by: [x - from[0], z - from[1]] });
  }
  return moveItem(plan, { id: target.id, to });
}

/**
 * What a hand takes hold of. Where the blocking is looked at a performer stands for the mark that they are at, unless
 * more is chosen with them; where marks are cheated for a setup always, so that the master's stay.
 */
export function takenHold(plan: Plan, target: Target, seconds: number): Target {
  const performer = target.type === 'item' ? plan.cast.find(({ id }) => id === target.id) : undefined;
  const mark = performer ? markNow(plan, performer, seconds) : null;
  if (!performer || !mark) return target;
  const { sheet, selectedIds } = sessionStore.getState();
  const together = selectedIds.length > 1 && selectedIds.includes(performer.id);
  const isThere = sheet === 'blocking' && !together && !whereabouts(performer, plan, seconds)?.isMoving;
  const isMark = onlyInSetup(plan) !== null || isThere;
  return isMark ? { type: 'mark', performerId: performer.id, markId: mark.id } : target;
}

/** The item that a target belongs to; null for a camera and for a wet area. */
export const itemIdOf = (target: Target | null): string | null =>
  target?.type === 'item' ? target.id : target?.type === 'mark' ? target.performerId : null;

/** Keys of all that goes along when something is dragged: what carries it and what is carried with it. */
export function movingKeys(plan: Plan, { target, ids }: Omit<Dragged, 'why'>): ReadonlySet<string> {
  if (target.type === 'mark') {
    const performer = plan.cast.find(({ id }) => id === target.performerId);
    const tape = performer ? tapeOf(plan, performer, target.markId) : [];
    return new Set(tape.map(({ id }) => keyOf({ ...target, markId: id })));
  }
  if (target.type !== 'item') return new Set([keyOf(target)]);
  return new Set(ids.flatMap((id) => keysWith(plan, carrierOf(plan, id) ?? id)));
}

function keysWith(plan: Plan, root: string): string[] {
  const performer = plan.cast.find(({ id }) => id === root);
  return [
    root,
    ...plan.gear.filter((record) => standUnder(record) === root).map(({ id }) => id),
    ...(performer?.marks ?? []).map(({ id }) => keyOf({ type: 'mark', performerId: root, markId: id })),
  ];
}

/** What the history calls a move of the target and of what goes with it. */
export function moveName(plan: Plan, target: Target, ids: readonly string[]): string {
  if (target.type === 'camera') {
    const setup = plan.setups.find(({ id }) => id === target.setupId);
    return `move the camera of ${setup?.label ?? 'the setup'}`;
  }
  if (target.type === 'area') return `move ${nameInText(nameOfArea(plan.ground, target.areaId))}`;
  if (ids.length > 1) return `move ${ids.length} things`;
  const id = target.type === 'mark' ? target.performerId : target.id;
  const name = itemOf(plan, id)?.record.label ?? '';
  if (target.type !== 'mark') return `move ${nameInText(name)}`;
  const setup = onlyInSetup(plan);
  return setup ? `cheat a mark of ${name} in ${letterOf(plan, setup.id)}` : `move a mark of ${name}`;
}
