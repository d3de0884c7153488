import type { Spot } from '../../../core/plan/schema/numbers';
import {
  aimOpening,
  endStroke,
  letGo,
  pointAt,
  press,
  pressDown,
  pressUp,
} from '../../../desk/tools/drawing';
import { isPicked, toolStore } from '../../../desk/tools/toolStore';
import { distance } from '../geometry/spots';
import { type PointerUse, type SheetPointer, slackOf } from './types';

/** The pointer while a tool is picked: it takes every press before the hand does, and the hovering too. */
export interface ToolPointer extends PointerUse {
  readonly active: () => boolean;
}

/** Two presses within this are one that ends what is drawn, milliseconds. */
const DOUBLE_MS = 350;
/** Of the least area to hit: drawn things catch from nearer, or the hand would never be free of them. */
const CATCH = 0.5;
/** How far above a finger the crosshair stands while it is dragged, in reaches of the finger. */
const ABOVE_FINGER = 2.4;

interface Press {
  readonly at: readonly [number, number];
  readonly when: number;
  moved: boolean;
}

let pressed: Press | null = null;
let before: Press | null = null;

function point(pointer: SheetPointer, spot: Spot): void {
  const { alt, shift, reachMetres } = pointer;
  aimOpening(spot, reachMetres);
  pointAt(spot, { reachMetres: reachMetres * CATCH, free: alt, straight: shift });
}

const spotOf = ({ spot }: SheetPointer): Spot => [spot[0], spot[1]];

/** Where the crosshair of a dragged finger is: above it, where it can be seen. */
function lifted(pointer: SheetPointer): Spot {
  return [pointer.spot[0], pointer.spot[1] - ABOVE_FINGER * pointer.reachMetres];
}

/** Whether a press is the second of a double one, which ends what is drawn. */
function isSecond(pointer: SheetPointer): boolean {
  const first = before;
  if (!first || first.moved) return false;
  const isRun =
    toolStore.getState().tool.type === 'draw' && (toolStore.getState().stroke?.corners.length ?? 0) > 1;
  return (
    isRun && pointer.when - first.when < DOUBLE_MS && distance(first.at, pointer.at) <= 2 * slackOf(pointer)
  );
}

/**
 * A mouse takes a corner where it is pressed, and another where a drag of it ends; a finger takes one where it taps,
 * and a drag of it carries the crosshair above it until it is lifted. Two presses in one place end what is drawn.
 */
export const toolPointer: ToolPointer = {
  active: isPicked,
  down: (pointer) => {
    pressed = { at: pointer.at, when: pointer.when, moved: false };
    if (isSecond(pointer)) {
      pressed = null;
      before = null;
      endStroke();
      return;
    }
    if (pointer.touch) return;
    point(pointer, spotOf(pointer));
    pressDown();
  },
  move: (pointer) => {
    if (pressed && !pressed.moved) {
      if (distance(pressed.at, pointer.at) < slackOf(pointer)) return;
      pressed.moved = true;
    }
    // A finger that is lifted already only ends what it did.
    if (pointer.touch && !pressed) return;
    point(pointer, pointer.touch ? lifted(pointer) : spotOf(pointer));
  },
  up: (pointer) => {
    const held = pressed;
    pressed = null;
    if (!held) return;
    before = held;
    if (!pointer.touch) {
      if (held.moved) point(pointer, spotOf(pointer));
      pressUp(held.moved);
      return;
    }
    point(pointer, held.moved ? lifted(pointer) : spotOf(pointer));
    press();
  },
  cancel: () => {
    pressed = null;
    before = null;
    letGo();
  },
};
