import { cornersOf } from '../../../core/plan/edits/corners';
import { nameOfArea } from '../../../core/plan/wetness';
import { outlineHandles } from '../handles/cornering';
import type { Handle, HandleInput } from '../handles/types';
import { nameInText } from '../words';

/** The corners of the chosen wet area, and dots between them that make further ones. */
export function areaHandles(input: HandleInput, areaId: string): readonly Handle[] {
  const corners = cornersOf(input.plan, areaId);
  if (!corners) return [];
  const called = nameInText(nameOfArea(input.plan.ground, areaId));
  return outlineHandles({ id: areaId, corners, called }, input);
}
