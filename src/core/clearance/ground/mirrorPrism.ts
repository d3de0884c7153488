import { add, cross, dot, length, scale, subtract, type Vec3 } from '../../form/build/vector';
import type { Camera } from '../../optics/types';
import { NEAREST_METRES } from '../../sight/clip';
import { heightOver, type Mirror, mirrorOf, reflected } from '../../sight/mirrors';
import { type StagePart, worldOf } from '../../sight/stage';
import { cornersOf, type Planes, type Prism, type Room } from './prism';
import { solidPieces } from './solidPieces';

/** A face that mirrors, in the world: its plane, and the hull of what hangs together of it as corners in a ring. */
export interface MirrorFace {
  readonly mirror: Mirror;
  readonly ring: readonly Vec3[];
}

/** What lies this far from a mirror's plane lies in it, metres. */
const IN_PLANE_METRES = 1e-3;
/** Lower over a mirror than this nothing is seen in it, metres. */
const LOWEST_METRES = 1e-4;

/** The faces of a part that mirror. */
export function mirrorFaces(part: StagePart): readonly MirrorFace[] {
  const mirror = mirrorOf(part);
  if (!mirror) return [];
  return solidPieces(part.shape).flatMap(({ corners }) => {
    const flat = corners
      .map((corner) => worldOf(part, corner))
      .filter((corner) => Math.abs(heightOver(mirror, corner)) < IN_PLANE_METRES);
    return flat.length < 3 ? [] : [{ mirror, ring: ringOf(flat, mirror.normal) }];
  });
}

/**
 * The hull of places in a plane, by Andrew's monotone chain along the two axes that the plane is broadest in.
 * Source: [monotone-chain]
 */
function ringOf(places: readonly Vec3[], normal: Vec3): readonly Vec3[] {
  const [nx, ny, nz] = normal.map(Math.abs);
  const [u, v] = ny >= nx && ny >= nz ? [0, 2] : nx >= nz ? [1, 2] : [0, 1];
  const sorted = [...places].sort((a, b) => a[u] - b[u] || a[v] - b[v]);
  const half = (list: readonly Vec3[]): Vec3[] => {
    const chain: Vec3[] = [];
    for (const place of list) {
      while (chain.length >= 2) {
        const [p, q] = [chain[chain.length - 2], chain[chain.length - 1]];
        if ((q[u] - p[u]) * (place[v] - p[v]) - (q[v] - p[v]) * (place[u] - p[u]) > 0) break;
        chain.pop();
      }
      chain.push(place);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

/** The part of a ring where a·p + d ≥ −slack. */
function kept(ring: readonly Vec3[], normal: Vec3, d: number, slack: number): readonly Vec3[] {
  const result: Vec3[] = [];
  for (const [k, p] of ring.entries()) {
    const q = ring[(k + 1) % ring.length];
    const atP = dot(normal, p) + d + slack;
    const atQ = dot(normal, q) + d + slack;
    if (atP >= 0) result.push(p);
    if (atP >= 0 !== atQ >= 0) result.push(add(p, scale(subtract(q, p), atP / (atP - atQ))));
  }
  return result;
}

/** A ring whose corners lie farther from its middle by some metres. */
function grown(ring: readonly Vec3[], metres: number): readonly Vec3[] {
  if (metres === 0) return ring;
  const middle = scale(
    ring.reduce((sum, corner) => add(sum, corner)),
    1 / ring.length,
  );
  return ring.map((corner) => {
    const out = subtract(corner, middle);
    const size = length(out);
    return size > 0 ? add(middle, scale(out, 1 + metres / size)) : corner;
  });
}

/** What a frame sees in a mirror: where its rays leave it, and from where they seem to come. */
export interface MirrorPrism {
  readonly prism: Prism;
  /** The sides of what is seen, and the mirror's plane. */
  readonly planes: Planes;
}

/**
 * What a camera sees of a room in a face that mirrors, were nothing before it: the part of the face that the frame
 * takes in, and all beyond it as seen from the camera's image behind the mirror. Grown by `radius` so that a ball of
 * that radius is touched where its middle is inside; by more where the view is flat.
 * `moved`: how far the camera may be from there, metres. Null where it sees nothing in it.
 */
export function mirrorPrism(
  camera: Camera,
  framePlanes: Planes,
  { mirror, ring }: MirrorFace,
  { radius, moved }: { readonly radius: number; readonly moved: number },
  room: Room,
): MirrorPrism | null {
  const eye = camera.pose.position;
  const height = heightOver(mirror, eye);
  if (height < LOWEST_METRES) return null;
  let seen = grown(ring, radius + moved);
  for (let k = 0; k < framePlanes.length && seen.length >= 3; k += 4) {
    const normal: Vec3 = [framePlanes[k], framePlanes[k + 1], framePlanes[k + 2]];
    // A side that leans over the mirror is met as much farther out as it is flat to it.
    const lean = dot(normal, mirror.normal);
    const slack = radius * (1 + 1 / Math.max(0.05, Math.sqrt(Math.max(0, 1 - lean * lean))));
    seen = kept(seen, normal, framePlanes[k + 3], radius === 0 ? 1e-6 : slack);
  }
  if (seen.length < 3) return null;
  const image = reflected(eye, mirror);
  let beyond = 0;
  for (const corner of cornersOf(room)) beyond = Math.max(beyond, heightOver(mirror, corner));
  if (beyond + radius <= 0) return null;
  const times = (height + beyond + radius + NEAREST_METRES) / height;
  const far = seen.map((corner) => add(image, scale(subtract(corner, image), times)));
  return {
    prism: { near: Float64Array.from(seen.flat()), far: Float64Array.from(far.flat()) },
    planes: planesAround(image, seen, mirror),
  };
}

function planesAround(image: Vec3, ring: readonly Vec3[], { normal, point }: Mirror): Planes {
  const planes: number[] = [...normal, -dot(normal, point)];
  const middle = scale(
    ring.reduce((sum, corner) => add(sum, corner)),
    1 / ring.length,
  );
  for (const [k, p] of ring.entries()) {
    const q = ring[(k + 1) % ring.length];
    const across = cross(subtract(p, image), subtract(q, image));
    const size = length(across);
    if (size < 1e-9) continue;
    const sign = dot(across, subtract(middle, image)) >= 0 ? 1 : -1;
    const side = scale(across, sign / size);
    planes.push(...side, -dot(side, image));
  }
  return Float64Array.from(planes);
}
