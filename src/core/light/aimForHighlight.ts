import { length, subtract, type Vec3 } from '../form/build/vector';
import { lampsAt } from '../form/lamps';
import { cameraAt } from '../optics/camera';
import { isInFrame, projectPoint } from '../optics/project';
import { anchorOf, carrierOf } from '../plan/edits/anchorOf';
import { moveItem } from '../plan/edits/moveItem';
import { raiseItems } from '../plan/edits/raiseItems';
import { itemOf } from '../plan/items';
import { named } from '../plan/named';
import type { Spot } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { surfaceUnder } from '../plan/surfaces';
import { formatLength } from '../units/lengths';
import type { Refused } from './advice';
import { type Highlight, highlightsAt } from './wetFloor';
import { deckAt } from './wetness';

/** A place for a lamp whose highlight then lies where it is wanted. */
export interface HighlightPlace {
  /** Where the lamp glows from, world metres. */
  readonly lampAt: Vec3;
  /** What stands there: the lamp's stand, or the lamp. `move`: for `moveItem`; `raise`: for `raiseItems`, after it. */
  readonly move: { readonly id: string; readonly to: Spot };
  readonly raise: { readonly ids: readonly string[]; readonly byMetres: number };
  readonly movedMetres: number;
  /** The highlight there, seen through the setup; null where it is covered, or the lamp does not light it. */
  readonly highlight: Highlight | null;
}

/** Two ways to bring a highlight to a spot. */
export interface HighlightAdvice {
  /** As high as it is now: where it has to stand. */
  readonly stand: HighlightPlace | Refused;
  /** As near to where it is now as may be, and as high as that asks for. */
  readonly raise: HighlightPlace | Refused;
}

/** Moves until the lamp glows from where it has to: turning to its aim shifts its face a little each time. */
const TURNS = 6;
/** Nearer to the spot than this, over the deck, no lamp is put. Source: common practice, no source */
const NEAREST_METRES = 0.3;
/** Lower than this over the deck nothing glows, and what raises less than this is as high as it was; metres. */
const LOWEST_METRES = 0.05;

const glowsFrom = (plan: Plan, lampId: string, seconds: number): Vec3 | null =>
  lampsAt(plan, seconds).find(({ itemId }) => itemId === lampId)?.position ?? null;

interface Line {
  readonly spot: Vec3;
  /** Level unit vector away from the camera. */
  readonly away: Spot;
  /** How far the mirrored way rises for a metre over the deck. */
  readonly rise: number;
}

/** The way from the lens to the spot, mirrored in the deck: on it, and only there, a lamp has its highlight at the spot. */
function mirroredWay(eye: Vec3, spot: Vec3): Line | null {
  const [x, , z] = subtract(spot, eye);
  const level = length([x, 0, z]);
  const height = eye[1] - spot[1];
  return height <= 0 || level < 1e-6 ? null : { spot, away: [x / level, z / level], rise: height / level };
}

type Wanted = (lamp: Vec3) => Vec3;

/** As high as it is. */
const atHeight =
  ({ spot, away, rise }: Line): Wanted =>
  (lamp) => {
    const far = (lamp[1] - spot[1]) / rise;
    return [spot[0] + away[0] * far, lamp[1], spot[2] + away[1] * far];
  };

/** Straight in from where it is over the deck. */
const inLine =
  ({ spot, away, rise }: Line, from: Vec3): Wanted =>
  () => {
    const far = Math.max(NEAREST_METRES, (from[0] - spot[0]) * away[0] + (from[2] - spot[2]) * away[1]);
    return [spot[0] + away[0] * far, spot[1] + far * rise, spot[2] + away[1] * far];
  };

function placeFor(
  plan: Plan,
  setup: Setup,
  seconds: number,
  lampId: string,
  wanted: Wanted,
): HighlightPlace | Refused {
  const label = itemOf(plan, lampId)?.record.label ?? lampId;
  const from = anchorOf(plan, lampId);
  const start = glowsFrom(plan, lampId, seconds);
  if (!from || !start) return { refused: `${named(label)} does not glow from one place.` };
  const carrier = carrierOf(plan, lampId);
  if (itemOf(plan, carrier ?? lampId)?.record.locked)
    return { refused: `${named(label)} is locked in its place.` };
  let moved = plan;
  let to: Spot = from;
  let byMetres = 0;
  for (let turn = 0; turn < TURNS; turn += 1) {
    const now = glowsFrom(moved, lampId, seconds) ?? start;
    const next = wanted(now);
    to = [to[0] + next[0] - now[0], to[1] + next[2] - now[2]];
    byMetres += next[1] - now[1];
    moved = raiseItems(moveItem(plan, { id: lampId, to }), { ids: [lampId], byMetres });
  }
  const lampAt = glowsFrom(moved, lampId, seconds) ?? start;
  const asked = wanted(lampAt);
  const deck = surfaceUnder(plan, to);
  if (carrier !== null && deck.id === null)
    return { refused: `${named(label)} would have to stand off the deck.` };
  if (asked[1] - deck.metres < LOWEST_METRES)
    return { refused: `${named(label)} would have to hang below the deck.` };
  if (length(subtract(asked, lampAt)) > 0.02)
    return {
      refused: `${named(label)} would have to be ${formatLength(asked[1] - deck.metres, 'm')} high, which its stand does not reach.`,
    };
  return {
    lampAt,
    move: { id: lampId, to },
    raise: { ids: [lampId], byMetres: Math.abs(byMetres) < 0.001 ? 0 : byMetres },
    movedMetres: length([to[0] - from[0], 0, to[1] - from[1]]),
    highlight: highlightsAt(moved, setup, seconds).find((highlight) => highlight.lampId === lampId) ?? null,
  };
}

/**
 * Where a lamp must stand, or how high it must be, so that its highlight in the deck lies at a spot [x, z] for a setup's
 * camera: on the line from the lens to the spot, mirrored in the deck. Refused where the spot is no deck or out of
 * frame, where the lens is not above it, or where the lamp cannot go.
 */
export function aimForHighlight(
  plan: Plan,
  setup: Setup,
  lampId: string,
  at: Spot,
  seconds: number,
): HighlightAdvice | Refused {
  const deck = deckAt(plan, at);
  if (!deck) return { refused: 'There is no deck at that spot to show a highlight.' };
  const camera = cameraAt(plan, setup, seconds);
  const spot: Vec3 = [at[0], deck.topMetres, at[1]];
  const seen = projectPoint(camera, spot);
  if (!seen || !isInFrame(seen))
    return { refused: `That spot is not in the frame of ${named(setup.label)}.` };
  const line = mirroredWay(camera.pose.position, spot);
  if (!line) return { refused: `The lens of ${named(setup.label)} is not above the deck beside that spot.` };
  const lamps = lampsAt(plan, seconds).filter(({ itemId }) => itemId === lampId);
  const [lamp] = lamps;
  if (!lamp || lamps.length > 1) return { refused: 'Only a single lamp can be brought there.' };
  return {
    stand: placeFor(plan, setup, seconds, lampId, atHeight(line)),
    raise: placeFor(plan, setup, seconds, lampId, inLine(line, lamp.position)),
  };
}
