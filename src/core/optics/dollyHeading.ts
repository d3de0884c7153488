import { DOLLY_WHEELBASE_METRES } from '../kit/supports';
import { bearingOf, metresBetween, spotFrom } from '../plan/runs';
import type { Spot } from '../plan/schema/numbers';
import type { CameraKey, Setup } from '../plan/schema/setup';
import { stretchAt } from './pose';

/** Keys this near to each other are one place, metres. */
const ONE_PLACE_METRES = 0.02;

/** Degrees in −180 < d ≤ 180. */
export const signedDegrees = (degrees: number): number => {
  const turned = (((degrees + 180) % 360) + 360) % 360;
  return turned === 0 ? 180 : turned - 180;
};

/** A part of a way without a sharp corner, run one way. */
interface Stroke {
  readonly spots: readonly Spot[];
  /** From its start to each of its spots, metres. */
  readonly alongs: readonly number[];
}

/** The strokes of a way, and of each key on which stroke it is reached and how far along, metres. */
function strokesOf(keys: readonly CameraKey[]): {
  readonly strokes: readonly Stroke[];
  readonly reached: readonly { readonly stroke: number; readonly along: number }[];
} {
  const first: Spot = [keys[0].position[0], keys[0].position[2]];
  const strokes: { spots: Spot[]; alongs: number[] }[] = [{ spots: [first], alongs: [0] }];
  const reached = [{ stroke: 0, along: 0 }];
  for (const { position } of keys.slice(1)) {
    const spot: Spot = [position[0], position[2]];
    let stroke = strokes[strokes.length - 1];
    const last = stroke.spots.length - 1;
    const from = stroke.spots[last];
    const metres = metresBetween(from, spot);
    if (metres > ONE_PLACE_METRES) {
      const bearing = bearingOf(from, spot);
      const isSharp =
        last > 0 && Math.abs(signedDegrees(bearing - bearingOf(stroke.spots[last - 1], from))) > 90;
      if (isSharp) {
        stroke = { spots: [from], alongs: [0] };
        strokes.push(stroke);
      }
      stroke.alongs.push(stroke.alongs[stroke.alongs.length - 1] + metres);
      stroke.spots.push(spot);
    }
    reached.push({ stroke: strokes.length - 1, along: stroke.alongs[stroke.alongs.length - 1] });
  }
  return { strokes, reached };
}

/** A place so far along a stroke, metres; beyond its ends straight on. */
function placeOn({ spots, alongs }: Stroke, along: number): Spot {
  const found = alongs.findIndex((end, k) => k > 0 && along <= end);
  const leg = found === -1 ? spots.length - 1 : found;
  return spotFrom(spots[leg - 1], bearingOf(spots[leg - 1], spots[leg]), along - alongs[leg - 1]);
}

/** Which way a stroke runs so far along it, with both axles on it, degrees. */
const bearingOn = (stroke: Stroke, along: number): number =>
  bearingOf(
    placeOn(stroke, along - DOLLY_WHEELBASE_METRES / 2),
    placeOn(stroke, along + DOLLY_WHEELBASE_METRES / 2),
  );

/** A bearing or its opposite, whichever is nearer to a heading. */
const nearerWay = (bearing: number, heading: number): number =>
  Math.abs(signedDegrees(bearing - heading)) > 90 ? bearing + 180 : bearing;

/**
 * How a dolly stands that carries a camera without a track, degrees: along the way that it goes, both axles on it, so
 * that it turns into a bend as it comes to it. It begins the way round that is nearer to its own heading; where the
 * way turns back by more than a right angle it is not turned round but pushed back, so that one that only shuttles
 * keeps its heading. One that goes nowhere stands as it is put. Keys on the action's clock.
 */
export function dollyHeadingAt(
  { keys, ease }: { readonly keys: readonly CameraKey[]; readonly ease: Setup['move']['ease'] },
  seconds: number,
  ownDegrees: number,
): number {
  const { strokes, reached } = strokesOf(keys);
  if (strokes[0].spots.length < 2) return ownDegrees;
  const { from, to, share } = stretchAt(keys, ease, seconds);
  const [start, end] = [reached[keys.indexOf(from)], reached[keys.indexOf(to)]];
  const begins = end.stroke === start.stroke ? start.along : 0;
  const along = begins + (end.along - begins) * share;
  let heading = ownDegrees;
  for (const stroke of strokes.slice(0, end.stroke))
    heading = turnedAlong(stroke, nearerWay(bearingOn(stroke, 0), heading));
  const stroke = strokes[end.stroke];
  const starts = bearingOn(stroke, 0);
  return nearerWay(starts, heading) === starts ? bearingOn(stroke, along) : bearingOn(stroke, along) + 180;
}

/** The heading at the end of a stroke that was begun with one. */
function turnedAlong(stroke: Stroke, heading: number): number {
  const length = stroke.alongs[stroke.alongs.length - 1];
  const turn = bearingOn(stroke, length) - bearingOn(stroke, 0);
  return heading + turn;
}
