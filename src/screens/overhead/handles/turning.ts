import { middleOf } from '../../../core/plan/edits/extent';
import { turnItems } from '../../../core/plan/edits/turnItems';
import { itemOf } from '../../../core/plan/items';
import { bearingOf } from '../../../core/plan/runs';
import type { Plan } from '../../../core/plan/schema/plan';
import { boundsOf, towards } from '../geometry/spots';
import { groundOf } from '../ground';
import { readDegrees, shorter, stepped } from './reading';
import type { Handle, HandleInput } from './types';

/** How far outside of what it turns the ring stands, pixels. */
const OFF_RING = 26;
/** What is very large has its ring no farther than this from its middle, pixels. */
const FARTHEST = 130;
const WHOLE_STEP = 15;

/** The heading of the one thing, or 0 of several, which have none together. */
export function headingOf(plan: Plan, ids: readonly string[]): number {
  const [id] = ids;
  const record = ids.length === 1 && id !== undefined ? itemOf(plan, id)?.record : null;
  return record && 'headingDegrees' in record ? record.headingDegrees : 0;
}

/** Half of what the chosen things take of the sheet together, pixels. */
export function halfSize({ plan, ids, seconds, at }: HandleInput): number {
  const outlines = ids.flatMap((id) => groundOf(plan, id, seconds)?.outline.map(at) ?? []);
  const bounds = boundsOf(outlines);
  return bounds ? Math.max(15, Math.hypot(bounds[2] - bounds[0], bounds[3] - bounds[1]) / 2 + 5) : 15;
}

/** The ring on a lead line that turns what is chosen about its middle. */
export function turnHandle(input: HandleInput, called: string): Handle | null {
  const { plan, ids } = input;
  const middle = middleOf(plan, ids);
  if (!middle) return null;
  const heading = headingOf(plan, ids);
  const [x, y] = towards(heading);
  const away = Math.min(FARTHEST, halfSize(input) + OFF_RING);
  const turnTo = (before: Plan, degrees: number): Plan =>
    turnItems(before, { ids, byDegrees: shorter(degrees - headingOf(before, ids)) });
  const figure = ids.length === 1 ? `${Math.round(((heading % 360) + 360) % 360)}°` : null;
  return {
    key: 'turn',
    kind: 'turn',
    name: `Turn ${called}`,
    at: middle,
    off: [x * away, y * away],
    lead: middle,
    ...(figure === null ? {} : { figure }),
    pull: (before, { to, straight, free }) => {
      const bearing = bearingOf(middle, [to[0], to[1]]);
      return turnTo(before, free ? bearing : stepped(bearing, straight ? WHOLE_STEP : 1));
    },
    step: (before, [right, down]) => turnItems(before, { ids, byDegrees: right - down }),
    typed: (before, text) => {
      const degrees = readDegrees(text);
      return typeof degrees === 'string' ? degrees : turnTo(before, degrees);
    },
  };
}
