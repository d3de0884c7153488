import { stateAt } from '../../../core/optics/camera';
import { turnSetup } from '../../../core/plan/edits/turnSetup';
import { bearingOf } from '../../../core/plan/runs';
import type { Plan } from '../../../core/plan/schema/plan';
import { letterOf } from '../../../desk/choose';
import { type Spot, towards } from '../geometry/spots';
import { readDegrees, shorter, stepped } from './reading';
import type { Handle, HandleInput } from './types';

/** How far ahead of the camera the ring stands, pixels. */
const AHEAD = 56;

/** Pans the camera that is looked through, at every key, while nothing else is chosen. */
export function cameraHandle({ plan, ids, setupId, seconds }: HandleInput): readonly Handle[] {
  const setup = ids.length > 0 ? null : plan.setups.find(({ id }) => id === setupId);
  if (!setup) return [];
  const { position, headingDegrees } = stateAt(plan, setup, seconds);
  const at: Spot = [position[0], position[2]];
  const [x, y] = towards(headingDegrees);
  const panTo = (before: Plan, degrees: number): Plan => {
    const own = before.setups.find(({ id }) => id === setup.id);
    const from = own ? stateAt(before, own, seconds).headingDegrees : headingDegrees;
    return turnSetup(before, { setupId: setup.id, byDegrees: shorter(degrees - from) });
  };
  return [
    {
      key: 'pan',
      kind: 'turn',
      name: `Pan the camera of ${letterOf(plan, setup.id)}`,
      at,
      off: [x * AHEAD, y * AHEAD],
      figure: `${Math.round(((headingDegrees % 360) + 360) % 360)}°`,
      pull: (before, { to, straight, free }) => {
        const bearing = bearingOf([at[0], at[1]], [to[0], to[1]]);
        return panTo(before, free ? bearing : stepped(bearing, straight ? 15 : 0.5));
      },
      step: (before, [right, down]) =>
        turnSetup(before, { setupId: setup.id, byDegrees: (right - down) * 0.5 }),
      typed: (before, text) => {
        const degrees = readDegrees(text);
        return typeof degrees === 'string' ? degrees : panTo(before, degrees);
      },
    },
  ];
}
