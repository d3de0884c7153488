import type { Vec3 } from '../form/build/vector';
import { whereabouts } from '../form/figure/whereabouts';
import type { ItemForm } from '../form/types';
import { cameraAt, glassOf, stateAt } from '../optics/camera';
import { panTiltToHold } from '../optics/operator';
import { poseOf } from '../optics/pose';
import { formsThrough } from '../optics/riding';
import type { Camera } from '../optics/types';
import { named } from '../plan/named';
import { played } from '../plan/played';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import type { LengthSystem } from '../units/lengths';
import { formatShare } from '../units/shares';
import { cos, sin } from '../units/steadyMath';
import { beforeEyes, Eye, shareIn } from './dirtyLook';
import { lineReading, sideOf } from './lineSide';
import { type InFrame, inFrameAt, isNearer, isSingle, mainOf, offEyes } from './pairs';
import { type Reposing, reposing } from './reposing';

/** The camera from which somebody near takes the wanted share of the frame. */
export interface MadeDirty extends Reposing {
  readonly setupId: string;
  readonly subjectId: string;
  readonly nearId: string;
  /** How far round the subject the camera goes, clockwise from above, degrees. */
  readonly arcDegrees: number;
  /** What the near performer takes of the frame there, and now: 0..1. */
  readonly share: number;
  readonly shareNow: number;
}

/** No farther round the subject than this to either side: beyond, it is another setup. Source: common practice, no source */
const MOST_ARC_DEGREES = 40;
/** Every so far round, it is looked whether the share passes the wanted one. */
const STEP_DEGREES = 2;
/** How near to the wanted share is near enough, in shares of the frame. */
const NEAR_ENOUGH = 0.001;
const MOST_HALVINGS = 18;
/** Wanted clean, the place is found to this. */
const FINEST_DEGREES = 0.02;
/** Pixels along the frame's longer side, to find roughly where, and to settle it. */
const ROUGH_SIDE = 192;
const FINE_SIDE = 512;

/** What is found at a place round the subject. */
interface Tried {
  readonly arcDegrees: number;
  readonly share: number;
  /** Whether the near one stands before the subject's eyes. */
  readonly hidden: boolean;
}

/** All that stays the same while a camera goes round its subject. */
class Arc {
  private readonly camera: Camera;
  private readonly scene: Plan;
  private readonly forms: readonly ItemForm[];
  private readonly rough = new Eye(ROUGH_SIDE);
  private readonly fine = new Eye(FINE_SIDE);
  private readonly rollDegrees: number;

  constructor(
    plan: Plan,
    setup: Setup,
    private readonly seconds: number,
    readonly subject: InFrame,
    readonly nearId: string,
  ) {
    this.camera = cameraAt(plan, setup, seconds);
    this.scene = played(plan, setup);
    this.forms = formsThrough(plan, setup, seconds);
    this.rollDegrees = stateAt(plan, setup, seconds).rollDegrees;
  }

  /** The lens so far round the subject's eyes, at the same height and distance. */
  positionAt(arcDegrees: number): Vec3 {
    const { eyes } = this.subject.place;
    const { position } = this.camera.pose;
    const [c, s] = [cos((arcDegrees * Math.PI) / 180), sin((arcDegrees * Math.PI) / 180)];
    const [x, z] = [position[0] - eyes[0], position[2] - eyes[2]];
    return [eyes[0] + x * c - z * s, position[1], eyes[2] + x * s + z * c];
  }

  private cameraAt(arcDegrees: number): Camera {
    const { frame } = this.camera;
    const { place, framing } = this.subject;
    const position = this.positionAt(arcDegrees);
    const aim = panTiltToHold(position, place.eyes, framing.eyes, this.rollDegrees, frame);
    return { pose: poseOf(position, aim.headingDegrees, aim.tiltDegrees, this.rollDegrees), frame };
  }

  /** Whether a camera there lies on another side of a line that it is to keep than it does now. */
  private crosses(position: Vec3): boolean {
    const { scene, seconds, subject, nearId } = this;
    const drawn = (scene.lines ?? []).map(({ pair }) => pair);
    return [[subject.performerId, nearId] as const, ...drawn].some((pair) => {
      const [a, b] = pair.map((id) => {
        const performer = scene.cast.find((each) => each.id === id);
        return performer ? whereabouts(performer, scene, seconds)?.at : undefined;
      });
      if (!a || !b) return false;
      const [now, then] = [lineReading(a, b, this.camera.pose.position), lineReading(a, b, position)];
      return now !== null && then !== null && sideOf(now) !== sideOf(then);
    });
  }

  /** How far round to one side the camera may go before it crosses a line, degrees. */
  limitOn(sign: 1 | -1): number {
    const isBeyond = (degrees: number): boolean => this.crosses(this.positionAt(sign * degrees));
    if (!isBeyond(MOST_ARC_DEGREES)) return MOST_ARC_DEGREES;
    let [may, not] = [0, MOST_ARC_DEGREES];
    for (let halving = 0; halving < MOST_HALVINGS; halving += 1) {
      const middle = (may + not) / 2;
      if (isBeyond(middle)) not = middle;
      else may = middle;
    }
    return may;
  }

  try(arcDegrees: number, how: 'rough' | 'fine'): Tried {
    const seen = this[how].see(this.forms, this.cameraAt(arcDegrees), [
      this.subject.performerId,
      this.nearId,
    ]);
    const hidden = beforeEyes(seen, this.subject.place.eyes, [this.nearId]) !== null;
    return { arcDegrees, share: shareIn(seen, this.nearId), hidden };
  }
}

/** Whether a share is as wanted; wanted clean, nothing may be left but a crumb. */
const isRight = (share: number, wanted: number): boolean =>
  wanted === 0 ? share === 0 : Math.abs(share - wanted) <= NEAR_ENOUGH;

/** Between two places round, one with too much and one with too little, where the share is right; null where it jumps. */
function settle(arc: Arc, from: number, to: number, wanted: number): Tried | null {
  let [low, high] = [arc.try(from, 'fine'), arc.try(to, 'fine')];
  if (wanted > 0) {
    for (const end of [low, high]) if (!end.hidden && isRight(end.share, wanted)) return end;
  }
  if (low.share > wanted === high.share > wanted) return null;
  for (let halving = 0; halving < MOST_HALVINGS; halving += 1) {
    const middle = arc.try((low.arcDegrees + high.arcDegrees) / 2, 'fine');
    if (wanted > 0 && !middle.hidden && isRight(middle.share, wanted)) return middle;
    if (middle.share > wanted === low.share > wanted) low = middle;
    else high = middle;
    if (wanted === 0 && Math.abs(high.arcDegrees - low.arcDegrees) < FINEST_DEGREES) break;
  }
  const last = low.share <= wanted ? low : high;
  return !last.hidden && isRight(last.share, wanted) ? last : null;
}

/** The search on one side of where the camera is. */
interface Side {
  readonly sign: 1 | -1;
  readonly limitDegrees: number;
  before: Tried;
  /** What ended it; null while it goes on. */
  ended: 'line' | 'eyes' | 'arc' | null;
}

/** Why no place round the subject will do. */
function refusal(
  label: string,
  wanted: number,
  sides: readonly Side[],
  [least, most]: readonly [number, number],
): string {
  const takes =
    wanted > most
      ? `takes ${formatShare(most)} of the frame at most`
      : `takes ${formatShare(least)} of the frame at least`;
  const ends = sides.map(({ ended }) => ended);
  if (ends.includes('line')) return `${label} ${takes} before the camera crosses the line.`;
  if (ends.includes('eyes')) return `${label} ${takes} before the eyes are hidden.`;
  return `${label} ${takes} within ${MOST_ARC_DEGREES}° round the subject.`;
}

/** Goes one step farther to one side; where the share passes the wanted one on the way, the place where it is right. */
function step(arc: Arc, side: Side, wanted: number): Tried | null {
  const { sign, limitDegrees, before } = side;
  const way = Math.min(limitDegrees, Math.abs(before.arcDegrees) + STEP_DEGREES);
  const here = arc.try(sign * way, 'rough');
  const passes = here.share > wanted !== before.share > wanted || isRight(here.share, wanted);
  // Looked at roughly, the share may seem to pass a little too early or too late.
  const from = Math.max(0, Math.abs(before.arcDegrees) - STEP_DEGREES / 2);
  const to = Math.min(limitDegrees, way + STEP_DEGREES / 2);
  const settled = passes ? settle(arc, sign * from, sign * to, wanted) : null;
  if (here.hidden && !before.hidden) side.ended = 'eyes';
  else if (way >= limitDegrees) side.ended = limitDegrees < MOST_ARC_DEGREES ? 'line' : 'arc';
  side.before = here;
  return settled;
}

/** Who would be in the way: the one who is asked for, who takes most now, or else who is nearest to the lens before the subject. */
function nearFor(plan: Plan, setup: Setup, seconds: number, subject: InFrame): string | null {
  const scene = played(plan, setup);
  const camera = cameraAt(plan, setup, seconds);
  const eye = new Eye(ROUGH_SIDE);
  const ids = scene.cast.map(({ id }) => id);
  const seen = eye.see(formsThrough(plan, setup, seconds), camera, ids);
  const others = scene.cast.flatMap((performer) => {
    const place = performer.id === subject.performerId ? null : whereabouts(performer, scene, seconds);
    if (!place) return [];
    const { position, forward } = camera.pose;
    const depth = place.eyes.reduce((sum, at, axis) => sum + (at - position[axis]) * forward[axis], 0);
    if (!isNearer(depth, subject)) return [];
    const off = offEyes(position, place.eyes).straightMetres;
    return [{ id: performer.id, share: shareIn(seen, performer.id), off }];
  });
  const [best] = others.toSorted((a, b) => b.share - a.share || a.off - b.off);
  return best?.id ?? null;
}

/** What is asked of `makeDirty`. */
export interface DirtyAsked {
  readonly seconds: number;
  /** Wanted, 0..1 of the frame. */
  readonly share: number;
  readonly nearId?: string;
  readonly lengths?: LengthSystem;
}

/**
 * The camera from which somebody near takes a wanted share of the frame at an instant of the action's clock: round the
 * subject at the same height and distance, the eyes kept at their place in frame, the least way to either side that
 * does it. It never crosses a line that it is on one side of, nor lets the near one hide the subject's eyes. `share: 0`
 * makes the single clean. Null where the setup is about nobody, or nobody is nearer to the lens than its subject.
 */
export function makeDirty(plan: Plan, setup: Setup, asked: DirtyAsked): MadeDirty | null {
  const steps = makeDirtySteps(plan, setup, asked);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

/** The same step by step round the subject: yields how much of the way is looked at, 0..1, returns the camera. */
export function* makeDirtySteps(
  plan: Plan,
  setup: Setup,
  asked: DirtyAsked,
): Generator<number, MadeDirty | null, void> {
  const { seconds, share: wanted, lengths = 'm' } = asked;
  const subject = mainOf(inFrameAt(plan, setup, seconds));
  const nearId = subject && (asked.nearId ?? nearFor(plan, setup, seconds, subject));
  if (!subject || !isSingle(subject) || !nearId || nearId === subject.performerId) return null;
  const arc = new Arc(plan, setup, seconds, subject, nearId);
  const now = arc.try(0, 'fine');
  const { rollDegrees, focalMm } = stateAt(plan, setup, seconds);
  const { lens } = glassOf(plan, setup);
  const found = (at: Tried): MadeDirty => ({
    ...reposing(
      plan,
      setup,
      seconds,
      {
        position: arc.positionAt(at.arcDegrees),
        rollDegrees,
        lens,
        focalMm,
        performerId: subject.performerId,
        eyes: subject.place.eyes,
        at: subject.framing.eyes,
      },
      lengths,
    ),
    setupId: setup.id,
    subjectId: subject.performerId,
    nearId,
    arcDegrees: at.arcDegrees,
    share: at.share,
    shareNow: now.share,
  });
  if (!now.hidden && isRight(now.share, wanted)) return found(now);

  const before = arc.try(0, 'rough');
  const sides: readonly Side[] = ([1, -1] as const).map((sign) => {
    const limitDegrees = arc.limitOn(sign);
    return { sign, limitDegrees, before, ended: limitDegrees > 0 ? null : 'line' };
  });
  let [least, most] = [now.share, now.share];
  let refused: MadeDirty | null = null;
  while (sides.some(({ ended }) => ended === null)) {
    for (const side of sides) {
      if (side.ended !== null) continue;
      yield Math.min(1, Math.abs(side.before.arcDegrees) / MOST_ARC_DEGREES);
      const settled = step(arc, side, wanted);
      if (!side.before.hidden) {
        least = Math.min(least, side.before.share);
        most = Math.max(most, side.before.share);
      }
      if (!settled) continue;
      const made = found(settled);
      if (made.why === null) return made;
      refused ??= made;
      side.ended = 'arc';
    }
  }
  if (refused) return refused;
  const label = named(plan.cast.find(({ id }) => id === nearId)?.label ?? nearId);
  return { ...found(now), why: refusal(label, wanted, sides, [least, most]) };
}
