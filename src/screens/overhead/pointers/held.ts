import type { PointerEvent } from 'react';
import { liveStore } from '../../../desk/liveStore';
import { distance, type Spot } from '../geometry/spots';
import { SLACK, spotIn } from './types';

/** Something on the sheet in the hand: by which pointer, and where it was taken, pixels of the pane. */
export interface Held {
  readonly pointerId: number;
  readonly from: Spot;
  moved: boolean;
}

/** Whether a press takes things in the hand: that of a finger does, and that of a mouse with its first button. */
export const takes = ({ pointerType, button }: PointerEvent): boolean =>
  pointerType !== 'mouse' || button === 0;

/** Takes what is pressed in the hand: it has the pointer until it is let go, and the keys. */
export function takeHold(svg: SVGSVGElement, event: PointerEvent<SVGGElement>): Held {
  event.currentTarget.setPointerCapture(event.pointerId);
  event.currentTarget.focus({ preventScroll: true });
  return { pointerId: event.pointerId, from: spotIn(svg, event), moved: false };
}

/**
 * Where what is held is pulled to, pixels of the pane; null for another pointer, and as long as the press is only
 * unsteady. The first pull begins the gesture.
 */
export function pulledTo(
  svg: SVGSVGElement,
  held: Held,
  event: PointerEvent<SVGGElement>,
  gesture: string,
): Spot | null {
  if (held.pointerId !== event.pointerId) return null;
  event.stopPropagation();
  const spot = spotIn(svg, event);
  const slack = event.pointerType === 'mouse' ? SLACK.mouse : SLACK.touch;
  if (!held.moved && distance(spot, held.from) < slack) return null;
  if (!held.moved) liveStore.getState().beginGesture(gesture);
  held.moved = true;
  return spot;
}
