import type { LightSentence, LightSubject } from '../../../core/report/light/types';
import { goToSeconds } from '../../../desk/choose';
import { usePlanState, useSession } from '../../../desk/hooks';
import { useSetupLight } from '../../../desk/lightStore';
import { sessionStore } from '../../../desk/sessionStore';
import { useChosenSetup } from '../../report/useChosenSetup';
import { ChoosableRow } from '../ChoosableRow';
import { Sentence } from '../Sentence';
import { StandingGlyph } from './StandingGlyph';

function goTo({ atSeconds, performerId, itemId }: LightSentence): void {
  const about = performerId ?? itemId;
  if (about !== null) sessionStore.getState().setSelectedId(about);
  if (atSeconds !== null) goToSeconds(atSeconds);
}

/**
 * What the report says of the chosen setup's light over its whole span, of those subjects; a press goes there.
 * `onlyBreaks`: what will not do as it stands.
 */
export function Told(props: {
  readonly heading: string;
  readonly about: readonly LightSubject[];
  readonly onlyBreaks?: boolean;
}) {
  const { heading, about, onlyBreaks = false } = props;
  const setup = useChosenSetup();
  const light = useSetupLight(setup?.id ?? null);
  const selectedId = useSession((state) => state.selectedId);
  const cast = usePlanState((state) => state.plan.cast);
  // What will not do first, then face by face.
  const place = ({ standing, performerId }: LightSentence): number =>
    standing === 'breaks' ? -1 : cast.findIndex(({ id }) => id === performerId);
  const told = (light?.sentences ?? [])
    .filter((sentence) => about.includes(sentence.about) && (!onlyBreaks || sentence.standing === 'breaks'))
    .toSorted((a, b) => place(a) - place(b));
  if (told.length === 0) return null;
  return (
    <section className="group">
      <h4>{heading}</h4>
      <ul className="rows findings">
        {told.map((sentence) => (
          <ChoosableRow
            key={`${sentence.about} ${sentence.performerId} ${sentence.itemId} ${sentence.text}`}
            chosen={sentence.performerId === null && sentence.itemId === selectedId}
            onChoose={() => goTo(sentence)}
          >
            <StandingGlyph standing={sentence.standing} />
            <Sentence {...sentence} />
          </ChoosableRow>
        ))}
      </ul>
    </section>
  );
}
