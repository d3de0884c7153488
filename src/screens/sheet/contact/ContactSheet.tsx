import { useMemo } from 'react';
import type { Plan } from '../../../core/plan/schema/plan';
import { chooseSetup, goToSeconds } from '../../../desk/choose';
import { type ContactShot, shotsOf, slateLine, slateOf } from '../../../desk/contactSlate';
import { usePlanState, useSession } from '../../../desk/hooks';
import { Column } from '../../parts/Column';
import { FramesSwitch } from '../lensTest/FramesSwitch';
import { StillCanvas } from '../lensTest/StillCanvas';
import { SavePanel } from './SavePanel';
import './contact.css';

/** One picture with its slate; pressed, the frame goes to its setup and moment. */
function Shot({ plan, shot }: { readonly plan: Plan; readonly shot: ContactShot }) {
  const lengths = useSession((state) => state.lengths);
  const slate = useMemo(() => slateOf(plan, shot, lengths), [plan, shot, lengths]);
  return (
    <li>
      <button
        type="button"
        className="contact-shot"
        onClick={() => {
          chooseSetup(shot.setup.id);
          goToSeconds(shot.seconds);
        }}
      >
        <StillCanvas plan={plan} setup={shot.setup} seconds={shot.seconds} />
        <span className="slate">
          <b>{slate.letter}</b>
          <span className="name">{slate.setup}</span>
          <span className="q">{shot.moment}</span>
        </span>
        <span className="q slate-line">{slateLine(slate)}</span>
      </button>
    </li>
  );
}

/** All setups at the start, middle and end of their moves, and what saves them as pictures. */
export function ContactSheet() {
  const plan = usePlanState((state) => state.plan);
  const rows = useMemo(() => plan.setups.map((setup) => shotsOf(plan, setup)), [plan]);
  return (
    <div className="two contact">
      <Column>
        <div className="frames-head">
          <FramesSwitch />
        </div>
        {rows.length === 0 ? (
          <p className="after">No camera stands yet. Place one, and its pictures come here.</p>
        ) : null}
        <ol className="contact-rows">
          {rows.map((shots) => (
            <li key={shots[0]?.setup.id}>
              <ul className="contact-row">
                {shots.map((shot) => (
                  <Shot key={shot.moment} plan={plan} shot={shot} />
                ))}
              </ul>
            </li>
          ))}
        </ol>
      </Column>
      <Column>
        <SavePanel plan={plan} />
      </Column>
    </div>
  );
}
