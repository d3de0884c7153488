import type { Spot } from '../../core/plan/schema/numbers';
import { sessionStore } from '../sessionStore';
import { pointAt } from './drawing';
import { snapSettings, stepMetres } from './snapSettings';
import { toolStore } from './toolStore';

/** A step with Shift, in steps without; and one with Alt, metres. */
const COARSE = 10;
const FINE_METRES = 0.01;
/** Of a step: things that catch from nearer than half of it let the crosshair go again with the next. */
const REACH = 0.45;

/**
 * Moves the crosshair by whole steps to the right and down the sheet. The first move begins at `start`, where nothing
 * is pointed at yet.
 */
export function moveCrosshair(
  right: number,
  down: number,
  options: { readonly coarse: boolean; readonly fine: boolean; readonly start: Spot },
): void {
  const { stroke } = toolStore.getState();
  const step = stepMetres(snapSettings.getState(), sessionStore.getState().lengths);
  const by = options.fine ? FINE_METRES : options.coarse ? step * COARSE : step;
  const from = stroke?.next ?? stroke?.corners.at(-1) ?? options.start;
  const spot: Spot = [from[0] + right * by, from[1] + down * by];
  pointAt(spot, { reachMetres: step * REACH, free: options.fine, straight: false }, true);
}
