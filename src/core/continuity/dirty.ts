import { cameraAt, glassOf } from '../optics/camera';
import { blurMm } from '../optics/focus';
import { focusAt } from '../optics/focusAt';
import { extraction } from '../optics/gate';
import { cameraFromWorld } from '../optics/project';
import { formsThrough } from '../optics/riding';
import { played } from '../plan/played';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import type { Look } from '../sight/look';
import type { Outside } from '../sight/margin';
import { boxOf } from '../sight/tally';
import { inOneGo } from '../units/steps';
import { isFramed, type Shot, shotsOf } from './continuityShots';
import { beforeEyes, Eye, shareOf } from './dirtyLook';
import { focusGlassOf } from './focusTrack';
import { type InFrame, inFrameAt, inShot, isSingle, mainIn, mainOf, nearerThan } from './pairs';
import { stepsOver } from './stepsOver';
import type { ContinuityBase, Standing } from './types';

type FrameEdge = Outside['edge'];
type Extent = readonly [left: number, top: number, right: number, bottom: number];

/** What of a body is in the way, from the top down. */
export type NearPart = 'head' | 'shoulder' | 'arm' | 'hand' | 'legs' | 'prop';

/** A performer between the lens and the subject. Shares are of the frame, 0..1. */
export interface NearPerformer {
  readonly performerId: string;
  readonly share: number;
  /** Where it lies, in 0..1 of the frame. */
  readonly extent: Extent;
  readonly touches: readonly FrameEdge[];
  /** Largest first. */
  readonly parts: readonly { readonly part: NearPart; readonly share: number }[];
  /** From the lens along its axis to the largest of those parts, metres. */
  readonly metres: number;
  /** Height on the sensor of the blur of a point there; null where nothing is in focus. */
  readonly blurMm: number | null;
  /** Its width as a share of the frame's: through a squeeze an out-of-focus point is narrower than high. */
  readonly blurFrameWidths: number | null;
  /** Whether that passes for sharp. */
  readonly sharp: boolean;
}

/** How dirty a single is at an instant. */
export interface DirtyReading {
  readonly atSeconds: number;
  readonly subjectId: string;
  /** Who is before the subject, the largest share first; empty for a clean single. */
  readonly near: readonly NearPerformer[];
  /** Who stands before the subject's eyes; null where they are seen. */
  readonly eyesBehindId: string | null;
}

/** A single over its span, by the instant when most of the frame is taken. */
export interface DirtySingleFinding extends ContinuityBase<'dirty single'> {
  readonly subjectId: string;
  readonly near: readonly NearPerformer[];
  readonly eyesBehindId: string | null;
  /** Least and most that those before the subject take together at the instants looked at. */
  readonly shares: readonly [least: number, most: number];
}

/** Pixels along the longer side of the frame. */
const LONG_SIDE = 384;
/** Within this share of the frame of an edge counts as touching it. */
const TOUCHING = 0.004;
/** So little of the frame is a crumb, not a dirty single. Source: common practice, no source */
export const CLEAN_SHARE = 0.001;
/** Room beyond the shoulders for arms and what is carried, when it is asked who might be in the way, metres. */
const ARMS_METRES = 0.35;

const PART_OF: Readonly<Record<string, NearPart>> = {
  head: 'head',
  hair: 'head',
  torso: 'shoulder',
  coat: 'shoulder',
  arms: 'arm',
  hands: 'hand',
  legs: 'legs',
  feet: 'legs',
  prop: 'prop',
};

function edgesOf([left, top, right, bottom]: Extent): readonly FrameEdge[] {
  const edges: FrameEdge[] = [];
  if (left <= TOUCHING) edges.push('left');
  if (right >= 1 - TOUCHING) edges.push('right');
  if (top <= TOUCHING) edges.push('top');
  if (bottom >= 1 - TOUCHING) edges.push('bottom');
  return edges;
}

/** Blur of what lies so far along the axis: its height on the sensor, and its width as a share of the frame's. */
function blurAt(
  plan: Plan,
  setup: Setup,
  seconds: number,
  metres: number,
): Pick<NearPerformer, 'blurMm' | 'blurFrameWidths' | 'sharp'> {
  const glass = focusGlassOf(plan, setup, seconds);
  const focus = focusAt(plan, setup, seconds);
  if (focus === null || !(focus > glass.focalMm / 1000) || !(metres > 0)) {
    return { blurMm: null, blurFrameWidths: null, sharp: false };
  }
  const blur = blurMm(glass, focus, metres);
  const { lens, gateMm } = glassOf(plan, setup);
  const { usedMm } = extraction(gateMm, glass.focalMm, lens.squeeze, setup.delivery);
  // The pupil is narrower by the squeeze, and what it draws on the sensor is squeezed once more.
  return {
    blurMm: blur,
    blurFrameWidths: blur / (lens.squeeze * lens.squeeze * usedMm[0]),
    sharp: blur <= glass.circleMm,
  };
}

function nearOf(plan: Plan, setup: Setup, seconds: number, seen: Look, item: number): NearPerformer | null {
  const share = shareOf(seen, item);
  const extent = boxOf(seen, seen.direct.boxes, item);
  if (share < CLEAN_SHARE || !extent) return null;
  const { stage, direct, grid, camera } = seen;
  const byPart = new Map<NearPart, { share: number; largest: number; metres: number }>();
  for (let k = stage.firstPart[item]; k < stage.firstPart[item + 1]; k += 1) {
    const pixels = direct.partPixels[k];
    if (pixels === 0) continue;
    const { name, centre } = stage.parts[k];
    const part = PART_OF[name] ?? 'head';
    const known = byPart.get(part) ?? { share: 0, largest: 0, metres: 0 };
    const isLargest = pixels > known.largest;
    byPart.set(part, {
      share: known.share + pixels / grid.framePixels,
      largest: isLargest ? pixels : known.largest,
      metres: isLargest ? cameraFromWorld(camera.pose, centre)[2] : known.metres,
    });
  }
  const parts = [...byPart].toSorted(([a, x], [b, y]) => y.share - x.share || (a < b ? -1 : 1));
  const metres = parts[0]?.[1].metres ?? 0;
  return {
    performerId: stage.forms[item].id,
    share,
    extent,
    touches: edgesOf(extent),
    parts: parts.map(([part, { share: took }]) => ({ part, share: took })),
    metres,
    ...blurAt(plan, setup, seconds, metres),
  };
}

function read(plan: Plan, setup: Setup, seconds: number, subject: InFrame, eye: Eye): DirtyReading {
  const scene = played(plan, setup);
  const camera = cameraAt(plan, setup, seconds);
  const clean = { atSeconds: seconds, subjectId: subject.performerId, near: [], eyesBehindId: null };
  const ids = nearerThan(camera, scene, subject, seconds, ARMS_METRES);
  if (ids.length === 0) return clean;
  const seen = eye.see(formsThrough(plan, setup, seconds), camera, [subject.performerId, ...ids]);
  const near = seen.stage.forms.flatMap(({ id }, item) => {
    const found = ids.includes(id) ? nearOf(plan, setup, seconds, seen, item) : null;
    return found ? [found] : [];
  });
  return {
    ...clean,
    near: near.toSorted((a, b) => b.share - a.share || (a.performerId < b.performerId ? -1 : 1)),
    eyesBehindId: beforeEyes(seen, subject.place.eyes, ids),
  };
}

/**
 * How dirty a setup's single is at an instant of the action's clock: how much of the frame whoever is nearer to the
 * lens than its subject takes, where, and how soft. Null where it is about nobody, or the subject's head is not all in
 * frame. `longSide` is how fine to look, in pixels.
 */
export function dirtyAt(
  plan: Plan,
  setup: Setup,
  seconds: number,
  longSide = LONG_SIDE,
): DirtyReading | null {
  const subject = mainOf(inFrameAt(plan, setup, seconds));
  return subject?.framing.held && isSingle(subject)
    ? read(plan, setup, seconds, subject, new Eye(longSide))
    : null;
}

/** At how many instants a span is looked at for who is in the way, at the most. */
const LOOKS = 5;

/** Some of a list, evenly, its first and last among them. */
function someOf(list: readonly number[], most: number): readonly number[] {
  if (list.length <= most) return list;
  return Array.from({ length: most }, (_, k) => list[Math.round((k * (list.length - 1)) / (most - 1))]);
}

/** Whom a shot is about at most of the instants at which its head is all in frame, and which those are. */
function subjectOver(shot: Shot): { readonly id: string; readonly looks: readonly number[] } | null {
  const looks = new Map<string, number[]>();
  for (const k of shot.instants.keys()) {
    const main = mainIn(shot, k);
    if (!main?.framing.held || !isSingle(main)) continue;
    const known = looks.get(main.performerId);
    if (known) known.push(k);
    else looks.set(main.performerId, [k]);
  }
  const [most] = [...looks].toSorted(([, a], [, b]) => b.length - a.length);
  return most ? { id: most[0], looks: most[1] } : null;
}

/** Whether nothing that a single is judged by has moved between two of a shot's instants. */
function isStill(shot: Shot, k: number, l: number): boolean {
  const [a, b] = [shot.cameras[k].pose, shot.cameras[l].pose];
  const isSame = (x: readonly number[], y: readonly number[]): boolean =>
    x.every((value, axis) => value === y[axis]);
  if (!isSame(a.position, b.position) || !isSame(a.forward, b.forward) || !isSame(a.up, b.up)) return false;
  if (shot.cameras[k].frame.tanHalfWidth !== shot.cameras[l].frame.tanHalfWidth) return false;
  return [...shot.seen.values()].every((looks) => {
    const [p, q] = [looks[k].place, looks[l].place];
    if (!p || !q) return p === q;
    return (
      isSame(p.eyes, q.eyes) &&
      isSame(p.gaze, q.gaze) &&
      p.headingDegrees === q.headingDegrees &&
      p.stance === q.stance
    );
  });
}

const total = ({ near }: DirtyReading): number => near.reduce((sum, { share }) => sum + share, 0);

/** Hidden eyes are worse than seen ones, and then a larger share than a smaller. */
function isWorse(a: DirtyReading, b: DirtyReading): boolean {
  const [hides, hid] = [a, b].map(({ eyesBehindId }) => eyesBehindId !== null);
  return hides === hid ? total(a) > total(b) : hides;
}

function standingOf({ near, eyesBehindId }: DirtyReading): Standing {
  if (eyesBehindId !== null) return 'breaks';
  return near.length > 0 ? 'said' : 'holds';
}

function singleIn(plan: Plan, shot: Shot, eye: Eye): DirtySingleFinding | null {
  const { setup } = shot;
  const subject = subjectOver(shot);
  if (!subject || shot.scene.cast.length < 2) return null;
  let last: { readonly look: number; readonly reading: DirtyReading } | null = null;
  let worst: DirtyReading | null = null;
  let least = 1;
  for (const k of someOf(subject.looks, LOOKS)) {
    if (last && isStill(shot, last.look, k)) continue;
    const main = inShot(shot, k).find(({ performerId }) => performerId === subject.id);
    if (!main || !isFramed(shot, subject.id, k)) continue;
    const reading = read(plan, setup, shot.instants[k], main, eye);
    last = { look: k, reading };
    least = Math.min(least, total(reading));
    if (!worst || isWorse(reading, worst)) worst = reading;
  }
  if (!worst) return null;
  return {
    kind: 'dirty single',
    standing: standingOf(worst),
    setupId: setup.id,
    againstId: null,
    performerIds: [subject.id, ...worst.near.map(({ performerId }) => performerId)],
    atSeconds: worst.atSeconds,
    subjectId: subject.id,
    near: worst.near,
    eyesBehindId: worst.eyesBehindId,
    shares: [least, total(worst)],
  };
}

/**
 * How dirty a setup's single is over its span, by the instant when most of the frame is taken; clean where nobody is in
 * the way. Null where the setup is about nobody of whom the head is all in frame, and where nobody else plays.
 */
export function dirtySingle(plan: Plan, setup: Setup): DirtySingleFinding | null {
  const shot = shotsOf(plan).find((each) => each.setup === setup);
  return shot ? singleIn(plan, shot, new Eye(LONG_SIDE)) : null;
}

/** How dirty every single of a plan is, in the plan's order. */
export const dirtyFindings = (plan: Plan): readonly DirtySingleFinding[] => inOneGo(dirtySteps(plan));

/** The same, setup by setup: yields the done share, 0..1. */
export const dirtySteps = (plan: Plan): Generator<number, readonly DirtySingleFinding[], void> => {
  const eye = new Eye(LONG_SIDE);
  return stepsOver(shotsOf(plan), (shot) => {
    const found = singleIn(plan, shot, eye);
    return found ? [found] : [];
  });
};
