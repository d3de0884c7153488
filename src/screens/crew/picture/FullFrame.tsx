import { useLayoutEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { spanOf, stateAt } from '../../../core/optics/camera';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { setupLetter } from '../../../core/plan/setupLetter';
import { useCrew } from '../../../desk/crew/useCrew';
import { Segmented } from '../../parts/Segmented';
import { FullFoot } from './full/FullFoot';
import { FullView } from './full/FullView';
import { createFullState, type FullStore, type Looking } from './full/fullState';
import './picture.css';

const LOOKINGS = [
  { value: 'lens', word: 'Through the lens' },
  { value: 'around', word: 'Look around' },
] as const;

/** Turns round from where the camera looks, or goes back to its lens. */
function look(store: FullStore, plan: Plan, setup: Setup, looking: Looking): void {
  const { headingDegrees, tiltDegrees } = stateAt(plan, setup, store.getState().seconds);
  store.setState({ looking, turn: { headingDegrees, tiltDegrees } });
}

/** The opened setup's picture over the whole window. */
export function FullFrame({ setupId }: { readonly setupId: string }) {
  const plan = useCrew((state) => state.plan);
  const setup = plan.setups.find(({ id }) => id === setupId);
  return setup ? <FullFrameOf key={setupId} plan={plan} setup={setup} /> : null;
}

function FullFrameOf({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const back = useCrew((state) => state.back);
  const dialog = useRef<HTMLDialogElement>(null);
  const [store] = useState(() => createFullState(spanOf(plan, setup), setup.delivery));
  const looking = useStore(store, (state) => state.looking);
  useLayoutEffect(() => {
    const element = dialog.current;
    element?.showModal();
    return () => {
      element?.close();
      // What opened it lost the focus when the sheet became inert, and takes it again once that is over.
      queueMicrotask(() => document.querySelector<HTMLElement>('.crew-hero button')?.focus());
    };
  }, []);
  const name = `${setupLetter(plan.setups.indexOf(setup))}, ${setup.label}`;
  return (
    <dialog
      className="crew-full"
      ref={dialog}
      aria-label={name}
      onCancel={(event) => {
        event.preventDefault();
        back();
      }}
    >
      <FullView plan={plan} setup={setup} name={name} store={store} />
      <div className="head">
        <h2>{name}</h2>
        <button type="button" className="close" onClick={back}>
          Close
        </button>
        <Segmented
          label="View"
          choices={LOOKINGS}
          chosen={looking}
          onChoose={(chosen) => look(store, plan, setup, chosen)}
        />
      </div>
      <FullFoot store={store} />
    </dialog>
  );
}
