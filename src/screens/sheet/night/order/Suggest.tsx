import { useRef } from 'react';
import { useStore } from 'zustand';
import { scheduleOf } from '../../../../core/night/order/schedule';
import { wallTime } from '../../../../core/night/times/nightClock';
import type { Night } from '../../../../core/night/types';
import { setOrder } from '../../../../core/plan/edits/setOrder';
import type { Plan } from '../../../../core/plan/schema/plan';
import { duration } from '../../../../core/units/durations';
import { forgetSuggestion, stopSuggesting, suggestOrder } from '../../../../desk/night/asking';
import { nightStore, type Suggestion } from '../../../../desk/night/nightStore';
import { planStore } from '../../../../desk/planStore';
import { toastStore } from '../../../../desk/toastStore';
import { useFocusGoesOn } from '../../../parts/useFocusGoesOn';
import { editPlan } from '../../fields/edit';
import { orderLetters } from './words';

/** How much sooner or later one wrap is: `28 min sooner`. */
function against(before: number, after: number): string {
  const minutes = Math.round(before - after);
  if (minutes === 0) return 'as now';
  return `${duration(Math.abs(minutes))} ${minutes > 0 ? 'sooner' : 'later'} than now`;
}

function take(plan: Plan, { order }: Suggestion): void {
  const fault = editPlan('take the suggested order', (before) =>
    setOrder(before, { order: order.map((job) => plan.setups[job].id) }),
  );
  forgetSuggestion();
  const { say } = toastStore.getState();
  if (fault === null)
    say(`The night is in the suggested order: ${orderLetters(order)}.`, {
      about: 'order',
      action: { word: 'Undo', act: planStore.getState().undo },
    });
  else say(fault, { tone: 'warn', about: 'order' });
}

function Found({
  plan,
  night,
  suggestion,
}: {
  readonly plan: Plan;
  readonly night: Night;
  readonly suggestion: Suggestion;
}) {
  const { order, isExact, conflict, isStopped } = suggestion;
  const { schedule, work, clock } = night;
  const suggested = scheduleOf(work, order);
  const isSame = order.every((job, place) => schedule.order[place] === job);
  const how = isExact
    ? 'No order is better.'
    : isStopped
      ? 'The best so far: the search was stopped.'
      : conflict === ''
        ? 'The best that a search found; with so many setups not all orders are tried.'
        : 'The least late that a search found.';
  return (
    <>
      <p role="status">
        {isSame
          ? `The order stays as it is. ${how}`
          : `${orderLetters(order)}: everyone wraps at ${wallTime(clock, suggested.wrap)}, ${against(schedule.wrap, suggested.wrap)}. ${how}`}
      </p>
      {conflict === '' ? null : <p className="err">{conflict}</p>}
      <p className="acts">
        {isSame ? null : (
          <button type="button" className="do" onClick={() => take(plan, suggestion)}>
            Take this order
          </button>
        )}
        <button type="button" className="bare" onClick={forgetSuggestion}>
          Leave it
        </button>
      </p>
    </>
  );
}

/** A better order, looked for on request: how far it is, what it comes to, and the way to take it. */
export function Suggest({ plan, night }: { readonly plan: Plan; readonly night: Night }) {
  const seeking = useStore(nightStore, (state) => state.seeking);
  const suggestion = useStore(nightStore, (state) => state.suggestion);
  const isFound = suggestion?.plan === plan;
  const section = useRef<HTMLElement>(null);
  useFocusGoesOn(seeking ? 'seeking' : isFound, () => section.current?.querySelector('button'));
  if (seeking)
    return (
      <section className="suggest" aria-label="Suggested order" ref={section}>
        <p role="status">Looks for the order that ends soonest.</p>
        <progress max={1} value={seeking.done} aria-label="How far the search is" />
        {seeking.order.length === plan.setups.length ? (
          <p className="q">
            The best so far wraps at {wallTime(night.clock, scheduleOf(night.work, seeking.order).wrap)}.
          </p>
        ) : null}
        <p className="acts">
          <button type="button" onClick={stopSuggesting}>
            Stop
          </button>
        </p>
      </section>
    );
  return (
    <section className="suggest" aria-label="Suggested order" ref={section}>
      {isFound ? (
        <Found plan={plan} night={night} suggestion={suggestion} />
      ) : (
        <p className="acts">
          <button type="button" className="try" onClick={() => void suggestOrder()}>
            Suggest an order
          </button>
        </p>
      )}
    </section>
  );
}
