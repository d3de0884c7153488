import { NBSP } from '../../core/units/numbers';
import type { LinkReading } from '../../exchange/link/link';
import type { LinkMessage } from './linkMessage';

/** What a link gave, or why its reading came to no end. */
export type LinkEnding =
  | LinkReading
  | { readonly ok: false; readonly kind: 'stopped' | 'tooSlow' | 'noReader'; readonly sentence: string };

/** A link that is being read. */
export interface LinkBeingRead {
  /** Never rejects. */
  readonly ending: Promise<LinkEnding>;
  /** Ends the reading at once, whatever it is at. */
  readonly stop: () => void;
}

/**
 * So long a link may take once its reader is there, seconds: the largest that a link may be takes about three here and a
 * night's half of one, and a phone is some times slower.
 */
export const LONGEST_SECONDS = 20;

const without = (kind: 'stopped' | 'tooSlow' | 'noReader', sentence: string): LinkEnding => ({
  ok: false,
  kind,
  sentence,
});

/**
 * Reads the fragment of a link in a worker of its own, which ends with the reading: a link comes from anybody, and may be
 * made to take as long as it can.
 */
export function readLink(fragment: string): LinkBeingRead {
  const worker = new Worker(new URL('./link.worker.ts', import.meta.url), { type: 'module' });
  let timer: ReturnType<typeof setTimeout> | undefined;
  let settle: (ending: LinkEnding) => void = () => {};
  const ending = new Promise<LinkEnding>((resolve) => {
    settle = resolve;
  });
  const end = (found: LinkEnding): void => {
    clearTimeout(timer);
    worker.terminate();
    settle(found);
  };
  const tooSlow = (): void =>
    end(
      without(
        'tooSlow',
        `This link could not be read within ${LONGEST_SECONDS}${NBSP}s. Ask for the plan as a file.`,
      ),
    );
  worker.addEventListener('message', ({ data }: MessageEvent<LinkMessage>) => {
    if (data.kind === 'read') return end(data.reading);
    // Only now: a script over a weak network may take its time, which is not the link's.
    timer = setTimeout(tooSlow, LONGEST_SECONDS * 1000);
    worker.postMessage(fragment);
  });
  worker.addEventListener('error', ({ message }) =>
    end(
      without(
        'noReader',
        `What reads links did not work in this browser: ${message || 'it did not start'}. Load the page again.`,
      ),
    ),
  );
  return {
    ending,
    stop: () => end(without('stopped', 'You stopped it. Load it again to read it.')),
  };
}
