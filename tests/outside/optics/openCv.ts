import { createRequire } from 'node:module';

interface Mat {
  readonly data64F: Float64Array;
  delete(): void;
}

/** The little of OpenCV for JavaScript that the tests call. */
interface OpenCv {
  readonly Mat?: new () => Mat;
  readonly CV_64F: number;
  readonly CV_64FC3: number;
  matFromArray(rows: number, columns: number, type: number, values: readonly number[]): Mat;
  Rodrigues(source: Mat, target: Mat, jacobian: Mat): void;
  projectPoints(points: Mat, rvec: Mat, tvec: Mat, matrix: Mat, lens: Mat, image: Mat, jacobian: Mat): void;
  onRuntimeInitialized?: () => void;
}

// The module has a `then` of its own that hands itself over again, so whoever awaits it, as an import does, waits for ever.
const cv: OpenCv = createRequire(import.meta.url)('@techstark/opencv-js');

/** Waits until OpenCV's runtime stands; before that nothing else here may be called. */
export async function openCvStands(): Promise<void> {
  if (cv.Mat) return;
  await new Promise<void>((resolve) => {
    cv.onRuntimeInitialized = () => resolve();
  });
}

/** Makes matrices of doubles: a column, a 3 × 3 from its rows, a list of points, and one to be filled. */
interface Making {
  readonly column: (values: readonly number[]) => Mat;
  readonly square: (rows: readonly number[]) => Mat;
  readonly points: (xyz: readonly number[]) => Mat;
  readonly empty: () => Mat;
}

/** Runs with matrices, and lets their memory go afterwards. */
function withMats<Result>(run: (making: Making) => Result): Result {
  const made: Mat[] = [];
  const keep = (mat: Mat): Mat => {
    made.push(mat);
    return mat;
  };
  try {
    return run({
      column: (values) => keep(cv.matFromArray(values.length, 1, cv.CV_64F, values)),
      square: (rows) => keep(cv.matFromArray(3, 3, cv.CV_64F, rows)),
      points: (xyz) => keep(cv.matFromArray(xyz.length / 3, 1, cv.CV_64FC3, xyz)),
      empty: () => {
        if (!cv.Mat) throw new Error('OpenCV was called before its runtime stood');
        return keep(new cv.Mat());
      },
    });
  } finally {
    for (const mat of made) mat.delete();
  }
}

/** Rows of the matrix of a rotation vector. */
export function rodrigues(rotation: readonly number[]): number[] {
  return withMats(({ column, empty }) => {
    const rows = empty();
    cv.Rodrigues(column(rotation), rows, empty());
    return Array.from(rows.data64F);
  });
}

/** The rotation vector of a matrix given by its rows. */
export function rotationOf(rows: readonly number[]): number[] {
  return withMats(({ square, empty }) => {
    const rotation = empty();
    cv.Rodrigues(square(rows), rotation, empty());
    return Array.from(rotation.data64F);
  });
}

/** Pixels x, y of points x, y, z in OpenCV's coordinates; coefficients k1 k2 p1 p2 k3. */
export function projectPoints(
  xyz: readonly number[],
  rotation: readonly number[],
  move: readonly number[],
  { fx, fy, cx, cy }: { readonly fx: number; readonly fy: number; readonly cx: number; readonly cy: number },
  coefficients: readonly number[],
): number[] {
  return withMats(({ points, column, square, empty }) => {
    const image = empty();
    cv.projectPoints(
      points(xyz),
      column(rotation),
      column(move),
      square([fx, 0, cx, 0, fy, cy, 0, 0, 1]),
      column(coefficients),
      image,
      empty(),
    );
    return Array.from(image.data64F);
  });
}
