/** How long a worker reckons before it looks whether it should give up. */
const LOOK_UP_EVERY_MS = 20;

/** Questions come in rows: so long after the last answer the next may be on its way, milliseconds. */
const ROW_MS = 50;

/** Lets the messages in that came meanwhile. */
const messagesIn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** Work of one kind that a worker does step by step. */
interface Stepping {
  /**
   * Takes the steps to their end, and looks up now and then; null when it was given up, or something newer of the kind was
   * asked. `tell` now and then hears what the steps yield, mostly the done share.
   */
  readonly taken: <Value, Step = number>(
    steps: Generator<Step, Value, void>,
    tell?: (step: Step) => void,
  ) => Promise<Value | null>;
  readonly giveUp: () => void;
  /** Whether steps of the kind are being taken, or were a moment ago. */
  readonly isAtWork: () => boolean;
}

/**
 * For a kind of work of which only the newest is wanted.
 * @param urgent work that goes first: while its steps are taken, those of this kind wait
 */
export function stepping(urgent?: Pick<Stepping, 'isAtWork'>): Stepping {
  let asked = 0;
  let working = 0;
  let endedAt = Number.NEGATIVE_INFINITY;
  async function stepped<Value, Step>(
    steps: Generator<Step, Value, void>,
    tell?: (step: Step) => void,
  ): Promise<Value | null> {
    asked += 1;
    const own = asked;
    let lookedUp = performance.now();
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) return step.value;
      if (performance.now() - lookedUp < LOOK_UP_EVERY_MS) continue;
      tell?.(step.value);
      do await messagesIn();
      while (own === asked && urgent?.isAtWork());
      if (own !== asked) return null;
      lookedUp = performance.now();
    }
  }
  return {
    taken: async (steps, tell) => {
      working += 1;
      try {
        return await stepped(steps, tell);
      } finally {
        working -= 1;
        endedAt = performance.now();
      }
    },
    giveUp: () => {
      asked += 1;
    },
    isAtWork: () => working > 0 || performance.now() - endedAt < ROW_MS,
  };
}
