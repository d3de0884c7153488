import { beforeEach, expect, test } from 'vitest';
import { type LensTrial, lensTrialSteps } from '../../../src/core/report/lensTest';
import { allLensTries } from '../../../src/core/report/lensTries';
import { type LensQuestion, LensTester, type LensTrier } from '../../../src/desk/lensTester';
import { lensTestStore } from '../../../src/desk/lensTestStore';
import { smallRoof } from '../smallRoof';

const plan = smallRoof();
const [setup] = plan.setups;
const question: LensQuestion = { plan, setup, atSeconds: null };

/** Answers when it is told to, as a worker does in its own time. */
class SlowTrier implements LensTrier {
  readonly asked: string[] = [];
  #answer: ((trial: LensTrial | null) => void) | null = null;
  readonly #trials = new Map<string, LensTrial>();

  tryLens: LensTrier['tryLens'] = (of, on, tryId, _, tell) => {
    this.asked.push(tryId);
    tell(0.5);
    return new Promise((resolve) => {
      this.#answer = (trial) => resolve(trial);
      const found = allLensTries(of, on).find(({ id }) => id === tryId);
      if (!found || this.#trials.has(tryId)) return;
      const steps = lensTrialSteps(of, found, 0);
      for (let step = steps.next(); ; step = steps.next())
        if (step.done) {
          this.#trials.set(tryId, step.value);
          return;
        }
    });
  };

  giveUp = (): void => this.#answer?.(null);
  answer = (): void => this.#answer?.(this.#trials.get(this.asked.at(-1) ?? '') ?? null);
}

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
const known = (): string[] => [...lensTestStore.getState().trials.keys()];
let trier = new SlowTrier();
let tester = new LensTester(trier, () => null);

beforeEach(() => {
  lensTestStore.setState(lensTestStore.getInitialState(), true);
  trier = new SlowTrier();
  tester = new LensTester(trier, () => null);
});

async function answerAll(): Promise<void> {
  for (let k = 0; k < plan.kit.lenses.length; k += 1) {
    await settled();
    trier.answer();
  }
  await settled();
}

test('tries the lens on the camera first, tells how far it is, and asks nothing twice', async () => {
  tester.ask(question);
  await settled();
  expect(trier.asked).toEqual(['wide']);
  expect(lensTestStore.getState().running).toMatchObject({ tryId: 'wide', done: 0, of: 2, share: 0.5 });
  await answerAll();
  expect(known()).toEqual(['wide', 'long']);
  expect(lensTestStore.getState().running).toBeNull();
  // Another lens on the camera, another stop or name change no frame of the test.
  tester.ask({ ...question, setup: { ...setup, lens: 'long', stop: 4, label: 'Again' } });
  await settled();
  expect(trier.asked).toHaveLength(2);
  // Another place does.
  const keys = setup.move.keys.map((key) => ({ ...key, headingDegrees: 20 }));
  tester.ask({ ...question, setup: { ...setup, move: { ...setup.move, keys } } });
  await settled();
  expect(trier.asked).toHaveLength(3);
  expect(known()).toEqual([]);
});

test('stops, keeps what is known, and goes on', async () => {
  tester.ask(question);
  await settled();
  trier.answer();
  await settled();
  tester.stop();
  await settled();
  expect(known()).toEqual(['wide']);
  expect(lensTestStore.getState()).toMatchObject({ stopped: true, running: null });
  tester.ask(question);
  await settled();
  expect(trier.asked).toEqual(['wide', 'long']);
  tester.goOn(question);
  await settled();
  trier.answer();
  await settled();
  expect(known()).toEqual(['wide', 'long']);
});

test('a single trial waits for its turn, and one that nobody waits for is given up', async () => {
  tester.ask(question);
  await settled();
  const waiting = new AbortController();
  const single = tester.single(plan, { ...setup, lens: 'long' }, waiting.signal);
  await settled();
  expect(trier.asked).toEqual(['wide']);
  trier.answer();
  await settled();
  expect(trier.asked).toEqual(['wide', 'long']);
  waiting.abort();
  expect(await single).toBeNull();
  await settled();
  trier.answer();
  await settled();
  expect(known()).toEqual(['wide', 'long']);
  expect(await tester.single(plan, { ...setup, lens: 'none' }, new AbortController().signal)).toBeNull();
});
