import { useStore } from 'zustand';
import { addPass } from '../../../../core/plan/edits/addPass';
import { changeBeat } from '../../../../core/plan/edits/changeBeat';
import { changePass } from '../../../../core/plan/edits/changePass';
import { changeSetup } from '../../../../core/plan/edits/changeSetup';
import type { Beat, Pass } from '../../../../core/plan/schema/cast';
import type { Plan } from '../../../../core/plan/schema/plan';
import type { Setup } from '../../../../core/plan/schema/setup';
import { withNames } from '../../../../core/plan/withNames';
import { blockingStore } from '../../../../desk/blocking/blockingStore';
import { chooseThing, editBlocking } from '../../../../desk/blocking/choosing';
import { lampIn, markIn, markName } from '../../../../desk/blocking/things';
import { letterOf } from '../../../../desk/choose';
import { Column } from '../../../parts/Column';
import { Field } from '../../../parts/Field';
import { NumberField } from '../../../parts/NumberField';
import { editPlan } from '../../fields/edit';
import { MarkFields } from '../../panels/MarkFields';
import { beatNumber } from '../words';
import { BeatChoice, PanelHead, PersonChoice } from './choices';
import { Faults } from './Faults';
import { Handing } from './Handing';
import { CuePanel, LampPanel } from './LampPanel';
import { Lines } from './Lines';
import { addMarkFor, PerformerPanel } from './PerformerPanel';

function BeatPanel({ plan, beat }: { readonly plan: Plan; readonly beat: Beat }) {
  const ripples = useStore(blockingStore, (state) => state.ripples);
  const marks = plan.cast.flatMap((performer) =>
    performer.marks.flatMap((mark, index) =>
      mark.beat === beat.id ? [{ performer, mark, name: markName(performer, index) }] : [],
    ),
  );
  const others = plan.cast.filter(({ id }) => !marks.some(({ performer }) => performer.id === id));
  const passes = (plan.passes ?? []).filter(({ beat: of }) => of === beat.id);
  const labelOf = (id: string): string => plan.cast.find((each) => each.id === id)?.label ?? 'somebody';
  return (
    <>
      <PanelHead title={`Beat ${beatNumber(plan, beat.id)}`} />
      <div className="fields">
        <Field
          label="name"
          text={beat.label}
          commit={(label) =>
            editPlan('rename a beat', (before) =>
              changeBeat(before, { beatId: beat.id, patch: { label: label.trim() } }),
            )
          }
        />
        <NumberField
          label={ripples ? 'at, and all after it' : 'at'}
          unit="s"
          decimals={2}
          value={beat.atSeconds}
          commit={(atSeconds) =>
            editPlan('move a beat', (before) =>
              changeBeat(before, { beatId: beat.id, patch: { atSeconds }, ripple: ripples }),
            )
          }
        />
      </div>
      <section className="group">
        <h4>{marks.length === 0 ? 'Nobody has a mark here' : 'Marks here'}</h4>
        <ul className="lines">
          {marks.map(({ performer, mark, name }) => (
            <li key={`${performer.id} ${mark.id}`}>
              <button
                type="button"
                className="link"
                onClick={() => chooseThing({ type: 'mark', performerId: performer.id, markId: mark.id })}
              >
                {name}
              </button>
              <span className="q">{performer.label}</span>
            </li>
          ))}
        </ul>
        {others.length > 0 ? (
          <PersonChoice
            label="a mark for"
            value=""
            none="nobody else"
            people={others}
            onChange={(id) => {
              if (id !== '') addMarkFor(id, beat.id);
            }}
          />
        ) : null}
      </section>
      {passes.length > 0 ? (
        <section className="group">
          <h4>Handed over here</h4>
          <ul className="lines">
            {passes.map(({ id, from, to }) => (
              <li key={id}>
                <button
                  type="button"
                  className="link"
                  onClick={() => chooseThing({ type: 'pass', passId: id })}
                >
                  {labelOf(from)} to {labelOf(to)}
                </button>
              </li>
            ))}
          </ul>
        </section>
      ) : null}
      {plan.cast.length > 1 ? (
        <PersonChoice
          label="hands over here"
          value=""
          none="nobody"
          people={plan.cast}
          onChange={(from) => {
            const to = plan.cast.find(({ id }) => id !== from)?.id;
            if (from !== '' && to !== undefined)
              editBlocking('hand over', (before) => addPass(before, { beatId: beat.id, from, to }));
          }}
        />
      ) : null}
    </>
  );
}

function PassPanel({ plan, pass }: { readonly plan: Plan; readonly pass: Pass }) {
  const set = (patch: Partial<Omit<Pass, 'id'>>): void =>
    void editBlocking('change a pass', (before) => changePass(before, { passId: pass.id, patch }));
  return (
    <>
      <PanelHead title="Handing over" />
      <div className="fields">
        <BeatChoice plan={plan} label="at beat" value={pass.beat} onChange={(beat) => set({ beat })} />
        <PersonChoice
          label="from"
          value={pass.from}
          people={plan.cast.filter(({ id }) => id !== pass.to)}
          onChange={(from) => set({ from })}
        />
        <PersonChoice
          label="to"
          value={pass.to}
          people={plan.cast.filter(({ id }) => id !== pass.from)}
          onChange={(to) => set({ to })}
        />
      </div>
    </>
  );
}

function SpanPanel({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const set = (span: Setup['span']): void =>
    void editBlocking('change what a setup covers', (before) =>
      changeSetup(before, { setupId: setup.id, patch: { span } }),
    );
  return (
    <>
      <PanelHead title={`Setup ${letterOf(plan, setup.id)}, ${setup.label}`} />
      <Faults only={({ setupId }) => setupId === setup.id} />
      <div className="fields">
        <BeatChoice
          plan={plan}
          label="covers from"
          value={setup.span.from}
          onChange={(from) => set({ ...setup.span, from })}
        />
        <BeatChoice
          plan={plan}
          label="to"
          value={setup.span.to}
          onChange={(to) => set({ ...setup.span, to })}
        />
      </div>
      <p className="advice">Its camera, lens and keys stand on the sheet Set.</p>
    </>
  );
}

/** With nothing chosen: who plays, and the lines between them. */
function Everybody({ plan }: { readonly plan: Plan }) {
  return (
    <>
      <h3>{plan.cast.length === 0 ? 'Nobody plays yet' : 'Cast'}</h3>
      {plan.cast.length === 0 ? <p className="advice">The sheet Set has people to put on the roof.</p> : null}
      <ul className="lines">
        {withNames(plan).cast.map(({ id, label, marks }) => (
          <li key={id}>
            <button
              type="button"
              className="link"
              onClick={() => chooseThing({ type: 'performer', performerId: id })}
            >
              {label}
            </button>
            <span className="q">{marks.length === 1 ? 'one mark' : `${marks.length} marks`}</span>
          </li>
        ))}
      </ul>
      <Faults />
      <Lines plan={plan} />
    </>
  );
}

function About({ plan }: { readonly plan: Plan }) {
  const chosen = useStore(blockingStore, (state) => state.chosen);
  switch (chosen?.type) {
    case 'beat': {
      const beat = plan.beats.find(({ id }) => id === chosen.beatId);
      return beat ? <BeatPanel plan={plan} beat={beat} /> : <Everybody plan={plan} />;
    }
    case 'mark':
    case 'hold': {
      const found = markIn(plan, chosen);
      if (!found) return <Everybody plan={plan} />;
      const { performer, mark, name } = found;
      return (
        <>
          <PanelHead title={`${performer.label}, mark ${name}`} />
          <Faults only={(each) => each.performerId === performer.id && each.markId === mark.id} />
          <MarkFields plan={plan} performer={performer} mark={mark} />
          <Handing plan={plan} performer={performer} beatId={mark.beat} />
          <p className="acts">
            <button
              type="button"
              className="bare"
              onClick={() => chooseThing({ type: 'performer', performerId: performer.id })}
            >
              All of {performer.label}
            </button>
          </p>
        </>
      );
    }
    case 'pass': {
      const pass = plan.passes?.find(({ id }) => id === chosen.passId);
      return pass ? <PassPanel plan={plan} pass={pass} /> : <Everybody plan={plan} />;
    }
    case 'performer': {
      const performer = plan.cast.find(({ id }) => id === chosen.performerId);
      return performer ? (
        <PerformerPanel key={performer.id} plan={plan} performer={performer} />
      ) : (
        <Everybody plan={plan} />
      );
    }
    case 'lamp':
    case 'cue':
    case 'fade': {
      const lamp = lampIn(plan, chosen.itemId);
      const cue = chosen.type === 'lamp' ? null : lamp?.cues?.[chosen.cueIndex];
      if (!lamp) return <Everybody plan={plan} />;
      if (!cue || chosen.type === 'lamp') return <LampPanel plan={plan} lamp={lamp} />;
      return <CuePanel plan={plan} lamp={lamp} cue={cue} cueIndex={chosen.cueIndex} />;
    }
    case 'setup':
    case 'span':
    case 'key': {
      const setup = plan.setups.find(({ id }) => id === chosen.setupId);
      return setup ? <SpanPanel plan={plan} setup={setup} /> : <Everybody plan={plan} />;
    }
    default:
      return <Everybody plan={plan} />;
  }
}

/** The fields of what is chosen on the timeline. */
export function BlockingPanel({ plan }: { readonly plan: Plan }) {
  return (
    <aside className="blocking-panel" id="blocking-panel" aria-label="What is chosen">
      <Column>
        <About plan={plan} />
      </Column>
    </aside>
  );
}
