import { useState } from 'react';
import { saveKeptPlan } from '../../desk/files';
import { duplicatePlan, putPlanBack, removePlan } from '../../desk/plans/managing';
import { type PlanCard, plansStore } from '../../desk/plans/plansStore';
import { Menu } from '../parts/Menu';
import { doing } from './doing';
import { PlanPicture } from './PlanPicture';
import { RenameField } from './RenameField';
import { nightWords, sizeWords, whenWords } from './words';

/** The second voice: the night, when it was changed, how large it is. */
function factsOf({ date, changedAt, bytes }: PlanCard, isOpen: boolean): string {
  const facts = [
    isOpen ? 'open now' : '',
    date === '' ? '' : nightWords(date),
    changedAt === null ? 'not changed yet' : `changed ${whenWords(changedAt, Date.now())}`,
    bytes === null ? '' : sizeWords(bytes),
  ];
  const text = facts.filter((fact) => fact !== '').join(', ');
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

/** A plan that was taken out, to be put back until the list is closed. */
function TakenOut({ card }: { readonly card: PlanCard }) {
  return (
    <li className="plan out">
      <p>
        <b>{card.title}</b> is taken out. It is gone for good when this list is closed.
      </p>
      <button
        type="button"
        ref={(button) => button?.focus({ preventScroll: true })}
        onClick={() => doing(() => putPlanBack(card.id))}
      >
        Put it back
      </button>
    </li>
  );
}

/** One plan of the list: its picture, what it is, and what is done with it. */
export function PlanEntry(props: {
  readonly card: PlanCard;
  readonly isOpen: boolean;
  readonly open: () => void;
}) {
  const { card, isOpen, open } = props;
  const [renaming, setRenaming] = useState(false);
  const { id, title, trouble } = card;
  const isKept = card.changedAt !== null;
  if (card.takenOut) return <TakenOut card={card} />;
  return (
    <li className={isOpen ? 'plan now' : 'plan'} aria-label={title}>
      <button
        type="button"
        className="look"
        aria-current={isOpen ? 'true' : undefined}
        disabled={trouble !== null}
        onClick={open}
      >
        <PlanPicture picture={card.picture} />
        {renaming ? null : <b>{title}</b>}
      </button>
      {renaming ? <RenameField planId={id} title={title} done={() => setRenaming(false)} /> : null}
      <p className="q">{factsOf(card, isOpen)}</p>
      {trouble === null ? null : (
        <p className="unread">It cannot be read here and is left as it is. {trouble}</p>
      )}
      <div className="acts">
        {trouble === null ? (
          <button type="button" onClick={() => doing(() => duplicatePlan(id))}>
            Duplicate
          </button>
        ) : null}
        <button type="button" onClick={() => doing(() => saveKeptPlan(id))}>
          Save to a file
        </button>
        {isKept ? (
          <Menu word="more">
            {trouble === null ? (
              <button type="button" className="bare" onClick={() => setRenaming(true)}>
                Rename
              </button>
            ) : null}
            <button type="button" className="bare" onClick={() => plansStore.setState({ versionsOf: id })}>
              Earlier versions
            </button>
            <button type="button" className="bare" onClick={() => doing(() => removePlan(id))}>
              Take it out
            </button>
          </Menu>
        ) : null}
      </div>
    </li>
  );
}
