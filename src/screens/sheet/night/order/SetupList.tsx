import { useState } from 'react';
import { wallTime } from '../../../../core/night/times/nightClock';
import type { Night } from '../../../../core/night/types';
import { calledBy, named } from '../../../../core/plan/named';
import { setupsInOrder } from '../../../../core/plan/nightOrder';
import type { Plan } from '../../../../core/plan/schema/plan';
import { setupLetter } from '../../../../core/plan/setupLetter';
import { chooseSetup } from '../../../../desk/choose';
import { useSession } from '../../../../desk/hooks';
import { nightStore } from '../../../../desk/night/nightStore';
import { planStore } from '../../../../desk/planStore';
import { Glyph } from '../../../parts/Glyph';
import { orderStore } from './orderStore';
import { moveTo, useReorder } from './useReorder';
import { askedWords, changeSentence, shotWords } from './words';

/** Where a setup has come to, for who hears it: after the night is worked out in that order. */
function placeWords(setupId: string, place: number): string {
  const { plan } = planStore.getState();
  const label = plan.setups.find(({ id }) => id === setupId)?.label ?? '';
  return `${named(calledBy(label, 'setup'))} is number ${place + 1} of ${plan.setups.length} now.`;
}

const Chevron = ({ way }: { readonly way: 'up' | 'down' }) => (
  <svg className="chevron" viewBox="0 0 12 12" aria-hidden="true">
    <path d={way === 'up' ? 'M1.5 8.5 6 4l4.5 4.5' : 'M1.5 3.5 6 8l4.5-4.5'} />
  </svg>
);

/** The setups as they are shot, to be put in another order: by the hand, by Alt and the arrows, by buttons. */
export function SetupList({ plan, night }: { readonly plan: Plan; readonly night: Night }) {
  const chosenId = useSession((state) => state.setupId);
  const [said, setSaid] = useState('');
  const { takeList, grip } = useReorder((setupId, place) => setSaid(placeWords(setupId, place)));
  const { schedule } = night;
  const last = schedule.setups.length - 1;
  const places = new Map(schedule.setups.map(({ setupId }, place) => [setupId, place]));
  const step = (setupId: string, to: number): void => {
    if (to < 0 || to > last || nightStore.getState().draftOrder !== null) return;
    if (moveTo(setupId, to)) setSaid(placeWords(setupId, to));
  };
  const late = new Set(schedule.breaches.map(({ demand }) => demand.setupId));
  return (
    <>
      <ol className="order-list" ref={takeList} aria-label="Setups in the order of the night">
        {setupsInOrder(plan).map(({ id: setupId }) => {
          // The rows stay in the page as they are while a hand drags one: moved there, it would be lost to the hand.
          const place = places.get(setupId) ?? 0;
          const placed = schedule.setups[place];
          const { job } = placed;
          const label = calledBy(plan.setups[job].label, 'setup');
          const changes = changeSentence(night, place);
          return (
            <li key={setupId} data-setup={setupId} style={{ order: place }}>
              {changes === '' ? null : <p className="between">{changes}</p>}
              <div className="order-row" aria-current={setupId === chosenId ? 'true' : undefined}>
                <span className="grip" aria-hidden="true" {...grip(setupId)}>
                  <svg viewBox="0 0 12 16" aria-hidden="true">
                    <path d="M1 4H11M1 8H11M1 12H11" />
                  </svg>
                </span>
                <button
                  type="button"
                  className="order-name"
                  aria-keyshortcuts="Alt+ArrowUp Alt+ArrowDown"
                  onClick={() => {
                    chooseSetup(setupId);
                    orderStore.setState({ fields: 'setup' });
                  }}
                  onKeyDown={(event) => {
                    if (!event.altKey || (event.key !== 'ArrowUp' && event.key !== 'ArrowDown')) return;
                    event.preventDefault();
                    step(setupId, place + (event.key === 'ArrowUp' ? -1 : 1));
                  }}
                >
                  <b>{setupLetter(job)}</b>
                  <span>{label}</span>
                  <span className="order-shot">
                    <span className="vh">, shot </span>
                    {shotWords(night, placed)}
                  </span>
                  <small>{askedWords(plan, night, placed)}</small>
                  {late.has(setupId) ? <Glyph verdict="showing" /> : null}
                </button>
                <button
                  type="button"
                  className="icon"
                  aria-disabled={place === 0}
                  onClick={() => step(setupId, place - 1)}
                >
                  <Chevron way="up" />
                  <span className="vh">Shoot {label} earlier</span>
                </button>
                <button
                  type="button"
                  className="icon"
                  aria-disabled={place === last}
                  onClick={() => step(setupId, place + 1)}
                >
                  <Chevron way="down" />
                  <span className="vh">Shoot {label} later</span>
                </button>
              </div>
            </li>
          );
        })}
      </ol>
      <p className="vh" role="status">
        {said}
      </p>
      <p className="after">
        Last shot ends at {wallTime(night.clock, schedule.lastShot)}. Drag a setup, or move it with{' '}
        <kbd>Alt</kbd> and the arrows.
      </p>
    </>
  );
}
