/** What waits for its turn. */
interface InLine {
  /** In how many places of the page that are in sight it is waited for. */
  readonly seen: number;
  /** Its place in the night's order. */
  readonly order: number;
}

/** Whose turn it is: what is in sight first, in the night's order; null where nothing waits. */
export const nextWanted = <Each extends InLine>(waiting: readonly Each[]): Each | null =>
  waiting.toSorted((a, b) => Number(b.seen > 0) - Number(a.seen > 0) || a.order - b.order)[0] ?? null;

/** Resolves after the next frame that the browser shows; while the page is hidden, never. */
export const nextFrame = (): Promise<void> =>
  new Promise((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve));
  });
