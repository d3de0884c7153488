import type { Corner } from './triangulate';

/** An edge from its lower z to its higher one, and the ring that it belongs to. */
interface Edge {
  readonly from: Corner;
  readonly to: Corner;
  readonly ring: number;
}

/** A piece of a slab between two edges, [x at the low z, x at the high z] of each. */
interface Piece {
  readonly slab: number;
  readonly left: readonly [number, number];
  readonly right: readonly [number, number];
}

/** Level places of triangles that face up, [x, z] of three corners each. */
export type Pieces = readonly (readonly [Corner, Corner, Corner])[];

/** Slabs, or pieces of them, thinner than this hold nothing, metres. */
const THIN_METRES = 1e-9;

/** Where an edge is at a z; exactly its corner at its ends. */
function alongEdge({ from, to }: Edge, z: number): number {
  if (z <= from[1]) return from[0];
  if (z >= to[1]) return to[0];
  return from[0] + (to[0] - from[0]) * ((z - from[1]) / (to[1] - from[1]));
}

function edgesOf(rings: readonly (readonly Corner[])[]): Edge[] {
  return rings.flatMap((outline, ring) =>
    outline.flatMap((corner, k): Edge[] => {
      const next = outline[(k + 1) % outline.length];
      if (corner[1] === next[1]) return [];
      return [corner[1] < next[1] ? { from: corner, to: next, ring } : { from: next, to: corner, ring }];
    }),
  );
}

/** The z at which two edges cross inside of both; null where they do not. */
function crossing(a: Edge, b: Edge): number | null {
  const low = Math.max(a.from[1], b.from[1]);
  const high = Math.min(a.to[1], b.to[1]);
  if (!(low < high)) return null;
  const below = alongEdge(a, low) - alongEdge(b, low);
  const above = alongEdge(a, high) - alongEdge(b, high);
  if (below * above >= 0) return null;
  const z = low + (high - low) * (below / (below - above));
  return z > low && z < high ? z : null;
}

/** All z at which something begins, ends or crosses, from low to high; null where crossings are more than `most`. */
function levelsOf(
  rings: readonly (readonly Corner[])[],
  edges: readonly Edge[],
  most: number,
): number[] | null {
  const levels = rings.flatMap((outline) => outline.map(([, z]) => z));
  const byStart = [...edges].sort((a, b) => a.from[1] - b.from[1]);
  let crossings = 0;
  for (let k = 0; k < byStart.length; k += 1) {
    for (let n = k + 1; n < byStart.length && byStart[n].from[1] < byStart[k].to[1]; n += 1) {
      const z = crossing(byStart[k], byStart[n]);
      if (z === null) continue;
      crossings += 1;
      if (crossings > most) return null;
      levels.push(z);
    }
  }
  return levels.sort((a, b) => a - b).filter((z, k, all) => k === 0 || z - all[k - 1] > THIN_METRES);
}

/** The pieces of one slab by kind: neighbours of one kind are one piece. */
function piecesOf<Kind>(
  slab: number,
  [low, high]: readonly [number, number],
  edges: readonly Edge[],
  inside: boolean[],
  kindOf: (inside: readonly boolean[]) => Kind | null,
  take: (kind: Kind, piece: Piece) => void,
): void {
  const middle = (low + high) / 2;
  const across = edges
    .map((edge) => ({ edge, x: alongEdge(edge, middle) }))
    .sort((a, b) => a.x - b.x || a.edge.ring - b.edge.ring);
  inside.fill(false);
  let kind: Kind | null = null;
  let left: readonly [number, number] = [0, 0];
  for (const [k, { edge, x }] of across.entries()) {
    inside[edge.ring] = !inside[edge.ring];
    // Edges that lie on one another are passed together.
    if (k + 1 < across.length && across[k + 1].x - x <= THIN_METRES) continue;
    const next = kindOf(inside);
    if (next === kind) continue;
    const here = [alongEdge(edge, low), alongEdge(edge, high)] as const;
    if (kind !== null) {
      const right = [Math.max(here[0], left[0]), Math.max(here[1], left[1])] as const;
      take(kind, { slab, left, right });
    }
    kind = next;
    left = here;
  }
}

/** The ends of a piece at one of its two levels, and the corners of its neighbours in between. */
function chain(cuts: readonly number[], from: number, to: number, z: number): readonly Corner[] {
  const between = cuts.filter((x) => x > from + THIN_METRES && x < to - THIN_METRES);
  const xs = to - from > THIN_METRES ? [from, ...between, to] : [from];
  return xs.map((x): Corner => [x, z]);
}

/** Triangles between two level chains that both run to the right. */
function between(low: readonly Corner[], high: readonly Corner[]): Pieces {
  const found: (readonly [Corner, Corner, Corner])[] = [];
  for (let i = 0, k = 0; i + 1 < low.length || k + 1 < high.length; ) {
    const stepsLow =
      k + 1 >= high.length ||
      (i + 1 < low.length && low[i][0] + low[i + 1][0] <= high[k][0] + high[k + 1][0]);
    if (stepsLow) {
      found.push([low[i], high[k], low[i + 1]]);
      i += 1;
    } else {
      found.push([low[i], high[k], high[k + 1]]);
      k += 1;
    }
  }
  return found;
}

/**
 * Cuts the plane along the edges of rings and sorts the pieces by kind: `kindOf` says of what kind a place is by which of
 * the rings it lies in, by the even-odd rule, null for none. Rings may cross each other and themselves. The plane is
 * taken slab by slab, from one z where anything begins, ends or crosses to the next; neighbours share their corners, so
 * that nothing shows between them. Null where edges cross more often than `mostCrossings`.
 */
export function cutByRings<Kind>(
  rings: readonly (readonly Corner[])[],
  kindOf: (inside: readonly boolean[]) => Kind | null,
  mostCrossings: number,
): ReadonlyMap<Kind, Pieces> | null {
  const edges = edgesOf(rings);
  const levels = levelsOf(rings, edges, mostCrossings);
  if (!levels) return null;
  const pieces: { readonly kind: Kind; readonly piece: Piece }[] = [];
  const cuts: number[][] = levels.map(() => []);
  const inside = rings.map(() => false);
  const waiting = [...edges].sort((a, b) => b.from[1] - a.from[1]);
  let active: Edge[] = [];
  for (let slab = 0; slab + 1 < levels.length; slab += 1) {
    const [low, high] = [levels[slab], levels[slab + 1]];
    const middle = (low + high) / 2;
    active = active.filter(({ to }) => to[1] > middle);
    for (let edge = waiting.at(-1); edge && edge.from[1] < middle; edge = waiting.at(-1)) {
      waiting.pop();
      if (edge.to[1] > middle) active.push(edge);
    }
    piecesOf(slab, [low, high], active, inside, kindOf, (kind, piece) => {
      pieces.push({ kind, piece });
      cuts[slab].push(piece.left[0], piece.right[0]);
      cuts[slab + 1].push(piece.left[1], piece.right[1]);
    });
  }
  for (const cut of cuts) {
    cut.sort((a, b) => a - b);
    const distinct = cut.filter((x, k) => k === 0 || x - cut[k - 1] > THIN_METRES);
    cut.splice(0, cut.length, ...distinct);
  }
  const found = new Map<Kind, (readonly [Corner, Corner, Corner])[]>();
  for (const { kind, piece } of pieces) {
    const { slab, left, right } = piece;
    const triangles = between(
      chain(cuts[slab], left[0], right[0], levels[slab]),
      chain(cuts[slab + 1], left[1], right[1], levels[slab + 1]),
    );
    const known = found.get(kind);
    if (known) known.push(...triangles);
    else found.set(kind, [...triangles]);
  }
  return found;
}
