import { useState } from 'react';
import type { ContinuityFinding } from '../../core/continuity/continuity';
import type { Plan } from '../../core/plan/schema/plan';
import { continuitySentence } from '../../core/report/continuity/continuitySentence';
import { goToSeconds, letterOf } from '../../desk/choose';
import { useContinuity, useSetupContinuity } from '../../desk/continuityStore';
import { useSession } from '../../desk/hooks';
import { sessionStore } from '../../desk/sessionStore';
import { ContinuityGlyph } from '../parts/ContinuityGlyph';
import { ChoosableRow } from './ChoosableRow';

/** Chooses whom it is about, and takes the clock to where it is seen best. */
function choose({ performerIds, atSeconds }: ContinuityFinding): void {
  const [first] = performerIds;
  const { selectedId, setSelectedId } = sessionStore.getState();
  if (first !== undefined && selectedId !== first) setSelectedId(first);
  if (atSeconds !== null) goToSeconds(atSeconds);
}

function ContinuityList({
  plan,
  findings,
}: {
  readonly plan: Plan;
  readonly findings: readonly ContinuityFinding[];
}) {
  const lengths = useSession((state) => state.lengths);
  return (
    <ul className="rows findings">
      {findings.map((finding) => {
        const sentence = continuitySentence(plan, finding, lengths);
        const letter = letterOf(plan, finding.setupId);
        return (
          <ChoosableRow key={sentence} chosen={false} onChoose={() => choose(finding)}>
            <ContinuityGlyph standing={finding.standing} />
            <span className="sentence">
              <b>{letter}</b>
              {sentence.slice(letter.length)}
            </span>
          </ChoosableRow>
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
