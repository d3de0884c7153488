import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { noMarks, setupReader } from './setupReader';
import { groundSquares } from './squares';
import { type Standing, standingOf } from './thing';
import { GROUND_STATES, type GroundAnswer, type GroundQuestion, type GroundSquares } from './types';

const STEP_METRES = 0.25;
const LEAST_STEP_METRES = 0.05;
/** So many windows of a setup's frames are read at a time, between which whoever asks may stop. */
const WINDOWS_A_STEP = 16;

const [, CLEAR, , , , SHOWING] = GROUND_STATES.keys();

/** What a question is about, once it is known to have an answer. */
interface Asked {
  readonly setups: readonly Setup[];
  readonly standing: Standing;
  readonly squares: GroundSquares;
}

/** What a question is about; a sentence where it has no answer. */
export function askedOf(
  plan: Plan,
  { setupIds, of, stepMetres = STEP_METRES }: GroundQuestion,
): Asked | string {
  const setups: Setup[] = [];
  if (setupIds.length === 0) return 'No setup was named: expected at least one that it has to stay clear of.';
  for (const id of setupIds) {
    const setup = plan.setups.find((each) => each.id === id);
    if (!setup) return `There is no setup "${id}" in this plan.`;
    setups.push(setup);
  }
  if (!(stepMetres >= LEAST_STEP_METRES))
    return `The side of a square: found ${stepMetres} m, expected at least ${LEAST_STEP_METRES} m.`;
  const standing = standingOf(plan, of);
  if (typeof standing === 'string') return standing;
  const squares = groundSquares(plan, stepMetres);
  return squares ? { setups, standing, squares } : 'This plan has no deck that something could stand on.';
}

/**
 * Where on the decks a thing may stand: for each square what the worst of the chosen setups makes of it over its whole
 * span, frame by frame as the report has them, wherever in the square its foot is; and how tall something thin may be
 * there. What a frame takes in is a stump of a pyramid, so the places of a foot at which a piece of the thing would be
 * in it are convex, and their outline is exact; only then it is laid over squares. A square that is called clear is
 * clear. A lens that bends lines has the upright rectangle around its frame. In mirrors that are not level nothing
 * covers. What covers has to be one convex solid of the set or of what stands still, for each piece of the thing:
 * performers and what several things cover together do not count. What is aimed has the ball that it turns in.
 * Yields the done share, 0..1.
 */
export function* clearGroundSteps(
  plan: Plan,
  question: GroundQuestion,
): Generator<number, GroundAnswer, void> {
  const asked = askedOf(plan, question);
  if (typeof asked === 'string') return { why: asked };
  const { setups, standing, squares } = asked;
  const count = squares.columns * squares.rows;
  const states = new Uint8Array(count);
  const limitMetres = new Float64Array(count);
  for (let at = 0; at < count; at += 1) {
    const isDeck = !Number.isNaN(squares.deckMetres[at]);
    states[at] = isDeck ? CLEAR : 0;
    limitMetres[at] = isDeck ? Infinity : Number.NaN;
  }
  const worstSetup = new Int16Array(count).fill(-1);
  const worstSeconds = new Float64Array(count).fill(Number.NaN);
  for (const [place, setup] of setups.entries()) {
    const steps = oneSetup(plan, setup, standing, squares, { known: states, limits: limitMetres });
    for (;;) {
      const step = steps.next();
      if (!step.done) {
        yield (place + step.value) / setups.length;
        continue;
      }
      const { codes, seconds } = step.value;
      for (let at = 0; at < count; at += 1) {
        if (states[at] === 0 || codes[at] <= states[at]) continue;
        states[at] = codes[at];
        worstSetup[at] = place;
        worstSeconds[at] = seconds[at];
      }
      break;
    }
  }
  return {
    ground: {
      ...squares,
      thing: standing.words,
      setupIds: question.setupIds,
      states,
      worstSetup,
      worstSeconds,
      limitMetres,
    },
  };
}

interface OneSetup {
  readonly codes: Uint8Array;
  readonly seconds: Float64Array;
}

/** What the setups before have left: the states, and the limits, which are lowered. */
interface SoFar {
  readonly known: Uint8Array;
  readonly limits: Float64Array;
}

function* oneSetup(
  plan: Plan,
  setup: Setup,
  standing: Standing,
  squares: GroundSquares,
  { known, limits }: SoFar,
): Generator<number, OneSetup, void> {
  const count = squares.columns * squares.rows;
  const codes = new Uint8Array(count).fill(CLEAR);
  const seconds = new Float64Array(count).fill(Number.NaN);
  if (known.every((code) => code === 0)) return { codes, seconds };
  const { instants, windows, read, judge } = setupReader(plan, setup, standing, squares);
  const marks = noMarks(count);
  for (const place of windows.keys()) {
    read(place, marks, limits);
    if (place % WINDOWS_A_STEP === WINDOWS_A_STEP - 1) yield (0.8 * place) / windows.length;
  }
  for (let at = 0; at < count; at += 1) {
    // Where another setup sees it, how this one does makes no difference.
    if (known[at] === SHOWING || known[at] === 0) continue;
    const [code, place] = judge(marks, at);
    codes[at] = code;
    if (place >= 0) seconds[at] = instants[windows[place].first];
  }
  return { codes, seconds };
}

/** The whole of clear ground at once. */
export function clearGround(plan: Plan, question: GroundQuestion): GroundAnswer {
  const steps = clearGroundSteps(plan, question);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
