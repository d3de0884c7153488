import { useEffect, useId, useRef, useState } from 'react';
import type { Plan } from '../../../core/plan/schema/plan';
import { useLive } from '../../../desk/hooks';
import { type ProposedPlace, type ProposedStand, proposalStore } from '../../../desk/lensTestProposal';
import { planStore } from '../../../desk/planStore';
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
  /** Things that are drawn as they would be beside what they are, by id. */
  readonly changed?: readonly string[];
}

/** Draws on the roof what is tried. */
function useDrawn(tried: Proposal | null): void {
  useEffect(() => {
    if (!tried) return;
    proposalStore.setState({
      place: tried.place ?? null,
      stands: tried.stands ?? [],
      changed: tried.changed ?? [],
    });
    return () => proposalStore.setState({ place: null, stands: [], changed: [] });
  }, [tried]);
}

/**
 * Makes a change, or tries it first: dashed on the roof, in the frame as it would be. `propose` is asked when one of the
 * two is pressed, and says itself why there is none; it may take its time, through which nothing can be pressed.
 */
export function ProposalActs(props: {
  readonly word: string;
  readonly propose: () => Proposal | null | Promise<Proposal | null>;
  readonly disabled?: boolean;
  /** What it is about, where the word alone does not say so: for who only hears it. */
  readonly about?: string;
}) {
  const { word, propose, disabled = false, about = null } = props;
  const named = about === null ? word : `${word}: ${about}`;
  const by: Previewer = `continuity ${useId()}`;
  const [tried, setTried] = useState<Proposal | null>(null);
  const shown = useLive((state) => state.gesture?.itemId === by);
  useDrawn(shown ? tried : null);
  useEffect(() => () => endPreview(by), [by]);
  const [waits, setWaits] = useState(false);
  const here = useRef(true);
  useEffect(() => {
    here.current = true;
    return () => {
      here.current = false;
    };
  }, []);
  /** What is proposed, unless the plan has become another one, or nobody looks any more, before it was found. */
  const asked = async (): Promise<Proposal | null> => {
    const { plan } = planStore.getState();
    const found = propose();
    if (!(found instanceof Promise)) return found;
    setWaits(true);
    try {
      const proposal = await found;
      return here.current && planStore.getState().plan === plan ? proposal : null;
    } finally {
      if (here.current) setWaits(false);
    }
  };
  // What waits keeps the focus, which a disabled button would lose.
  const toggle = async (): Promise<void> => {
    if (waits) return;
    endPreviews();
    const proposal = shown ? null : await asked();
    setTried(proposal);
    if (proposal) preview(by, proposal.change);
  };
  const act = async (): Promise<void> => {
    if (waits) return;
    endPreviews();
    const proposal = shown ? tried : await asked();
    if (proposal) make(proposal.name, proposal.change, proposal.done);
  };
  return (
    <>
      <button
        type="button"
        className="do"
        disabled={disabled}
        aria-disabled={waits}
        aria-label={named}
        onClick={() => void act()}
      >
        {word}
      </button>
      <button
        type="button"
        className="try"
        disabled={disabled}
        aria-disabled={waits}
        aria-label={`${shown ? 'Put it back' : 'Preview'}: ${about ?? word}`}
        onClick={() => void toggle()}
      >
        {shown ? 'Put it back' : 'Preview'}
      </button>
    </>
  );
}
