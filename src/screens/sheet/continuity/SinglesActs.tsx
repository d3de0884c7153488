import { useMemo, useState } from 'react';
import type { MatchBy } from '../../../core/continuity/matchSetup';
import type { MatchingSinglesFinding } from '../../../core/continuity/singles';
import { reposeCamera } from '../../../core/plan/edits/reposeCamera';
import type { Plan } from '../../../core/plan/schema/plan';
import { letterOf } from '../../../desk/choose';
import { useSession } from '../../../desk/hooks';
import { Segmented } from '../../parts/Segmented';
import { MATCH_ROWS, type Matched, matched } from './matching';
import { type Proposal, ProposalActs } from './ProposalActs';
import { wayOf } from './wayOf';

function MatchTable({ plan, found }: { readonly plan: Plan; readonly found: Matched }) {
  const lengths = useSession((state) => state.lengths);
  const { model, now, then } = found;
  const own = letterOf(plan, now.setupId);
  return (
    <table className="match-table">
      <thead>
        <tr>
          <td />
          <th scope="col">{letterOf(plan, model.setupId)}</th>
          <th scope="col">{own} now</th>
          <th scope="col">{own} then</th>
        </tr>
      </thead>
      <tbody>
        {MATCH_ROWS.map(({ word, text }) => (
          <tr key={word}>
            <th scope="row">{word}</th>
            <td>{text(model, lengths)}</td>
            <td>{text(now, lengths)}</td>
            <td>{then ? text(then, lengths) : 'out of frame'}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Frames one single as the other: which changes, by what, the numbers before and after. */
export function SinglesActs(props: { readonly plan: Plan; readonly finding: MatchingSinglesFinding }) {
  const { plan, finding } = props;
  const lengths = useSession((state) => state.lengths);
  const [earlier, setEarlier] = useState(false);
  const [by, setBy] = useState<MatchBy>('distance');
  const found = useMemo(
    () => matched(plan, { finding, earlier, by }, lengths),
    [plan, finding, earlier, by, lengths],
  );
  const [one, other] = finding.singles.map(({ setupId }) => letterOf(plan, setupId));
  const [own, model] = earlier ? [one, other] : [other, one];
  const propose = (): Proposal | null =>
    found && {
      name: 'match a single',
      done: `${own} frames as ${model} does.`,
      change: (from) => reposeCamera(from, found.match.change),
      place: wayOf(plan, found.match, finding.atSeconds ?? 0),
    };
  return (
    <>
      <div className="match-how">
        <Segmented
          label="Which single changes"
          choices={[
            { value: 'later', word: `${other} to ${one}` },
            { value: 'earlier', word: `${one} to ${other}` },
          ]}
          chosen={earlier ? 'earlier' : 'later'}
          onChoose={(value) => setEarlier(value === 'earlier')}
        />
        <Segmented
          label="What is kept where the lenses differ"
          choices={[
            { value: 'distance', word: 'by distance' },
            { value: 'head', word: 'by head' },
          ]}
          chosen={by}
          onChoose={setBy}
        />
      </div>
      {found ? <MatchTable plan={plan} found={found} /> : null}
      {found && found.match.why !== null ? (
        <p className="err" role="alert">
          {found.match.why}
        </p>
      ) : null}
      <ProposalActs
        key={`${own} ${by}`}
        word={`Match ${own} to setup ${model}`}
        propose={propose}
        disabled={found?.match.why !== null}
      />
    </>
  );
}
