import type { Piece } from '../../plan/schema/pieces';
import { modelShapes, modelSize } from './modelShapes';
import { modelHeld } from './modelShelf';

type Model = Extract<Piece, { kind: 'model' }>;
/** [x, z] in the model's own frame, metres: its foot's middle at the origin. */
type Place = readonly [number, number];

/** Where a plan cuts: so high above the deck, as building plans are drawn; common practice, no source. */
const CUT_METRES = 1.1;
/** Ends nearer than this meet, metres. */
const JOIN_METRES = 0.004;
/** A corner that lies nearer than this to the line past it is left out, metres. */
const SMOOTH_METRES = 0.01;
/** Shorter runs than this are the dirt of a scan, metres. */
const SHORTEST_METRES = 0.04;

const keptSections = new WeakMap<
  readonly unknown[],
  { readonly height: number; readonly runs: readonly (readonly Place[])[] }
>();

/** Where the plan cuts a model, above its own foot: at 1.1 m above the deck, else, where it is lower, half way up. */
export function cutHeight(model: Model): number {
  const [, height] = modelSize(model);
  const wanted = CUT_METRES - model.at[1];
  return wanted > 0 && wanted < height ? wanted : height / 2;
}

/**
 * The lines in which a level plane cuts a model's surfaces, in its own frame, as runs of corners; null while the
 * model's file is not at hand. Remembered for a height, so that moving and turning cost nothing.
 */
export function modelSection(model: Model): readonly (readonly Place[])[] | null {
  const held = modelHeld(model.asset.sha256);
  if (!held) return null;
  const parts = modelShapes(held, model);
  const height = cutHeight(model);
  const kept = keptSections.get(parts);
  if (kept?.height === height) return kept.runs;
  const runs = joined(parts.flatMap(({ shape }) => cut(shape.positions, shape.indices, height)))
    .map(smoothed)
    .filter((run) => lengthOf(run) >= SHORTEST_METRES);
  keptSections.set(parts, { height, runs });
  return runs;
}

/** The stretches in which triangles pass a height. */
function cut(p: Float32Array, indices: Uint32Array, height: number): [Place, Place][] {
  const stretches: [Place, Place][] = [];
  for (let k = 0; k < indices.length; k += 3) {
    const corners = [indices[k] * 3, indices[k + 1] * 3, indices[k + 2] * 3];
    const above = corners.map((corner) => p[corner + 1] > height);
    if (above[0] === above[1] && above[1] === above[2]) continue;
    const ends: Place[] = [];
    for (let c = 0; c < 3; c += 1) {
      const [from, to] = [corners[c], corners[(c + 1) % 3]];
      if (p[from + 1] > height === p[to + 1] > height) continue;
      const share = (height - p[from + 1]) / (p[to + 1] - p[from + 1]);
      ends.push([p[from] + (p[to] - p[from]) * share, p[from + 2] + (p[to + 2] - p[from + 2]) * share]);
    }
    stretches.push([ends[0], ends[1]]);
  }
  return stretches;
}

const keyOf = ([x, z]: Place): string => `${Math.round(x / JOIN_METRES)} ${Math.round(z / JOIN_METRES)}`;

/** Stretches put end to end into runs. */
function joined(stretches: readonly (readonly [Place, Place])[]): Place[][] {
  const ends = new Map<string, number[]>();
  stretches.forEach((stretch, index) => {
    for (const end of stretch) {
      const key = keyOf(end);
      const list = ends.get(key);
      if (list) list.push(index);
      else ends.set(key, [index]);
    }
  });
  const used = new Uint8Array(stretches.length);
  const goOn = (run: Place[]): void => {
    for (;;) {
      const key = keyOf(run[run.length - 1]);
      const next = ends.get(key)?.find((index) => used[index] === 0);
      if (next === undefined) return;
      used[next] = 1;
      const [a, b] = stretches[next];
      run.push(keyOf(a) === key ? b : a);
    }
  };
  return stretches.flatMap(([a, b], index) => {
    if (used[index] === 1) return [];
    used[index] = 1;
    const run = [a, b];
    goOn(run);
    run.reverse();
    goOn(run);
    return [run];
  });
}

const apart = ([ax, az]: Place, [bx, bz]: Place): number =>
  Math.sqrt((bx - ax) * (bx - ax) + (bz - az) * (bz - az));
const lengthOf = (run: readonly Place[]): number =>
  run.slice(1).reduce((sum, place, k) => sum + apart(place, run[k]), 0);

/** The run without the corners that it hardly bends at (Douglas and Peucker's way; common practice, no source). */
function smoothed(run: readonly Place[]): readonly Place[] {
  const kept = new Uint8Array(run.length);
  kept[0] = 1;
  kept[run.length - 1] = 1;
  const open: [number, number][] = [[0, run.length - 1]];
  for (let next = open.pop(); next; next = open.pop()) {
    const [from, to] = next;
    let farthest = -1;
    let most = SMOOTH_METRES;
    for (let k = from + 1; k < to; k += 1) {
      const off = awayFrom(run[k], run[from], run[to]);
      if (off <= most) continue;
      most = off;
      farthest = k;
    }
    if (farthest < 0) continue;
    kept[farthest] = 1;
    open.push([from, farthest], [farthest, to]);
  }
  return run.filter((_, k) => kept[k] === 1);
}

function awayFrom(p: Place, a: Place, b: Place): number {
  const [dx, dz] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dz * dz;
  const share = square > 0 ? Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dz) / square)) : 0;
  const [x, z] = [p[0] - a[0] - dx * share, p[1] - a[1] - dz * share];
  return Math.sqrt(x * x + z * z);
}
