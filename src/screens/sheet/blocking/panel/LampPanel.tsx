import { flickerOf, type Lamp, secondsOfCue } from '../../../../core/plan/cues';
import { setCue } from '../../../../core/plan/edits/changeCues';
import type { Cue } from '../../../../core/plan/schema/gear';
import type { Plan } from '../../../../core/plan/schema/plan';
import { NBSP } from '../../../../core/units/numbers';
import { formatShare, parseShare } from '../../../../core/units/shares';
import { chooseThing } from '../../../../desk/blocking/choosing';
import { secondsOfBeat } from '../../../../desk/blocking/things';
import { Field, SelectField } from '../../../parts/Field';
import { firstSentence } from '../../../parts/faultSentence';
import { NumberField } from '../../../parts/NumberField';
import { useEdit } from '../../fields/edit';
import { FieldOf } from '../../fields/FieldOf';
import { flickerFields } from '../../fields/flickerFields';
import { dimFields } from '../../fields/lampFields';
import { addCueHere, addFlickerCueHere, removeThing, withPattern } from '../doing';
import { cueText, momentText } from '../words';
import { BeatOptions, PanelHead } from './choices';

/** The longest fade, and the last moment of a clock, seconds. */
const LONGEST_FADE = 600;
const LAST_SECONDS = 3600;

const within = (value: number, most: number): string | null =>
  value >= 0 && value <= most ? null : `This takes 0 to ${most}${NBSP}s.`;

/** A lamp along the action: how far it is dimmed to begin with, and its cues. */
export function LampPanel({ plan, lamp }: { readonly plan: Plan; readonly lamp: Lamp }) {
  const cues = (lamp.cues ?? [])
    .map((cue, cueIndex) => ({ cue, cueIndex, from: secondsOfCue(plan, cue) }))
    .toSorted((a, b) => a.from - b.from);
  return (
    <>
      <PanelHead title={lamp.label} />
      <section className="group">
        <h4>{cues.length === 0 ? 'All along' : 'Until the first cue'}</h4>
        <div className="fields">
          {dimFields(lamp.id, lamp.dim).map((spec) => (
            <FieldOf key={spec.label} spec={spec} />
          ))}
          {lamp.kind === 'practical'
            ? flickerFields(lamp).map((spec) => <FieldOf key={spec.label} spec={spec} />)
            : null}
        </div>
      </section>
      <section className="group">
        <h4>{cues.length === 0 ? 'No cue yet' : 'Cues'}</h4>
        <ul className="lines">
          {cues.map(({ cue, cueIndex, from }) => (
            <li key={cueIndex}>
              <button
                type="button"
                className="link"
                onClick={() => chooseThing({ type: 'cue', itemId: lamp.id, cueIndex })}
              >
                {momentText(from)}
              </button>
              <span className="q">{cueText(cue)}</span>
            </li>
          ))}
        </ul>
        <p className="acts">
          <button type="button" onClick={() => addCueHere(lamp.id)}>
            Add a cue at the playhead
          </button>
          {lamp.kind === 'practical' ? (
            <button type="button" onClick={() => addFlickerCueHere(lamp.id)}>
              Begin or end its flicker at the playhead
            </button>
          ) : null}
        </p>
      </section>
    </>
  );
}

/** What a cue does to a flicker; a lamp of the place that has none yet gets one with it. */
function FlickerChoice(props: { readonly lamp: Lamp; readonly cue: Cue; readonly cueIndex: number }) {
  const { lamp, cue, cueIndex } = props;
  const edit = useEdit();
  const canFlicker = lamp.kind === 'practical';
  return (
    <SelectField
      label="its flicker"
      value={cue.flickers === undefined ? '' : cue.flickers ? 'begins' : 'ends'}
      onChange={(to) => {
        const flickers = to === '' ? undefined : to === 'begins';
        void edit('have a lamp flicker by a cue', (before) =>
          setCue(flickers ? withPattern(before, lamp.id) : before, {
            id: lamp.id,
            cueIndex,
            patch: { flickers },
          }),
        );
      }}
    >
      <option value="" disabled={cue.dim === undefined}>
        is as before
      </option>
      <option value="begins" disabled={!canFlicker}>
        begins
      </option>
      <option value="ends" disabled={!canFlicker}>
        ends
      </option>
    </SelectField>
  );
}

/** A cue: when it begins, what the lamp comes to, how long that takes, and whether it flickers from then on. */
export function CuePanel(props: {
  readonly plan: Plan;
  readonly lamp: Lamp;
  readonly cue: Cue;
  readonly cueIndex: number;
}) {
  const { plan, lamp, cue, cueIndex } = props;
  const edit = useEdit();
  const set = (name: string, patch: { readonly [Field in keyof Cue]?: Cue[Field] | undefined }) =>
    edit(name, (before) => setCue(before, { id: lamp.id, cueIndex, patch }));
  const from = secondsOfCue(plan, cue);
  return (
    <>
      <PanelHead title={`${lamp.label}, cue`} />
      <div className="fields">
        <SelectField
          label="begins"
          value={cue.beat ?? ''}
          onChange={(beat) =>
            void set(
              'move a cue',
              beat === '' ? { atSeconds: from, beat: undefined } : { atSeconds: 0, beat },
            )
          }
        >
          <option value="">on the clock</option>
          <BeatOptions plan={plan} />
        </SelectField>
        <NumberField
          label={cue.beat === undefined ? 'at' : 'after the beat by'}
          unit="s"
          decimals={2}
          value={cue.atSeconds}
          commit={(atSeconds) => {
            const most = LAST_SECONDS - (cue.beat === undefined ? 0 : secondsOfBeat(plan, cue.beat));
            return within(atSeconds, most) ?? set('move a cue', { atSeconds });
          }}
        />
        <Field
          label="dims to"
          {...(cue.dim === undefined ? {} : { unit: '%' })}
          text={cue.dim === undefined ? '' : formatShare(cue.dim).replace(`${NBSP}%`, '')}
          empty="as before"
          commit={(text) => {
            if (text.trim() === '')
              return cue.flickers === undefined
                ? 'Say first what its flicker does: a cue changes one of the two.'
                : set('set a cue', { dim: undefined, fadeSeconds: 0 });
            const read = parseShare(text);
            if (!read.ok) return firstSentence(read.faults);
            if (read.value < 0 || read.value > 1) return `This takes 0 to 100${NBSP}%.`;
            return set('set a cue', { dim: read.value });
          }}
        />
        {cue.dim === undefined ? null : (
          <NumberField
            label="fades over"
            unit="s"
            decimals={1}
            value={cue.fadeSeconds}
            commit={(fadeSeconds) =>
              within(fadeSeconds, LONGEST_FADE) ?? set('change how long a lamp fades', { fadeSeconds })
            }
          />
        )}
        {lamp.kind === 'practical' || cue.flickers !== undefined ? (
          <FlickerChoice lamp={lamp} cue={cue} cueIndex={cueIndex} />
        ) : null}
      </div>
      {cue.flickers !== undefined && flickerOf(lamp) === null ? (
        <p className="advice">{lamp.label} has no pattern to flicker by, so this cue leaves it steady.</p>
      ) : null}
      <p className="acts">
        <button
          type="button"
          className="bare"
          onClick={() => removeThing(plan, { type: 'cue', itemId: lamp.id, cueIndex })}
        >
          Take it out
        </button>
        <button type="button" className="bare" onClick={() => chooseThing({ type: 'lamp', itemId: lamp.id })}>
          All of {lamp.label}
        </button>
      </p>
    </>
  );
}
