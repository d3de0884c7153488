import { useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { Body, Lens } from '../../../core/plan/schema/kit';
import { letterOf } from '../../../desk/choose';
import { usePlanState } from '../../../desk/hooks';
import type { KitRead } from '../../../desk/kit/kitFiles';
import { closeKit, ownKitStore, watchOwnKit } from '../../../desk/kit/ownKitStore';
import { Segmented } from '../../parts/Segmented';
import { useFocusGoesOn } from '../../parts/useFocusGoesOn';
import { useChosenSetup } from '../../report/useChosenSetup';
import { BODY_DOINGS, type Doings, LENS_DOINGS } from './about';
import { BodyForm } from './BodyForm';
import { EntryActs } from './EntryActs';
import { KitFileActs, ReadFaults, takeInFrom } from './KitFileActs';
import { KitList, type KitRow } from './KitList';
import { LensForm } from './LensForm';
import {
  type About,
  bodiesOf,
  bodyFacts,
  type Chosen,
  lensesOf,
  lensFacts,
  usedWords,
  type Where,
} from './rows';
import { useKitFocus } from './useKitFocus';
import './kit.css';

interface Said {
  readonly sentence: string;
  readonly undo: (() => void) | null;
}

/** The rows of a list, each with what it is used for. */
function rowsOf<Entry extends { readonly id: string; readonly label: string }>(
  entries: Readonly<Record<Where, readonly Entry[]>>,
  facts: (entry: Entry) => string,
  used: (id: string) => string,
): Readonly<Record<Where, readonly KitRow[]>> {
  const inPlan = (id: string): boolean => entries.plan.some((entry) => entry.id === id);
  const row =
    (where: Where) =>
    (entry: Entry): KitRow => ({
      id: entry.id,
      label: entry.label,
      set: 'set' in entry && typeof entry.set === 'string' ? entry.set : undefined,
      facts: facts(entry),
      mark: where === 'plan' ? used(entry.id) : inPlan(entry.id) ? 'in the plan' : '',
    });
  return {
    plan: entries.plan.map(row('plan')),
    kept: entries.kept.map(row('kept')),
    'built in': entries['built in'].map(row('built in')),
  };
}

const entryAt = <Entry extends { readonly id: string }>(
  entries: Readonly<Record<Where, readonly Entry[]>>,
  chosen: Chosen | null,
): Entry | null => (chosen && entries[chosen.where].find(({ id }) => id === chosen.id)) ?? null;

function Inside() {
  const plan = usePlanState((state) => state.plan);
  const own = useStore(ownKitStore);
  const looked = useChosenSetup();
  const [about, setAbout] = useState<About>('lenses');
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const [said, setSaid] = useState<Said | null>(null);
  const [asked, setAsked] = useState<KitRead | null>(null);
  const lenses = lensesOf(plan, own);
  const bodies = bodiesOf(plan, own);
  const used = (id: string): string => usedWords(plan, about, id);
  const say = (sentence: string, undo?: () => void): void => setSaid({ sentence, undo: undo ?? null });
  const setup = looked && { id: looked.id, letter: letterOf(plan, looked.id) };
  const isUsed = (id: string): boolean => (about === 'lenses' ? looked?.lens : looked?.body) === id;
  const lens = about === 'lenses' ? entryAt(lenses, chosen) : null;
  const body = about === 'bodies' ? entryAt(bodies, chosen) : null;

  const { place, isNext } = useKitFocus(chosen);
  const files = useRef<HTMLSpanElement>(null);
  useFocusGoesOn(asked, () => files.current?.querySelector<HTMLElement>('.import'));

  const add = (): void => {
    const fresh = about === 'lenses' ? LENS_DOINGS.fresh() : BODY_DOINGS.fresh();
    const sentence = 'modes' in fresh ? BODY_DOINGS.keep(fresh) : LENS_DOINGS.keep(fresh);
    if (sentence !== null) say(sentence);
    else {
      isNext();
      setChosen({ where: 'kept', id: fresh.id });
    }
  };

  /** What a built-in entry becomes when it is changed: nothing, it is copied first. */
  const changing =
    <Entry extends Body | Lens>({ put, keep }: Doings<Entry>) =>
    (entry: Entry): string | null => {
      if (chosen?.where === 'plan') return put(entry);
      return chosen?.where === 'kept'
        ? keep(entry)
        : 'What is built in stays as it is. Copy it to change it.';
    };

  const acts = <Entry extends Body | Lens>(
    entry: Entry,
    entries: Readonly<Record<Where, readonly Entry[]>>,
    doings: Doings<Entry>,
  ) =>
    chosen ? (
      <>
        {chosen.where === 'built in' ? (
          <p className="q">It comes with the program and stays as it is. Copy it to change it.</p>
        ) : null}
        {chosen.where === 'plan' && used(entry.id) !== '' ? (
          <p className="q">It stays in the plan as long as it is used by {used(entry.id)}.</p>
        ) : null}
        <EntryActs
          entry={entry}
          chosen={chosen}
          doings={doings}
          inPlan={entries.plan.find(({ id }) => id === entry.id) ?? null}
          kept={entries.kept.find(({ id }) => id === entry.id) ?? null}
          used={used(entry.id)}
          setup={chosen.where === 'plan' && isUsed(entry.id) ? null : setup}
          choose={setChosen}
          say={say}
        />
      </>
    ) : null;

  return (
    <>
      <div className="line">
        <h2 id="kit-title">Bodies and lenses</h2>
        <button type="button" className="bare" onClick={closeKit}>
          Close
        </button>
      </div>
      {own.trouble === null ? null : (
        <p className="err" role="alert">
          {own.trouble}
        </p>
      )}
      <div className="line kit-acts">
        <Segmented
          label="Which"
          choices={[
            { value: 'lenses', word: 'lenses' },
            { value: 'bodies', word: 'bodies' },
          ]}
          chosen={about}
          onChoose={(value) => {
            setAbout(value);
            setChosen(null);
          }}
        />
        <span className="acts" ref={files}>
          <button type="button" onClick={add}>
            {about === 'lenses' ? 'Add a lens' : 'Add a body'}
          </button>
          <KitFileActs say={say} ask={setAsked} />
        </span>
      </div>
      <p className="kit-said" role="status">
        {said?.sentence}
        {said?.undo ? (
          <button
            type="button"
            className="link"
            onClick={() => {
              said.undo?.();
              setSaid(null);
            }}
          >
            Undo
          </button>
        ) : null}
      </p>
      {asked ? (
        <ReadFaults
          read={asked}
          take={() => {
            takeInFrom(asked, say);
            setAsked(null);
          }}
          leave={() => setAsked(null)}
        />
      ) : null}
      <div className={lens || body ? 'kit-two chosen' : 'kit-two'} ref={place}>
        <KitList
          rows={about === 'lenses' ? rowsOf(lenses, lensFacts, used) : rowsOf(bodies, bodyFacts, used)}
          chosen={chosen}
          choose={setChosen}
        />
        <section className="kit-form" aria-label="What is chosen" key={`${chosen?.where} ${chosen?.id}`}>
          {lens || body ? (
            <button type="button" className="link to-list" onClick={() => setChosen(null)}>
              Back to the list
            </button>
          ) : null}
          {lens ? (
            <>
              <h3>{lens.label}</h3>
              {acts(lens, lenses, LENS_DOINGS)}
              <LensForm lens={lens} change={changing(LENS_DOINGS)} />
            </>
          ) : null}
          {body ? (
            <>
              <h3>{body.label}</h3>
              {acts(body, bodies, BODY_DOINGS)}
              <BodyForm
                body={body}
                change={changing(BODY_DOINGS)}
                usedBy={(modeId) =>
                  chosen?.where === 'plan' ? usedWords(plan, 'bodies', body.id, modeId) : ''
                }
              />
            </>
          ) : null}
          {lens || body ? null : <p className="q">Choose one at the left to see it, use it or change it.</p>}
        </section>
      </div>
    </>
  );
}

/** The bodies and lenses of the plan, of this person and of the program, over the page. */
export function KitSheet() {
  const open = useStore(ownKitStore, (state) => state.open);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(watchOwnKit, []);
  useEffect(() => {
    if (open) dialog.current?.showModal();
    else dialog.current?.close();
  }, [open]);
  return (
    <dialog
      className="kit"
      aria-labelledby="kit-title"
      ref={dialog}
      onClose={() => {
        if (ownKitStore.getState().open) closeKit();
      }}
    >
      {open ? <Inside /> : null}
    </dialog>
  );
}
