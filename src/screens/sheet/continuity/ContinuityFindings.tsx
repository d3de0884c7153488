import { useEffect, useState } from 'react';
import type { ContinuityFinding } from '../../../core/continuity/continuity';
import type { Plan } from '../../../core/plan/schema/plan';
import { continuitySentence } from '../../../core/report/continuity/continuitySentence';
import { goToSeconds, letterOf } from '../../../desk/choose';
import { useContinuity, useSetupContinuity } from '../../../desk/continuityStore';
import { useSession } from '../../../desk/hooks';
import { planStore } from '../../../desk/planStore';
import { sessionStore } from '../../../desk/sessionStore';
import { ContinuityGlyph } from '../../parts/ContinuityGlyph';
import { ChoosableRow } from '../ChoosableRow';
import { endPreviews } from '../previewing';
import { CheatActs } from './CheatActs';
import { DirtyActs } from './DirtyActs';
import { KeySideActs } from './KeySideActs';
import { SinglesActs } from './SinglesActs';
import { showFinding, showLine } from './showing';
import '../acts.css';
import './continuity.css';

/** Chooses whom it is about, and takes the clock to where it is seen best. */
function choose({ performerIds, atSeconds }: ContinuityFinding): void {
  const [first] = performerIds;
  const { selectedId, setSelectedId } = sessionStore.getState();
  if (first !== undefined && selectedId !== first) setSelectedId(first);
  if (atSeconds !== null) goToSeconds(atSeconds);
}

/** What a finding can be mended by, for those that can. */
function Mending({ plan, finding }: { readonly plan: Plan; readonly finding: ContinuityFinding }) {
  switch (finding.kind) {
    case 'key side':
      return <KeySideActs plan={plan} finding={finding} />;
    case 'matching singles':
      return finding.standing === 'holds' ? null : <SinglesActs plan={plan} finding={finding} />;
    case 'dirty single':
      return <DirtyActs plan={plan} finding={finding} />;
    case 'cheat':
      return <CheatActs plan={plan} finding={finding} />;
    case 'line':
      return (
        <button type="button" onClick={() => showLine(finding)}>
          Show the line
        </button>
      );
    default:
      return null;
  }
}

/** A finding and, where it breaks or is chosen, what can be done about it. */
function ContinuityRow(props: {
  readonly plan: Plan;
  readonly finding: ContinuityFinding;
  readonly chosen: boolean;
  readonly onChoose: () => void;
}) {
  const { plan, finding, chosen, onChoose } = props;
  const lengths = useSession((state) => state.lengths);
  const sentence = continuitySentence(plan, finding, lengths);
  const letter = letterOf(plan, finding.setupId);
  return (
    <>
      <ChoosableRow chosen={chosen} onChoose={onChoose}>
        <ContinuityGlyph standing={finding.standing} />
        <span className="sentence">
          <b>{letter}</b>
          {sentence.slice(letter.length)}
        </span>
      </ChoosableRow>
      {chosen || finding.standing === 'breaks' ? (
        <li className="continuity-acts">
          <button type="button" onClick={() => showFinding(finding)}>
            {finding.againstId === null ? 'Show' : `Show beside ${letterOf(plan, finding.againstId)}`}
          </button>
          <Mending plan={plan} finding={finding} />
        </li>
      ) : null}
    </>
  );
}

/** What tells one finding of a setup from the others, whatever its numbers are. */
const keyOf = ({ kind, againstId, performerIds }: ContinuityFinding): string =>
  [kind, againstId ?? 'alone', ...performerIds].join(' ');

function ContinuityList({
  plan,
  findings,
}: {
  readonly plan: Plan;
  readonly findings: readonly ContinuityFinding[];
}) {
  const [chosen, setChosen] = useState<string | null>(null);
  const keys = findings.map(keyOf);
  return (
    <ul className="rows findings continuity">
      {findings.map((finding, place) => {
        const sames = keys.slice(0, place).filter((each) => each === keys[place]).length;
        const key = `${keys[place]} ${sames}`;
        return (
          <ContinuityRow
            key={key}
            plan={plan}
            finding={finding}
            chosen={key === chosen}
            onChoose={() => {
              setChosen(key === chosen ? null : key);
              choose(finding);
            }}
          />
        );
      })}
    </ul>
  );
}

/** How the chosen setup cuts with the others: what breaks and what is said, and what holds on demand. */
export function ContinuityFindings({ setupId }: { readonly setupId: string }) {
  const findings = useSetupContinuity(setupId);
  const plan = useContinuity((state) => state.forPlan);
  const [all, setAll] = useState(false);
  // What is tried shows one plan with a change: of another plan it would be a lie.
  useEffect(
    () =>
      planStore.subscribe((now, before) => {
        if (now.plan !== before.plan) endPreviews();
      }),
    [],
  );
  if (!plan || findings.length === 0) return null;
  const told = findings.filter(({ standing }) => standing !== 'holds');
  const holding = findings.filter(({ standing }) => standing === 'holds');
  return (
    <>
      <h3>Continuity</h3>
      {told.length > 0 ? <ContinuityList plan={plan} findings={told} /> : null}
      {holding.length > 0 ? (
        <p className="after">
          {told.length > 0 ? `${holding.length} more hold.` : `It cuts: all ${holding.length} hold.`}
          <button type="button" className="link" aria-expanded={all} onClick={() => setAll(!all)}>
            {all ? 'Fold them away' : 'Read them too'}
          </button>
        </p>
      ) : null}
      {all ? <ContinuityList plan={plan} findings={holding} /> : null}
    </>
  );
}
