import type { Plan } from '../../../../core/plan/schema/plan';
import type { Mend } from '../../../../core/power/mend/types';
import { withMend } from '../../../../core/power/mend/withMend';
import type { MendedSentence } from '../../../../core/report/power/mending';
import { useSession } from '../../../../desk/hooks';
import { chooseItem, chooseItems } from '../../../../desk/selecting';
import { sessionStore } from '../../../../desk/sessionStore';
import { ChoosableRow } from '../../ChoosableRow';
import { ProposalActs } from '../../continuity/ProposalActs';
import { StandingGlyph } from '../../light/StandingGlyph';
import { mendDone, mendWord } from './words';

/** Where a thing's plate is typed. */
function openPanel(id: string): void {
  chooseItem(id, 'one');
  sessionStore.getState().setSheet('set');
}

/** A way to take care of a finding, to try or to do. */
function MendActs({
  plan,
  mend,
  about,
}: {
  readonly plan: Plan;
  readonly mend: Mend;
  readonly about: string;
}) {
  const lengths = useSession((state) => state.lengths);
  const word = mendWord(plan, mend);
  if (mend.act === 'say')
    return (
      <button
        type="button"
        className="do"
        aria-label={`${word}: ${about}`}
        onClick={() => openPanel(mend.itemId)}
      >
        {word}
      </button>
    );
  return (
    <ProposalActs
      word={word}
      about={about}
      propose={() => ({
        name: word.charAt(0).toLowerCase() + word.slice(1),
        done: mendDone(plan, mend, lengths),
        change: (from) => withMend(from, mend),
      })}
    />
  );
}

/** What the act names when it is only heard. */
const aboutOf = (sentence: string): string => sentence.slice(0, sentence.indexOf('. ') + 1) || sentence;

/** Sentences with what mends them; a press chooses what they are about. */
export function PowerFindings(props: {
  readonly plan: Plan;
  readonly told: readonly MendedSentence[];
  readonly heading: string;
}) {
  const { plan, told, heading } = props;
  const selectedId = useSession((state) => state.selectedId);
  if (told.length === 0) return null;
  return (
    <section className="group">
      <h4>{heading}</h4>
      <ul className="rows findings">
        {told.map(({ standing, sentence, itemIds, mends }) => (
          <PowerFinding
            key={sentence}
            plan={plan}
            standing={standing}
            sentence={sentence}
            itemIds={itemIds}
            // Connecting has a place of its own above.
            mends={mends.filter(({ act }) => act !== 'connect')}
            chosen={selectedId !== null && itemIds[0] === selectedId}
          />
        ))}
      </ul>
    </section>
  );
}

function PowerFinding(props: {
  readonly plan: Plan;
  readonly standing: MendedSentence['standing'];
  readonly sentence: string;
  readonly itemIds: readonly string[];
  readonly mends: readonly Mend[];
  readonly chosen: boolean;
}) {
  const { plan, standing, sentence, itemIds, mends, chosen } = props;
  const choose = (): void => {
    const [first] = itemIds;
    if (itemIds.length === 1 && first !== undefined) chooseItem(first);
    else chooseItems(itemIds.toReversed(), false);
  };
  return (
    <>
      <ChoosableRow chosen={chosen} onChoose={choose}>
        <StandingGlyph standing={standing} />
        <span className="sentence">{sentence}</span>
      </ChoosableRow>
      {mends.length > 0 ? (
        <li className="finding-acts">
          <div className="acts">
            {mends.map((mend) => (
              <MendActs key={JSON.stringify(mend)} plan={plan} mend={mend} about={aboutOf(sentence)} />
            ))}
          </div>
        </li>
      ) : null}
    </>
  );
}
