import { keysOf } from '../../core/optics/cameraKey';
import { momentAs } from '../../core/optics/heldKey';
import { setKey } from '../../core/plan/edits/changeKeys';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { FRAME_SECONDS, nearestBeat } from './snapTime';

/** Between which moments a key may go, so that the keys keep their order: a frame from those beside it. */
function roomOf(
  plan: Plan,
  setup: Setup,
  index: number,
  from: number,
  to: number,
): readonly [number, number] {
  const keys = keysOf(plan, setup);
  const before = index > 0 ? keys[index - 1].atSeconds + FRAME_SECONDS : from;
  const after = index < keys.length - 1 ? keys[index + 1].atSeconds - FRAME_SECONDS : to;
  return [Math.max(from, before), Math.min(to, after)];
}

/** The plan with a key at a moment: on a beat where one is within reach, else on the clock, to a frame. */
export function retimed(
  plan: Plan,
  args: {
    readonly setupId: string;
    readonly keyIndex: number;
    readonly seconds: number;
    readonly span: readonly [number, number];
    /** How near to a beat catches, seconds. */
    readonly reachSeconds: number;
  },
): Plan {
  const { setupId, keyIndex, seconds, span, reachSeconds } = args;
  const setup = plan.setups.find(({ id }) => id === setupId);
  if (!setup) return plan;
  const [low, high] = roomOf(plan, setup, keyIndex, ...span);
  if (low > high) return plan;
  const beat = nearestBeat(
    plan.beats.filter(({ atSeconds }) => atSeconds >= low && atSeconds <= high),
    seconds,
  );
  const isNear = beat !== null && Math.abs(beat.atSeconds - seconds) <= reachSeconds;
  const toFrame = Math.round(seconds / FRAME_SECONDS) * FRAME_SECONDS;
  const moment = isNear
    ? { atSeconds: 0, beat: beat.id }
    : { ...momentAs(plan, Math.min(high, Math.max(low, toFrame)), undefined), beat: undefined };
  return setKey(plan, { setupId, keyIndex, patch: moment });
}
