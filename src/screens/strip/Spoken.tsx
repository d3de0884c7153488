import { letterOf } from '../../desk/choose';
import { usePlanState, useSession } from '../../desk/hooks';
import { summaryOf } from '../report/summary';
import { useChosenSetup } from '../report/useChosenSetup';
import { useReportOverSpan } from '../report/useSetupReports';

/** The chosen setup's verdict, spoken when it changes. */
export function Spoken() {
  const plan = usePlanState((state) => state.plan);
  const lengths = useSession((state) => state.lengths);
  const setup = useChosenSetup();
  const report = useReportOverSpan(setup?.id ?? '');
  return (
    <p className="vh" aria-live="polite">
      {setup && report
        ? `Setup ${letterOf(plan, setup.id)}, ${setup.label}: ${summaryOf(report, lengths).words}`
        : ''}
    </p>
  );
}
