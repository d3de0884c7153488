import { length, subtract, type Vec3 } from '../../form/build/vector';
import { lampsAt } from '../../form/lamps';
import { askedLux, stopsBetween } from '../../light/exposure';
import { bearingOffFace, type Face, faceAt } from '../../light/face';
import { dimAt, isLamp, type Lamp, playedCues } from '../../plan/cues';
import { anchorOf, carrierOf } from '../../plan/edits/anchorOf';
import { entourageOf } from '../../plan/edits/entourage';
import { named } from '../../plan/named';
import { played } from '../../plan/played';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { atan2, hypot, pow } from '../../units/steadyMath';
import { clearGroundSteps } from '../ground/clearGround';
import { middleOf } from '../ground/squares';
import { type ClearGround, GROUND_STATES } from '../ground/types';
import { standingRoom } from '../remedies/standingRoom';
import { LampTrial } from './lampTrial';
import { putLamp } from './putLamp';
import type { Range } from './roles';
import { USEFUL_STATES, type UsefulAnswer, type UsefulQuestion } from './types';

const [, NOT_CLEAR, NO_ROOM, OUT_OF_ROLE, TOO_WEAK, TOO_STRONG, OUTSHONE, USEFUL] = USEFUL_STATES.keys();
const CLEAR = GROUND_STATES.indexOf('clear');
/** Lamps are aimed anew where they go, which moves their glass a little: so far off is asked of the light itself. */
const NEARLY_DEGREES = 4;
const NEARLY_METRES = 0.4;
/** A dimmer is set to thousandths, and to one at least. */
const DIM_STEPS = 1000;
/** What is left of a level's tolerance for rounding the dim, stops. */
const ROUNDING_STOPS = 1e-6;
/** So many squares are lit between which whoever asks may stop. */
const SQUARES_A_STEP = 4;

const isIn = (value: number, [from, to]: Range, slack = 0): boolean =>
  value >= from - slack && value <= to + slack;

/** What the question is about, once it is known to have an answer. */
interface Asked {
  readonly lamp: Lamp;
  readonly setup: Setup;
  readonly face: Face;
  readonly foot: Spot;
  /** From the foot to where the lamp shines from, as it stands now. */
  readonly glass: Vec3;
  /** Whether its dim is set; what cues say is not. */
  readonly setsDim: boolean;
  /** The item that stands on the deck. */
  readonly standsId: string;
}

function askedOf(
  plan: Plan,
  { lampId, performerId, setupId, seconds, mayDim }: UsefulQuestion,
): Asked | string {
  const lamp = plan.gear.find(({ id }) => id === lampId);
  if (!lamp || !isLamp(lamp) || lamp.kind === 'bulb string')
    return 'Choose one lamp that has a place of its own.';
  const setup = plan.setups.find(({ id }) => id === setupId);
  if (!setup) return 'There is no setup to light for: place a camera first.';
  const acted = played(plan, setup);
  const performer = acted.cast.find(({ id }) => id === performerId);
  const face = performer && faceAt(performer, acted, seconds);
  if (!performer || !face) return 'There is nobody on a mark to light at this moment.';
  // A lamp whose cues play has its level from them.
  const setsDim = mayDim && playedCues(plan, lamp).length === 0;
  if (!setsDim && dimAt(lamp, plan, seconds) === 0) return `${named(lamp.label)} is off at this moment.`;
  const foot = anchorOf(plan, lampId);
  const shining = lampsAt(plan, seconds).find(({ itemId }) => itemId === lampId);
  if (!foot || !shining) return `${named(lamp.label)} has no place of its own.`;
  const [x, y, z] = shining.position;
  return {
    lamp,
    setup,
    face,
    foot,
    glass: [x - foot[0], y, z - foot[1]],
    setsDim,
    standsId: carrierOf(plan, lampId) ?? lampId,
  };
}

/** Where a lamp is as a face sees it. */
function seenFrom(face: Face, at: Vec3): { bearing: number; elevation: number; metres: number } {
  const way = subtract(at, face.at);
  return {
    bearing: bearingOffFace(face, way),
    elevation: (atan2(way[1], hypot(way[0], way[2])) * 180) / Math.PI,
    metres: length(way),
  };
}

/** Whether a bearing, positive to the face's own right, an elevation and a distance are within a role's range. */
function isInRole(
  { range, side }: UsefulQuestion,
  { bearing, elevation, metres }: ReturnType<typeof seenFrom>,
  slack: { readonly degrees: number; readonly metres: number },
): boolean {
  const isOnSide =
    side === 'either' || (side === 'right' ? bearing >= -slack.degrees : bearing <= slack.degrees);
  return (
    isOnSide &&
    isIn(Math.abs(bearing), range.bearingDegrees, slack.degrees) &&
    isIn(elevation, range.elevationDegrees, slack.degrees) &&
    isIn(metres, range.metres, slack.metres)
  );
}

interface Lit {
  readonly state: number;
  readonly dim: number;
  readonly stops: number;
}

/** What a lamp does for a face from a place, by the light of the whole scene. */
function litFrom(plan: Plan, question: UsefulQuestion, asked: Asked, trial: LampTrial, to: Spot): Lit {
  const { lampId, role, stops, toleranceStops, seconds } = question;
  const { lamp, face, setup, setsDim } = asked;
  const tried = trial.in(putLamp(plan, { lampId, to, aim: face.at, dim: setsDim ? 1 : null }));
  const none = { dim: Number.NaN, stops: Number.NaN };
  if (!tried) return { state: TOO_WEAK, ...none };
  if (tried.isAhead !== (role === 'key') || !isInRole(question, tried, { degrees: 0, metres: 0 }))
    return { state: OUT_OF_ROLE, ...none };
  const reference = askedLux(setup);
  const exact = (reference * pow(2, stops)) / tried.lux;
  const share = setsDim ? Math.min(1, Math.max(1 / DIM_STEPS, Math.round(exact * DIM_STEPS) / DIM_STEPS)) : 1;
  const level = tried.lux * share;
  const dim = setsDim ? share : dimAt(lamp, plan, seconds);
  if (level <= 0) return { state: TOO_WEAK, ...none };
  const reached = stopsBetween(reference, level);
  const found = { dim, stops: reached };
  if (reached < stops - toleranceStops + ROUNDING_STOPS) return { state: TOO_WEAK, ...found };
  if (reached > stops + toleranceStops - ROUNDING_STOPS) return { state: TOO_STRONG, ...found };
  return { state: tried.othersLux >= level ? OUTSHONE : USEFUL, ...found };
}

function* clearFor(
  plan: Plan,
  { standsId }: Asked,
  { clearOf, stepMetres }: UsefulQuestion,
): Generator<number, ClearGround | string, void> {
  const answer = yield* clearGroundSteps(plan, {
    setupIds: clearOf,
    of: { itemId: standsId },
    ...(stepMetres !== undefined && { stepMetres }),
  });
  return 'why' in answer ? answer.why : answer.ground;
}

/**
 * Where on the decks a lamp can go: where what stands there stays clear of the setups over their whole spans, has room to
 * stand, and lights a performer's face from where its role asks and with the level that is wanted. Clear is the whole
 * square; role and level are those of the lamp in the square's middle, aimed at the face, with the shadows there; the
 * level is the key's or the back's as the report reads them, and the lamp is the strongest of these.
 * Yields the done share, 0..1.
 */
export function* usefulGroundSteps(
  plan: Plan,
  question: UsefulQuestion,
): Generator<number, UsefulAnswer, void> {
  const asked = askedOf(plan, question);
  if (typeof asked === 'string') return { why: asked };
  const { setup, face, foot, glass, setsDim, standsId } = asked;
  const ground = yield* clearFor(plan, asked, question);
  if (typeof ground === 'string') return { why: ground };
  const { columns, rows, corner, stepMetres, deckMetres } = ground;
  const count = columns * rows;
  const states = new Uint8Array(count);
  const dims = new Float64Array(count).fill(Number.NaN);
  const stops = new Float64Array(count).fill(Number.NaN);
  const own = new Set([
    standsId,
    ...plan.gear.flatMap(({ id }) => (carrierOf(plan, id) === standsId ? [id] : [])),
  ]);
  // A plan in which nothing is locked: whether it may be moved is asked when it is.
  const free: Plan = {
    ...plan,
    gear: plan.gear.map((gear) => (gear.locked ? { ...gear, locked: false } : gear)),
  };
  const trial = new LampTrial(free, setup, question.seconds, face, question.lampId, own);
  // Bags over its legs go along too, and are in nobody's way.
  const { carriers } = entourageOf(free, [standsId], { evenLocked: false, decks: false });
  const hasRoom = standingRoom(plan, standsId, new Set(carriers.keys()));
  const slack = { degrees: NEARLY_DEGREES, metres: NEARLY_METRES };
  let lit = 0;
  for (let square = 0; square < count; square += 1) {
    if (Number.isNaN(deckMetres[square])) continue;
    const [x, z] = middleOf(ground, square);
    const near = seenFrom(face, [x + glass[0], glass[1], z + glass[2]]);
    if (!isInRole(question, near, slack)) states[square] = OUT_OF_ROLE;
    else if (ground.states[square] !== CLEAR) states[square] = NOT_CLEAR;
    else if (!hasRoom([x, z])) states[square] = NO_ROOM;
    else {
      const found = litFrom(free, question, asked, trial, [x, z]);
      states[square] = found.state;
      stops[square] = found.stops;
      if (found.state === USEFUL) dims[square] = found.dim;
      lit += 1;
      if (lit % SQUARES_A_STEP === 0) yield square / count;
    }
  }
  const squares = { stepMetres, corner, columns, rows, deckMetres };
  return { useful: { ...squares, question, aim: face.at, foot, states, setsDim, dims, stops } };
}
