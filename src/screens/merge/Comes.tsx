import { useCallback, useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../core/plan/schema/plan';
import type { SetupReport } from '../../core/report/types';
import { sentenceOf } from '../../desk/reasonOf';
import { reportStore } from '../../desk/reportStore';
import { ReportWorker } from '../../desk/reportWorker';
import { silenceOf } from '../../desk/workers/silence';
import { concernOf } from '../report/concerns';

const findings = (setups: Iterable<SetupReport>): number =>
  [...setups].reduce((sum, { items }) => sum + items.filter((item) => concernOf(item) !== null).length, 0);

const countWords = (count: number): string => (count === 1 ? '1 finding' : `${count} findings`);

/** Setups of a plan as they are read; null when it was given up, or is not wanted any more. */
async function readAll(
  worker: ReportWorker,
  plan: Plan,
  isWanted: () => boolean,
): Promise<readonly SetupReport[] | null> {
  const setups: SetupReport[] = [];
  for (const { id } of plan.setups) {
    const setup = await worker.read(plan, id, null);
    if (!setup || !isWanted()) return null;
    // What is lost in the dark is no finding in what is there now either.
    const darkened = await worker.darken(plan, setup);
    if (!isWanted()) return null;
    setups.push(darkened ?? setup);
  }
  return setups;
}

/** What the report makes of the merged plan, once somebody asks: how many findings there are now, and would be. */
export function Comes({ before, after }: { readonly before: Plan; readonly after: Plan }) {
  const known = useStore(reportStore, (state) => (state.forPlan === before ? state.night : null));
  const [read, setRead] = useState<{ readonly plan: Plan; readonly words: string } | null>(null);
  /** Beside those of the page, which go on reading the plan as it is; started when it is first asked. */
  const worker = useRef<ReportWorker | null>(null);
  /** The latest ask: those before it fall silent. */
  const latest = useRef<{ readonly say: (words: string) => void } | null>(null);
  const end = useCallback((): void => {
    worker.current?.end();
    worker.current = null;
  }, []);
  useEffect(
    () => () => {
      latest.current = null;
      end();
    },
    [end],
  );
  const ask = async (): Promise<void> => {
    const own = { say: (words: string): void => setRead({ plan: after, words }) };
    latest.current = own;
    const isLatest = (): boolean => latest.current === own;
    own.say('Reading the merged plan.');
    try {
      worker.current?.giveUp();
      worker.current ??= new ReportWorker(silenceOf('The reading of the merged plan'));
      const setups = await readAll(worker.current, after, isLatest);
      if (!setups || !isLatest()) return;
      const would = countWords(findings(setups));
      const now = known ? `, ${findings(known.setups)} as yours is` : '';
      own.say(`${would} if you take it${now}.`);
    } catch (error) {
      if (isLatest()) own.say(sentenceOf('The merged plan could not be read', error));
    }
  };
  const words = read?.plan === after ? read.words : null;
  return (
    <p className="acts comes" role="status">
      <button type="button" onClick={() => void ask()}>
        Read what comes of it
      </button>
      {words}
    </p>
  );
}
