import { type PointerEvent as ReactPointerEvent, useEffect, useRef } from 'react';
import { moveInOrder } from '../../../../core/plan/edits/moveInOrder';
import { setupsInOrder } from '../../../../core/plan/nightOrder';
import { nightStore } from '../../../../desk/night/nightStore';
import { planStore } from '../../../../desk/planStore';
import { editPlan } from '../../fields/edit';

const orderNow = (): readonly string[] => setupsInOrder(planStore.getState().plan).map(({ id }) => id);

/** An order with one setup at another place, from 0. */
function withMoved(order: readonly string[], setupId: string, to: number): readonly string[] {
  const without = order.filter((id) => id !== setupId);
  return [...without.slice(0, to), setupId, ...without.slice(to)];
}

/** Moves a setup to a place of the order, one step of the history. Says whether anything changed. */
export function moveTo(setupId: string, to: number): boolean {
  const before = planStore.getState().plan;
  editPlan('move a setup in the order', (plan) => moveInOrder(plan, { setupId, to }));
  return planStore.getState().plan !== before;
}

/** Before which row a pointer is, by the middles of the rows, of which that of what is dragged does not count. */
function placeAt(list: HTMLElement, clientY: number, setupId: string): number {
  const rows = [...list.querySelectorAll<HTMLElement>('[data-setup]')].filter(
    (row) => row.dataset.setup !== setupId,
  );
  const found = rows.findIndex((row) => {
    const { top, height } = row.getBoundingClientRect();
    return clientY < top + height / 2;
  });
  return found < 0 ? rows.length : found;
}

/**
 * Drags setups about in a list, by the mouse and by touch: the night follows under the hand, and one step of the history
 * comes of it, or none where Escape gives it back.
 * @param onMoved told the setup and its new place when it was put down
 */
export function useReorder(onMoved: (setupId: string, place: number) => void): {
  readonly takeList: (list: HTMLElement | null) => void;
  readonly grip: (setupId: string) => {
    readonly onPointerDown: (event: ReactPointerEvent<HTMLElement>) => void;
  };
} {
  const list = useRef<HTMLElement | null>(null);
  const end = useRef<() => void>(() => undefined);
  useEffect(() => () => end.current(), []);

  const begin = (event: ReactPointerEvent<HTMLElement>, setupId: string): void => {
    if (event.button !== 0 || !list.current) return;
    event.preventDefault();
    const { pointerId } = event;
    const first = orderNow();
    let to = first.indexOf(setupId);
    const move = (moved: PointerEvent): void => {
      if (!list.current || moved.pointerId !== pointerId) return;
      const place = placeAt(list.current, moved.clientY, setupId);
      if (place === to && nightStore.getState().draftOrder !== null) return;
      to = place;
      nightStore.setState({ draftOrder: withMoved(first, setupId, to) });
    };
    const leave = (): void => {
      window.removeEventListener('pointermove', move);
      window.removeEventListener('pointerup', putDown);
      window.removeEventListener('pointercancel', cancel);
      window.removeEventListener('keydown', giveBack, true);
      nightStore.setState({ draftOrder: null });
      end.current = () => undefined;
    };
    const cancel = (ended: PointerEvent): void => {
      if (ended.pointerId === pointerId) leave();
    };
    const putDown = (ended: PointerEvent): void => {
      if (ended.pointerId !== pointerId) return;
      const isMoved = nightStore.getState().draftOrder !== null;
      if (isMoved && moveTo(setupId, to)) onMoved(setupId, to);
      leave();
    };
    const giveBack = (pressed: KeyboardEvent): void => {
      if (pressed.key !== 'Escape') return;
      pressed.preventDefault();
      pressed.stopPropagation();
      leave();
    };
    window.addEventListener('pointermove', move);
    window.addEventListener('pointerup', putDown);
    window.addEventListener('pointercancel', cancel);
    window.addEventListener('keydown', giveBack, true);
    end.current = leave;
  };

  return {
    takeList: (element) => {
      list.current = element;
    },
    grip: (setupId) => ({ onPointerDown: (event) => begin(event, setupId) }),
  };
}
