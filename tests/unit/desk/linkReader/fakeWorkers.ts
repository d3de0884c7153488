import { vi } from 'vitest';
import type { LinkMessage } from '../../../../src/desk/linkReader/linkMessage';

/** A worker that is none: the test says what it says. */
export class FakeWorker extends EventTarget {
  /** What it was sent. */
  readonly sent: unknown[] = [];
  isEnded = false;
  postMessage(message: unknown): void {
    this.sent.push(message);
  }
  terminate(): void {
    this.isEnded = true;
  }
  /** Says something to its page. */
  say(data: LinkMessage): void {
    this.dispatchEvent(new MessageEvent('message', { data }));
  }
  /** Tells its page of an error, as one does whose script does not load. */
  fail(message: string): void {
    this.dispatchEvent(Object.assign(new Event('error'), { message }));
  }
}

/**
 * Has the page's workers be fake ones.
 * @returns those that were begun so far, the first one first
 */
export function withFakeWorkers(): readonly FakeWorker[] {
  const begun: FakeWorker[] = [];
  class Counted extends FakeWorker {
    constructor() {
      super();
      begun.push(this);
    }
  }
  vi.stubGlobal('Worker', Counted);
  return begun;
}
