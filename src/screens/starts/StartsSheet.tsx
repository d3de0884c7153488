import { useEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { useStore } from 'zustand';
import type { Plan } from '../../core/plan/schema/plan';
import { type Keeping, startingFrom } from '../../core/plan/startingFrom';
import { planStore } from '../../desk/planStore';
import { newPlanFrom } from '../../desk/plans/opening';
import { sessionStore } from '../../desk/sessionStore';
import { planOfStart, STARTS, type Start } from '../../desk/starts';
import { startsStore } from '../../desk/startsStore';
import { toastStore } from '../../desk/toastStore';
import { RoofPicture } from './RoofPicture';
import './starts.css';

const close = (): void => startsStore.getState().setOpen(false);

/** Opens a plan of its own; where nothing is to be read yet, what can be put on the roof lies open, under the keys. */
async function begin(plan: Plan, title: string): Promise<void> {
  close();
  await newPlanFrom(plan, title);
  if (plan.setups.length > 0) return;
  flushSync(() => sessionStore.getState().setSheet('set'));
  document.getElementById('tab-set')?.focus();
}

/** One roof to begin with: its picture, its name, and what is there. */
function StartCard({ start }: { readonly start: Start }) {
  const { word, about } = start;
  const [plan, setPlan] = useState<Plan | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  useEffect(() => {
    let stays = true;
    planOfStart(start).then(
      (read) => stays && setPlan(read),
      (error: unknown) => stays && setTrouble(error instanceof Error ? error.message : String(error)),
    );
    return () => {
      stays = false;
    };
  }, [start]);
  return (
    <li>
      <button
        type="button"
        className="start"
        disabled={!plan}
        onClick={() => plan && void begin(plan, plan.title)}
      >
        {plan ? <RoofPicture plan={plan} /> : <span className="roof-picture" />}
        <span className="name">{word}</span>
        <span className="q">{trouble ?? about}</span>
      </button>
    </li>
  );
}

const PARTS: readonly { readonly part: keyof Keeping; readonly word: string }[] = [
  { part: 'gear', word: 'the gear' },
  { part: 'cast', word: 'the cast and their marks' },
  { part: 'setups', word: 'the setups' },
];

/** The open plan's roof as a beginning, with as much of the night as is wanted. */
function FromThisPlan() {
  const plan = useStore(planStore, (state) => state.plan);
  const [keeping, setKeeping] = useState<Keeping>({ gear: false, cast: false, setups: false });
  return (
    <form
      className="from-this"
      onSubmit={(event) => {
        event.preventDefault();
        const title = `${plan.title}, again`.slice(0, 80);
        begin(startingFrom(plan, title, keeping), title).catch((error: unknown) =>
          toastStore.getState().say(`The new plan was not begun: ${String(error)}`, { tone: 'warn' }),
        );
      }}
    >
      <RoofPicture plan={plan} />
      <fieldset>
        <legend>The roof of {plan.title}, and with it</legend>
        {PARTS.map(({ part, word }) => (
          <label key={part}>
            <input
              type="checkbox"
              checked={keeping[part]}
              onChange={(event) => setKeeping({ ...keeping, [part]: event.currentTarget.checked })}
            />
            {word}
          </label>
        ))}
      </fieldset>
      <button type="submit">Start from this plan</button>
    </form>
  );
}

/** What a new plan can begin with. The plan that is open stays among the plans. */
export function StartsSheet() {
  const open = useStore(startsStore, (state) => state.open);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (open && !dialog.current?.open) dialog.current?.showModal();
    if (!open && dialog.current?.open) dialog.current.close();
  }, [open]);
  return (
    <dialog ref={dialog} className="starts" aria-labelledby="starts-title" onClose={close}>
      {open ? (
        <>
          <div className="starts-head">
            <h2 id="starts-title">A new plan</h2>
            <button type="button" onClick={close}>
              Close
            </button>
          </div>
          <ul className="start-cards">
            {STARTS.map((start) => (
              <StartCard key={start.word} start={start} />
            ))}
          </ul>
          <FromThisPlan />
        </>
      ) : null}
    </dialog>
  );
}
