import type { Vec3 } from '../../../core/form/build/vector';
import { moveCamera } from '../../../core/optics/onTrack';
import { carrierOf } from '../../../core/plan/edits/anchorOf';
import { moveItems } from '../../../core/plan/edits/moveItems';
import { raiseItems } from '../../../core/plan/edits/raiseItems';
import type { Spot } from '../../../core/plan/schema/numbers';
import type { Plan } from '../../../core/plan/schema/plan';
import { footOf } from '../../../core/plan/surfaces';
import { formatLength } from '../../../core/units/lengths';
import { onlyInSetup, seenOf } from '../../../desk/blocking/onlyIn';
import { moveTape } from '../../../desk/blocking/tape';
import { sessionStore } from '../../../desk/sessionStore';
import { type Carrying, carriersAlong } from '../carrying';
import { onLevel } from '../closeness';
import type { Pixel, WalkView } from '../walkView';
import type { Grasp, Step } from './grasp';
import { namesInText, surfaceInText } from './names';
import { type Rest, restingFrom } from './rest';
import { footOfTarget, type Hit } from './targets';

/** Two heights nearer than this are one, metres. */
const SAME_METRES = 0.001;

/**
 * Takes hold of a thing, of all that is chosen with it, of a mark or of a camera. The place where it stands follows
 * the hand over whatever carries things there: the hand keeps its distance from that place in the picture. Null for
 * what stands nowhere, or behind the eye.
 */
export function carry(
  plan: Plan,
  hit: Hit,
  ids: readonly string[],
  seconds: number,
  from: Pixel,
  view: WalkView,
): Grasp | null {
  const { target } = hit;
  const foot = footOfTarget(seenOf(plan), target, seconds, hit.place);
  const footPixel = foot && view.pixelOf(foot);
  if (!foot || !footPixel) return null;
  const beside: Pixel = [footPixel[0] - from[0], footPixel[1] - from[1]];
  const moving = new Set(target.type === 'item' ? ids : []);
  // What hides the foot at first is looked through until the hand has left it: a thing behind the stair house must
  // not jump onto its roof.
  const before = carriersAlong(plan, view.rayAt(footPixel), moving);
  const footMetres = distanceBetween(view.eye, foot);
  let hiding = new Set(
    before.flatMap(({ id, distance }) => (id !== null && distance < footMetres - 0.05 ? [id] : [])),
  );
  const level = (at: Pixel, through: WalkView): Carrying | null => {
    const place = onLevel(through.rayAt(at), foot[1]);
    return place && { spot: [place[0], place[2]], metres: foot[1], id: null, distance: 0 };
  };
  const under = (at: Pixel, through: WalkView): Carrying | null => {
    const met = carriersAlong(plan, through.rayAt(at), moving);
    hiding = new Set(met.flatMap(({ id }) => (id !== null && hiding.has(id) ? [id] : [])));
    return met.find(({ id }) => id !== null && !hiding.has(id)) ?? level(at, through);
  };
  // What hangs, and a camera, keeps its height.
  const isHanging =
    target.type === 'camera' || !before.some(({ metres }) => Math.abs(metres - foot[1]) < 0.02);
  const start: Spot = [foot[0], foot[2]];
  const rest = restingFrom(plan, [...moving], start);
  return {
    key: keyOf(hit),
    name: moveName(plan, hit, ids),
    to: (at, now, held) => {
      const pixel: Pixel = [at[0] + beside[0], at[1] + beside[1]];
      const on = isHanging ? level(pixel, now) : under(pixel, now);
      return on && step(plan, hit, ids, start, on, rest(on.spot, held, now, on.metres));
    },
  };
}

function step(
  plan: Plan,
  { target }: Hit,
  ids: readonly string[],
  start: Spot,
  on: Carrying,
  rest: Rest,
): Step {
  const to = rest.spot;
  const by: Spot = [to[0] - start[0], to[1] - start[1]];
  const moved =
    target.type === 'item'
      ? landed(moveItems(plan, { ids, by }), target.id, on)
      : target.type === 'mark'
        ? moveTape(plan, target, to, onlyInSetup(plan))
        : moveCamera(plan, { setupId: target.setupId, to });
  const metres = formatLength(Math.hypot(by[0], by[1]), sessionStore.getState().lengths);
  const words = on.id === null ? metres : `${metres}, on ${surfaceInText(plan, on.id)}`;
  return { plan: moved, words: [words, ...rest.words].join(', '), guides: rest.guides(on.metres) };
}

/** Stands a moved thing on what is under the hand: the highest there may be a roof over it. */
function landed(plan: Plan, id: string, on: Carrying): Plan {
  const root = carrierOf(plan, id) ?? id;
  const foot = on.id === null ? null : footOf(plan, root);
  const by = foot ? on.metres - foot.metres : 0;
  return Math.abs(by) < SAME_METRES ? plan : raiseItems(plan, { ids: [root], byMetres: by });
}

const distanceBetween = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

function keyOf({ target }: Hit): string {
  if (target.type === 'item') return target.id;
  return target.type === 'mark' ? target.performerId : target.setupId;
}

function moveName(plan: Plan, { target }: Hit, ids: readonly string[]): string {
  if (target.type === 'item') return `move ${namesInText(plan, ids)}`;
  if (target.type === 'mark') return `move a mark of ${namesInText(plan, [target.performerId])}`;
  const setup = plan.setups.find(({ id }) => id === target.setupId);
  return `move the camera of ${setup?.label ?? 'the setup'}`;
}
