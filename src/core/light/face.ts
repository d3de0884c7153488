import { add, cross, directionOf, dot, length, scale, unit, type Vec3 } from '../form/build/vector';
import { whereabouts } from '../form/figure/whereabouts';
import type { Performer } from '../plan/schema/cast';
import type { Plan } from '../plan/schema/plan';
import { atan2 } from '../units/steadyMath';
import { ambientLux } from './ambient';
import { luxOn } from './illuminance';
import { lightAt } from './lightAt';
import type { LightScene } from './lightScene';
import { shadowEdge } from './shadowEdge';
import { type SourceLight, sourceLux, vectorOf } from './sourceLight';

/** A performer's face: midway between the eyes, with the way that it looks, its own right and the top of the head. */
export interface Face {
  readonly performerId: string;
  readonly at: Vec3;
  readonly forward: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
  /** Compass heading of the way that it looks. */
  readonly headingDegrees: number;
}

/**
 * Planes that light is read on, by their normals: the way that the face looks; half way round to its own left and its
 * own right (45° about the head); up; and up and backwards, the edge that a backlight draws.
 */
export const FACE_PLANES = ['front', 'left', 'right', 'top', 'edge'] as const;
export type FacePlane = (typeof FACE_PLANES)[number];
export type OnFace = Readonly<Record<FacePlane, number>>;

/** What one item, a lamp, all bulbs of a string or a cloth, gives to a face. */
export interface FaceSource {
  readonly itemId: string;
  /** The lamp that gives a cloth most of its light; null for a lamp itself. */
  readonly fedBy: string | null;
  readonly lux: OnFace;
  /** Off the way that the face looks, on the level: positive to its own right, −180 to 180. */
  readonly bearingDegrees: number;
  /** Above the level of the eyes. */
  readonly elevationDegrees: number;
  /** Whether it comes from before the plane of the face. */
  readonly isAhead: boolean;
  readonly metres: number;
  readonly visible: number;
  /** How wide an edge half a metre before the face throws its shadow onto it, metres; null for what is nearer than that. */
  readonly shadowEdgeMetres: number | null;
}

/** Where the light on a face comes from: a side of its own, the front, behind alone, or nowhere but the sky. */
export type LitFrom = 'left' | 'right' | 'front' | 'back' | 'dark';

/** The light on a face. */
export interface FaceLight {
  readonly face: Face;
  /** All of it, sky, streets and moon included. */
  readonly lux: OnFace;
  /** Strongest before the face first, then those behind it. */
  readonly sources: readonly FaceSource[];
  /** The strongest from before the face, by the best of its front and its two three-quarter planes. */
  readonly key: FaceSource | null;
  readonly keyLux: number;
  /** All but the key, sky included, on the three-quarter plane away from the key. */
  readonly fillLux: number;
  /** (Key + fill) to fill. */
  readonly ratio: number;
  /** The strongest from behind the face, on its edge. */
  readonly back: FaceSource | null;
  readonly backLux: number;
  readonly from: LitFrom;
}

/** A key that comes from no farther off than this to either side shows no side. Source: common practice, no source */
export const FRONTAL_DEGREES = 10;
/** A face whose key is four stops or more under its backlight is lit from behind. Source: common practice, no source */
const BACK_OVER_KEY = 16;

/** A performer's face at an instant of the action's clock; null without marks. */
export function faceAt(performer: Performer, plan: Plan, seconds: number): Face | null {
  const place = whereabouts(performer, plan, seconds);
  if (!place) return null;
  const right = directionOf(place.headHeadingDegrees + 90);
  return {
    performerId: performer.id,
    at: place.eyes,
    forward: place.gaze,
    right,
    up: unit(cross(right, place.gaze)),
    headingDegrees: place.headHeadingDegrees,
  };
}

/** Degrees in −180 < d ≤ 180. */
const signed = (degrees: number): number => 180 - ((((180 - degrees) % 360) + 360) % 360);

/** How far a place or a way lies off the way that a face looks, on the level: positive to its own right. */
export const bearingOffFace = ({ headingDegrees }: Face, way: Vec3): number =>
  signed((atan2(way[0], -way[2]) * 180) / Math.PI - headingDegrees);

/** The planes' unit normals. */
export function planeNormals({ forward, right, up }: Face): Readonly<Record<FacePlane, Vec3>> {
  return {
    front: forward,
    left: unit(add(forward, scale(right, -1))),
    right: unit(add(forward, right)),
    top: up,
    edge: unit(add(up, scale(forward, -1))),
  };
}

const onPlanes = (normals: Readonly<Record<FacePlane, Vec3>>, luxOf: (normal: Vec3) => number): OnFace => ({
  front: luxOf(normals.front),
  left: luxOf(normals.left),
  right: luxOf(normals.right),
  top: luxOf(normals.top),
  edge: luxOf(normals.edge),
});

/** What a source gives to the best of the planes that make up a face. */
export const bestLux = ({ lux }: FaceSource): number => Math.max(lux.front, lux.left, lux.right);

/** The plane of the face that a source is read on: from before it the best one, from behind its edge. */
export function planeOf({ lux, isAhead }: FaceSource): FacePlane {
  if (!isAhead) return 'edge';
  return (['left', 'right'] as const).reduce<FacePlane>(
    (best, plane) => (lux[plane] > lux[best] ? plane : best),
    'front',
  );
}

function faceSource(
  scene: LightScene,
  face: Face,
  sources: readonly SourceLight[],
  normals: Readonly<Record<FacePlane, Vec3>>,
): FaceSource {
  const vector = vectorOf(sources);
  const strength = ({ rays }: SourceLight): number => rays.reduce((sum, ray) => sum + length(ray), 0);
  const strongest = sources.reduce((best, next) => (strength(next) > strength(best) ? next : best));
  return {
    itemId: strongest.itemId,
    fedBy: strongest.fedBy,
    lux: onPlanes(normals, (normal) => sources.reduce((sum, source) => sum + sourceLux(source, normal), 0)),
    bearingDegrees: bearingOffFace(face, vector),
    elevationDegrees: (atan2(vector[1], length([vector[0], 0, vector[2]])) * 180) / Math.PI,
    isAhead: dot(vector, face.forward) > 0,
    metres: strongest.metres,
    visible: strongest.visible,
    shadowEdgeMetres: shadowEdge(scene, face.at, strongest),
  };
}

function litFrom(key: FaceSource | null, keyLux: number, backLux: number, skyLux: number): LitFrom {
  const hasBack = backLux > skyLux;
  if (!key || keyLux <= skyLux) return hasBack ? 'back' : 'dark';
  if (hasBack && keyLux * BACK_OVER_KEY <= backLux) return 'back';
  if (Math.abs(key.bearingDegrees) <= FRONTAL_DEGREES) return 'front';
  return key.bearingDegrees < 0 ? 'left' : 'right';
}

/**
 * The light on a face in a scene, read midway between the eyes; the performer's own body, clothes and prop stand in
 * none of it. The key is, of what comes from before the plane of the face, the item that gives most to the best of
 * front, own left and own right; the fill is all the rest on the side away from it (of a key from the front, on the
 * darker side); the ratio is key and fill to fill, as it is metered with the key on and shaded. A key weaker than the
 * glow of the sky is none. The moon is no lamp and no key: its light counts as fill.
 * Source: common practice, no source
 */
export function faceLight(scene: LightScene, face: Face): FaceLight {
  const light = lightAt(scene, face.at, { ignore: new Set([face.performerId]) });
  const { sources: all, ambient } = light;
  const normals = planeNormals(face);
  const byItem = new Map<string, SourceLight[]>();
  for (const source of all) {
    if (source.rays.length === 0) continue;
    const known = byItem.get(source.itemId);
    if (known) known.push(source);
    else byItem.set(source.itemId, [source]);
  }
  const found = [...byItem.values()].map((sources) => faceSource(scene, face, sources, normals));
  const ahead = found.filter(({ isAhead }) => isAhead).sort((a, b) => bestLux(b) - bestLux(a));
  const behind = found.filter(({ isAhead }) => !isAhead).sort((a, b) => b.lux.edge - a.lux.edge);
  const sky = ambientLux(ambient, normals.front);
  const total = onPlanes(normals, (normal) => luxOn(light, normal));
  const key = ahead[0] ?? null;
  const back = behind[0] ?? null;
  const keyLux = key ? bestLux(key) : 0;
  const rest = { left: total.left - (key?.lux.left ?? 0), right: total.right - (key?.lux.right ?? 0) };
  const isFrontal = key === null || Math.abs(key.bearingDegrees) <= FRONTAL_DEGREES;
  const fillLux = isFrontal
    ? Math.min(rest.left, rest.right)
    : key.bearingDegrees < 0
      ? rest.right
      : rest.left;
  const backLux = back?.lux.edge ?? 0;
  return {
    face,
    lux: total,
    sources: [...ahead, ...behind],
    key,
    keyLux,
    fillLux,
    ratio: (keyLux + fillLux) / fillLux,
    back,
    backLux,
    from: litFrom(key, keyLux, backLux, sky),
  };
}
