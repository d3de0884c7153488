import { createRequire } from 'node:module';
import type { PNG } from 'pngjs';

interface Mat {
  readonly data64F: Float64Array;
  readonly data32F: Float32Array;
  delete(): void;
}

interface MatVector {
  push_back(mat: Mat): void;
  delete(): void;
}

/** The little of OpenCV for JavaScript that finds corners and solves for cameras. */
interface OpenCv {
  readonly Mat?: new () => Mat;
  readonly MatVector: new () => MatVector;
  readonly Size: new (width: number, height: number) => object;
  readonly TermCriteria: new (type: number, most: number, least: number) => object;
  readonly CV_8UC1: number;
  readonly CV_64F: number;
  readonly CV_32FC2: number;
  readonly CV_32FC3: number;
  matFromArray(rows: number, columns: number, type: number, values: ArrayLike<number>): Mat;
  goodFeaturesToTrack(image: Mat, corners: Mat, most: number, quality: number, leastApart: number): void;
  Rodrigues(source: Mat, target: Mat): void;
  solvePnP(points: Mat, pixels: Mat, matrix: Mat, lens: Mat, rotation: Mat, move: Mat): boolean;
  calibrateCameraExtended(
    points: MatVector,
    pixels: MatVector,
    size: object,
    matrix: Mat,
    lens: Mat,
    rotations: MatVector,
    moves: MatVector,
    ...rest: readonly [Mat, Mat, Mat, number, object]
  ): number;
  onRuntimeInitialized?: () => void;
}

export type Pixel = readonly [x: number, y: number];
type Place = readonly [x: number, y: number, z: number];

/** A point of the set and where it lies in the picture, in pixels from its upper left corner. */
export interface Sighting {
  readonly point: Place;
  readonly pixel: Pixel;
}

/** A camera matrix, and the lens's k1 k2 p1 p2 k3. */
export interface Optics {
  readonly fx: number;
  readonly fy: number;
  readonly cx: number;
  readonly cy: number;
  readonly lens: readonly number[];
}

// The module has a `then` of its own that hands itself over again, so whoever awaits it, as an import does, waits for ever.
const cv: OpenCv = createRequire(import.meta.url)('@techstark/opencv-js');

/** Waits until OpenCV's runtime stands; before that nothing else here may be called. */
export async function cornersStand(): Promise<void> {
  if (cv.Mat) return;
  await new Promise<void>((resolve) => {
    cv.onRuntimeInitialized = () => resolve();
  });
}

/** Runs with things of OpenCV's, and lets their memory go afterwards. */
function keeping<Result>(
  run: (keep: <Thing extends { delete(): void }>(thing: Thing) => Thing) => Result,
): Result {
  const kept: { delete(): void }[] = [];
  try {
    return run((thing) => {
      kept.push(thing);
      return thing;
    });
  } finally {
    for (const thing of kept) thing.delete();
  }
}

function emptyMat(): Mat {
  if (!cv.Mat) throw new Error('OpenCV was called before its runtime stood');
  return new cv.Mat();
}

/** A picture as one number a pixel, 0..1. */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly values: Float64Array;
}

export function greyOf({ data, width, height }: PNG): Grey {
  const values = Float64Array.from({ length: width * height }, (_, k) => data[4 * k + 1] / 255);
  return { width, height, values };
}

/** Corners that OpenCV finds in a picture, to whole pixels, in pixels from its upper left corner. */
export function cornersIn({ width, height, values }: Grey): Pixel[] {
  return keeping((keep) => {
    const image = keep(
      cv.matFromArray(
        height,
        width,
        cv.CV_8UC1,
        values.map((value) => Math.round(value * 255)),
      ),
    );
    const found = keep(emptyMat());
    cv.goodFeaturesToTrack(image, found, 4000, 0.02, 5);
    const { data32F } = found;
    return Array.from({ length: data32F.length / 2 }, (_, k) => [
      data32F[2 * k] + 0.5,
      data32F[2 * k + 1] + 0.5,
    ]);
  });
}

/**
 * Where the edges around a corner meet, to a fraction of a pixel: every gradient nearby is square to the way to it,
 * which is solved by least squares until it stays (as OpenCV's own refinement has it, which its build for JavaScript
 * leaves out). Pixels from the picture's upper left corner: the middle of the first is at one half.
 */
export function refined({ width, values }: Grey, start: Pixel, reach: number): Pixel {
  const sample = (x: number, y: number): number => {
    const [left, top] = [Math.floor(x - 0.5), Math.floor(y - 0.5)];
    const [right, down] = [x - 0.5 - left, y - 0.5 - top];
    const at = (dx: number, dy: number) => values[(top + dy) * width + left + dx];
    return (
      (at(0, 0) * (1 - right) + at(1, 0) * right) * (1 - down) +
      (at(0, 1) * (1 - right) + at(1, 1) * right) * down
    );
  };
  let [x, y] = start;
  for (let step = 0; step < 30; step += 1) {
    let [a, b, c, p, q] = [0, 0, 0, 0, 0];
    for (let dy = -reach; dy <= reach; dy += 1) {
      for (let dx = -reach; dx <= reach; dx += 1) {
        const gx = (sample(x + dx + 1, y + dy) - sample(x + dx - 1, y + dy)) / 2;
        const gy = (sample(x + dx, y + dy + 1) - sample(x + dx, y + dy - 1)) / 2;
        const weight = Math.exp(-(dx * dx + dy * dy) / (reach * reach));
        a += weight * gx * gx;
        b += weight * gx * gy;
        c += weight * gy * gy;
        p += weight * (gx * gx * dx + gx * gy * dy);
        q += weight * (gx * gy * dx + gy * gy * dy);
      }
    }
    const determinant = a * c - b * b;
    const [moveX, moveY] = [(c * p - b * q) / determinant, (a * q - b * p) / determinant];
    [x, y] = [x + moveX, y + moveY];
    if (Math.hypot(moveX, moveY) < 1e-4) break;
  }
  return [x, y];
}

const pointsOf = (seen: readonly Sighting[]) =>
  cv.matFromArray(
    seen.length,
    1,
    cv.CV_32FC3,
    seen.flatMap(({ point }) => point),
  );
const pixelsOf = (seen: readonly Sighting[]) =>
  cv.matFromArray(
    seen.length,
    1,
    cv.CV_32FC2,
    seen.flatMap(({ pixel }) => pixel),
  );
const matrixOf = ({ fx, fy, cx, cy }: Optics) =>
  cv.matFromArray(3, 3, cv.CV_64F, [fx, 0, cx, 0, fy, cy, 0, 0, 1]);

/** Rows of the rotation and the move that bring the points before the camera, x right, y down, z forward. */
export function poseOf(
  seen: readonly Sighting[],
  optics: Optics,
): { readonly rows: readonly number[]; readonly move: Place } {
  return keeping((keep) => {
    const [rotation, move, rows] = [keep(emptyMat()), keep(emptyMat()), keep(emptyMat())];
    const lens = keep(cv.matFromArray(5, 1, cv.CV_64F, optics.lens));
    const solved = cv.solvePnP(
      keep(pointsOf(seen)),
      keep(pixelsOf(seen)),
      keep(matrixOf(optics)),
      lens,
      rotation,
      move,
    );
    if (!solved) throw new Error('OpenCV found no pose');
    cv.Rodrigues(rotation, rows);
    const [x, y, z] = move.data64F;
    return { rows: Array.from(rows.data64F), move: [x, y, z] };
  });
}

/** Begin with the matrix given; OpenCV's own number. */
const USE_GUESS = 1;
/** The axis stays in the middle of the gate. */
const FIX_MIDDLE = 4;
const FIX_K1_K2_K3 = 32 + 64 + 128;
const ZERO_TANGENT = 8;
const FIX_K3 = 128;
const COUNT_AND_EPS = 3;

/**
 * The camera matrix and lens that points at different depths were seen with, solved for from a guess; `bends` when the
 * lens's k1 k2 p1 p2 are asked too. And the mean miss, pixels.
 */
export function calibrated(
  seen: readonly Sighting[],
  guess: Optics,
  [width, height]: Pixel,
  bends: boolean,
): Optics & { readonly missPixels: number } {
  return keeping((keep) => {
    const [points, pixels] = [keep(new cv.MatVector()), keep(new cv.MatVector())];
    points.push_back(keep(pointsOf(seen)));
    pixels.push_back(keep(pixelsOf(seen)));
    const matrix = keep(matrixOf(guess));
    const lens = keep(cv.matFromArray(5, 1, cv.CV_64F, [0, 0, 0, 0, 0]));
    const missPixels = cv.calibrateCameraExtended(
      points,
      pixels,
      new cv.Size(width, height),
      matrix,
      lens,
      keep(new cv.MatVector()),
      keep(new cv.MatVector()),
      keep(emptyMat()),
      keep(emptyMat()),
      keep(emptyMat()),
      USE_GUESS + FIX_MIDDLE + (bends ? FIX_K3 : FIX_K1_K2_K3 + ZERO_TANGENT),
      new cv.TermCriteria(COUNT_AND_EPS, 200, 1e-10),
    );
    const [fx, , cx, , fy, cy] = matrix.data64F;
    return { fx, fy, cx, cy, lens: Array.from(lens.data64F), missPixels };
  });
}
