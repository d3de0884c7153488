import { type Endpoint, expose } from 'comlink';
import { afterAll, beforeEach, expect, test, vi } from 'vitest';
import type { GroundAnswer, GroundQuestion } from '../../../../src/core/clearance/ground/types';
import { clearAsking, pointGround, readGround } from '../../../../src/desk/ground/askGround';
import type { GroundApi } from '../../../../src/desk/ground/groundApi';
import { groundStore } from '../../../../src/desk/ground/groundStore';
import { smallRoof } from '../../smallRoof';

/** What the worker was asked, and how each answer is given. */
interface Call {
  readonly question: GroundQuestion;
  readonly answer: (answer: GroundAnswer | null) => void;
}
const calls: Call[] = [];
const givenUp: string[] = [];
const held: unknown[] = [];
const ports: MessagePort[] = [];

const api: Partial<GroundApi> = {
  hold: (packed) => {
    held.push(packed);
  },
  clear: (question) =>
    new Promise((resolve) => {
      calls.push({ question, answer: resolve });
    }),
  at: (_question, [x]) => (x > 0 ? { state: 'clear', setups: [] } : null),
  giveUp: (what) => {
    givenUp.push(what);
    calls.at(-1)?.answer(null);
  },
};

/** Stands for the worker: the other end of a channel that answers as the test says. */
function OtherEnd(): MessagePort {
  const { port1, port2 } = new MessageChannel();
  expose(api, port2 as unknown as Endpoint);
  ports.push(port1, port2);
  return port1;
}

vi.stubGlobal('Worker', OtherEnd);

afterAll(() => {
  for (const port of ports) port.close();
});

beforeEach(() => {
  calls.length = 0;
  givenUp.length = 0;
  groundStore.setState({ ground: null, why: null, place: null });
});

const plan = smallRoof();
const question = (heightMetres: number): GroundQuestion => ({ setupIds: ['still'], of: { heightMetres } });
const callAt = async (place: number): Promise<Call> => {
  await expect.poll(() => calls.length).toBeGreaterThan(place);
  return calls[place];
};
const ground = (thing: string): GroundAnswer => ({
  ground: {
    thing,
    setupIds: ['still'],
    stepMetres: 1,
    corner: [0, 0],
    columns: 1,
    rows: 1,
    deckMetres: Float64Array.of(0),
    states: Uint8Array.of(1),
    worstSetup: Int16Array.of(-1),
    worstSeconds: Float64Array.of(Number.NaN),
    limitMetres: Float64Array.of(Infinity),
  },
});
const thingShown = (): string | undefined => groundStore.getState().ground?.thing;

test('coarse is shown, then fine; the plan goes over once', async () => {
  clearAsking.ask(plan, question(2));
  const coarse = await callAt(0);
  expect(coarse.question.stepMetres).toBe(1);
  coarse.answer(ground('coarse'));
  const fine = await callAt(1);
  expect(thingShown()).toBe('coarse');
  expect(fine.question.stepMetres).toBe(0.25);
  fine.answer(ground('fine'));
  await expect.poll(thingShown).toBe('fine');
  expect(held).toHaveLength(1);
});

test('while a hand drags each coarse answer is shown, fine is given up, and only the newest waits', async () => {
  clearAsking.ask(plan, question(1));
  const first = await callAt(0);
  for (const height of [2, 3, 4]) clearAsking.ask(plan, question(height));
  // What is coarse is not given up, however fast the hand.
  expect(givenUp).toEqual([]);
  first.answer(ground('first'));
  const newest = await callAt(1);
  expect(thingShown()).toBe('first');
  expect(newest.question).toMatchObject({ of: { heightMetres: 4 }, stepMetres: 1 });
  newest.answer(ground('newest'));
  const fine = await callAt(2);
  expect(fine.question.stepMetres).toBe(0.25);
  clearAsking.ask(plan, question(5));
  await expect.poll(() => givenUp).toEqual(['clear']);
  const after = await callAt(3);
  expect(thingShown()).toBe('newest');
  expect(after.question).toMatchObject({ of: { heightMetres: 5 }, stepMetres: 1 });
  clearAsking.stop();
  await expect.poll(() => givenUp).toEqual(['clear', 'clear']);
});

test('a question without an answer says why, and shows no ground', async () => {
  groundStore.setState({ ...ground('before') });
  clearAsking.ask(plan, question(0));
  (await callAt(0)).answer({ why: 'No.' });
  await expect.poll(() => groundStore.getState().why).toBe('No.');
  expect(groundStore.getState().ground).toBeNull();
  clearAsking.stop();
});

test('a place is read where it is pointed at, and nothing beside the decks', async () => {
  pointGround([2, 1]);
  readGround(plan, question(2), [2, 1]);
  await expect.poll(() => groundStore.getState().place?.reading).toEqual({ state: 'clear', setups: [] });
  readGround(plan, question(2), [-2, 1]);
  await expect.poll(() => groundStore.getState().place?.reading).toBeNull();
  expect(groundStore.getState().place?.at).toEqual([2, 1]);
});
