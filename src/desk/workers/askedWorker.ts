import { type Remote, wrap } from 'comlink';
import type { Plan } from '../../core/plan/schema/plan';
import type { PlanLine } from './planLine';

/** Why a question has no answer: whoever asked, or somebody at the page, ended the worker. */
export class WorkerEnded extends Error {
  constructor() {
    super('the worker was ended');
    this.name = 'WorkerEnded';
  }
}

/** How often a worker that is waited for is asked whether it hears, milliseconds. */
const LOOK_MS = 1000;
/** So many looks without a word are told. By eye, no source: a step of the largest plans takes half of it on a busy machine. */
const SILENT_LOOKS = 60;

/** How a worker that does not hear any more is noticed. */
export interface Listening<Api> {
  /** Has it say that it hears, which it does between the steps of its work. */
  readonly isThere: (api: Remote<Api>) => Promise<void>;
  /** Told when it has been silent for long while somebody waited, and when it speaks again. */
  readonly tell: (isSilent: boolean) => void;
}

interface OtherEnd<Api> {
  readonly worker: Worker;
  readonly api: Remote<Api>;
  readonly line: PlanLine;
}

/**
 * A worker that is asked about plans. No question stays open: a worker that fails, cannot be started or is killed fails
 * all that it was asked, and the next question starts another, which is sent the plan anew.
 */
export class AskedWorker<Api> {
  #end: OtherEnd<Api> | null = null;
  readonly #waiting = new Set<(error: Error) => void>();
  #looking: ReturnType<typeof setInterval> | null = null;
  #silentLooks = 0;
  #isLooked = false;

  /**
   * @param start starts a worker that exposes `Api`
   * @param lineTo the line on which plans go over to it
   * @param listening where its silence is to be noticed
   */
  constructor(
    private readonly start: () => Worker,
    private readonly lineTo: (api: Remote<Api>) => PlanLine,
    private readonly listening: Listening<Api> | null = null,
  ) {}

  /** Starts it ahead of its first question. */
  begin(): void {
    this.#there();
  }

  /**
   * Asks about a plan.
   * @throws (the promise) what the worker throws, an error with what killed it, `WorkerEnded` where it was started anew
   */
  about<Value>(plan: Plan, ask: (api: Remote<Api>) => Promise<Value>): Promise<Value> {
    return new Promise((resolve, reject) => {
      const { api, line } = this.#there();
      this.#waiting.add(reject);
      this.#look();
      const settle = (): void => {
        this.#waiting.delete(reject);
        if (this.#waiting.size === 0) this.#rest();
      };
      line
        .about(plan, () => ask(api))
        .then(resolve, reject)
        .finally(settle);
    });
  }

  /** Tells it something that is no question, where it is there at all. */
  tell(say: (api: Remote<Api>) => unknown): void {
    if (this.#end) say(this.#end.api);
  }

  /** Ends it in the middle of whatever it does: what was asked fails with `WorkerEnded`, the next question starts another. */
  startAnew(): void {
    this.#failAll(new WorkerEnded());
  }

  /** Ends it: what is still waited for is never answered. */
  end(): void {
    this.#waiting.clear();
    this.#rest();
    this.#end?.worker.terminate();
    this.#end = null;
  }

  #there(): OtherEnd<Api> {
    if (this.#end) return this.#end;
    const worker = this.start();
    const fail = (event: Event): void => {
      if (this.#end?.worker !== worker) return;
      const said = event instanceof ErrorEvent ? event.message : '';
      this.#failAll(new Error(said || 'the worker did not start'));
    };
    worker.addEventListener('error', fail);
    worker.addEventListener('messageerror', fail);
    // Whatever it says, it is there.
    worker.addEventListener('message', () => this.#speak());
    const api = wrap<Api>(worker);
    this.#end = { worker, api, line: this.lineTo(api) };
    return this.#end;
  }

  #failAll(error: Error): void {
    const waiting = [...this.#waiting];
    this.end();
    for (const reject of waiting) reject(error);
  }

  /** Counts looks, not time: a page that was put to sleep, or whose clock was set, has not waited. */
  #look(): void {
    if (!this.listening || this.#looking !== null) return;
    const { isThere, tell } = this.listening;
    this.#looking = setInterval(() => {
      const end = this.#end;
      if (!end) return;
      this.#silentLooks += 1;
      if (this.#silentLooks === SILENT_LOOKS) tell(true);
      if (this.#isLooked) return;
      this.#isLooked = true;
      const heard = (): void => {
        if (this.#end !== end) return;
        this.#isLooked = false;
        this.#speak();
      };
      void isThere(end.api).then(heard, heard);
    }, LOOK_MS);
  }

  #rest(): void {
    if (this.#looking !== null) clearInterval(this.#looking);
    this.#looking = null;
    this.#isLooked = false;
    this.#speak();
  }

  #speak(): void {
    if (this.#silentLooks >= SILENT_LOOKS) this.listening?.tell(false);
    this.#silentLooks = 0;
  }
}
