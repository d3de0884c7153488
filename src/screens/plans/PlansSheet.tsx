import { useEffect, useRef } from 'react';
import { useStore } from 'zustand';
import { choosePlanFile } from '../../desk/files';
import { usePlanState } from '../../desk/hooks';
import { askForCopy } from '../../desk/merge/mergeStore';
import { closePlans } from '../../desk/plans/managing';
import { openWithWayBack } from '../../desk/plans/opening';
import { plansStore } from '../../desk/plans/plansStore';
import { openStarts } from '../../desk/startsStore';
import { doing } from './doing';
import { PlanEntry } from './PlanEntry';
import { Versions } from './Versions';
import './plans.css';

/** Leaves the list and does what it was left for. */
const leaveFor = (act: () => unknown): void =>
  doing(async () => {
    await closePlans();
    await act();
  });

/** All plans that this device keeps, over the page. */
export function PlansSheet() {
  const { open, versionsOf, cards, trouble } = useStore(plansStore);
  const openId = usePlanState((state) => state.planId);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (open) dialog.current?.showModal();
    else dialog.current?.close();
  }, [open]);
  const versionsTitle = cards.find(({ id }) => id === versionsOf)?.title ?? '';
  return (
    <dialog
      className="plans"
      aria-labelledby="plans-title"
      ref={dialog}
      onClose={() => {
        if (plansStore.getState().open) doing(closePlans);
      }}
    >
      {open ? (
        <>
          <div className="line">
            <h2 id="plans-title">Plans on this device</h2>
            <button type="button" className="bare" onClick={() => doing(closePlans)}>
              Close
            </button>
          </div>
          {trouble === null ? null : (
            <p className="err" role="alert">
              {trouble}
            </p>
          )}
          {versionsOf === null ? (
            <>
              <p className="acts">
                <button type="button" className="do" onClick={() => leaveFor(openStarts)}>
                  New plan
                </button>
                <button type="button" onClick={() => leaveFor(choosePlanFile)}>
                  Open a file
                </button>
                <button type="button" onClick={() => leaveFor(askForCopy)}>
                  Compare with a file or link
                </button>
              </p>
              <ul className="kept-plans">
                {cards.map((card) => (
                  <PlanEntry
                    key={card.id}
                    card={card}
                    isOpen={card.id === openId}
                    open={() => leaveFor(() => openWithWayBack(card.id))}
                  />
                ))}
              </ul>
            </>
          ) : (
            <Versions planId={versionsOf} title={versionsTitle} />
          )}
        </>
      ) : null}
    </dialog>
  );
}
