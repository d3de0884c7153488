import type { ReactNode } from 'react';
import { isRefused, type Refused } from '../../../core/light/advice';
import { type Proposal, ProposalActs } from '../continuity/ProposalActs';

/** One way to get somewhere: its button with a preview and what goes with it, or why it is none. */
export function Way<Advice extends object>(props: {
  readonly way: Advice | Refused;
  /** What it would be, before the reason why it is not: `Move it`. */
  readonly lead: string;
  /** What the button says; null where nothing would have to be done. */
  readonly word: (advice: Advice) => string | null;
  readonly small?: (advice: Advice) => string | null;
  /** Whether the advice is about a plan or a moment that has gone. */
  readonly stale: boolean;
  readonly propose: (advice: Advice) => Proposal;
}): ReactNode {
  const { way, lead, word, small, stale, propose } = props;
  if (isRefused(way))
    return (
      <li className="q">
        {lead}: {way.refused}
      </li>
    );
  const said = word(way);
  if (said === null) return null;
  const more = small?.(way) ?? null;
  return (
    <li>
      <span className="light-acts">
        <ProposalActs word={said} disabled={stale} propose={() => propose(way)} />
      </span>
      {more === null ? null : <small className="q">{more}</small>}
    </li>
  );
}
