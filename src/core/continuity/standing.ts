import type { Vec3 } from '../form/build/vector';
import { spanOf, stateAt } from '../optics/camera';
import { keysOf, trackOf } from '../optics/cameraKey';
import { wheelsBeyond } from '../optics/onTrack';
import { formsThrough } from '../optics/riding';
import { named } from '../plan/named';
import type { Spot } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { surfaceUnder } from '../plan/surfaces';
import { alongTrack, keyAlong, trackPointAt } from '../plan/trackLine';
import { solidAround } from '../sight/inside';
import { formatLength, type LengthSystem } from '../units/lengths';
import { formatSeconds } from '../units/seconds';
import { hypot } from '../units/steadyMath';

/** A dolly this near to its track is on it, metres. */
const ON_THE_TRACK = 0.05;

/** Why a setup's camera cannot stand where its move takes it, as a sentence; null where it can. */
export function standingRefusal(plan: Plan, setup: Setup, seconds: number): string | null {
  const [from, to] = spanOf(plan, setup);
  const keys = keysOf(plan, setup)
    .map(({ atSeconds }) => atSeconds)
    .filter((at) => at > from && at < to);
  const hasDeck = plan.pieces.some(({ kind }) => kind === 'deck');
  for (const at of new Set([seconds, from, to, ...keys])) {
    const { position } = stateAt(plan, setup, at);
    const when = at === seconds ? '' : ` at ${formatSeconds(at)}`;
    const spot: Spot = [position[0], position[2]];
    if (hasDeck && surfaceUnder(plan, spot, { belowMetres: position[1] }).id === null)
      return `The place lies outside the deck${when}.`;
    const around = solidAround(formsThrough(plan, setup, at), position);
    if (around) return `The place lies inside ${named(around.label)}${when}.`;
  }
  return null;
}

/**
 * Where the keys of a setup stand along its track once its camera goes to a place at an instant, and what of that place
 * the track lets it reach; nothing of it where it runs on none. A sentence says why it cannot go there.
 */
export function alongTheTrack(
  plan: Plan,
  setup: Setup,
  position: Vec3,
  seconds: number,
  lengths: LengthSystem,
): { readonly alongMetres: readonly number[] | null; readonly reached: Vec3; readonly why: string | null } {
  const track = trackOf(plan, setup);
  if (!track) return { alongMetres: null, reached: position, why: null };
  const now = stateAt(plan, setup, seconds).position;
  const wanted = alongTrack(track, [position[0], position[2]]);
  const shift = wanted - alongTrack(track, [now[0], now[2]]);
  const alongs = setup.move.keys.map((key) => keyAlong(track, key));
  const alongMetres = alongs.map((along) => along + shift);
  const there = trackPointAt(track, wanted).at;
  const reached: Vec3 = [there[0], position[1], there[2]];
  const off = hypot(there[0] - position[0], there[2] - position[2]);
  if (off > ON_THE_TRACK) {
    const isAtEnd = wanted < ON_THE_TRACK || wanted > track.lengthMetres - ON_THE_TRACK;
    const how = isAtEnd ? 'from the end of' : 'off';
    return {
      alongMetres,
      reached,
      why: `The place lies ${formatLength(off, lengths)} ${how} ${named(track.label)}, and the dolly goes along it only.`,
    };
  }
  const beyond = Math.max(...alongs.map((along) => wheelsBeyond(track, along, along + shift)));
  const why =
    beyond > 0
      ? `The wheels of the dolly would run ${formatLength(beyond, lengths)} beyond the end of ${named(track.label)}.`
      : null;
  return { alongMetres, reached, why };
}
