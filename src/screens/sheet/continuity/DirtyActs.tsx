import { useEffect, useRef, useState } from 'react';
import type { DirtySingleFinding } from '../../../core/continuity/dirty';
import type { MadeDirty } from '../../../core/continuity/makeDirty';
import { reposeCamera } from '../../../core/plan/edits/reposeCamera';
import type { Plan } from '../../../core/plan/schema/plan';
import { letterOf, nameOf } from '../../../core/report/continuity/names';
import { NBSP } from '../../../core/units/numbers';
import { formatShare } from '../../../core/units/shares';
import { askDirty } from '../../../desk/blocking/dirtyAsking';
import { useSession } from '../../../desk/hooks';
import { sentenceOf } from '../../../desk/reasonOf';
import { NumberField } from '../../parts/NumberField';
import { type Proposal, ProposalActs } from './ProposalActs';
import { wayOf } from './wayOf';

/** How much of a frame a shoulder takes until somebody says otherwise, and the most that may be asked for, per cent. */
const FIRST_PERCENT = 10;
const MOST_PERCENT = 60;

/** A search that takes longer than this says how far it is, and can be stopped; milliseconds. */
const PATIENCE_MS = 300;

interface Search {
  /** 0..1. */
  readonly done: number;
}

/** Takes the camera round its subject until somebody near takes the share of the frame that is asked for, or none. */
export function DirtyActs({ plan, finding }: { readonly plan: Plan; readonly finding: DirtySingleFinding }) {
  const lengths = useSession((state) => state.lengths);
  const [percent, setPercent] = useState(FIRST_PERCENT);
  const [refusal, setRefusal] = useState<string | null>(null);
  const subject = nameOf(plan, finding.subjectId);
  const [search, setSearch] = useState<Search | null>(null);
  const running = useRef<AbortController | null>(null);
  useEffect(() => () => running.current?.abort(), []);
  const seconds = finding.atSeconds ?? 0;
  const find = async (share: number): Promise<MadeDirty | 'stopped' | null> => {
    running.current?.abort();
    const own = new AbortController();
    running.current = own;
    const begun = performance.now();
    const tell = (done: number): void => {
      if (!own.signal.aborted && performance.now() - begun > PATIENCE_MS) setSearch({ done });
    };
    try {
      const asked = { seconds, share, lengths };
      const made = await askDirty(plan, finding.setupId, asked, { tell, signal: own.signal });
      return own.signal.aborted ? 'stopped' : made;
    } catch (error) {
      setRefusal(sentenceOf('The search could not be made', error));
      return 'stopped';
    } finally {
      if (running.current === own) setSearch(null);
    }
  };
  const propose = async (share: number): Promise<Proposal | null> => {
    const made = await find(share);
    if (made === 'stopped') return null;
    setRefusal(made ? made.why : `Nobody stands nearer to the lens than ${subject} then.`);
    if (!made || made.why !== null) return null;
    const own = letterOf(plan, made.setupId);
    return {
      name: share === 0 ? 'make a single clean' : 'make a single dirty',
      done:
        share === 0
          ? `${own}: the single on ${subject} is clean.`
          : `${own}: ${nameOf(plan, made.nearId)} takes ${formatShare(made.share)} of the frame.`,
      change: (from) => reposeCamera(from, made.change),
      place: wayOf(plan, made, seconds),
    };
  };
  return (
    <>
      <NumberField
        label="share of the frame"
        value={percent}
        unit="%"
        commit={(value) => {
          if (!(value > 0 && value <= MOST_PERCENT))
            return `Somebody near takes up to ${MOST_PERCENT}${NBSP}% of a frame. Did you mean ${FIRST_PERCENT}${NBSP}%?`;
          setPercent(value);
          setRefusal(null);
          return null;
        }}
      />
      <ProposalActs
        key={percent}
        word={`Make it dirty by ${percent}${NBSP}%`}
        propose={() => propose(percent / 100)}
      />
      {finding.near.length > 0 ? <ProposalActs word="Make it clean" propose={() => propose(0)} /> : null}
      {search ? (
        <p className="q" role="status">
          Looks round {subject}, {formatShare(search.done)} of the way.
          <button type="button" className="bare" onClick={() => running.current?.abort()}>
            Stop
          </button>
        </p>
      ) : null}
      {refusal === null ? null : (
        <p className="err" role="alert">
          {refusal}
        </p>
      )}
    </>
  );
}
