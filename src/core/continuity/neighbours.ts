import { dot, subtract, unit } from '../form/build/vector';
import type { Plan } from '../plan/schema/plan';
import { acos } from '../units/steadyMath';
import { inOneGo } from '../units/steps';
import { isFramed, looksWhere, type Shot, shotsOf } from './continuityShots';
import { SHOT_SIZES, type ShotSize } from './framing';
import { lineReading, sideOf } from './lineSide';
import { linesOf } from './linesWanted';
import { mainIn } from './pairs';
import { stepsOver } from './stepsOver';
import type { ContinuityBase } from './types';

/** What two neighbouring setups of one subject have between them. */
interface Between {
  /** Between the ways from the subject's eyes to the two cameras, degrees. */
  readonly angleDegrees: number;
  /** Of the setup before it, and of its own. */
  readonly sizes: readonly [before: ShotSize, own: ShotSize];
  /** How many sizes wider its own is; negative for a tighter one. */
  readonly steps: number;
  /** Whether both cameras are on one side of the subject's line; null where the subject has none. */
  readonly sameSide: boolean | null;
  /** When the setup before it is compared, on the action's clock. */
  readonly againstSeconds: number;
}

/** How far a camera goes round its subject from the setup before. */
export interface ThirtyDegreesFinding extends ContinuityBase<'thirty degrees'>, Between {}

/** How the size of a subject changes from the setup before. */
export interface SizeChangeFinding extends ContinuityBase<'size change'>, Between {}

/** A camera that goes round its subject by less than this makes a jump. Source: [thirty-degree-rule] */
export const LEAST_TURN_DEGREES = 30;

/**
 * Whom a setup is about: who is its only subject (see `mainOf`) most of the time, else whom its focus follows, as long
 * as they are in frame.
 */
function subjectOf(shot: Shot): string | null {
  const counts = new Map<string, number>();
  shot.instants.forEach((_, k) => {
    const id = mainIn(shot, k)?.performerId;
    if (id !== undefined) counts.set(id, (counts.get(id) ?? 0) + 1);
  });
  const [most] = [...counts].toSorted((a, b) => b[1] - a[1]);
  if (most && most[1] * 2 > shot.instants.length) return most[0];
  const { focus } = shot.setup;
  if ('follow' in focus && shot.instants.some((_, k) => isFramed(shot, focus.follow, k))) return focus.follow;
  return most?.[0] ?? null;
}

/** The looks of two setups at one subject that lie nearest to each other on the clock. */
function couples(before: Shot, own: Shot, id: string): readonly (readonly [number, number])[] {
  const [earlier, later] = [before, own].map((shot) => looksWhere(shot, (k) => isFramed(shot, id, k)));
  let least = Infinity;
  const found: { readonly apart: number; readonly couple: readonly [number, number] }[] = [];
  for (const b of later) {
    let best: { readonly apart: number; readonly couple: readonly [number, number] } | null = null;
    for (const a of earlier) {
      const apart = Math.abs(before.instants[a] - own.instants[b]);
      if (!best || apart < best.apart) best = { apart, couple: [a, b] };
    }
    if (!best) continue;
    least = Math.min(least, best.apart);
    found.push(best);
  }
  // Spans need not begin together, so looks at one moment may lie up to half a look apart.
  return found.filter(({ apart }) => apart <= least + 0.13).map(({ couple }) => couple);
}

function sidesAgree(plan: Plan, id: string, looks: readonly (readonly [Shot, number])[]): boolean | null {
  const line = linesOf(plan).find(({ pair }) => pair.includes(id));
  if (!line) return null;
  const sides = looks.map(([shot, k]) => {
    const [first, second] = line.pair.map((each) => shot.seen.get(each)?.[k]?.place?.at);
    const reading = first && second ? lineReading(first, second, shot.cameras[k].pose.position) : null;
    return reading && sideOf(reading);
  });
  return sides[0] && sides[1] ? sides[0] === sides[1] : null;
}

/** The two setups where they are most alike: by size first, then by angle. */
function mostAlike(
  plan: Plan,
  before: Shot,
  own: Shot,
  id: string,
): (Between & { atSeconds: number }) | null {
  let best: {
    readonly between: Between & { atSeconds: number };
    readonly look: readonly [number, number];
  } | null = null;
  for (const [a, b] of couples(before, own, id)) {
    const [one, two] = [before.seen.get(id)?.[a], own.seen.get(id)?.[b]];
    if (!one?.place || !two?.place || !one.framing?.size || !two.framing?.size) continue;
    const ways = [
      unit(subtract(before.cameras[a].pose.position, one.place.eyes)),
      unit(subtract(own.cameras[b].pose.position, two.place.eyes)),
    ];
    const steps = SHOT_SIZES.indexOf(two.framing.size) - SHOT_SIZES.indexOf(one.framing.size);
    const between = {
      angleDegrees: (acos(dot(ways[0], ways[1])) * 180) / Math.PI,
      sizes: [one.framing.size, two.framing.size] as const,
      steps,
      sameSide: null,
      againstSeconds: before.instants[a],
      atSeconds: own.instants[b],
    };
    const known = best?.between;
    const isMoreAlike =
      !known ||
      Math.abs(steps) < Math.abs(known.steps) ||
      (Math.abs(steps) === Math.abs(known.steps) && between.angleDegrees < known.angleDegrees);
    if (isMoreAlike) best = { between, look: [a, b] };
  }
  return (
    best && {
      ...best.between,
      sameSide: sidesAgree(plan, id, [
        [before, best.look[0]],
        [own, best.look[1]],
      ]),
    }
  );
}

/**
 * Setups that follow each other in the plan and are about the same person, put to the rule that a camera goes round its
 * subject by 30° at least from one to the next, and to the change of size between them. The angle is the one in space
 * at the subject's eyes, so that a camera which goes up counts too; of all moments that both cover, or the nearest where
 * they cover none together, the one counts at which the two are most alike.
 *
 * Less than 30° at the same size is a jump, which breaks. Less than 30° and the next size is little of a change, which
 * is said; two sizes or more straight in or out are a cut along the axis, which holds, and so does any size from 30° on.
 *
 * Source: [thirty-degree-rule]
 */
export const neighbourFindings = (plan: Plan): readonly (ThirtyDegreesFinding | SizeChangeFinding)[] =>
  inOneGo(neighbourSteps(plan));

/** The same, setup by setup: yields the done share, 0..1. */
export function neighbourSteps(
  plan: Plan,
): Generator<number, readonly (ThirtyDegreesFinding | SizeChangeFinding)[], void> {
  const shots = shotsOf(plan);
  return stepsOver(shots, (own, k): readonly (ThirtyDegreesFinding | SizeChangeFinding)[] => {
    const before = shots[k - 1];
    const id = before ? subjectOf(own) : null;
    if (!before || id === null || subjectOf(before) !== id) return [];
    const alike = mostAlike(plan, before, own, id);
    if (!alike) return [];
    const isNear = alike.angleDegrees < LEAST_TURN_DEGREES;
    const common = { ...alike, setupId: own.setup.id, againstId: before.setup.id, performerIds: [id] };
    const turn: ThirtyDegreesFinding = {
      ...common,
      kind: 'thirty degrees',
      standing: !isNear || Math.abs(alike.steps) >= 2 ? 'holds' : alike.steps === 0 ? 'breaks' : 'said',
    };
    // A jump is one finding and not two.
    return turn.standing === 'breaks'
      ? [turn]
      : [turn, { ...common, kind: 'size change', standing: 'holds' }];
  });
}
