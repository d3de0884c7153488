import { halfHeadMetres, LANDMARKS, type Landmark, landmarksAt } from '../form/figure/landmarks';
import { type Projected, projectPoint } from '../optics/project';
import type { Camera } from '../optics/types';
import type { Performer } from '../plan/schema/cast';
import type { Plan } from '../plan/schema/plan';

/** Sizes of a shot, from near to far, by where the lower frame line cuts the figure. */
export const SHOT_SIZES = [
  'extreme close-up',
  'close-up',
  'medium close-up',
  'mid shot',
  'cowboy',
  'medium long shot',
  'full shot',
  'long shot',
] as const;
export type ShotSize = (typeof SHOT_SIZES)[number];

/** How a performer stands in a frame at an instant. Places and shares are in 0..1 of the frame, from its left and top. */
export interface Framing {
  /** Null while no part of the head is in frame. */
  readonly size: ShotSize | null;
  readonly eyes: readonly [x: number, y: number];
  /** From the upper frame line down to the crown, as a share of the frame's height; negative when the crown is cut. */
  readonly headroom: number;
  /** From crown to chin as a share of the frame's height. */
  readonly headHeight: number;
  /** Whether the whole head is inside the frame line. */
  readonly held: boolean;
  /** Whether any of the landmarks of the body is, so that an insert of hands before a chest has somebody in it. */
  readonly inFrame: boolean;
}

/** A whole figure this much of the frame's height or more is a full shot, a smaller one a long shot. Source: common practice, no source */
const FULL_FROM = 0.4;

/**
 * Up to which place along the landmarks, crown to floor, the lower frame line makes which size: half way between one
 * usual cut (tie knot, breast pocket, waist, middle of the thigh) and the next; above the chin it is extreme. Knees
 * and shins are called a medium long shot, which is common practice.
 *
 * Source: [framing-cuts]
 */
const CUTS: readonly (readonly [place: number, size: ShotSize])[] = [
  [placeOf('chin'), 'extreme close-up'],
  [placeOf('tie knot') + 0.5, 'close-up'],
  [placeOf('breast') + 0.5, 'medium close-up'],
  [placeOf('waist') + 0.5, 'mid shot'],
  [placeOf('middle of the thigh') + 0.5, 'cowboy'],
  [placeOf('floor'), 'medium long shot'],
];

function placeOf(landmark: Landmark): number {
  return LANDMARKS.indexOf(landmark);
}

/** Where along the landmarks the lower frame line falls: whole numbers are landmarks; null when all of it is above the line. */
function cutPlace(heights: readonly number[]): number | null {
  for (let k = 1; k < heights.length; k += 1) {
    const [above, below] = [heights[k - 1], heights[k]];
    if (above <= 1 && below > 1) return k - 1 + (1 - above) / (below - above);
  }
  return null;
}

function sizeOf(heights: readonly number[]): ShotSize {
  const cut = cutPlace(heights);
  if (cut === null) {
    return heights[heights.length - 1] - heights[0] >= FULL_FROM ? 'full shot' : 'long shot';
  }
  return CUTS.find(([place]) => cut < place)?.[1] ?? 'medium long shot';
}

const isIn = ({ x, y }: Projected): boolean => x >= 0 && x <= 1 && y >= 0 && y <= 1;

/**
 * How a camera frames a performer at an instant of the action's clock; null for nobody there, or anyone of whom a part
 * lies behind the camera.
 */
export const framingOf = (
  camera: Camera,
  plan: Plan,
  performer: Performer,
  seconds: number,
): Framing | null => framingFrom(camera, performer, landmarksAt(performer, plan, seconds));

/** The same for whoever knows where the landmarks of the performer's body are then; null for nobody there. */
export function framingFrom(
  camera: Camera,
  performer: Performer,
  marks: ReturnType<typeof landmarksAt>,
): Framing | null {
  if (!marks) return null;
  const places: Projected[] = [];
  for (const landmark of LANDMARKS) {
    const place = projectPoint(camera, marks[landmark]);
    if (!place) return null;
    places.push(place);
  }
  const [crown, eyes, chin] = places;
  const half = halfHeadMetres(performer) / (2 * eyes.depth * camera.frame.tanHalfWidth);
  const beside = (x: number): boolean => x - half >= 0 && x + half <= 1;
  const heights = places.map(({ y }) => y);
  return {
    size: [crown, eyes, chin].some(isIn) ? sizeOf(heights) : null,
    eyes: [eyes.x, eyes.y],
    headroom: crown.y,
    headHeight: chin.y - crown.y,
    held: crown.y >= 0 && chin.y <= 1 && [crown, eyes, chin].every(({ x }) => beside(x)),
    inFrame: places.some(isIn),
  };
}
