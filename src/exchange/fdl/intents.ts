import { deliveryWord } from '../../core/optics/deliveries';
import { deliveryWithin, type FrameRect } from '../../core/optics/frameLines';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { wholeRatio } from './ratio';
import type { FramingIntent } from './types';

/** A frame line of a setup: whose intent it is, and where it lies in the delivered frame, 0..1. */
export interface Line {
  readonly intent: FramingIntent;
  readonly rect: FrameRect;
}

const WHOLE: FrameRect = [0, 0, 1, 1];

function intentOf(prefix: string, label: string, aspect: number): FramingIntent {
  const [width, height] = wholeRatio(aspect);
  return { label, id: `${prefix}_${width}_${height}`, aspect_ratio: { width, height }, protection: 0 };
}

/**
 * The frame lines of a setup, outermost first: what is delivered, the second delivery inside it, and the plan's own
 * lines, whose shape depends on the delivery that they lie in.
 */
export function linesOf(plan: Plan, { delivery, secondDelivery }: Setup): readonly Line[] {
  const lines: Line[] = [{ intent: intentOf('RATIO', deliveryWord(delivery), delivery), rect: WHOLE }];
  if (secondDelivery !== undefined && secondDelivery !== delivery)
    lines.push({
      intent: intentOf('RATIO', deliveryWord(secondDelivery), secondDelivery),
      rect: deliveryWithin(delivery, secondDelivery),
    });
  (plan.frameLines ?? []).forEach(({ label, rect }, place) => {
    const [left, top, right, bottom] = rect;
    const aspect = (delivery * (right - left)) / (bottom - top);
    lines.push({ intent: intentOf(`LINE_${place + 1}`, label, aspect), rect });
  });
  return lines;
}
