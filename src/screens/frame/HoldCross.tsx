import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { changeSetup } from '../../core/plan/edits/changeSetup';
import type { Plan } from '../../core/plan/schema/plan';
import type { Operator, Setup } from '../../core/plan/schema/setup';
import { livePlan, liveStore } from '../../desk/liveStore';
import { planStore } from '../../desk/planStore';
import { toastStore } from '../../desk/toastStore';
import { ARROWS } from '../overhead/geometry/arrows';
import type { Box } from './pictureBox';

const NAME = 'hold somebody in frame';
const STEP = 0.01;
const COARSE = 0.1;
/** Thirds and the middle catch within this share of the frame; not with Alt. */
const CATCH = 0.012;
const CAUGHT = [1 / 3, 0.5, 2 / 3];

const within = (share: number): number => Math.round(Math.min(1, Math.max(0, share)) * 1e4) / 1e4;
const caught = (share: number): number =>
  within(CAUGHT.find((each) => Math.abs(each - share) < CATCH) ?? share);
const percent = (share: number): string => `${Math.round(share * 100)} %`;

const heldAt = (plan: Plan, setupId: string, operator: Operator, at: Operator['at']): Plan =>
  changeSetup(plan, { setupId, patch: { operator: { ...operator, at } } });

/** The place of the frame where the operator keeps somebody's eyes: dragged, or moved by the arrows. */
export function HoldCross(props: { readonly plan: Plan; readonly setup: Setup; readonly box: Box }) {
  const { plan, setup, box } = props;
  const hold = useRef<{ readonly x: number; readonly y: number; readonly at: Operator['at'] } | null>(null);
  const { operator } = setup;
  if (!operator) return null;
  const { at } = operator;
  const whom = plan.cast.find(({ id }) => id === operator.hold)?.label ?? '';
  const down = (event: PointerEvent<HTMLElement>): void => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    hold.current = { x: event.clientX, y: event.clientY, at };
    liveStore.getState().beginGesture(setup.id);
  };
  const move = (event: PointerEvent<HTMLElement>): void => {
    const held = hold.current;
    if (!held) return;
    const settle = event.altKey ? within : caught;
    const to: Operator['at'] = [
      settle(held.at[0] + (event.clientX - held.x) / box.width),
      settle(held.at[1] + (event.clientY - held.y) / box.height),
    ];
    liveStore.getState().moveGesture(heldAt(livePlan(), setup.id, operator, to));
  };
  const up = (): void => {
    if (!hold.current) return;
    hold.current = null;
    const [fault] = liveStore.getState().commitGesture(NAME);
    if (fault) toastStore.getState().say(fault.sentence, { tone: 'warn' });
  };
  const cancel = (): void => {
    if (hold.current) liveStore.getState().dropGesture();
    hold.current = null;
  };
  const typed = (event: KeyboardEvent<HTMLElement>): void => {
    const way = ARROWS[event.key];
    if (!way) return;
    event.preventDefault();
    event.stopPropagation();
    const step = event.shiftKey ? COARSE : STEP;
    planStore
      .getState()
      .edit(NAME, (before) =>
        heldAt(before, setup.id, operator, [within(at[0] + way[0] * step), within(at[1] + way[1] * step)]),
      );
  };
  return (
    <button
      type="button"
      className="hold-cross"
      aria-label={`${whom} held ${percent(at[0])} from frame left, ${percent(at[1])} from the top`}
      style={{ left: box.left + at[0] * box.width, top: box.top + at[1] * box.height }}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={cancel}
      onKeyDown={typed}
    >
      <svg viewBox="-16 -16 32 32" aria-hidden="true">
        <path className="halo" d="M-12 0H-4M4 0H12M0-12V-4M0 4V12" />
        <path d="M-12 0H-4M4 0H12M0-12V-4M0 4V12" />
      </svg>
    </button>
  );
}
