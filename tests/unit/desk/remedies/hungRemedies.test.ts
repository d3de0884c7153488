import { expose } from 'comlink';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { RemedyQuestion } from '../../../../src/core/clearance/remedies/remediesFor';
import type { SolveQuestion } from '../../../../src/core/clearance/solve/types';
import { NightSolver } from '../../../../src/desk/remedies/nightSolver';
import type { RemediesApi } from '../../../../src/desk/remedies/remediesApi';
import { remediesStore } from '../../../../src/desk/remedies/remediesStore';
import { RemediesWorker } from '../../../../src/desk/remedies/remediesWorker';
import { RemedySeeker } from '../../../../src/desk/remedies/remedySeeker';
import { solveStore } from '../../../../src/desk/remedies/solveStore';
import { FIRST_TOLERANCE } from '../../../../src/desk/remedies/toleranceStore';
import { toastStore } from '../../../../src/desk/toastStore';
import { smallRoof } from '../../smallRoof';

const plan = smallRoof();
const about = (itemId: string) => ({
  plan,
  setupId: 'master',
  itemId,
  tolerance: FIRST_TOLERANCE,
  seen: [],
});

const started: FakeWorker[] = [];

/** The far end as far as messages go: the first hears nothing, as one that hangs; all others answer. */
class FakeWorker extends EventTarget {
  readonly #inside = new EventTarget();
  readonly #isDeaf = started.length === 0;
  readonly heard: string[] = [];
  onmessage = null;
  onmessageerror = null;
  onerror = null;

  constructor() {
    super();
    started.push(this);
    const { heard } = this;
    const api: RemediesApi = {
      hold: () => undefined,
      holdModel: () => undefined,
      isThere: () => undefined,
      remedies: async ({ itemId }: RemedyQuestion) => {
        heard.push(itemId);
        return [];
      },
      solve: async ({ movable = [] }: SolveQuestion) => {
        heard.push(movable.join(' '));
        return null;
      },
      giveUp: () => undefined,
    };
    expose(api, {
      addEventListener: this.#inside.addEventListener.bind(this.#inside),
      removeEventListener: this.#inside.removeEventListener.bind(this.#inside),
      postMessage: (data: unknown) => this.dispatchEvent(new MessageEvent('message', { data })),
    });
  }
  postMessage(data: unknown): void {
    if (!this.#isDeaf) this.#inside.dispatchEvent(new MessageEvent('message', { data }));
  }
  terminate(): void {}
}

/** A minute of the page's clock without a word, and the toast's press. */
async function tryAgain(): Promise<void> {
  await vi.advanceTimersByTimeAsync(61_000);
  const said = toastStore
    .getState()
    .toasts.find(({ sentence }) => sentence.includes('has not answered for a minute'));
  expect(said?.action?.word).toBe('Try again');
  said?.action?.act();
  await vi.advanceTimersByTimeAsync(100);
}

beforeEach(() => {
  started.length = 0;
  remediesStore.setState(remediesStore.getInitialState(), true);
  vi.stubGlobal('Worker', FakeWorker);
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('after a search that hung, another try asks about the finding that is open, not about the one that was left', async () => {
  const seeker = new RemedySeeker(new RemediesWorker('The look for remedies'));
  seeker.ask(about('stand-in'));
  seeker.ask(about('lamp'));
  await tryAgain();
  expect(started.flatMap(({ heard }) => heard)).toEqual(['lamp']);
  expect([...remediesStore.getState().found.keys()]).toEqual(['master lamp']);
  expect(remediesStore.getState().share).toBeNull();
});

test('so does a search for a clear night that was begun anew', async () => {
  const solver = new NightSolver(new RemediesWorker('The look for a clear night'));
  void solver.start(plan, { movable: ['first'], tolerance: FIRST_TOLERANCE });
  void solver.start(plan, { movable: ['second'], tolerance: FIRST_TOLERANCE });
  await tryAgain();
  expect(started.flatMap(({ heard }) => heard)).toEqual(['second']);
  expect(solveStore.getState().running).toBe(false);
});
