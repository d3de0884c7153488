import { useEffect, useRef, useState } from 'react';
import type { SetupReport } from '../../core/report/types';
import { letterOf } from '../../desk/choose';
import { usePlanState, useSession } from '../../desk/hooks';
import { findingChanges } from '../report/findingChanges';
import { summaryOf } from '../report/summary';
import { useChosenSetup } from '../report/useChosenSetup';
import { useReportOverSpan } from '../report/useSetupReports';

/**
 * The chosen setup's verdict, spoken when another is chosen, and when an edit changes its findings: once, with what came
 * and what went. An edit that leaves them as they were says nothing.
 */
export function Spoken() {
  const plan = usePlanState((state) => state.plan);
  const lengths = useSession((state) => state.lengths);
  const setup = useChosenSetup();
  const report = useReportOverSpan(setup?.id ?? '');
  const last = useRef<SetupReport | null>(null);
  const [said, setSaid] = useState('');
  const name = setup ? `Setup ${letterOf(plan, setup.id)}, ${setup.label}` : '';
  useEffect(() => {
    if (!report || name === '') return;
    const before = last.current?.id === report.id ? last.current : null;
    last.current = report;
    const changes = before && findingChanges(before, report);
    if (before && changes === null) return;
    setSaid([`${name}: ${summaryOf(report, lengths).words}.`, ...(changes ? [changes] : [])].join(' '));
  }, [report, name, lengths]);
  return (
    <p className="vh" aria-live="polite">
      {name === '' ? '' : said}
    </p>
  );
}
