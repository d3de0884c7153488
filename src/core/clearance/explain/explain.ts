import { add, dot, scale, subtract, unit, type Vec3 } from '../../form/build/vector';
import { cameraAt, spanOf } from '../../optics/camera';
import { undistort } from '../../optics/distortion';
import { cameraFromWorld, projectPoint } from '../../optics/project';
import { formsThrough } from '../../optics/riding';
import type { Camera } from '../../optics/types';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { coverersOf } from '../../sight/coverers';
import { reachOf } from '../../sight/grid';
import { borrowScratch, type Look, look, type Scratch } from '../../sight/look';
import { outsideOf } from '../../sight/margin';
import { meets } from '../../sight/rays';
import { groupsOf } from '../../sight/rects';
import { type SightStage, type StagePart, stageOf, worldOf } from '../../sight/stage';
import { mirrorsIn } from '../../sight/sweep';
import { findThin } from '../../sight/thin';
import { asin } from '../../units/steadyMath';
import { along, isWithin, partsOf, placesIn, placesOn, seenInMirror, seenThrough } from './candidates';
import { fromPixels, mostInTheMiddle } from './inBuffer';
import type { Explanation, FrameCorners, PlaceOnPart } from './types';

/** What a frame takes in at a distance along its axis, metres; a lens's bending is undone. */
function frameAt({ pose, frame }: Camera, metres: number): FrameCorners {
  const { tanHalfWidth, tanHalfHeight, distortion } = frame;
  const corner = (x: number, y: number): Vec3 => {
    const drawn: readonly [number, number] = [x * tanHalfWidth, y * tanHalfHeight];
    const [across, down] = (distortion && undistort(distortion, ...drawn)) || drawn;
    const way = add(pose.forward, subtract(scale(pose.right, across), scale(pose.up, down)));
    return add(pose.position, scale(way, metres));
  };
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
}

interface Asked {
  readonly stage: SightStage;
  readonly camera: Camera;
  readonly item: number;
}

const named = ({ stage }: Asked, { item, name }: StagePart, at: Vec3): PlaceOnPart => ({
  itemId: stage.forms[item].id,
  part: name,
  at,
});

/** A line of sight that first meets something at `meets`, and ends on a part. */
function lineTo({ camera }: Asked, first: Vec3, end: PlaceOnPart) {
  const projected = projectPoint(camera, first);
  const depth = cameraFromWorld(camera.pose, first)[2];
  const frameSpot: readonly [number, number] = projected ? [projected.x, projected.y] : [0.5, 0.5];
  return { end, frameAt: frameSpot, frame: frameAt(camera, depth) };
}

type Told<Kind extends Explanation['kind']> = Omit<
  Extract<Explanation, { readonly kind: Kind }>,
  'setupId' | 'itemId' | 'seconds' | 'eye'
>;

/** Where the lens sees most of the item: by the buffer, and for what is finer than its pixels by rays. */
function showing(of: Asked, seen: Look): Told<'showing'> | null {
  for (const part of partsOf(of.stage, of.item, seen.direct)) {
    if (seen.direct.partPixels[part.index] === 0) break;
    const found = fromPixels(seen, seen.buffer, part, (ray) => {
      const share = meets(part, ray);
      return share < Infinity ? along(ray, share) : null;
    });
    const at =
      found ??
      mostInTheMiddle(
        [...placesIn(seen, part)].flatMap((place) => {
          const spot = seenThrough(seen, part, place);
          return spot ? [{ at: spot }] : [];
        }),
      )?.at;
    if (at) return { kind: 'showing', ...lineTo(of, at, named(of, part, at)) };
  }
  return null;
}

function mirrored(of: Asked, seen: Look): Told<'mirrored'> | null {
  const { position } = of.camera.pose;
  for (const part of partsOf(of.stage, of.item, seen.mirrored)) {
    if (seen.mirrored.partPixels[part.index] === 0) break;
    for (const mirror of seen.mirrors) {
      const inBuffer = fromPixels(seen, seen.mirrorBuffer, part, (ray, column, row) => {
        if (mirror.face[column * seen.grid.height + row] !== mirror.part.index + 1) return null;
        const share = meets(mirror.part, ray);
        if (!(share < Infinity)) return null;
        const turn = along(ray, share);
        const { normal } = mirror;
        const direction = subtract(ray.direction, scale(normal, 2 * dot(ray.direction, normal)));
        const on = { origin: turn, direction };
        const then = meets(part, on);
        return then < Infinity ? { turn, end: along(on, then) } : null;
      });
      const found =
        inBuffer ??
        mostInTheMiddle(
          [...placesOn(part)].flatMap((place) => {
            const spot = seenInMirror(seen, mirror, part, place);
            return spot ? [{ ...spot, at: spot.end }] : [];
          }),
        );
      if (!found) continue;
      const { turn, end } = found;
      const rise = Math.abs(dot(unit(subtract(turn, position)), mirror.normal));
      return {
        kind: 'mirrored',
        ...lineTo(of, turn, named(of, part, end)),
        mirror: named(of, mirror.part, turn),
        angleDegrees: (asin(Math.min(1, rise)) * 180) / Math.PI,
      };
    }
  }
  return null;
}

/** The first solid of another item that a line from the lens to a place meets, and where. */
function firstBefore({ stage, camera, item }: Asked, place: Vec3): { part: StagePart; at: Vec3 } | null {
  const { position } = camera.pose;
  const ray = { origin: position, direction: subtract(place, position) };
  let nearest = 1;
  let first: StagePart | null = null;
  for (const part of stage.parts) {
    if (part.item === item || part.shape.openness !== null) continue;
    const share = meets(part, ray);
    if (share >= nearest) continue;
    nearest = share;
    first = part;
  }
  return first && { part: first, at: along(ray, nearest) };
}

/** What stands before most of the item, where nothing of it is seen. */
function covered(of: Asked, seen: Look, scratch: Scratch): Told<'covered'> | null {
  const { stage, camera, item } = of;
  if (seen.alone[item] === 0) return null;
  const most = coverersOf(seen, item).find((each) => each.item !== item)?.item;
  interface Hidden {
    readonly part: StagePart;
    readonly at: Vec3;
    readonly before: { readonly part: StagePart; readonly at: Vec3 };
  }
  const hiddenAt = (part: StagePart, at: Vec3): Hidden | null => {
    const before = firstBefore(of, at);
    return before && { part, at, before };
  };
  const isByMost = ({ before }: Hidden): boolean => before.part.item === most;
  // Its outline as it would be with nothing before it; the buffer of the look before is not needed any more.
  const alone = look(stageOf([stage.forms[item]]), camera, scratch, { rect: seen.rect });
  const own = partsOf(alone.stage, 0, alone.direct);
  const inPicture = own.flatMap((part) => {
    const ask = (isWanted: (hidden: Hidden) => boolean) =>
      fromPixels(alone, alone.buffer, part, (ray) => {
        const share = meets(part, ray);
        const hidden = share < Infinity ? hiddenAt(part, along(ray, share)) : null;
        return hidden && isWanted(hidden) ? hidden : null;
      });
    return ask(isByMost) ?? ask(() => true) ?? [];
  });
  const inParts = () =>
    own.flatMap((part) =>
      [...placesIn(seen, part)].flatMap((at) => (isWithin(camera, at) ? (hiddenAt(part, at) ?? []) : [])),
    );
  const hidden = inPicture.length > 0 ? inPicture : inParts();
  const found = hidden.find(isByMost) ?? mostInTheMiddle(hidden);
  if (!found) return null;
  const { part, at, before } = found;
  return {
    kind: 'covered',
    ...lineTo(of, before.at, { itemId: stage.forms[item].id, part: part.name, at }),
    coverer: named(of, before.part, before.at),
  };
}

/** The corner of the item that comes nearest to the frame, seen from the lens; null where all of it is behind that. */
function outside(of: Asked): Told<'outside'> | null {
  const { stage, camera, item } = of;
  const { aspect } = camera.frame;
  let nearest = Infinity;
  let found: { part: StagePart; at: Vec3 } | null = null;
  for (const part of partsOf(stage, item, null)) {
    const { positions } = part.shape;
    for (let k = 0; k < positions.length; k += 3) {
      const at = worldOf(part, [positions[k], positions[k + 1], positions[k + 2]]);
      const seen = projectPoint(camera, at);
      if (!seen) continue;
      const off = Math.max(Math.abs(seen.x - 0.5) - 0.5, (Math.abs(seen.y - 0.5) - 0.5) / aspect);
      if (off >= nearest) continue;
      nearest = off;
      found = { part, at };
    }
  }
  if (!found) return null;
  const measured = outsideOf(stage, item, camera);
  return {
    kind: 'outside',
    ...lineTo(of, found.at, named(of, found.part, found.at)),
    outside: measured === 'inside' ? null : measured,
  };
}

/** What the lens sees, does not see, or just misses of the item. */
function inFrameOf(of: Asked): Told<'showing'> | Told<'mirrored'> | Told<'covered'> | null {
  const { stage, camera, item } = of;
  const { scratch, giveBack } = borrowScratch(camera);
  try {
    const field = reachOf(scratch.grid);
    const mirrors = mirrorsIn({ stages: [stage], camera, field, motion: { metres: 0, chord: 0 } });
    const [group] = groupsOf(stage, new Set([item]), camera, scratch.grid, mirrors);
    if (!group) return null;
    const seen = look(stage, camera, scratch, { rect: group.rect });
    findThin(seen, group.items);
    return showing(of, seen) ?? mirrored(of, seen) ?? covered(of, seen, scratch);
  } finally {
    giveBack();
  }
}

/**
 * Why an item has its verdict in a setup at an instant, seconds, which is brought into the setup's span: the line from
 * the lens to the place of it that shows, by way of the mirror where it is mirrored, to what stands before it where it
 * is covered, and to where it comes nearest to the frame where it stays outside. Null for a setup that the plan lacks,
 * and for an item that is not there then.
 */
export function explain(
  plan: Plan,
  asked: { readonly setupId: string; readonly itemId: string; readonly seconds: number },
): Explanation | null {
  const setup: Setup | undefined = plan.setups.find(({ id }) => id === asked.setupId);
  if (!setup) return null;
  const [from, to] = spanOf(plan, setup);
  const seconds = Math.min(Math.max(asked.seconds, from), to);
  const stage = stageOf(formsThrough(plan, setup, seconds));
  const item = stage.forms.findIndex(({ id }) => id === asked.itemId);
  if (item < 0 || stage.firstPart[item] === stage.firstPart[item + 1]) return null;
  const of: Asked = { stage, camera: cameraAt(plan, setup, seconds), item };
  const common = { ...asked, seconds, eye: of.camera.pose.position };
  return { ...common, ...(inFrameOf(of) ?? outside(of) ?? { kind: 'behind' }) };
}
