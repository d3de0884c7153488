import type { Vec3 } from '../../core/form/build/vector';
import { cameraAt } from '../../core/optics/camera';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { surfaceUnder } from '../../core/plan/surfaces';
import type { Standpoint } from '../../desk/walkStore';
import { middleOfAction } from '../light/middleOfAction';
import { type Room, roundUnder } from './grounds';

/** Where the eye is and what it looks at, metres. */
export interface Stand {
  readonly eye: Vec3;
  readonly target: Vec3;
}

export interface Occasion {
  readonly plan: Plan;
  readonly seconds: number;
  readonly setup: Setup | null;
  /** What the chosen things take up. */
  readonly rooms: readonly Room[];
  /** Where the eye is now. */
  readonly from: Stand;
  /** Tangents of half the angles that the eye takes in, across and up. */
  readonly halves: readonly [number, number];
}

/** Of a person who stands. */
const EYE_METRES = 1.6;
/** How far ahead of a camera the eye's target lies, metres: what a turn turns about. */
const AHEAD_METRES = 6;
/** A standpoint shows its subject with this much room around it. */
const ROOM = 1.25;
/** Nearest that the eye comes to a chosen thing, metres. */
const NEAREST_METRES = 1.6;

/** How far the eye is above what is chosen, at least, for each metre that it is away. */
const LEAST_RISE = 0.2;

/** Where to stand; null where there is nothing to stand for: no camera, nothing chosen. */
export function standOf(standpoint: Standpoint, occasion: Occasion): Stand | null {
  switch (standpoint) {
    case 'from above':
      return fromAbove(occasion);
    case 'eye level':
      return atEyeLevel(occasion);
    case 'from the camera':
      return fromCamera(occasion);
    case 'at the chosen':
      return atChosen(occasion);
  }
}

/** Over the middle of all decks, north up, high enough to have all of them in the picture. */
function fromAbove({ plan, halves }: Occasion): Stand {
  const [x, y, z] = middleOfAction(plan);
  const corners = plan.pieces.flatMap((piece) => (piece.kind === 'deck' ? piece.outline : []));
  const across = corners.length > 0 ? corners.map((corner) => corner[0]) : [x - 6, x + 6];
  const along = corners.length > 0 ? corners.map((corner) => corner[1]) : [z - 6, z + 6];
  const [left, right, back, front] = [
    Math.min(...across),
    Math.max(...across),
    Math.min(...along),
    Math.max(...along),
  ];
  const metres = (ROOM / 2) * Math.max((right - left) / halves[0], (front - back) / halves[1]);
  const middle: Vec3 = [(left + right) / 2, Math.max(0, y - 1.4), (back + front) / 2];
  // A hair to the south, so that north stays up.
  return { eye: [middle[0], middle[1] + metres, middle[2] + metres * 1e-3], target: middle };
}

/** As high as a person's eye above what is stood on, from the side that one looked from. */
function atEyeLevel({ plan, from }: Occasion): Stand {
  const [x, y, z] = middleOfAction(plan);
  const [east, south] = [from.eye[0] - x, from.eye[2] - z];
  const away = Math.hypot(east, south);
  const metres = Math.min(14, Math.max(5, away));
  const way = away > 0.05 ? [east / away, south / away] : [0, 1];
  const spot: [number, number] = [x + way[0] * metres, z + way[1] * metres];
  const floor = surfaceUnder(plan, spot, { belowMetres: y }).metres;
  return { eye: [spot[0], floor + EYE_METRES, spot[1]], target: [x, Math.min(y, floor + EYE_METRES), z] };
}

/** In the camera's place, the way that it looks; no higher than level, as the walk-round never looks up. */
function fromCamera({ plan, seconds, setup }: Occasion): Stand | null {
  if (!setup) return null;
  const { position, forward } = cameraAt(plan, setup, seconds).pose;
  const level = Math.hypot(forward[0], forward[2]);
  const down = Math.min(0, forward[1]);
  const [east, south] = level > 1e-6 ? [forward[0] / level, forward[2] / level] : [0, -1];
  const flat = Math.sqrt(1 - down * down);
  return {
    eye: position,
    target: [
      position[0] + east * flat * AHEAD_METRES,
      position[1] + down * AHEAD_METRES,
      position[2] + south * flat * AHEAD_METRES,
    ],
  };
}

/** In front of what is chosen, from the side that one looked from, with all of it in the picture. */
function atChosen({ rooms, from, halves }: Occasion): Stand | null {
  if (rooms.length === 0) return null;
  const low = Math.min(...rooms.map(({ lowMetres }) => lowMetres));
  const high = Math.max(...rooms.map(({ highMetres }) => highMetres));
  const ground = rooms.flatMap((room) => room.ground);
  const round = roundUnder({ ground, lowMetres: low }, 0);
  const target: Vec3 = [round.centre[0], (low + high) / 2, round.centre[2]];
  const radius = Math.hypot(round.radiusMetres, (high - low) / 2);
  const metres = Math.max(NEAREST_METRES, (radius * ROOM) / Math.min(halves[0], halves[1]));
  const [east, up, south] = [0, 1, 2].map((axis) => from.eye[axis] - from.target[axis]);
  // Never so flat that what stands between would hide it.
  const way: Vec3 = [east, Math.max(up, LEAST_RISE * Math.hypot(east, south)), south];
  const away = Math.hypot(...way);
  const share = away > 0 ? metres / away : 0;
  return {
    eye: [target[0] + way[0] * share, target[1] + way[1] * share, target[2] + way[2] * share],
    target,
  };
}
