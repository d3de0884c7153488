import { useCallback, useEffect, useRef } from 'react';
import { setupsInOrder } from '../../../core/plan/nightOrder';
import { setupLetter } from '../../../core/plan/setupLetter';
import { formatNumber } from '../../../core/units/numbers';
import { askedFor } from '../../../desk/crew/kept/askedFor';
import { useCrew, useCrewReading } from '../../../desk/crew/useCrew';
import { Icon } from '../../parts/Icon';
import { Arrow } from '../parts/Arrow';
import { turnOf } from '../parts/nightWords';
import { SetTick } from '../parts/SetTick';
import { CardPicture } from '../setups/CardPicture';
import { SetupFacts } from './SetupFacts';
import { SetupNeeds } from './SetupNeeds';
import { useSwipe } from './useSwipe';
import { WatchFor } from './WatchFor';

/** One setup: its picture, its readings, what to watch for and what to carry. `beside`: in a column beside the list. */
export function CrewSetup({ setupId, beside }: { readonly setupId: string; readonly beside: boolean }) {
  const plan = useCrew((state) => state.plan);
  const openSetup = useCrew((state) => state.openSetup);
  const openFrame = useCrew((state) => state.openFrame);
  const go = useCrew((state) => state.go);
  const night = useCrewReading((state) => state.night?.night ?? null);
  const article = useRef<HTMLElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const order = setupsInOrder(plan);
  const place = order.findIndex(({ id }) => id === setupId);
  const setup = order[place];
  const [before, next] = [order[place - 1]?.id, order[place + 1]?.id];
  const step = useCallback(
    (by: -1 | 1) => {
      const to = by < 0 ? before : next;
      if (to !== undefined) openSetup(to);
    },
    [before, next, openSetup],
  );
  useSwipe(article, step);
  const shown = useRef(setupId);
  useEffect(() => {
    if (shown.current === setupId) return;
    shown.current = setupId;
    article.current?.closest('.crew-scroll')?.scrollTo(0, 0);
  }, [setupId]);
  useEffect(() => {
    if (beside) return;
    heading.current?.focus({ preventScroll: true });
    // Back in the list the one that was looked at last is under the hand.
    return () => document.querySelector<HTMLElement>(`[data-setup="${CSS.escape(shown.current)}"]`)?.focus();
  }, [beside]);
  if (!setup) return <p className="crew-none">This setup is not in the plan of this link.</p>;
  const turn = night && turnOf(night, setupId);
  const letter = setupLetter(plan.setups.indexOf(setup));
  return (
    <article ref={article} className="crew-setup" aria-label={`Setup ${letter}, ${setup.label}`}>
      <header className="crew-setup-bar">
        <div>
          {beside ? null : <h1>{plan.title}</h1>}
          <p role="status">
            setup {place + 1} of {order.length}
            {turn ? `, rig ${turn.rig}, shoot ${turn.shoot}` : ''}
          </p>
        </div>
        <button
          type="button"
          className="icon"
          aria-label="Setup before"
          disabled={before === undefined}
          onClick={() => step(-1)}
        >
          <Arrow to="back" />
        </button>
        <button
          type="button"
          className="icon"
          aria-label="Next setup"
          disabled={next === undefined}
          onClick={() => step(1)}
        >
          <Arrow to="on" />
        </button>
        {beside ? null : (
          <button type="button" className="icon" aria-label="All setups" onClick={() => go('setups')}>
            <Icon name="setups" />
          </button>
        )}
      </header>
      <div className="crew-hero">
        <CardPicture setup={setup} />
        <button
          type="button"
          aria-label={`Fill the window with what ${letter} sees`}
          onClick={() => openFrame(setupId)}
        />
      </div>
      <div className="crew-name">
        <b aria-hidden="true">{letter}</b>
        <h2 ref={heading} tabIndex={-1}>
          <span className="vh">{letter}, </span>
          {setup.label}
        </h2>
        <span>{formatNumber(setup.delivery, 2)}</span>
        <SetTick id={setup.id} of={askedFor(plan, setup.id)} label={`Setup ${letter}`} />
      </div>
      <SetupFacts setup={setup} />
      <WatchFor setupId={setupId} />
      <SetupNeeds setup={setup} />
    </article>
  );
}
