import { useEffect, useRef, useState } from 'react';
import type { NightReport, SetupReport } from '../../core/report/types';
import { letterOf } from '../../desk/choose';
import { usePlanState, useReports, useSession } from '../../desk/hooks';
import { spokenChanges } from '../report/spokenChanges';
import { summaryOf } from '../report/summary';
import { useChosenSetup } from '../report/useChosenSetup';
import { useReportOverSpan } from '../report/useSetupReports';

/** What was last spoken of, and its report: of the night that was read whole, once there is one. */
interface Told {
  readonly about: string;
  readonly report: SetupReport;
  /** Of the night that `report` is out of; null before one was read whole. */
  readonly night: NightReport | null;
}

/**
 * The chosen setup's verdict, spoken when another is chosen, and when an edit changes its findings: once, with what came
 * and what went, when all is read and what is lost in the dark is known; and what came of the edit for the other setups.
 * An edit that leaves all as it was says nothing.
 */
export function Spoken() {
  const plan = usePlanState((state) => state.plan);
  const documentNumber = usePlanState((state) => state.documentNumber);
  const lengths = useSession((state) => state.lengths);
  const setup = useChosenSetup();
  const id = setup?.id ?? '';
  const report = useReportOverSpan(id);
  const whole = useReports(({ night, forPlan, reading }) =>
    reading === null && forPlan === plan ? night : null,
  );
  const settled = whole?.setups.find((each) => each.id === id) ?? null;
  const last = useRef<Told | null>(null);
  const [said, setSaid] = useState<{ readonly about: string; readonly words: string } | null>(null);
  const about = `${documentNumber} ${id}`;
  const name = setup ? `Setup ${letterOf(plan, id)}, ${setup.label}` : '';
  useEffect(() => {
    if (!report || name === '') return;
    const verdictOf = (of: SetupReport): string => `${name}: ${summaryOf(of, lengths).words}.`;
    if (last.current?.about !== about) {
      last.current = { about, report: settled ?? report, night: whole };
      setSaid({ about, words: verdictOf(report) });
      return;
    }
    const before = last.current;
    if (!settled || !whole || settled === before.report) return;
    last.current = { about, report: settled, night: whole };
    const { own, others } = spokenChanges([before.report, settled], [before.night, whole], (setupId) =>
      letterOf(plan, setupId),
    );
    const words = [...(own ? [verdictOf(settled), own] : []), ...(others ? [others] : [])];
    if (words.length > 0) setSaid({ about, words: words.join(' ') });
  }, [report, settled, whole, plan, about, name, lengths]);
  return (
    <p className="vh" aria-live="polite">
      {said?.about === about ? said.words : ''}
    </p>
  );
}
