import { beforeEach, expect, test } from 'vitest';
import type { RemedyQuestion } from '../../../../src/core/clearance/remedies/remediesFor';
import type { Remedy } from '../../../../src/core/clearance/remedies/types';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { remediesStore } from '../../../../src/desk/remedies/remediesStore';
import { RemedySeeker } from '../../../../src/desk/remedies/remedySeeker';
import { FIRST_TOLERANCE, toleranceOfWords } from '../../../../src/desk/remedies/toleranceStore';
import { smallRoof } from '../../smallRoof';

const plan = smallRoof();
const asked = (itemId: string, more: { readonly plan?: Plan; readonly levelStops?: number } = {}) => ({
  plan: more.plan ?? plan,
  setupId: 'master',
  itemId,
  tolerance: { ...FIRST_TOLERANCE, levelStops: more.levelStops ?? FIRST_TOLERANCE.levelStops },
  seen: [],
});

const remedy = (words: string): Remedy => ({
  kind: 'move',
  words,
  edits: [],
  cost: { metres: 1, stops: 0, degrees: 0, otherSetups: [] },
  after: 'clear',
  relies: 'geometry',
  proved: true,
});

interface Asked {
  readonly plan: Plan;
  readonly question: RemedyQuestion;
  readonly tell: (share: number) => void;
  readonly answer: (remedies: readonly Remedy[] | null) => void;
  readonly fail: (error: Error) => void;
}

/** Answers when it is told to, as a worker does in its own time. */
class SlowWorker {
  readonly asked: Asked[] = [];
  remedies = (of: Plan, question: RemedyQuestion, tell: (share: number) => void) =>
    new Promise<readonly Remedy[] | null>((answer, fail) => {
      this.asked.push({ plan: of, question, tell, answer, fail });
    });
  giveUp = (): void => this.asked.at(-1)?.answer(null);
}

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
const state = () => remediesStore.getState();
let worker = new SlowWorker();
let seeker = new RemedySeeker(worker);

beforeEach(() => {
  remediesStore.setState(remediesStore.getInitialState(), true);
  worker = new SlowWorker();
  seeker = new RemedySeeker(worker);
});

test('tells how far it is, keeps what is found, and asks nothing twice', async () => {
  seeker.ask(asked('stand-in'));
  expect(state().share).toBe(0);
  worker.asked[0]?.tell(0.4);
  expect(state().share).toBe(0.4);
  worker.asked[0]?.answer([remedy('0.4 m')]);
  await settled();
  expect(state().share).toBeNull();
  expect(state().found.get('master stand-in')).toEqual([remedy('0.4 m')]);
  seeker.ask(asked('stand-in'));
  expect(worker.asked).toHaveLength(1);
  expect(state().share).toBeNull();
});

test('a newer question ends the one before, and its answer alone counts', async () => {
  seeker.ask(asked('stand-in'));
  seeker.ask(asked('lamp'));
  await settled();
  expect(worker.asked.map(({ question }) => question.itemId)).toEqual(['stand-in', 'lamp']);
  worker.asked[0]?.tell(0.9);
  expect(state().share).toBe(0);
  worker.asked[1]?.answer([]);
  await settled();
  expect([...state().found.keys()]).toEqual(['master lamp']);
});

test('another plan or another tolerance forgets what was found', async () => {
  seeker.ask(asked('stand-in'));
  worker.asked[0]?.answer([remedy('0.4 m')]);
  await settled();
  seeker.ask(asked('lamp', { levelStops: 2 }));
  expect(state().found.size).toBe(0);
  worker.asked[1]?.answer([]);
  await settled();
  seeker.ask(asked('stand-in', { plan: { ...plan, title: 'Another' }, levelStops: 2 }));
  expect(state().found.size).toBe(0);
  expect(worker.asked[2]?.plan.title).toBe('Another');
});

test('is stopped and begun again; a failure is said in a sentence', async () => {
  seeker.ask(asked('stand-in'));
  seeker.stop();
  await settled();
  expect(state()).toMatchObject({ share: null, stopped: true });
  seeker.ask(asked('stand-in'));
  expect(state()).toMatchObject({ share: 0, stopped: false });
  worker.asked[1]?.fail(new Error('the worker did not start'));
  await settled();
  expect(state().trouble).toBe('Nothing could be looked for: the worker did not start.');
  expect(state().share).toBeNull();
});

test('a tolerance is read as it was written; anything else is the first one', () => {
  expect(toleranceOfWords('0.25 30')).toEqual({ levelStops: 0.25, angleDegrees: 30 });
  for (const words of [null, '', '1', 'a b', '-1 3', '7 3', '1 181', 'NaN 4'])
    expect(toleranceOfWords(words)).toEqual(FIRST_TOLERANCE);
});
