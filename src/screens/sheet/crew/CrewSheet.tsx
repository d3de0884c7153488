import { useStore } from 'zustand';
import { useLivePlan, usePlanState } from '../../../desk/hooks';
import { shareStore } from '../../../desk/share/shareStore';
import { Column } from '../../parts/Column';
import { PackActs } from '../night/pack/PackActs';
import { CodePart } from './CodePart';
import { CrewFiles } from './CrewFiles';
import { LinkPart } from './LinkPart';
import { OpenFiles } from './OpenFiles';
import './crew.css';

/** What goes to the crew: one link with its code, and files for who cannot open it. */
export function CrewSheet() {
  const plan = useLivePlan();
  const planId = usePlanState((state) => state.planId);
  const last = useStore(shareStore, (state) => state.made);
  const made = last?.planId === planId ? last : null;
  return (
    <div className="two crew-share">
      <Column>
        <LinkPart made={made} />
      </Column>
      <Column>
        {made ? (
          <section aria-labelledby="code-part-title">
            <h3 id="code-part-title">As a code</h3>
            <CodePart made={made} />
          </section>
        ) : null}
        <section aria-labelledby="crew-files-title">
          <h3 id="crew-files-title">As files</h3>
          <PackActs plan={plan} />
          <CrewFiles />
          <OpenFiles />
        </section>
      </Column>
    </div>
  );
}
