import { itemOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import { isMovable } from '../../../desk/selecting';
import { isBuiltIn } from '../targets';
import { areaHandles } from '../wet/areaHandles';
import { nameInText } from '../words';
import { blockingHandles } from './blockingHandles';
import { cameraHandle } from './cameraHandle';
import { cornerHandles } from './cornering';
import { gearHandles } from './gearHandles';
import { openingHandles } from './openings';
import { raiseHandle } from './raising';
import { turnHandle } from './turning';
import type { Handle, HandleInput } from './types';

const isLocked = (plan: Plan, id: string): boolean => itemOf(plan, id)?.record.locked === true;

/** Everything on what is chosen that can be pulled; nothing of what is locked. */
export function handlesOf(input: HandleInput): readonly Handle[] {
  const { plan, ids } = input;
  const free = ids.filter((id) => itemOf(plan, id) !== null && !isLocked(plan, id));
  if (ids.length === 0) return input.areaId ? areaHandles(input, input.areaId) : cameraHandle(input);
  if (free.length === 0) return [];
  const own: HandleInput = { ...input, ids: free };
  const [first] = free;
  const item = free.length === 1 && first !== undefined ? itemOf(plan, first) : null;
  const called = item ? nameInText(item.record.label) : `${free.length} things`;
  // What the building is made of is drawn anew by its corners, not turned as a whole.
  const whole = free.filter((id) => !isBuiltIn(plan, id) && isMovable(plan, id));
  const together: HandleInput = { ...input, ids: whole };
  // Somebody is turned at a mark, not round the middle of all of them, and stands on what is under it.
  if (item?.section === 'cast') return blockingHandles(input, item.record);
  // A lamp is turned by its aim.
  const isHead = item?.section === 'gear' && item.record.kind === 'head';
  const turned =
    whole.length > 0 ? [isHead ? null : turnHandle(together, called), raiseHandle(together, called)] : [];
  return [
    ...turned.flatMap((handle) => handle ?? []),
    ...openingHandles(own, called),
    ...gearHandles(own, called),
    ...cornerHandles(own, called),
  ];
}
