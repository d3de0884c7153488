import { DOLLY_WHEELBASE_METRES } from '../kit/supports';
import { addItem } from '../plan/edits/addItem';
import { changeKeys } from '../plan/edits/changeKeys';
import { changeSetup } from '../plan/edits/changeSetup';
import { freeId } from '../plan/edits/freeId';
import { freeLabel } from '../plan/edits/freeLabel';
import { keyOn } from '../plan/edits/keysOnTrack';
import { moveSetup } from '../plan/edits/moveSetup';
import { putDolly } from '../plan/edits/setRides';
import { itemsOf } from '../plan/items';
import type { Spot } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { surfaceUnder } from '../plan/surfaces';
import { alongTrack, keyAlong, type Track, trackPointAt } from '../plan/trackLine';
import { spanOf, stateAt } from './camera';
import { alongAt, trackOf } from './cameraKey';
import { arcThrough, straightThrough } from './trackFit';

/** Beyond the room that the wheels need at each end of a laid track, metres. Source: common practice, no source */
const SPARE_METRES = 0.15;
const GAUGE_METRES = 0.62;
/** Track laid for a camera that does not move yet, metres. Source: common practice, no source */
const SHORTEST_METRES = 2.4;

const setupIn = (plan: Plan, setupId: string): Setup | null =>
  plan.setups.find(({ id }) => id === setupId) ?? null;

/** From where to where along its track the middle of a dolly gets, metres: its wheels stay on the rails. */
export function roomOn(track: Track): readonly [number, number] {
  const room = Math.min(DOLLY_WHEELBASE_METRES / 2, track.lengthMetres / 2);
  return [room, track.lengthMetres - room];
}

/**
 * How far a dolly's wheels come off the rails as its middle goes along them from one place to another, metres; 0 while
 * they stay on them, or get no farther off than they were.
 */
export function wheelsBeyond(track: Track, from: number, to: number): number {
  const [low, high] = roomOn(track);
  return Math.max(0, Math.min(low, from) - to, to - Math.max(high, from));
}

/** Puts a setup's camera on a track of the plan: each key where the track is nearest, with the room its wheels need. */
export function putOnTrack(
  plan: Plan,
  { setupId, trackId }: { readonly setupId: string; readonly trackId: string },
): Plan {
  const freed = takeOffTrack(plan, { setupId });
  const patched = changeSetup(freed, { setupId, patch: { track: trackId } });
  const setup = setupIn(patched, setupId);
  const track = setup && trackOf(patched, setup);
  if (!track || track.id !== trackId) return plan;
  const [low, high] = roomOn(track);
  return changeKeys(patched, {
    setupId,
    change: (keys) =>
      keys.map((key) =>
        keyOn(
          track,
          key,
          Math.min(high, Math.max(low, alongTrack(track, [key.position[0], key.position[2]]))),
        ),
      ),
  });
}

/** Takes a setup's camera off its track: it stays where it was, and the track stays in the plan. */
export function takeOffTrack(plan: Plan, { setupId }: { readonly setupId: string }): Plan {
  const setup = setupIn(plan, setupId);
  const track = setup && trackOf(plan, setup);
  if (!track) return plan;
  const stood = changeKeys(plan, {
    setupId,
    change: (keys) =>
      keys.map((key) => {
        const { alongMetres: _, ...free } = keyOn(track, key, keyAlong(track, key));
        return free;
      }),
  });
  return changeSetup(stood, { setupId, patch: { track: undefined } });
}

/** Changes what carries a camera; one that leaves its dolly leaves the track too. */
export function setSupport(
  plan: Plan,
  { setupId, support }: { readonly setupId: string; readonly support: Setup['support'] },
): Plan {
  const freed = support === 'dolly' ? plan : takeOffTrack(plan, { setupId });
  return changeSetup(freed, { setupId, patch: { support } });
}

/** The places of a setup's keys over the deck. */
const spotsOf = (setup: Setup): readonly Spot[] =>
  setup.move.keys.map(({ position }): Spot => [position[0], position[2]]);

/**
 * Lays a new track under a camera's keys and puts it on: straight from the first to the farthest, or as an arc through
 * the first, the middle and the last of them. The same plan where three keys make no arc, or the roof is full.
 */
export function layTrack(
  plan: Plan,
  { setupId, bent }: { readonly setupId: string; readonly bent: boolean },
): Plan {
  const freed = takeOffTrack(plan, { setupId });
  const setup = setupIn(freed, setupId);
  if (!setup) return plan;
  const spots = spotsOf(setup);
  const [first] = setup.move.keys;
  const room = DOLLY_WHEELBASE_METRES / 2 + SPARE_METRES;
  const middle = spots[Math.floor(spots.length / 2)];
  const fit = bent
    ? spots.length < 3
      ? null
      : arcThrough([spots[0], middle, spots[spots.length - 1]], room)
    : straightThrough(spots, room, first.headingDegrees);
  if (!fit) return plan;
  const floor = surfaceUnder(freed, fit.at, { belowMetres: first.position[1] }).metres;
  const trackId = freeId(
    itemsOf(freed).map(({ record }) => record),
    'track',
  );
  const { bendMetres } = fit;
  const laid = addItem(freed, {
    section: 'gear',
    record: {
      kind: 'track',
      id: trackId,
      label: freeLabel(freed, bendMetres === undefined ? 'Dolly track' : 'Curved track'),
      at: [fit.at[0], floor, fit.at[1]],
      headingDegrees: fit.headingDegrees,
      lengthMetres: Math.max(SHORTEST_METRES, fit.lengthMetres),
      gaugeMetres: GAUGE_METRES,
      ...(bendMetres !== undefined && { bendMetres }),
    },
  });
  if (laid === freed) return plan;
  return putOnTrack(changeSetup(laid, { setupId, patch: { support: 'dolly' } }), { setupId, trackId });
}

/** Puts a new dolly under a setup's camera, along its track where it has one. */
export function putDollyUnder(plan: Plan, { setupId }: { readonly setupId: string }): Plan {
  const setup = setupIn(plan, setupId);
  if (!setup) return plan;
  const [from] = spanOf(plan, setup);
  const { position, headingDegrees } = stateAt(plan, setup, from);
  const track = trackOf(plan, setup);
  const line = track && trackPointAt(track, alongAt(plan, setup, from) ?? 0);
  const floor = surfaceUnder(plan, [position[0], position[2]], { belowMetres: position[1] }).metres;
  return putDolly(plan, {
    setupId,
    at: [position[0], line ? line.at[1] : floor, position[2]],
    headingDegrees: line ? line.headingDegrees : headingDegrees,
  });
}

/**
 * Slides a setup's camera along its track so that its first key comes as near to [x, z] as the track lets it; the
 * other keys by as much, so far that every key keeps the room that its wheels need. Without a track nothing changes.
 */
export function slideOnTrack(
  plan: Plan,
  { setupId, to }: { readonly setupId: string; readonly to: Spot },
): Plan {
  const setup = setupIn(plan, setupId);
  const track = setup && trackOf(plan, setup);
  if (!setup || !track) return plan;
  const alongs = setup.move.keys.map((key) => keyAlong(track, key));
  const [low, high] = roomOn(track);
  const [least, most] = [low - Math.min(...alongs), high - Math.max(...alongs)];
  if (least > most) return plan;
  const by = Math.min(most, Math.max(least, alongTrack(track, to) - alongs[0]));
  return changeKeys(plan, {
    setupId,
    change: (keys) => keys.map((key, k) => keyOn(track, key, alongs[k] + by)),
  });
}

/** Moves a setup's camera so that its first key comes to [x, z]: along its track where it has one, else over the deck. */
export function moveCamera(plan: Plan, args: { readonly setupId: string; readonly to: Spot }): Plan {
  const setup = setupIn(plan, args.setupId);
  return setup && trackOf(plan, setup) ? slideOnTrack(plan, args) : moveSetup(plan, args);
}

/** Takes one key of a move to a place along its track, metres from its rear end, within the room that wheels need. */
export function setAlong(
  plan: Plan,
  args: { readonly setupId: string; readonly keyIndex: number; readonly alongMetres: number },
): Plan {
  const setup = setupIn(plan, args.setupId);
  const track = setup && trackOf(plan, setup);
  if (!track) return plan;
  return changeKeys(plan, {
    setupId: args.setupId,
    change: (keys) =>
      keys.map((key, k) =>
        k === args.keyIndex
          ? keyOn(track, key, Math.min(track.lengthMetres, Math.max(0, args.alongMetres)))
          : key,
      ),
  });
}
