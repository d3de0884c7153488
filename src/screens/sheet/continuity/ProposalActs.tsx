import { useEffect, useId, useState } from 'react';
import type { Plan } from '../../../core/plan/schema/plan';
import { useLive } from '../../../desk/hooks';
import { type ProposedPlace, type ProposedStand, proposalStore } from '../../../desk/lensTestProposal';
import { endPreview, endPreviews, make, type Previewer, preview } from '../previewing';

/** A change that would mend a finding. */
export interface Proposal {
  /** The edit's name, and what is said once it is made. */
  readonly name: string;
  readonly done: string;
  readonly change: (plan: Plan) => Plan;
  /** What is drawn dashed on the roof while it is tried. */
  readonly place?: ProposedPlace | undefined;
  readonly stands?: readonly ProposedStand[];
}

/** Draws on the roof what is tried. */
function useDrawn(tried: Proposal | null): void {
  useEffect(() => {
    if (!tried) return;
    proposalStore.setState({ place: tried.place ?? null, stands: tried.stands ?? [] });
    return () => proposalStore.setState({ place: null, stands: [] });
  }, [tried]);
}

/**
 * Makes a change, or tries it first: dashed on the roof, in the frame as it would be. `propose` is asked when one of the
 * two is pressed, and says itself why there is none.
 */
export function ProposalActs(props: {
  readonly word: string;
  readonly propose: () => Proposal | null;
  readonly disabled?: boolean;
}) {
  const { word, propose, disabled = false } = props;
  const by: Previewer = `continuity ${useId()}`;
  const [tried, setTried] = useState<Proposal | null>(null);
  const shown = useLive((state) => state.gesture?.itemId === by);
  useDrawn(shown ? tried : null);
  useEffect(() => () => endPreview(by), [by]);
  const toggle = (): void => {
    endPreviews();
    const proposal = shown ? null : propose();
    setTried(proposal);
    if (proposal) preview(by, proposal.change);
  };
  const act = (): void => {
    endPreviews();
    const proposal = shown ? tried : propose();
    if (proposal) make(proposal.name, proposal.change, proposal.done);
  };
  return (
    <>
      <button type="button" className="do" disabled={disabled} onClick={act}>
        {word}
      </button>
      <button
        type="button"
        className="try"
        disabled={disabled}
        aria-label={`${shown ? 'Put it back' : 'Preview'}: ${word}`}
        onClick={toggle}
      >
        {shown ? 'Put it back' : 'Preview'}
      </button>
    </>
  );
}
