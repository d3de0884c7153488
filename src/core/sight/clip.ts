/** Nothing nearer to the entrance pupil than this is seen, metres along the axis. */
export const NEAREST_METRES = 0.01;
/** What is no farther than this from a mirror's plane lies in it, metres. */
export const MIRROR_GAP_METRES = 1e-6;

const first: number[] = [];
const second: number[] = [];

/** One step of Sutherland–Hodgman: keeps what has a·p ≥ bound, with p = [x, y, depth, side]. */
function keepSide(
  from: number[],
  to: number[],
  a0: number,
  a1: number,
  a2: number,
  a3: number,
  bound: number,
): void {
  to.length = 0;
  const count = from.length / 4;
  for (let k = 0; k < count; k += 1) {
    const p = k * 4;
    const q = ((k + 1) % count) * 4;
    const atP = a0 * from[p] + a1 * from[p + 1] + a2 * from[p + 2] + a3 * from[p + 3] - bound;
    const atQ = a0 * from[q] + a1 * from[q + 1] + a2 * from[q + 2] + a3 * from[q + 3] - bound;
    if (atP >= 0) to.push(from[p], from[p + 1], from[p + 2], from[p + 3]);
    if (atP >= 0 !== atQ >= 0) {
      const share = atP / (atP - atQ);
      for (let c = 0; c < 4; c += 1) to.push(from[p + c] + (from[q + c] - from[p + c]) * share);
    }
  }
}

/**
 * Clips a flat face given as [x·depth, y·depth, depth, side] of each corner to the near plane, to ±guard pixels and,
 * where asked, to the positive side of a mirror. The result is a scratch list, valid until the next call.
 */
export function clipFace(corners: readonly number[], guard: number, bySide: boolean): readonly number[] {
  first.length = 0;
  for (const each of corners) first.push(each);
  keepSide(first, second, 0, 0, 1, 0, NEAREST_METRES);
  keepSide(second, first, 1, 0, guard, 0, 0);
  keepSide(first, second, -1, 0, guard, 0, 0);
  keepSide(second, first, 0, 1, guard, 0, 0);
  keepSide(first, second, 0, -1, guard, 0, 0);
  if (!bySide) return second;
  keepSide(second, first, 0, 0, 0, 1, 0);
  return first;
}
