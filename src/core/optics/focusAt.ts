import { whereabouts } from '../form/figure/whereabouts';
import { played } from '../plan/played';
import type { Plan } from '../plan/schema/plan';
import type { FocusOn, Setup } from '../plan/schema/setup';
import { cameraAt, glassOf } from './camera';
import { momentOf } from './moments';
import { cameraFromWorld } from './project';

/** No lens is focused nearer to its own pupil than this, metres. */
const NEAREST_METRES = 0.05;

/**
 * Distance in focus at an instant of the action's clock, metres along the axis from the entrance pupil; null where
 * somebody is followed who is nowhere. A pull from one rack to the next settles at both ends (3u² − 2u³) and ends at
 * the rack's moment; before the first rack the first is held.
 */
export function focusAt(plan: Plan, setup: Setup, seconds: number): number | null {
  const { focus } = setup;
  if (!('racks' in focus)) return distanceTo(plan, setup, seconds, focus);
  const racks = focus.racks
    .map((rack) => ({ ...rack, at: momentOf(plan, rack) }))
    .sort((a, b) => a.at - b.at);
  let held = distanceTo(plan, setup, seconds, racks[0].on);
  for (const { at, pullSeconds, on } of racks.slice(1)) {
    if (seconds <= at - pullSeconds) break;
    const next = distanceTo(plan, setup, seconds, on);
    const share = pullSeconds > 0 ? Math.min(1, (seconds - at + pullSeconds) / pullSeconds) : 1;
    const settled = share * share * (3 - 2 * share);
    held = held === null || next === null ? next : held + (next - held) * settled;
  }
  return held;
}

/** Distance of what a lens is focused on at an instant, metres from the entrance pupil along the axis. */
function distanceTo(plan: Plan, setup: Setup, seconds: number, on: FocusOn): number | null {
  if ('metres' in on) {
    return Math.max(NEAREST_METRES, on.metres - (glassOf(plan, setup).lens.pupilToImageMm ?? 0) / 1000);
  }
  const depth = depthOfEyes(plan, setup, seconds, on.follow);
  return depth === null ? null : Math.max(NEAREST_METRES, depth);
}

/** How far along the axis a performer's eyes lie from the entrance pupil at an instant, metres; null for nobody there. */
export function depthOfEyes(plan: Plan, setup: Setup, seconds: number, performerId: string): number | null {
  const scene = played(plan, setup);
  const performer = scene.cast.find(({ id }) => id === performerId);
  const place = performer && whereabouts(performer, scene, seconds);
  return place ? cameraFromWorld(cameraAt(plan, setup, seconds).pose, place.eyes)[2] : null;
}
