import { contextStore } from '../../desk/contextStore';
import type { ActionContext } from './types';

/** Where a menu opens that no pointer asked for: over the thing that has the focus, else in the middle of the roof. */
export function menuPlace(): { readonly clientX: number; readonly clientY: number } {
  const focused = document.activeElement?.closest('[data-target]');
  const over = focused ?? document.querySelector('.roof .board-wrap') ?? document.body;
  const { left, top, width, height } = over.getBoundingClientRect();
  return { clientX: left + width / 2, clientY: top + height / 2 };
}

/** Opens the menu at one of its pages. */
export function openPage({ ids, at }: ActionContext, page: string, place = menuPlace()): void {
  contextStore.getState().openContext({ ids, spot: at, ...place, page });
}
