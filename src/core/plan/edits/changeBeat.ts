import * as v from 'valibot';
import { beat as beatSchema } from '../schema/cast';
import type { Plan } from '../schema/plan';
import { setupFaults } from '../setupChecks';
import { beatRange, beatsAlong, nearestWithin } from './beatRange';
import { changed } from './motion';
import { tidyMetres } from './tidy';

/**
 * Changes a beat's name and its moment. A moment that would put a span's end before its start, or camera keys out of
 * their order, is kept to the nearest that does not (see `beatRange`). With `ripple` all beats that are not before it
 * go along by as much, so that the time between them stays.
 */
export function changeBeat(
  plan: Plan,
  args: {
    readonly beatId: string;
    readonly patch: { readonly label?: string; readonly atSeconds?: number };
    readonly ripple?: boolean;
  },
): Plan {
  const { beatId, patch, ripple = false } = args;
  const before = plan.beats.find(({ id }) => id === beatId);
  const range = beatRange(plan, { beatId, ripple });
  if (!before || !range) return plan;
  const atSeconds =
    patch.atSeconds === undefined || !Number.isFinite(patch.atSeconds) || patch.atSeconds === before.atSeconds
      ? before.atSeconds
      : nearestWithin(range, patch.atSeconds);
  const label =
    patch.label !== undefined && v.is(beatSchema, { ...before, label: patch.label })
      ? patch.label
      : before.label;
  const by = atSeconds - before.atSeconds;
  const along = beatsAlong(plan, beatId, ripple);
  const beats = changed(plan.beats, (beat) => {
    const named = beat.id === beatId && label !== beat.label ? { ...beat, label } : beat;
    if (by === 0 || !along.has(beat.id)) return named;
    return { ...named, atSeconds: beat.id === beatId ? atSeconds : tidyMetres(beat.atSeconds + by) };
  });
  if (beats === plan.beats) return plan;
  const next = { ...plan, beats };
  return beats.every((beat) => v.is(beatSchema, beat)) && setupFaults(next).length === 0 ? next : plan;
}
