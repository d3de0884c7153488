import { dot, length, scale, subtract, type Vec3 } from '../form/build/vector';
import type { StagePart } from '../sight/stage';
import { acos } from '../units/steadyMath';
import { partsAlong, passingShare } from './blockers';
import { placesOn } from './glowFace';
import { isOwnPart, type LightScene, type SceneLamp } from './lightScene';
import { LEAST_LUX, type LightQuestion, type SourceLight } from './sourceLight';

/** Nearer than this a lamp's face counts as this far away, metres. */
const NEAREST_METRES = 0.02;
/** A stand does not shade the lamp that it carries nearer to the lens than this, metres. */
const CARRIER_METRES = 0.5;
/** A face that looks larger than this, as a share of the way to it, sends each place's own candela. */
const BROAD = 0.1;

const { PI } = Math;
const cosineTo = (way: Vec3, metres: number, axis: Vec3): number => dot(way, axis) / metres;

/** Whether a face can be seen at all from a surface. */
const isBehind = ({ face, reachMetres }: SceneLamp, point: Vec3, normal: Vec3): boolean =>
  dot(subtract(face.middle, point), normal) < -reachMetres;

function past(parts: readonly StagePart[], carrying: readonly StagePart[], from: Vec3, to: Vec3): number {
  const share = passingShare(parts, from, to);
  if (share === 0 || carrying.length === 0) return share;
  const way = subtract(to, from);
  const clear = CARRIER_METRES / length(way);
  if (clear >= 1) return share;
  const start: Vec3 = [from[0] + way[0] * clear, from[1] + way[1] * clear, from[2] + way[2] * clear];
  return share * passingShare(carrying, start, to);
}

/**
 * What one lamp sends to a place, by fixed places on its glowing face, each with its even part of the candela and its
 * own way: E = I(θ) ÷ d² on a surface that faces it, times what gets past. Null for nothing worth asking about.
 * The lamp's own housing, yoke and modifier are not in its way, since the rays start on the glass in front of them;
 * barn doors are, and from half a metre on so is the stand that carries it.
 *
 * Source: [inverse-square]
 */
export function lampLight(
  scene: LightScene,
  lamp: SceneLamp,
  point: Vec3,
  question: LightQuestion,
  one = false,
): SourceLight | null {
  const { form, face, reachMetres, share } = lamp;
  if (question.facing && isBehind(lamp, point, question.facing)) return null;
  const way = subtract(point, face.middle);
  const metres = Math.max(length(way), NEAREST_METRES);
  const cosine = cosineTo(way, metres, form.direction);
  const isBroad = (2 * reachMetres) / metres > BROAD && !one;
  const candela = form.peakCandela * share(way, cosine);
  if (!isBroad && candela / (metres * metres) < LEAST_LUX) return null;
  const { stage } = scene.blockers;
  const along = partsAlong(
    scene.blockers,
    face.middle,
    point,
    one ? 0 : reachMetres,
    (part) => isOwnPart(lamp, part) || (question.ignore?.has(stage.forms[part.item].id) ?? false),
  );
  const parts = along.filter(({ item }) => item !== lamp.carrier);
  const carrying = along.length === parts.length ? [] : along.filter(({ item }) => item === lamp.carrier);
  const places = placesOn(face, point, one);
  const rays: Vec3[] = [];
  let full = 0;
  let arrived = 0;
  for (const place of places) {
    const back = subtract(place, point);
    const away = Math.max(length(back), NEAREST_METRES);
    const strength = isBroad
      ? form.peakCandela * share(scale(back, -1), -cosineTo(back, away, form.direction))
      : candela;
    const lux = strength / (places.length * away * away);
    if (lux === 0) continue;
    full += lux;
    const got = lux * past(parts, carrying, place, point);
    if (got === 0) continue;
    arrived += got;
    rays.push(scale(back, got / away));
  }
  if (full < LEAST_LUX) return null;
  return {
    itemId: form.itemId,
    fedBy: null,
    metres,
    offAxisDegrees: (acos(cosine) * 180) / PI,
    visible: arrived / full,
    rays,
  };
}
