import { Fragment, useState } from 'react';
import { useStore } from 'zustand';
import { findingSentence } from '../../core/report/sentences';
import type { ItemReport, SetupReport } from '../../core/report/types';
import { formatSeconds } from '../../core/units/seconds';
import { goToSeconds, letterOf } from '../../desk/choose';
import { useLive, useLivePlan, useSession } from '../../desk/hooks';
import { isFinding, openFinding, remediesStore } from '../../desk/remedies/remediesStore';
import { sessionStore } from '../../desk/sessionStore';
import { Glyph } from '../parts/Glyph';
import { lazily } from '../parts/lazily';
import { concernOf, findingsOf, isLetShow, restOf, toneOf } from '../report/concerns';
import { useChosenSetup } from '../report/useChosenSetup';
import { useReportOverSpan, useSetupReport } from '../report/useSetupReports';
import { ChoosableRow } from './ChoosableRow';
import { ContinuityFindings } from './continuity/ContinuityFindings';
import { framesViewStore } from './lensTest/framesView';
import { endPreviews, isPreview } from './previewing';
import { Sentence } from './Sentence';

const FindingActs = lazily(async () => (await import('./remedies/FindingActs')).FindingActs);

/** Opens what belongs to a finding, chooses its item, and takes the clock to where it is worst; closes an opened one. */
function choose(item: ItemReport, setupId: string): void {
  const { open } = remediesStore.getState();
  endPreviews();
  const finding = { setupId, itemId: item.id };
  if (isFinding(open, finding)) {
    openFinding(null);
    return;
  }
  openFinding(finding);
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
  const open = useStore(remediesStore, (state) => state.open);
  return (
    <ul className="rows findings">
      {items.map((item) => {
        const isOpen = isFinding(open, { setupId: setup.id, itemId: item.id });
        return (
          <Fragment key={item.id}>
            <ChoosableRow
              chosen={item.id === selectedId}
              expanded={isOpen}
              onChoose={() => choose(item, setup.id)}
            >
              <Glyph verdict={item.verdict} {...toneProps(item)} />
              <Sentence {...findingSentence(item, setup, lengths)} />
            </ChoosableRow>
            {isOpen ? <FindingActs item={item} setupId={setup.id} /> : null}
          </Fragment>
        );
      })}
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

const isLost = ({ wish, verdict }: ItemReport): boolean =>
  wish === 'keep out' && verdict === 'lost in the dark';

/** Where nothing asks for something: by geometry, as it is lit now, or since somebody said so. */
function AllClear({ lost, letShow }: { readonly lost: number; readonly letShow: number }) {
  if (letShow > 0)
    return (
      <p className="all-clear q">
        <Glyph verdict="showing" tone="q" /> Nothing that should keep out shows in this setup but what was let
        show.
      </p>
    );
  return lost === 0 ? (
    <p className="all-clear verd">
      <Glyph verdict="clear" /> Nothing that should keep out shows in this setup.
    </p>
  ) : (
    <p className="all-clear q">
      <Glyph verdict="lost in the dark" /> Nothing that should keep out reads in this setup, as it is lit now.
    </p>
  );
}

/** The chosen setup's findings, worst first, and the rest of its items on demand; nothing in a plan without setups. */
export function Findings() {
  const plan = useLivePlan();
  const setup = useChosenSetup();
  const live = useSetupReport(setup?.id ?? null);
  const over = useReportOverSpan(setup?.id ?? '');
  // What is only tried changes the picture, not the list that it is tried from.
  const previewing = useLive((state) => isPreview(state.gesture));
  const dragging = useLive((state) => state.gesture !== null) && !previewing;
  const { report, instant } = previewing && over ? { report: over, instant: false } : live;
  const [all, setAll] = useState(false);
  if (!setup) return null;
  const letter = letterOf(plan, setup.id);
  if (!report) return <h3>Setup {letter}, being read</h3>;
  const findings = findingsOf(report);
  const others = restOf(report);
  const letShow = others.filter(isLetShow);
  // What is lost in the dark is in frame all the same: it is read out, not counted.
  const lost = others.filter((item) => isLost(item) && !isLetShow(item));
  const rest = others.filter((item) => !isLost(item) && !isLetShow(item));
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
        <AllClear lost={lost.length} letShow={letShow.length} />
      )}
      {letShow.length > 0 ? <FindingList items={letShow} setup={report} /> : null}
      {lost.length > 0 ? <FindingList items={lost} setup={report} /> : null}
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
      {findings.length > 0 ? (
        <p className="after">
          All setups at once, with the least that has to move:
          <button
            type="button"
            className="link"
            onClick={() => {
              endPreviews();
              framesViewStore.setState({ view: 'clear all' });
            }}
          >
            Clear all setups
          </button>
        </p>
      ) : null}
      <ContinuityFindings setupId={setup.id} />
    </>
  );
}
