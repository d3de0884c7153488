import { spanOf } from '../../../../core/optics/camera';
import { setGround } from '../../../../core/plan/edits/setGround';
import type { Plan } from '../../../../core/plan/schema/plan';
import type { Setup } from '../../../../core/plan/schema/setup';
import { WETNESSES } from '../../../../core/plan/wetness';
import { highlightSentences } from '../../../../core/report/light/highlightSentences';
import { goToSeconds } from '../../../../desk/choose';
import { useSession } from '../../../../desk/hooks';
import { useSetupLight } from '../../../../desk/lightStore';
import { sessionStore } from '../../../../desk/sessionStore';
import { SelectField } from '../../../parts/Field';
import { ChoosableRow } from '../../ChoosableRow';
import { edit } from '../../camera/editing';
import { Sentence } from '../../Sentence';
import { StandingGlyph } from '../StandingGlyph';
import { ToFeet } from './ToFeet';

/** What lamps put into the floor of the chosen setup, and how a highlight is brought to somebody's feet. */
export function FloorView({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const light = useSetupLight(setup.id);
  const lengths = useSession((state) => state.lengths);
  const selectedId = useSession((state) => state.selectedId);
  const told = light
    ? highlightSentences({ plan, lengths, light, seen: { seconds: spanOf(plan, setup) } })
    : [];
  return (
    <>
      <div className="fields">
        <SelectField
          label={`${plan.ground.surface}, it is`}
          value={plan.ground.wetness}
          wide
          onChange={(value) => {
            const wetness = WETNESSES.find((each) => each === value);
            if (wetness) edit('wet the ground', (before) => setGround(before, { patch: { wetness } }));
          }}
        >
          {WETNESSES.map((each) => (
            <option key={each}>{each}</option>
          ))}
        </SelectField>
      </div>
      {plan.ground.areas && plan.ground.areas.length > 0 ? (
        <p className="after">Drawn areas of the roof are wetter or drier than that.</p>
      ) : null}
      {light ? (
        <ul className="rows findings" aria-label="Highlights in the floor, brightest first">
          {told.map((sentence) => (
            <ChoosableRow
              key={sentence.itemId}
              chosen={sentence.itemId === selectedId}
              onChoose={() => {
                sessionStore.getState().setSelectedId(sentence.itemId);
                if (sentence.atSeconds !== null) goToSeconds(sentence.atSeconds);
              }}
            >
              <StandingGlyph standing={sentence.standing} />
              <Sentence {...sentence} />
            </ChoosableRow>
          ))}
        </ul>
      ) : (
        <p className="after">The floor is being read.</p>
      )}
      {light && told.length === 0 ? (
        <p className="advice">No lamp puts a highlight in the floor that this setup sees.</p>
      ) : null}
      <ToFeet setup={setup} />
    </>
  );
}
