import type { SquareReading } from '../../core/clearance/ground/groundAt';
import type { LimitAnswer } from '../../core/clearance/ground/heightLimit';
import type { GroundAnswer, GroundQuestion } from '../../core/clearance/ground/types';
import type { UsefulAnswer, UsefulQuestion } from '../../core/clearance/useful/types';
import type { Plan } from '../../core/plan/schema/plan';
import { latestWins } from '../latestWins';
import { sentenceOf } from '../reasonOf';
import type { GroundWork } from './groundApi';
import { groundStore } from './groundStore';
import { GroundWorker } from './groundWorker';

/** Squares of clear ground, coarse ones first so that something is seen while a hand drags, metres. */
const STEPS = [1, 0.25] as const;
/** The same where each square has to be lit. */
const LIT_STEPS = [1, 0.5, 0.25] as const;

const troubleOf = (error: unknown): string => sentenceOf('Clear ground could not be worked out', error);

let worker: GroundWorker | null = null;
/** Started by the first question: who never asks for the ground has none. */
function theWorker(): GroundWorker {
  worker ??= new GroundWorker();
  return worker;
}

/** A question that is asked again and again while a hand drags. */
interface Asking<Question> {
  readonly ask: (plan: Plan, question: Question) => void;
  /** Stops what is being reckoned for nobody. */
  readonly stop: () => void;
}

/**
 * Asks for something coarse, then fine, as long as nothing newer is asked. What is coarse is always waited for, or a
 * hand that never rests would see nothing; what is fine is given up.
 */
function coarseThenFine<Question, Answer>(
  what: GroundWork,
  steps: readonly number[],
  ask: (plan: Plan, question: Question & { readonly stepMetres: number }) => Promise<Answer | null>,
  take: (answer: Answer) => void,
  fail: (sentence: string) => void,
): Asking<Question> {
  let isFine = false;
  const line = latestWins<{ readonly plan: Plan; readonly question: Question }>(
    async ({ plan, question }, isLatest) => {
      for (const [k, stepMetres] of steps.entries()) {
        isFine = k > 0;
        try {
          const answer = await ask(plan, { ...question, stepMetres });
          if (answer === null) break;
          take(answer);
        } catch (error) {
          fail(troubleOf(error));
          break;
        }
        if (!isLatest()) break;
      }
      isFine = false;
    },
  );
  return {
    ask: (plan, question) => {
      if (isFine) worker?.giveUp(what);
      line.ask({ plan, question });
    },
    stop: () => {
      line.drop();
      worker?.giveUp(what);
    },
  };
}

const failing = (why: string): void => groundStore.setState({ why });

/** Where on the decks a thing stays clear. */
export const clearAsking = coarseThenFine<GroundQuestion, GroundAnswer>(
  'clear',
  STEPS,
  async (plan, question) => theWorker().about<GroundAnswer | null>(plan, (api) => api.clear(question)),
  (answer) =>
    groundStore.setState('why' in answer ? { why: answer.why, ground: null } : { ...answer, why: null }),
  failing,
);

/** How tall a stand may be. */
export const limitsAsking = coarseThenFine<Omit<GroundQuestion, 'of'>, LimitAnswer>(
  'limits',
  STEPS,
  async (plan, question) => theWorker().about<LimitAnswer | null>(plan, (api) => api.limits(question)),
  (answer) =>
    groundStore.setState('why' in answer ? { why: answer.why, limits: null } : { ...answer, why: null }),
  failing,
);

/** Where a lamp does what it should. */
export const usefulAsking = coarseThenFine<UsefulQuestion, UsefulAnswer>(
  'useful',
  LIT_STEPS,
  async (plan, question) => theWorker().about<UsefulAnswer | null>(plan, (api) => api.useful(question)),
  (answer) =>
    groundStore.setState(
      'why' in answer ? { usefulWhy: answer.why, useful: null } : { ...answer, usefulWhy: null },
    ),
  (usefulWhy) => groundStore.setState({ usefulWhy }),
);

interface SquareQuestion {
  readonly plan: Plan;
  readonly question: GroundQuestion;
  readonly at: Place;
}

type Place = readonly [number, number];

const readings = latestWins<SquareQuestion>(async ({ plan, question, at }, isLatest) => {
  const reading = await theWorker()
    .about<SquareReading | string | null>(plan, (api) => api.at(question, at))
    .catch(troubleOf);
  if (!isLatest()) return;
  if (typeof reading === 'string') groundStore.setState({ why: reading });
  else groundStore.setState(({ place }) => ({ place: { at: place?.at ?? at, reading } }));
});

/** Points at a place of the roof, [x, z], metres; `readGround` reads it. */
export const pointGround = (at: Place): void =>
  groundStore.setState(({ place }) => ({ place: { ...place, at } }));

/** Reads who sees what would stand at a place, and when. */
export const readGround = (plan: Plan, question: GroundQuestion, at: Place): void =>
  readings.ask({ plan, question, at });
