import { type Remote, wrap } from 'comlink';
import type { Plan } from '../../core/plan/schema/plan';

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
  /**
   * Told when it has been silent for long while somebody waited, and when it speaks again or nobody waits any more.
   * `again` ends it and asks another all that is still waited for.
   */
  readonly tell: (isSilent: boolean, again: () => void) => void;
}

/** A question that is waited for. */
interface Question {
  readonly reject: (error: Error) => void;
  /** Puts it to the worker that there is; what one before says to it counts no more. */
  readonly put: () => void;
}

/** What sees to it that a worker has what a question is about before it comes. */
export interface Line<About> {
  readonly about: <Value>(what: About, ask: () => Promise<Value>) => Promise<Value>;
}

interface OtherEnd<Api, About> {
  readonly worker: Worker;
  readonly api: Remote<Api>;
  readonly line: Line<About>;
  /** Whether it has ever been heard of. */
  hasSpoken: boolean;
}

/** For questions that bring along all that they are about. */
export const withoutLine = <About>(): Line<About> => ({ about: (_, ask) => ask() });

/**
 * A worker that is asked about plans. No question stays open: a worker that fails, cannot be started or is killed fails
 * all that it was asked, and the next question starts another, which is sent the plan anew; one that hangs is told of.
 */
export class AskedWorker<Api, About = Plan> {
  #end: OtherEnd<Api, About> | null = null;
  readonly #waiting = new Set<Question>();
  #looking: ReturnType<typeof setInterval> | null = null;
  #silentLooks = 0;
  #isLooked = false;

  /**
   * @param start starts a worker that exposes `Api`
   * @param lineTo the line on which plans go over to it; `withoutLine` where the question has all
   * @param listening who hears of its silence
   */
  constructor(
    private readonly start: () => Worker,
    private readonly lineTo: (api: Remote<Api>) => Line<About>,
    private readonly listening: Listening<Api>,
  ) {}

  /** Starts it ahead of its first question. */
  begin(): void {
    this.#there();
  }

  /**
   * Asks about a plan, or whatever its line brings over.
   * @throws (the promise) what the worker throws, an error with what killed it, `WorkerEnded` where it was started anew
   */
  about<Value>(what: About, ask: (api: Remote<Api>) => Promise<Value>): Promise<Value> {
    return new Promise((resolve, reject) => {
      let puts = 0;
      const settled = (): void => {
        this.#waiting.delete(question);
        if (this.#waiting.size === 0) this.#rest();
      };
      const question: Question = {
        reject,
        put: () => {
          puts += 1;
          const own = puts;
          const { api, line } = this.#there();
          line
            .about(what, () => ask(api))
            .then(
              (value) => {
                if (own === puts) resolve(value);
              },
              (error: unknown) => {
                if (own === puts) reject(error);
              },
            )
            .finally(() => {
              if (own === puts) settled();
            });
        },
      };
      question.put();
      this.#waiting.add(question);
      this.#look();
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
    this.#drop();
  }

  /** Ends it, and asks another all that is still waited for. */
  #askAnew(): void {
    this.#drop();
    try {
      for (const { put } of this.#waiting) put();
      this.#look();
    } catch (error) {
      this.#failAll(error instanceof Error ? error : new Error(String(error)));
    }
  }

  #drop(): void {
    this.#rest();
    this.#end?.worker.terminate();
    this.#end = null;
  }

  #there(): OtherEnd<Api, About> {
    if (this.#end) return this.#end;
    const worker = this.start();
    const fail = (event: Event): void => {
      if (this.#end?.worker !== worker) return;
      const said = event instanceof ErrorEvent ? event.message : '';
      const { hasSpoken } = this.#end;
      this.#failAll(new Error(said || (hasSpoken ? 'the worker stopped' : 'the worker did not start')));
    };
    worker.addEventListener('error', fail);
    worker.addEventListener('messageerror', fail);
    // Whatever it says, it is there.
    worker.addEventListener('message', () => {
      if (this.#end?.worker !== worker) return;
      this.#end.hasSpoken = true;
      this.#speak();
    });
    const api = wrap<Api>(worker);
    this.#end = { worker, api, line: this.lineTo(api), hasSpoken: false };
    return this.#end;
  }

  #failAll(error: Error): void {
    const waiting = [...this.#waiting];
    this.end();
    for (const { reject } of waiting) reject(error);
  }

  /** Counts looks, not time: a page that was put to sleep, or whose clock was set, has not waited. */
  #look(): void {
    if (this.#looking !== null) return;
    const { isThere, tell } = this.listening;
    this.#looking = setInterval(() => {
      const end = this.#end;
      if (!end) return;
      this.#silentLooks += 1;
      if (this.#silentLooks === SILENT_LOOKS) tell(true, () => this.#askAnew());
      if (this.#isLooked) return;
      this.#isLooked = true;
      const heard = (): void => {
        if (this.#end === end) this.#isLooked = false;
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
    if (this.#silentLooks >= SILENT_LOOKS) this.listening.tell(false, () => this.#askAnew());
    this.#silentLooks = 0;
  }
}
