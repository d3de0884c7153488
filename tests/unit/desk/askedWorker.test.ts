import { expose } from 'comlink';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { PackedPlan } from '../../../src/desk/planWire';
import { toastStore } from '../../../src/desk/toastStore';
import { AskedWorker, WorkerEnded } from '../../../src/desk/workers/askedWorker';
import { PlanLine } from '../../../src/desk/workers/planLine';
import { silenceOf } from '../../../src/desk/workers/silence';
import { rooftop } from '../core/plan/edits/rooftop';

interface Api {
  readonly hold: (packed: PackedPlan) => void;
  readonly holdModel: () => void;
  readonly isThere: () => void;
  readonly answer: () => Promise<string>;
}

const PLAN = rooftop();

/** The far end of a worker as far as messages go: it can be killed, and made deaf. */
class FakeWorker extends EventTarget {
  readonly #inside = new EventTarget();
  readonly held: PackedPlan[] = [];
  isDeaf = false;
  isTerminated = false;

  constructor(answer: () => Promise<string>) {
    super();
    const { held } = this;
    const api: Api = {
      hold: (packed) => void held.push(packed),
      holdModel: () => undefined,
      isThere: () => undefined,
      answer,
    };
    expose(api, {
      addEventListener: this.#inside.addEventListener.bind(this.#inside),
      removeEventListener: this.#inside.removeEventListener.bind(this.#inside),
      postMessage: (data: unknown) => this.dispatchEvent(new MessageEvent('message', { data })),
    });
  }
  postMessage(data: unknown): void {
    if (!this.isDeaf) this.#inside.dispatchEvent(new MessageEvent('message', { data }));
  }
  terminate(): void {
    this.isTerminated = true;
  }
}

class FakeErrorEvent extends Event {
  constructor(
    type: string,
    readonly message = '',
  ) {
    super(type);
  }
}

const never = (): Promise<string> => new Promise(() => undefined);

function asked(...answers: (() => Promise<string>)[]) {
  const started: FakeWorker[] = [];
  const silences: boolean[] = [];
  let again = (): void => undefined;
  const worker = new AskedWorker<Api>(
    () => {
      const next = new FakeWorker(answers[started.length] ?? never);
      started.push(next);
      return Object.assign(next, { onmessage: null, onmessageerror: null, onerror: null });
    },
    ({ hold, holdModel }) => new PlanLine({ hold, holdModel }),
    {
      isThere: (api) => api.isThere(),
      tell: (isSilent, another) => {
        silences.push(isSilent);
        again = another;
      },
    },
  );
  return {
    worker,
    started,
    silences,
    again: () => again(),
    ask: () => worker.about(PLAN, (api) => api.answer()),
  };
}

beforeEach(() => void vi.stubGlobal('ErrorEvent', FakeErrorEvent));
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('a worker that dies fails all that it was asked, and the next question starts another that is sent the plan anew', async () => {
  const { worker, started, ask } = asked(never, async () => 'read');
  const both = [ask(), ask()].map((answer) => expect(answer).rejects.toThrow('out of memory'));
  await vi.waitFor(() => expect(started[0]?.held).toHaveLength(1));
  started[0]?.dispatchEvent(new FakeErrorEvent('error', 'out of memory'));
  await Promise.all(both);
  expect(started[0]?.isTerminated).toBe(true);
  expect(await ask()).toBe('read');
  expect(started[1]?.held).toHaveLength(1);
  // What the dead one says later concerns nobody.
  started[0]?.dispatchEvent(new FakeErrorEvent('error', 'late'));
  expect(await ask()).toBe('read');
  expect(started).toHaveLength(2);
  worker.end();
});

test('what was asked before it is started anew fails as ended, and what it cannot do fails alone', async () => {
  const { worker, started, ask } = asked(never, async () => {
    throw new Error('no such setup');
  });
  const waiting = expect(ask()).rejects.toThrow(WorkerEnded);
  worker.startAnew();
  await waiting;
  await expect(ask()).rejects.toThrow('no such setup');
  await expect(ask()).rejects.toThrow('no such setup');
  expect(started).toHaveLength(2);
});

test('silence is told once while somebody waits, taken back when it is heard again, and never told of one that works', async () => {
  vi.useFakeTimers();
  const { worker, started, silences, ask } = asked(never);
  void ask().catch(() => undefined);
  await vi.advanceTimersByTimeAsync(120_000);
  expect(silences).toEqual([]);
  const [first] = started;
  if (first) first.isDeaf = true;
  await vi.advanceTimersByTimeAsync(120_000);
  expect(silences).toEqual([true]);
  worker.startAnew();
  expect(silences).toEqual([true, false]);
  await vi.advanceTimersByTimeAsync(120_000);
  expect(silences).toEqual([true, false]);
});

test('another try asks another worker all that is still waited for, and what the one before says counts no more', async () => {
  vi.useFakeTimers();
  let late: (words: string) => void = () => undefined;
  const first = (): Promise<string> => new Promise((resolve) => (late = resolve));
  const { worker, started, silences, again, ask } = asked(first, async () => 'read');
  const answers = Promise.all([ask(), ask()]);
  await vi.advanceTimersByTimeAsync(0);
  if (started[0]) started[0].isDeaf = true;
  await vi.advanceTimersByTimeAsync(60_000);
  expect(silences).toEqual([true]);
  again();
  late('late');
  expect(silences).toEqual([true, false]);
  expect(started[0]?.isTerminated).toBe(true);
  expect(await answers).toEqual(['read', 'read']);
  expect(started[1]?.held).toHaveLength(1);
  expect(vi.getTimerCount()).toBe(0);
  worker.end();
});

test('one that never spoke did not start; one that did has stopped', async () => {
  const { started, ask } = asked(never, never);
  const first = expect(ask()).rejects.toThrow('the worker did not start');
  if (started[0]) started[0].isDeaf = true;
  started[0]?.dispatchEvent(new FakeErrorEvent('error'));
  await first;
  const second = expect(ask()).rejects.toThrow('the worker stopped');
  await vi.waitFor(() => expect(started[1]?.held).toHaveLength(1));
  started[1]?.dispatchEvent(new FakeErrorEvent('error'));
  await second;
});

test('a hang is told at the page with another try, and taken back once there is an answer', () => {
  const tries: string[] = [];
  const [lenses, light] = [silenceOf('The lens test'), silenceOf('The light')];
  lenses(true, () => tries.push('lenses'));
  light(true, () => tries.push('light'));
  const told = () => toastStore.getState().toasts;
  expect(told().map(({ sentence }) => sentence)).toEqual([
    'The lens test has not answered for a minute.',
    'The light has not answered for a minute.',
  ]);
  expect(told()[0]).toMatchObject({ tone: 'warn', action: { word: 'Try again' } });
  told()[0]?.action?.act();
  expect(tries).toEqual(['lenses']);
  lenses(false, () => undefined);
  expect(told().map(({ sentence }) => sentence)).toEqual(['The light has not answered for a minute.']);
  light(false, () => undefined);
  expect(told()).toEqual([]);
});
