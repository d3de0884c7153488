import { sourceLines } from '../../../../core/cautions/sourceLines';
import type { Caution } from '../../../../core/cautions/types';
import type { Plan } from '../../../../core/plan/schema/plan';
import { useSession } from '../../../../desk/hooks';
import { sessionStore } from '../../../../desk/sessionStore';
import { BreakingAddresses } from '../../../parts/BreakingAddresses';
import { bringIntoSight } from '../../../parts/bringIntoSight';
import { BagsButton } from './BagsButton';
import { Noted, NoteForm } from './NoteForm';
import { figureLines } from './words';

/** Brings the roof from above into sight, where a caution is marked. */
function showOnRoof(): void {
  sessionStore.getState().setRoofView('overhead');
  bringIntoSight('.roof');
}

/** What belongs to an opened caution: its figures and sources, who decides, what can be done, and its note. */
export function CautionActs(props: {
  readonly plan: Plan;
  readonly caution: Caution;
  readonly note: string | undefined;
}) {
  const { plan, caution, note } = props;
  const lengths = useSession((state) => state.lengths);
  const [standId] = caution.itemIds;
  return (
    <li className="finding-acts caution-acts">
      <div className="acts">
        {caution.kind === 'wind' && standId !== undefined ? (
          <BagsButton plan={plan} standId={standId} />
        ) : null}
        {caution.place ? (
          <button type="button" onClick={showOnRoof}>
            Show it on the roof
          </button>
        ) : null}
      </div>
      {note === undefined ? <NoteForm caution={caution} /> : <Noted caution={caution} note={note} />}
      <ul className="caution-lines" aria-label="Its figures, and where they come from">
        {figureLines(caution.figures, lengths).map((line) => (
          <li key={line}>{line}</li>
        ))}
        {sourceLines(caution.sources).map((line) => (
          <li key={line} className="q">
            <BreakingAddresses words={line} />
          </li>
        ))}
      </ul>
      <p>{caution.decides}</p>
    </li>
  );
}
