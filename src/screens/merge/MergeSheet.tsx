import { useEffect, useMemo } from 'react';
import { useStore } from 'zustand';
import { type Choice, choicesOf, type Difference, differencesOf } from '../../core/plan/merge/differences';
import { mergePlans } from '../../core/plan/merge/mergePlans';
import { compared } from '../../core/report/merge/changes';
import {
  type DifferenceWords,
  differenceWords,
  noteSentence,
  SECTIONS,
} from '../../core/report/merge/differenceWords';
import { usePlanState, useSession } from '../../desk/hooks';
import { leaveMerge, mergeStore } from '../../desk/merge/mergeStore';
import { choose, setBase, takeMerge } from '../../desk/merge/merging';
import { SelectField } from '../parts/Field';
import { whenWords } from '../plans/words';
import { AskForCopy } from './AskForCopy';
import { Comes } from './Comes';
import { Head } from './Head';
import { chooseSetupOf, showDifference, showNothing } from './showing';
import './merge.css';

const WORDS: Readonly<Record<Choice, string>> = { mine: 'Yours', theirs: 'Theirs', both: 'Both' };

interface Row {
  readonly difference: Difference;
  readonly words: DifferenceWords;
  readonly choice: Choice | null;
}

/** One difference: what it is, both values, and whose is taken. */
function DifferenceRow({ difference, words, choice }: Row) {
  const { key, standing } = difference;
  const show = (): void => showDifference(difference);
  return (
    <li
      className={standing === 'conflict' ? 'difference conflict' : 'difference'}
      onPointerEnter={(event) => {
        if (event.pointerType === 'mouse') show();
      }}
      onPointerLeave={showNothing}
      onFocus={() => {
        chooseSetupOf(difference);
        show();
      }}
      onBlur={showNothing}
    >
      <p>
        {standing === 'conflict' ? (
          <b className="clash">! {choice === null ? 'Choose' : 'Chosen'}: </b>
        ) : null}
        <b>{words.name}</b>
        {words.who === '' ? null : <span className="q"> {words.who}</span>}
      </p>
      {words.changes.length === 0 ? null : (
        <table>
          <thead className="vh">
            <tr>
              <th>what</th>
              <th>yours</th>
              <th>theirs</th>
            </tr>
          </thead>
          <tbody>
            {words.changes.map(({ what, mine, theirs }) => (
              <tr key={`${what}: ${mine}, ${theirs}`}>
                <th scope="row">{what}</th>
                <td>{mine}</td>
                <td>{theirs}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <fieldset className="whose">
        <legend className="vh">{words.name}: whose is taken</legend>
        {choicesOf(difference).map((offered) => (
          <label key={offered}>
            <input
              type="radio"
              name={`merge-${key}`}
              checked={choice === offered}
              onChange={() => choose([key], offered)}
            />
            {WORDS[offered]}
          </label>
        ))}
      </fieldset>
    </li>
  );
}

/** The differences under one heading, with one choice for all of them. */
function Group({ title, rows }: { readonly title: string; readonly rows: readonly Row[] }) {
  const keys = rows.map(({ difference }) => difference.key);
  return (
    <section aria-label={title}>
      <div className="line">
        <h4>
          {title}, {rows.length}
        </h4>
        <button type="button" className="bare" onClick={() => choose(keys, 'mine')}>
          All yours<span className="vh"> in {title}</span>
        </button>
        <button type="button" className="bare" onClick={() => choose(keys, 'theirs')}>
          All theirs<span className="vh"> in {title}</span>
        </button>
      </div>
      <ul>
        {rows.map((row) => (
          <DifferenceRow key={row.difference.key} {...row} />
        ))}
      </ul>
    </section>
  );
}

const CONFLICTS = 'Changed by both';

/** The sheets are there again: whoever left by a button that is gone is at the open one. */
function focusSheet(): void {
  if (document.activeElement === document.body)
    document.querySelector<HTMLElement>('.sheet [role="tab"][aria-selected="true"]')?.focus();
}

/** Two copies of a plan side by side, difference by difference, where the sheets lie else. */
export function MergeSheet() {
  const { beside } = useStore(mergeStore);
  const planId = usePlanState((state) => state.planId);
  useEffect(() => showNothing, []);
  useEffect(() => focusSheet, []);
  useEffect(() => {
    // What was compared with another plan than the open one is nobody's business any more.
    if (beside && beside.planId !== planId) leaveMerge();
  }, [beside, planId]);
  return (
    <section className="sheet merge" aria-label="Compare with a copy">
      {beside && beside.planId === planId ? <Comparison /> : <AskForCopy />}
    </section>
  );
}

function Comparison() {
  const beside = useStore(mergeStore, (state) => state.beside);
  const plan = usePlanState((state) => state.plan);
  const lengths = useSession((state) => state.lengths);
  const found = useMemo(() => {
    if (!beside) return null;
    const { theirs, base, chosen } = beside;
    const of = compared(plan, theirs, lengths);
    const rows = differencesOf(plan, theirs, base?.plan ?? null).map(
      (difference): Row => ({
        difference,
        words: differenceWords(difference, of),
        choice: chosen.get(difference.key) ?? difference.suggested,
      }),
    );
    const merged = mergePlans(plan, theirs, chosen, base?.plan ?? null);
    return { rows, merged, notes: [...new Set(merged.notes.map((note) => noteSentence(note, of)))] };
  }, [beside, plan, lengths]);
  if (!beside || !found) return null;
  const { rows, merged, notes } = found;
  const conflicts = rows.filter(({ difference }) => difference.standing === 'conflict');
  const open = conflicts.filter(({ choice }) => choice === null).length;
  const rest = rows.filter(({ difference }) => difference.standing !== 'conflict');
  const isOther = beside.theirs.title !== plan.title;
  const take = (): void => {
    showNothing();
    if (open === 0) void takeMerge();
  };
  return (
    <>
      <div className="line merge-head">
        <Head>
          Yours and {beside.from}: {rows.length === 1 ? '1 difference' : `${rows.length} differences`}
        </Head>
        <button type="button" className="do" aria-disabled={open > 0} onClick={take}>
          Take it
        </button>
        <button type="button" onClick={leaveMerge}>
          Leave it
        </button>
      </div>
      <div className="merge-body">
        {open > 0 ? (
          <p className="err" role="status">
            Both changed {open === 1 ? '1 thing' : `${open} things`}: choose whose is taken, then take it.
          </p>
        ) : null}
        {isOther ? <p className="q">Their plan has another title: {beside.theirs.title}.</p> : null}
        <SelectField
          label="both began with"
          value={beside.base?.id ?? ''}
          onChange={(id) => setBase(beside.beginnings.find((each) => each.id === id) ?? null)}
        >
          <option value="">not known</option>
          {beside.beginnings.map(({ id, at, reason }) => (
            <option key={id} value={id}>
              {at === null
                ? 'the plan as this page began'
                : `${whenWords(at, Date.now())}, before: ${reason}`}
            </option>
          ))}
        </SelectField>
        <Comes before={plan} after={merged.plan} />
        {notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
        {rows.length === 0 ? <p>Nothing differs. Leave it, or compare another copy.</p> : null}
        {conflicts.length > 0 ? <Group title={CONFLICTS} rows={conflicts} /> : null}
        {SECTIONS.map((section) => {
          const under = rest.filter(({ words }) => words.section === section);
          return under.length > 0 ? <Group key={section} title={section} rows={under} /> : null;
        })}
      </div>
    </>
  );
}
