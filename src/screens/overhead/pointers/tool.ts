import type { PointerUse } from './types';

/** The pointer while a tool is picked: it takes every press before the hand does, and the hovering too. */
export interface ToolPointer extends PointerUse {
  readonly active: () => boolean;
}

/** No tool is picked: the hand has the sheet. */
export const toolPointer: ToolPointer = {
  active: () => false,
  down: () => {},
  move: () => {},
  up: () => {},
  cancel: () => {},
};
