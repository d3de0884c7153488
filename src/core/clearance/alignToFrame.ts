import { directionOf, dot } from '../form/build/vector';
import type { ItemForm } from '../form/types';
import { cameraAt, stateAt } from '../optics/camera';
import { formThrough } from '../optics/riding';
import type { Camera } from '../optics/types';
import { anchorOf, carrierOf } from '../plan/edits/anchorOf';
import { moveItem } from '../plan/edits/moveItem';
import { tidyMetres } from '../plan/edits/tidy';
import { itemOf } from '../plan/items';
import { named } from '../plan/named';
import type { Plan } from '../plan/schema/plan';
import { setupLetter } from '../plan/setupLetter';
import { aroundFrame } from '../sight/margin';
import { pictureEdges, sidesBefore, speedAcross } from './pictureEdges';

/** Lines of the frame that an item can be put on, and the places just outside of it. */
export const FRAME_LINES = [
  'left',
  'right',
  'centre',
  'left third',
  'right third',
  'just outside left',
  'just outside right',
] as const;
export type FrameLine = (typeof FRAME_LINES)[number];

/** What is to be put where, for which setup, at which instant of the action's clock. */
export interface Alignment {
  readonly id: string;
  readonly setupId: string;
  readonly seconds: number;
  readonly to: FrameLine;
}

/** The plan with the item in its place, or a sentence that says why it cannot be put there. */
export type Aligned = { readonly plan: Plan } | { readonly why: string };

/** Where each line is, 0..1 of the frame from its left; for what goes outside, the line that it goes beyond. */
const LINE_AT: Readonly<Record<FrameLine, number>> = {
  left: 0,
  right: 1,
  centre: 0.5,
  'left third': 1 / 3,
  'right third': 2 / 3,
  'just outside left': 0,
  'just outside right': 1,
};

/** Near enough, metres: places in the plan and corners of shapes are rounded to about a micrometre. */
const NEAR_ENOUGH = 2e-6;
/** What may remain after all, metres. */
const GOOD = 1e-4;
const MOST_STEPS = 40;
/** A camera that leans farther than this has hardly any level direction across its frame. */
const LEAST_LEVEL = 0.2;

/** What is left to do for a form: the way along the level, metres; null when the line does not meet it. */
type Remaining = (form: ItemForm) => number | null;

/** To bring its outer edge, or for the lines inside the frame its middle, to the line. */
function toLine(to: FrameLine, camera: Camera, along: readonly [number, number]): Remaining {
  return (form) => {
    const edges = pictureEdges(form, camera);
    if (!edges) return null;
    const { left, right } = edges;
    const places = to === 'left' ? [left] : to === 'right' ? [right] : [left, right];
    const now = places.reduce((sum, { x }) => sum + x, 0) / places.length;
    const speed =
      places.reduce((sum, { at }) => sum + speedAcross(camera.frame, at, along), 0) / places.length;
    return (LINE_AT[to] - now) / speed;
  };
}

/** To bring all of it out of the frame by the plan's margin, in metres and in frame widths, whichever is more. */
function toOutside(hand: 1 | -1, camera: Camera, safety: Plan['safety'], level: number): Remaining {
  const { tanX } = aroundFrame(camera.frame);
  return (form) => {
    let metres = Number.NEGATIVE_INFINITY;
    for (const side of sidesBefore(form, camera)) {
      for (const [x, , z] of side) {
        const room = Math.max(safety.metres, 2 * tanX * safety.frameWidths * z) + 2 * NEAR_ENOUGH;
        metres = Math.max(metres, tanX * z + room - hand * x);
      }
    }
    return metres === Number.NEGATIVE_INFINITY ? null : (hand * metres) / level;
  };
}

/**
 * Moves an item on the level, square to the axis of a setup's camera, so that its distance along the axis stays:
 * until its outermost edge in the picture (exact, through the lens's distortion, between the frame's top and bottom,
 * were nothing before it) lies on the frame line at left or right; until the middle between its two edges lies on the
 * centre line or a third; or until all of it is outside by the plan's safety margin. What carries it goes along.
 */
export function alignToFrame(plan: Plan, { id, setupId, seconds, to }: Alignment): Aligned {
  const setup = plan.setups.find((each) => each.id === setupId);
  if (!setup) return { why: 'There is no setup yet whose frame it could be put to.' };
  const item = itemOf(plan, id);
  if (!item) return { why: 'It is no longer in the plan.' };
  const { label } = item.record;
  const camera = cameraAt(plan, setup, seconds);
  const of = `setup ${setupLetter(plan.setups.indexOf(setup))}`;
  const carrier = itemOf(plan, carrierOf(plan, id) ?? id) ?? item;
  if (item.record.locked || carrier.record.locked) {
    return { why: `${named(carrier.record.locked ? carrier.record.label : label)} is locked.` };
  }
  const anchor = anchorOf(plan, id);
  const form = formThrough(plan, setup, id, seconds);
  if (!anchor || !form) return { why: `${named(label)} stands nowhere yet.` };
  if (sidesBefore(form, camera).next().done) return { why: `${named(label)} is behind the camera of ${of}.` };

  const level = directionOf(stateAt(plan, setup, seconds).headingDegrees + 90);
  const along = [dot(level, camera.pose.right), dot(level, camera.pose.up)] as const;
  if (along[0] < LEAST_LEVEL) {
    return {
      why: `The camera of ${of} lies on its side, so nothing can be moved along its frame on the level.`,
    };
  }
  const remaining =
    to === 'just outside left' || to === 'just outside right'
      ? toOutside(to === 'just outside left' ? -1 : 1, camera, plan.safety, along[0])
      : toLine(to, camera, along);

  const movedBy = (metres: number): Plan => {
    const spot: [number, number] = [
      tidyMetres(anchor[0] + level[0] * metres),
      tidyMetres(anchor[1] + level[2] * metres),
    ];
    return moveItem(plan, { id, to: spot });
  };
  // What is far out of the picture is brought near the line as a lens without distortion would see it.
  let metres = remaining(form) === null ? towards(form, camera, to, along[0]) : 0;
  let off = Number.POSITIVE_INFINITY;
  let now = plan;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    now = metres === 0 ? plan : movedBy(metres);
    const there = formThrough(now, setup, id, seconds);
    const left = there && remaining(there);
    if (left === null) {
      return { why: `${named(label)} passes above or below the frame of ${of}, so it meets no line of it.` };
    }
    off = left;
    if (Math.abs(off) < NEAR_ENOUGH) break;
    metres += off;
  }
  if (Math.abs(off) > GOOD) {
    return {
      why: `${named(label)} does not come to rest there: on the way it would stand at another height.`,
    };
  }
  return { plan: now };
}

/** A first guess for what the lens does not draw: the way that brings the middle of a form to the line. */
function towards(form: ItemForm, camera: Camera, to: FrameLine, level: number): number {
  let [low, high, depth] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0];
  for (const side of sidesBefore(form, camera)) {
    for (const [x, , z] of side) {
      if (x / z < low) low = x / z;
      if (x / z > high) high = x / z;
      depth = Math.max(depth, z);
    }
  }
  return (((2 * LINE_AT[to] - 1) * camera.frame.tanHalfWidth - (low + high) / 2) * depth) / level;
}
