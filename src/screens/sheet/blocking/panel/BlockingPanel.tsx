import { useStore } from 'zustand';
import { addLine } from '../../../../core/plan/edits/addLine';
import { addPass } from '../../../../core/plan/edits/addPass';
import { changeBeat } from '../../../../core/plan/edits/changeBeat';
import { changeLine } from '../../../../core/plan/edits/changeLine';
import { changePass } from '../../../../core/plan/edits/changePass';
import { changeSetup } from '../../../../core/plan/edits/changeSetup';
import type { Beat, Line, Pass } from '../../../../core/plan/schema/cast';
import type { Plan } from '../../../../core/plan/schema/plan';
import type { Setup } from '../../../../core/plan/schema/setup';
import { blockingStore } from '../../../../desk/blocking/blockingStore';
import { chooseThing, editBlocking } from '../../../../desk/blocking/choosing';
import { markIn, markName } from '../../../../desk/blocking/things';
import { letterOf } from '../../../../desk/choose';
import { Column } from '../../../parts/Column';
import { Field, SelectField } from '../../../parts/Field';
import { NumberField } from '../../../parts/NumberField';
import { editPlan } from '../../fields/edit';
import { MarkFields } from '../../panels/MarkFields';
import { removeThing } from '../doing';
import { beatNumber } from '../words';
import { BeatChoice, PanelHead, PersonChoice } from './choices';
import { Handing } from './Handing';
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

function LineFields({ plan, line }: { readonly plan: Plan; readonly line: Line }) {
  const [one, other] = line.pair;
  const set = (patch: { readonly pair?: Line['pair']; readonly establishedBy?: string | undefined }): void =>
    void editBlocking('change a line', (before) => changeLine(before, { lineId: line.id, patch }));
  return (
    <div className="fields">
      <PersonChoice
        label="between"
        value={one}
        people={plan.cast.filter(({ id }) => id !== other)}
        onChange={(id) => set({ pair: [id, other] })}
      />
      <PersonChoice
        label="and"
        value={other}
        people={plan.cast.filter(({ id }) => id !== one)}
        onChange={(id) => set({ pair: [one, id] })}
      />
      <SelectField
        label="established by"
        value={line.establishedBy ?? ''}
        onChange={(id) => set({ establishedBy: id === '' ? undefined : id })}
      >
        <option value="">the first that frames both</option>
        {plan.setups.map(({ id, label }) => (
          <option key={id} value={id}>
            {letterOf(plan, id)} {label}
          </option>
        ))}
      </SelectField>
    </div>
  );
}

/** The first two performers whose line is not drawn yet. */
function freePair({ cast, lines = [] }: Plan): Line['pair'] | null {
  const isDrawn = (a: string, b: string): boolean =>
    lines.some(({ pair }) => pair.includes(a) && pair.includes(b));
  for (const [k, { id: one }] of cast.entries()) {
    const other = cast.slice(k + 1).find(({ id }) => !isDrawn(one, id));
    if (other) return [one, other.id];
  }
  return null;
}

/** The lines that cameras keep to one side of, each between a pair. */
function Lines({ plan }: { readonly plan: Plan }) {
  const lines = plan.lines ?? [];
  const pair = freePair(plan);
  return (
    <section className="group">
      <h4>{lines.length === 0 ? 'No line is drawn' : 'Lines'}</h4>
      {lines.map((line, k) => (
        <section key={line.id} className="group" aria-label={`Line ${k + 1}`}>
          <LineFields plan={plan} line={line} />
          <p className="acts">
            <button
              type="button"
              className="bare"
              onClick={() => removeThing(plan, { type: 'line', lineId: line.id })}
            >
              Take it out<span className="vh">, line {k + 1}</span>
            </button>
          </p>
        </section>
      ))}
      {pair ? (
        <p className="acts">
          <button
            type="button"
            onClick={() => editBlocking('draw a line', (before) => addLine(before, { pair }))}
          >
            {lines.length === 0 ? 'Draw a line' : 'Another line'}
          </button>
        </p>
      ) : (
        <p className="advice">
          {plan.cast.length < 2 ? 'A line needs two people.' : 'Every pair has its line.'}
        </p>
      )}
    </section>
  );
}

/** With nothing chosen: who plays, and the lines between them. */
function Everybody({ plan }: { readonly plan: Plan }) {
  return (
    <>
      <h3>{plan.cast.length === 0 ? 'Nobody plays yet' : 'Cast'}</h3>
      {plan.cast.length === 0 ? <p className="advice">The sheet Set has people to put on the roof.</p> : null}
      <ul className="lines">
        {plan.cast.map(({ id, label, marks }) => (
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
