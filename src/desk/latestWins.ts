/**
 * Runs one job at a time; while one runs, only the newest of the requests that come in is kept and run next.
 * What a drag asks sixty times a second is so answered as often as the answers can be had, never with a queue.
 */
export function latestWins<Request>(run: (request: Request, isLatest: () => boolean) => Promise<void>): {
  readonly ask: (request: Request) => void;
  /** Forgets the request that waits; the running job sees that it is no longer the latest. */
  readonly drop: () => void;
} {
  let waiting: { readonly request: Request } | null = null;
  let running = false;
  let dropped = false;

  const work = async (): Promise<void> => {
    running = true;
    while (waiting) {
      const { request } = waiting;
      waiting = null;
      dropped = false;
      await run(request, () => waiting === null && !dropped);
    }
    running = false;
  };
  return {
    ask: (request) => {
      waiting = { request };
      if (!running) void work();
    },
    drop: () => {
      waiting = null;
      dropped = true;
    },
  };
}
