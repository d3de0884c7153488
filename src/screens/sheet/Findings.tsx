import { useState } from 'react';
import { findingSentence } from '../../core/report/sentences';
import type { ItemReport, SetupReport } from '../../core/report/types';
import { formatSeconds } from '../../core/units/seconds';
import { goToSeconds, letterOf } from '../../desk/choose';
import { useLive, useLivePlan, useSession } from '../../desk/hooks';
import { sessionStore } from '../../desk/sessionStore';
import { Glyph } from '../parts/Glyph';
import { concernOf, findingsOf, restOf, toneOf } from '../report/concerns';
import { useChosenSetup } from '../report/useChosenSetup';
import { useSetupReport } from '../report/useSetupReports';
import { ChoosableRow } from './ChoosableRow';
import { ContinuityFindings } from './continuity/ContinuityFindings';
import { Sentence } from './Sentence';

/** Chooses the item, and takes the clock to where it is worst. */
function choose(item: ItemReport): void {
  const { selectedId, setSelectedId } = sessionStore.getState();
  if (selectedId !== item.id) setSelectedId(item.id);
  if (concernOf(item) !== null) goToSeconds(item.worstAtSeconds);
}

function FindingList({
  items,
  setup,
}: {
  readonly items: readonly ItemReport[];
  readonly setup: SetupReport;
}) {
  const lengths = useSession((state) => state.lengths);
  const selectedId = useSession((state) => state.selectedId);
  return (
    <ul className="rows findings">
      {items.map((item) => (
        <ChoosableRow key={item.id} chosen={item.id === selectedId} onChoose={() => choose(item)}>
          <Glyph verdict={item.verdict} {...toneProps(item)} />
          <Sentence {...findingSentence(item, setup, lengths)} />
        </ChoosableRow>
      ))}
    </ul>
  );
}

const toneProps = (item: ItemReport): { readonly tone?: string } => {
  const tone = toneOf(item);
  return tone === undefined ? {} : { tone };
};

/** `13 more items: 11 are clear, 2 are covered.` What may show is counted as that. */
function restWords(rest: readonly ItemReport[]): string {
  const groups: [count: number, one: string, more: string][] = [
    [
      rest.filter((item) => item.wish === 'keep out' && item.verdict === 'clear').length,
      'is clear',
      'are clear',
    ],
    [
      rest.filter((item) => item.wish === 'keep out' && item.verdict === 'covered').length,
      'is covered',
      'are covered',
    ],
    [rest.filter((item) => item.wish === 'must show').length, 'shows as it must', 'show as they must'],
    [rest.filter((item) => item.wish === 'either').length, 'may show', 'may show'],
  ];
  const told = groups
    .filter(([count]) => count > 0)
    .map(([count, one, more]) => `${count} ${count === 1 ? one : more}`);
  return `${rest.length} more ${rest.length === 1 ? 'item' : 'items'}: ${told.join(', ')}.`;
}

/** The chosen setup's findings, worst first, and the rest of its items on demand; nothing in a plan without setups. */
export function Findings() {
  const plan = useLivePlan();
  const setup = useChosenSetup();
  const { report, instant } = useSetupReport(setup?.id ?? null);
  const dragging = useLive((state) => state.gesture !== null);
  const [all, setAll] = useState(false);
  if (!setup) return null;
  const letter = letterOf(plan, setup.id);
  if (!report) return <h3>Setup {letter}, being read</h3>;
  const findings = findingsOf(report);
  const rest = restOf(report);
  const [from, to] = report.seconds;
  return (
    <>
      <h3>
        Setup {letter},{' '}
        {instant ? `at ${formatSeconds(from)}` : `at its worst over ${formatSeconds(to - from)}`}
        {instant && !dragging ? ', the move being read' : ''}
      </h3>
      {findings.length > 0 ? (
        <FindingList items={findings} setup={report} />
      ) : (
        <p className="all-clear verd">
          <Glyph verdict="clear" /> Nothing that should keep out shows in this setup.
        </p>
      )}
      {plan.gear.length === 0 ? (
        <p className="after">No gear on the roof yet: what the crew brings will be judged here.</p>
      ) : null}
      {rest.length > 0 ? (
        <p className="after">
          {restWords(rest)}
          <button type="button" className="link" aria-expanded={all} onClick={() => setAll(!all)}>
            {all ? 'Fold them away' : 'Read them too'}
          </button>
        </p>
      ) : null}
      {all ? <FindingList items={rest} setup={report} /> : null}
      <ContinuityFindings setupId={setup.id} />
    </>
  );
}
