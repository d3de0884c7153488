import { useEffect, useRef, useState } from 'react';
import type { SetupReport } from '../../core/report/types';
import { letterOf } from '../../desk/choose';
import { usePlanState, useReports, useSession } from '../../desk/hooks';
import { findingChanges } from '../report/findingChanges';
import { summaryOf } from '../report/summary';
import { useChosenSetup } from '../report/useChosenSetup';
import { useReportOverSpan } from '../report/useSetupReports';

/** What was last spoken of, and its report: of the night that was read whole, once there is one. */
interface Told {
  readonly about: string;
  readonly report: SetupReport;
}

/**
 * The chosen setup's verdict, spoken when another is chosen, and when an edit changes its findings: once, with what came
 * and what went, when all is read and what is lost in the dark is known. An edit that leaves them as they were says nothing.
 */
export function Spoken() {
  const plan = usePlanState((state) => state.plan);
  const documentNumber = usePlanState((state) => state.documentNumber);
  const lengths = useSession((state) => state.lengths);
  const setup = useChosenSetup();
  const id = setup?.id ?? '';
  const report = useReportOverSpan(id);
  const settled = useReports(({ night, forPlan, reading }) =>
    reading === null && forPlan === plan ? (night?.setups.find((each) => each.id === id) ?? null) : null,
  );
  const last = useRef<Told | null>(null);
  const [said, setSaid] = useState<{ readonly about: string; readonly words: string } | null>(null);
  const about = `${documentNumber} ${id}`;
  const name = setup ? `Setup ${letterOf(plan, id)}, ${setup.label}` : '';
  useEffect(() => {
    if (!report || name === '') return;
    const say = (of: SetupReport, more: readonly string[]): void =>
      setSaid({ about, words: [`${name}: ${summaryOf(of, lengths).words}.`, ...more].join(' ') });
    if (last.current?.about !== about) {
      last.current = { about, report: settled ?? report };
      say(report, []);
      return;
    }
    const before = last.current.report;
    if (!settled || settled === before) return;
    last.current = { about, report: settled };
    const changes = findingChanges(before, settled);
    if (changes) say(settled, [changes]);
  }, [report, settled, about, name, lengths]);
  return (
    <p className="vh" aria-live="polite">
      {said?.about === about ? said.words : ''}
    </p>
  );
}
