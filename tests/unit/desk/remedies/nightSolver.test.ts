import { beforeEach, expect, test } from 'vitest';
import type { SolveAnswer, SolveProgress, SolveQuestion } from '../../../../src/core/clearance/solve/types';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { NightSolver } from '../../../../src/desk/remedies/nightSolver';
import { setStays, solveStore } from '../../../../src/desk/remedies/solveStore';
import { FIRST_TOLERANCE } from '../../../../src/desk/remedies/toleranceStore';
import { smallRoof } from '../../smallRoof';

const plan = smallRoof();
const question: SolveQuestion = { movable: ['stand-in'], tolerance: FIRST_TOLERANCE };
const progress = (share: number): SolveProgress => ({ share, tried: 3, cleared: 1, setups: 3, best: null });
const answer: SolveAnswer = {
  outcome: 'clear',
  sentence: 'All 3 setups are clear already.',
  best: null,
  obstacles: [],
  tried: 3,
  cleared: 3,
  setups: 3,
};

interface Asked {
  readonly plan: Plan;
  readonly question: SolveQuestion;
  readonly tell: (progress: SolveProgress) => void;
  readonly answer: (answer: SolveAnswer | null) => void;
  readonly fail: (error: Error) => void;
}

/** Answers when it is told to, as a worker does in its own time. */
class SlowWorker {
  readonly asked: Asked[] = [];
  solve = (of: Plan, what: SolveQuestion, tell: (progress: SolveProgress) => void) =>
    new Promise<SolveAnswer | null>((resolve, fail) => {
      this.asked.push({ plan: of, question: what, tell, answer: resolve, fail });
    });
  giveUp = (): void => this.asked.at(-1)?.answer(null);
}

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
const state = () => solveStore.getState();
let worker = new SlowWorker();
let solver = new NightSolver(worker);

beforeEach(() => {
  solveStore.setState(solveStore.getInitialState(), true);
  worker = new SlowWorker();
  solver = new NightSolver(worker);
});

test('tells how far it is, and what it comes to', async () => {
  void solver.start(plan, question);
  expect(state()).toMatchObject({ running: true, forPlan: plan, answer: null });
  worker.asked[0]?.tell(progress(0.3));
  expect(state().progress?.share).toBe(0.3);
  worker.asked[0]?.answer(answer);
  await settled();
  expect(state()).toMatchObject({ running: false, answer });
  // What is told late changes nothing.
  worker.asked[0]?.tell(progress(0.9));
  expect(state().progress?.share).toBe(0.3);
});

test('stopped, it keeps the best so far; begun anew, it forgets it', async () => {
  void solver.start(plan, question);
  worker.asked[0]?.tell(progress(0.5));
  solver.stop();
  await settled();
  expect(state()).toMatchObject({ running: false, stopped: true, answer: null });
  expect(state().progress?.share).toBe(0.5);
  void solver.start(plan, question);
  expect(state()).toMatchObject({ running: true, stopped: false, progress: null });
  worker.asked[1]?.answer(answer);
  await settled();
  expect(state().answer).toBe(answer);
});

test('a search for a plan that has gone is given up and forgotten', async () => {
  void solver.start(plan, question);
  solver.forget();
  worker.asked[0]?.answer(answer);
  await settled();
  expect(state()).toMatchObject({ running: false, forPlan: null, answer: null });
});

test('a failure is said in a sentence', async () => {
  void solver.start(plan, question);
  worker.asked[0]?.fail(new Error('the worker did not start'));
  await settled();
  expect(state()).toMatchObject({
    running: false,
    trouble: 'Nothing could be looked for: the worker did not start.',
  });
});

test('things are let move and have to stay', () => {
  setStays(['a', 'b'], true);
  setStays(['a'], false);
  expect([...state().stays]).toEqual(['b']);
});
