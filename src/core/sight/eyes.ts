import { add, dot, scale, subtract, type Vec3 } from '../form/build/vector';
import type { Camera } from '../optics/types';
import { cornersOf } from './corners';
import { cutPolygon } from './cutting';
import type { PixelRect } from './filling';
import type { Grid } from './grid';
import { type FacedMirror, heightOver, reflected } from './mirrors';
import { meetingOf, rectAround } from './rects';

/** Where lines of sight begin: the eye, or its image behind a mirror, with what a pixel spans a metre away. */
export interface Eye {
  /** 0 for the eye itself, from 1 on for its images, in the order of the mirrors. */
  readonly number: number;
  readonly at: Vec3;
  /** The mirror that shows it; what lies behind that counts for nothing. */
  readonly mirror: FacedMirror | null;
  readonly pixelTangent: number;
  /** The pixels in which it sees anything: all of the grid, or those around the mirror's face. */
  readonly rect: PixelRect;
  /** Four planes through it that hold those pixels between them: normals inwards. */
  readonly sides: readonly Vec3[];
}

/** The planes lie so much outside of the pixels, since corners are rounded. */
const SLACK_PIXELS = 2;

/** The normals of the planes through the lens and the sides of a rectangle of pixels, inwards, in the world. */
function sidesOf({ left, top, right, bottom }: PixelRect, { pose }: Camera, grid: Grid): readonly Vec3[] {
  const across = (column: number): number => (column - grid.axisX) / grid.perTangentX;
  const up = (row: number): number => (grid.axisY - row) / grid.perTangentY;
  const inwards = (way: Vec3, sign: number, tangent: number): Vec3 =>
    add(scale(way, sign), scale(pose.forward, -sign * tangent));
  return [
    inwards(pose.right, 1, across(left - SLACK_PIXELS)),
    inwards(pose.right, -1, across(right + SLACK_PIXELS)),
    inwards(pose.up, 1, up(bottom + SLACK_PIXELS)),
    inwards(pose.up, -1, up(top - SLACK_PIXELS)),
  ];
}

/** The eye of a camera and its images behind those mirrors whose faces it may see. */
export function eyesOf(camera: Camera, grid: Grid, mirrors: readonly FacedMirror[]): readonly Eye[] {
  const at = camera.pose.position;
  const pixelTangent = 1 / Math.min(grid.perTangentX, grid.perTangentY);
  const whole = { left: 0, top: 0, right: grid.width, bottom: grid.height };
  const own = { number: 0, at, mirror: null, pixelTangent, rect: whole, sides: sidesOf(whole, camera, grid) };
  const images = mirrors.flatMap((mirror, k): readonly Eye[] => {
    const rect = heightOver(mirror, at) > 0 ? rectAround(cornersOf(mirror.part), camera, grid) : null;
    if (!rect) return [];
    const sides = sidesOf(rect, camera, grid).map((side) =>
      subtract(side, scale(mirror.normal, 2 * dot(side, mirror.normal))),
    );
    return [{ number: k + 1, at: reflected(at, mirror), mirror, pixelTangent, rect, sides }];
  });
  return [own, ...images];
}

/** The faces of a box as rings of its corners, in the order of `cornersOf`. */
const FACES = [
  [0, 2, 6, 4],
  [1, 3, 7, 5],
  [0, 1, 5, 4],
  [2, 3, 7, 6],
  [0, 1, 3, 2],
  [4, 5, 7, 6],
] as const;

/** A face that is cut, and what a cut leaves of it: each of four planes adds one corner at most. */
let face = new Float64Array(3 * 9);
let remains = new Float64Array(3 * 9);

/** Beyond which planes some corner lay that was asked about last, one bit each. */
let planesCut = 0;

/** Whether all corners lie beyond one and the same of an eye's four planes: then it sees nothing between them. */
export function isBeyond(corners: readonly Vec3[], sides: readonly Vec3[], at: Vec3): boolean {
  let beyondAll = 15;
  planesCut = 0;
  for (const corner of corners) {
    let beyond = 0;
    for (let k = 0; k < 4; k += 1) if (dot(sides[k], corner) < dot(sides[k], at)) beyond |= 1 << k;
    beyondAll &= beyond;
    planesCut |= beyond;
  }
  return beyondAll !== 0;
}

/**
 * The corners of what an eye may see of a box, which is given by its eight corners: of the box, or of the part of it
 * between the eye's four planes. None where nothing of it lies between them.
 */
export function cornersSeen(corners: readonly Vec3[], { at, sides }: Eye): readonly Vec3[] {
  if (isBeyond(corners, sides, at)) return [];
  const beyondAny = planesCut;
  if (beyondAny === 0) return corners;
  const seen: Vec3[] = [];
  for (const ring of FACES) {
    let count = 4;
    for (let k = 0; k < 4; k += 1) face.set(corners[ring[k]], 3 * k);
    for (let k = 0; k < 4 && count > 0; k += 1) {
      if ((beyondAny & (1 << k)) === 0) continue;
      const [a, b, c] = sides[k];
      count = cutPolygon(face, count, a, b, c, dot(sides[k], at), remains);
      [face, remains] = [remains, face];
    }
    for (let k = 0; k < 3 * count; k += 3) seen.push([face[k], face[k + 1], face[k + 2]]);
  }
  return seen;
}

/** The pixels around what an eye sees of a box that is given by its corners; null where it is out of the picture. */
export function rectFor(
  corners: readonly Vec3[],
  { mirror, rect }: Eye,
  camera: Camera,
  grid: Grid,
): PixelRect | null {
  const around = rectAround(
    mirror ? corners.map((corner) => reflected(corner, mirror)) : corners,
    camera,
    grid,
  );
  return around && meetingOf(around, rect);
}
