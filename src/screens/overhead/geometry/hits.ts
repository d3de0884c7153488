import { distance, isInside, nearestOnSegment, type Spot } from './spots';

/** What can be hit on the sheet: its outline in pixels of the pane, and what it stands for. */
export interface HitShape<Target> {
  readonly target: Target;
  readonly outline: readonly Spot[];
  /** Whether the outline is closed and its inside counts. */
  readonly closed: boolean;
  /** A long thin thing is reached from nearer by than a small one: it has area enough along its length. */
  readonly thin: boolean;
  /** It lies under everything: whatever is within reach goes first, however small it is itself. */
  readonly under?: boolean;
}

/** Above this many square pixels a thing lets smaller ones near the pointer go first. */
const LARGE = 64 * 64;

/**
 * The thing under or nearest to a point: within `reach` pixels of a small thing (half the side of the least area to
 * hit), within a third of that of a thin one. What lies upon a large thing is preferred to the large thing.
 */
export function hitAt<Target>(
  shapes: readonly HitShape<Target>[],
  at: Spot,
  reach: number,
): HitShape<Target> | null {
  let best: HitShape<Target> | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  for (const shape of shapes) {
    const away = distanceTo(shape, at);
    if (away > (shape.thin ? reach / 3 : reach)) continue;
    const cost =
      away +
      (shape.thin ? reach * 0.6 : 0) +
      (shape.under || (shape.closed && areaOf(shape.outline) > LARGE) ? reach : 0);
    // Later shapes lie on top: they win a tie.
    if (cost > bestCost) continue;
    best = shape;
    bestCost = cost;
  }
  return best;
}

function distanceTo({ outline, closed }: HitShape<unknown>, at: Spot): number {
  if (outline.length === 0) return Number.POSITIVE_INFINITY;
  if (closed && isInside(at, outline)) return 0;
  let nearest = distance(at, outline[0]);
  const count = closed ? outline.length : outline.length - 1;
  for (let i = 0; i < count; i += 1) {
    nearest = Math.min(
      nearest,
      distance(at, nearestOnSegment(at, outline[i], outline[(i + 1) % outline.length])),
    );
  }
  return nearest;
}

function areaOf(polygon: readonly Spot[]): number {
  let twice = 0;
  polygon.forEach(([x, z], index) => {
    const [nextX, nextZ] = polygon[(index + 1) % polygon.length];
    twice += x * nextZ - nextX * z;
  });
  return Math.abs(twice) / 2;
}
