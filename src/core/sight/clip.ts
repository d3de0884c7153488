/** Nothing nearer to the entrance pupil than this is seen, metres along the axis. */
export const NEAREST_METRES = 0.01;
/** What is no farther than this from a mirror's plane lies in it, metres. */
export const MIRROR_GAP_METRES = 1e-6;

/** A face has at most so many corners: a quadrangle that is clipped on six sides. */
export const MOST_CORNERS = 12;

/** The face in hand, four numbers a corner: [x·depth, y·depth, depth, side]; and where the next cut of it goes. */
export const clipping = {
  face: new Float64Array(4 * MOST_CORNERS),
  spare: new Float64Array(4 * MOST_CORNERS),
};

/** One step of Sutherland–Hodgman: keeps what has a·p ≥ bound, with p = [x, y, depth, side]; how many corners are left. */
function keepSide(count: number, a0: number, a1: number, a2: number, a3: number, bound: number): number {
  const { face, spare } = clipping;
  let isWhole = true;
  for (let p = 0; p < 4 * count; p += 4)
    if (a0 * face[p] + a1 * face[p + 1] + a2 * face[p + 2] + a3 * face[p + 3] - bound < 0) isWhole = false;
  if (isWhole) return count;
  let kept = 0;
  for (let k = 0; k < count; k += 1) {
    const p = k * 4;
    const q = ((k + 1) % count) * 4;
    const atP = a0 * face[p] + a1 * face[p + 1] + a2 * face[p + 2] + a3 * face[p + 3] - bound;
    const atQ = a0 * face[q] + a1 * face[q + 1] + a2 * face[q + 2] + a3 * face[q + 3] - bound;
    if (atP >= 0) {
      for (let c = 0; c < 4; c += 1) spare[4 * kept + c] = face[p + c];
      kept += 1;
    }
    if (atP >= 0 !== atQ >= 0) {
      const share = atP / (atP - atQ);
      for (let c = 0; c < 4; c += 1) spare[4 * kept + c] = face[p + c] + (face[q + c] - face[p + c]) * share;
      kept += 1;
    }
  }
  clipping.face = spare;
  clipping.spare = face;
  return kept;
}

/**
 * Clips the flat face in hand to the near plane, to ±guard pixels and, where asked, to the positive side of a mirror;
 * what is left of it is in hand then.
 * @param count its corners
 * @returns how many corners are left
 */
export function clipFace(count: number, guard: number, bySide: boolean): number {
  let left = keepSide(count, 0, 0, 1, 0, NEAREST_METRES);
  left = keepSide(left, 1, 0, guard, 0, 0);
  left = keepSide(left, -1, 0, guard, 0, 0);
  left = keepSide(left, 0, 1, guard, 0, 0);
  left = keepSide(left, 0, -1, guard, 0, 0);
  return bySide ? keepSide(left, 0, 0, 0, 1, 0) : left;
}
