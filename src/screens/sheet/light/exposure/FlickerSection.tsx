import { likelyHertz, setupFlicker } from '../../../../core/light/mains';
import { changeSetup } from '../../../../core/plan/edits/changeSetup';
import { setMains } from '../../../../core/plan/edits/setMains';
import type { Plan } from '../../../../core/plan/schema/plan';
import type { Setup } from '../../../../core/plan/schema/setup';
import { flickerSentence } from '../../../../core/report/light/flickerSentence';
import { NBSP } from '../../../../core/units/numbers';
import { Segmented } from '../../../parts/Segmented';
import { edit } from '../../camera/editing';
import { numberWord } from '../../camera/legal';
import { Sentence } from '../../Sentence';
import { StandingGlyph } from '../StandingGlyph';

/** So many safe angles are offered, those nearest to the setup's own. */
const OFFERED = 5;
/** A shutter this near to a safe angle is at it, degrees. */
const SAME_DEGREES = 0.05;

const angleText = (degrees: number): string => `${numberWord(degrees, 1)}°`;

function offeredAngles(angles: readonly number[], own: number): readonly number[] {
  return angles
    .toSorted((a, b) => Math.abs(a - own) - Math.abs(b - own))
    .slice(0, OFFERED)
    .toSorted((a, b) => a - b);
}

/** What the shutter does under the lamps of the place, and the angles and rates at which it does nothing. */
export function FlickerSection({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const flicker = setupFlicker(plan, setup);
  const sentence = flickerSentence({ plan, setup, light: { flicker } });
  const likely = likelyHertz(plan.place);
  const { mainsHertz } = plan.place;
  const shutter = (shutterDegrees: number): void =>
    void edit('change the shutter', (before) =>
      changeSetup(before, { setupId: setup.id, patch: { shutterDegrees } }),
    );
  const rate = (framesPerSecond: number): void =>
    void edit('change the frame rate', (before) =>
      changeSetup(before, { setupId: setup.id, patch: { framesPerSecond } }),
    );
  return (
    <section className="group">
      <h4>Flicker on the mains</h4>
      <Segmented
        label="The mains of the place"
        choices={[
          { value: 'likely', word: `${likely}${NBSP}Hz, likely here` },
          { value: '50', word: `50${NBSP}Hz` },
          { value: '60', word: `60${NBSP}Hz` },
        ]}
        chosen={mainsHertz === 50 ? '50' : mainsHertz === 60 ? '60' : 'likely'}
        onChoose={(value) =>
          void edit('set the mains', (before) =>
            setMains(before, { hertz: value === 'likely' ? null : value === '50' ? 50 : 60 }),
          )
        }
      />
      {sentence ? (
        <p className="told">
          <StandingGlyph standing={sentence.standing} />
          <Sentence {...sentence} />
        </p>
      ) : (
        <p className="advice">No lamp of the place is lit, and what the crew brings is taken to be steady.</p>
      )}
      {sentence ? (
        <div className="acts">
          {offeredAngles(flicker.safeAngles, setup.shutterDegrees).map((angle) => {
            const isSet = Math.abs(angle - setup.shutterDegrees) < SAME_DEGREES;
            return (
              <button
                key={angle}
                type="button"
                className={isSet ? 'do' : undefined}
                aria-pressed={isSet}
                aria-label={`Set the shutter to ${angleText(angle)}`}
                onClick={() => shutter(angle)}
              >
                {angleText(angle)}
              </button>
            );
          })}
          {flicker.safeBy === null ? (
            <button type="button" onClick={() => rate(flicker.nearestRate)}>
              {numberWord(flicker.nearestRate, 3)}
              {NBSP}fps
            </button>
          ) : null}
        </div>
      ) : null}
    </section>
  );
}
