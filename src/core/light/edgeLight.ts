import { add, dot, mix, scale, subtract, unit, type Vec3 } from '../form/build/vector';
import { skeletonFor } from '../form/figure/body';
import { landmarksAt } from '../form/figure/landmarks';
import { cameraAt } from '../optics/camera';
import { isInFrame, projectPoint } from '../optics/project';
import type { CameraPose } from '../optics/types';
import { played } from '../plan/played';
import type { Performer } from '../plan/schema/cast';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { cos, sin } from '../units/steadyMath';
import { askedLux, stopsBetween } from './exposure';
import { faceAt, faceLight } from './face';
import { nightLux } from './illuminance';
import { lightAt } from './lightAt';
import { type LightScene, lightScene } from './lightScene';
import { sourceLux, vectorOf } from './sourceLight';

/** Which edge of a figure is lit, as the camera sees it; the top alone is the hair. */
export type EdgeSide = 'camera left' | 'camera right' | 'both' | 'top' | 'none';

/** What one item draws on the edge of a figure from behind. */
export interface EdgeLight {
  readonly performerId: string;
  readonly side: EdgeSide;
  /** Whether it lies on the top of the head as well. */
  readonly onTop: boolean;
  /** Null where nothing lights an edge. */
  readonly itemId: string | null;
  /** On the edge where it is strongest; 0 for none. */
  readonly lux: number;
  /** Above what the stop asks for; null for none. */
  readonly stops: number | null;
  /** Above the key on the face; null for none, or without a key. */
  readonly stopsOverKey: number | null;
}

/** An edge turns away from the camera all but so many degrees. Source: common practice, no source */
const TOWARDS_DEGREES = 15;
const TOWARDS_SINE = sin((TOWARDS_DEGREES * Math.PI) / 180);
const TOWARDS_COSINE = cos((TOWARDS_DEGREES * Math.PI) / 180);
/** An edge further under the set exposure than this is none. Source: common practice, no source */
const LEAST_STOPS = -4;
/** Off skin and hair, metres. */
const OFF_METRES = 0.01;

type EdgeName = 'camera left' | 'camera right' | 'top';
interface Edge {
  readonly name: EdgeName;
  readonly at: Vec3;
  readonly normal: Vec3;
}

/** The places on a figure's outline where its edges are read: beside the head, at the shoulders, on the hair. */
function edgesOf(
  performer: Performer,
  plan: Plan,
  seconds: number,
  { position, right }: CameraPose,
): readonly Edge[] {
  const marks = landmarksAt(performer, plan, seconds);
  if (!marks) return [];
  const { headBreadthMetres, bideltoidMetres } = skeletonFor(performer).measures;
  const head = mix(marks.crown, marks.chin, 0.5);
  const edge = (name: EdgeName, middle: Vec3, out: Vec3, metres: number): Edge => {
    const towards = unit(subtract(position, middle));
    return {
      name,
      at: add(middle, scale(out, metres + OFF_METRES)),
      normal: unit(add(scale(out, TOWARDS_COSINE), scale(towards, TOWARDS_SINE))),
    };
  };
  const left = scale(right, -1);
  return [
    edge('camera left', head, left, headBreadthMetres / 2),
    edge('camera right', head, right, headBreadthMetres / 2),
    edge('camera left', marks['tie knot'], left, bideltoidMetres / 2),
    edge('camera right', marks['tie knot'], right, bideltoidMetres / 2),
    edge('top', marks.crown, [0, 1, 0], 0),
  ];
}

/** What each item from behind gives to one edge, where it is at least as much as all that comes from before it. */
function fromBehind(
  scene: LightScene,
  edge: Edge,
  { position }: CameraPose,
  ownId: string,
): ReadonlyMap<string, number> {
  const light = lightAt(scene, edge.at, { ignore: new Set([ownId]) });
  const towards = subtract(position, edge.at);
  const behind = new Map<string, number>();
  let before = nightLux(light, edge.normal);
  for (const source of light.sources) {
    const lux = sourceLux(source, edge.normal);
    if (lux === 0) continue;
    if (dot(vectorOf([source]), towards) >= 0) before += lux;
    else behind.set(source.itemId, (behind.get(source.itemId) ?? 0) + lux);
  }
  return new Map([...behind].filter(([, lux]) => lux >= before));
}

function sideOf(names: ReadonlyMap<EdgeName, number>): EdgeSide {
  const [left, right] = [names.has('camera left'), names.has('camera right')];
  if (left && right) return 'both';
  if (left) return 'camera left';
  if (right) return 'camera right';
  return names.has('top') ? 'top' : 'none';
}

/**
 * Which edge of each figure whose head is in frame is lit from behind at an instant, seconds, by which item, and how
 * strongly: beside the head and the shoulders, and on the hair, each plane turned away from the camera as an edge is.
 * The performer's own body stands in none of it. An edge counts as lit where what comes from behind is at least as
 * much as all else there. The performers' order; the strongest first. Source: common practice, no source
 */
export function edgeLights(
  plan: Plan,
  setup: Setup,
  seconds: number,
  scene: LightScene = lightScene(plan, setup, seconds),
): readonly EdgeLight[] {
  const acted = played(plan, setup);
  const camera = cameraAt(plan, setup, seconds);
  const asked = askedLux(setup);
  return acted.cast.flatMap((performer): readonly EdgeLight[] => {
    const face = faceAt(performer, acted, seconds);
    const shown = face && projectPoint(camera, face.at);
    if (!shown || !isInFrame(shown)) return [];
    const byItem = new Map<string, Map<EdgeName, number>>();
    for (const edge of edgesOf(performer, acted, seconds, camera.pose)) {
      for (const [itemId, lux] of fromBehind(scene, edge, camera.pose, performer.id)) {
        if (stopsBetween(asked, lux) < LEAST_STOPS) continue;
        const edges = byItem.get(itemId) ?? new Map<EdgeName, number>();
        byItem.set(itemId, edges.set(edge.name, Math.max(lux, edges.get(edge.name) ?? 0)));
      }
    }
    const none: EdgeLight = {
      performerId: performer.id,
      side: 'none',
      onTop: false,
      itemId: null,
      lux: 0,
      stops: null,
      stopsOverKey: null,
    };
    if (byItem.size === 0) return [none];
    const { key, keyLux } = faceLight(scene, face);
    return [...byItem]
      .map(([itemId, edges]): EdgeLight => {
        const lux = Math.max(...edges.values());
        return {
          performerId: performer.id,
          side: sideOf(edges),
          onTop: edges.has('top'),
          itemId,
          lux,
          stops: stopsBetween(asked, lux),
          stopsOverKey: key && keyLux > 0 ? stopsBetween(keyLux, lux) : null,
        };
      })
      .sort((a, b) => b.lux - a.lux);
  });
}
