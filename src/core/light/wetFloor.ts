import { dot, length, mix, scale, subtract, type Vec3 } from '../form/build/vector';
import { cameraAt, spanOf } from '../optics/camera';
import { projectPoint } from '../optics/project';
import type { Camera } from '../optics/types';
import type { Wetness } from '../plan/schema/ground';
import type { Spot } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { wetnessAt, wetnessesOf } from '../plan/wetness';
import { acos, sin } from '../units/steadyMath';
import { partsAlong, passingShare } from './blockers';
import { greyLuminance, stopsBetween } from './exposure';
import { fresnel } from './fresnel';
import { glowFaceArea } from './glowArea';
import { lampLight } from './lampLight';
import { type LightScene, lightScene, type SceneLamp } from './lightScene';
import { vectorOf } from './sourceLight';
import { highlightLuminance, leftAlong, type OverFloor, streakOf } from './streak';
import {
  DECK_SKINS,
  type DeckPlane,
  type DeckSkin,
  deckAt,
  deckPlanes,
  mirrorPoint,
  streakSkin,
} from './wetness';

/** A place of the frame, 0..1 from its left and top edges; outside that range beyond the frame line. */
export type FramePlace = readonly [x: number, y: number];

/** The highlight of one lamp in a deck, at one instant of a setup. */
export interface Highlight {
  readonly lampId: string;
  readonly deckId: string;
  /** How wet the deck is where it is seen. */
  readonly wetness: Wetness;
  readonly seconds: number;
  /** Where a mirror would show the lamp, and that in frame. */
  readonly at: Vec3;
  readonly frame: FramePlace;
  /** The ends of the streak, towards the camera and away from it, in frame; null behind the camera. */
  readonly frameNear: FramePlace | null;
  readonly frameFar: FramePlace | null;
  /** Between half and half of its luminance, on the deck. */
  readonly lengthMetres: number;
  readonly widthMetres: number;
  /** The share of the streak that is in frame, on the deck, lit and not covered. */
  readonly seen: number;
  readonly incidenceDegrees: number;
  /** What the deck turns back there, by Fresnel, of the skin that the streak is seen on. */
  readonly reflectance: number;
  /** Of the brightest place that is seen: the mean over the deck's skins, and that of the brightest skin; cd/m². */
  readonly luminance: number;
  readonly brightest: number;
  /** The mean over what the set exposure renders as middle grey. */
  readonly stops: number;
}

/** Places along a streak at which it is asked whether it is seen: its ends, its middle and between. */
const PLACES = 7;

const frameOf = (camera: Camera, place: Vec3): FramePlace | null => {
  const found = projectPoint(camera, place);
  return found && [found.x, found.y];
};
const isInFrame = (place: FramePlace | null): boolean =>
  place !== null && place[0] >= 0 && place[0] <= 1 && place[1] >= 0 && place[1] <= 1;

/** A lamp's candela towards a place, by what it sends there were nothing in the way, and what gets there. */
function towards(
  scene: LightScene,
  lamp: SceneLamp,
  place: Vec3,
): { readonly candela: number; readonly visible: number } {
  const light = lampLight(scene, lamp, place, {}, true);
  if (!light || light.visible === 0) return { candela: 0, visible: 0 };
  const lux = length(vectorOf([light])) / light.visible;
  return { candela: lux * light.metres * light.metres, visible: light.visible };
}

/** How near to a part's box a way to the lens may come for the part to be asked, metres. */
const BESIDE_METRES = 0.01;

/** The share of what leaves a place on the deck that gets to the lens. */
function reachesLens(scene: LightScene, eye: Vec3, place: Vec3): number {
  return passingShare(
    partsAlong(scene.blockers, eye, place, BESIDE_METRES, () => false),
    eye,
    place,
  );
}

/**
 * The highlight of a lamp in a deck, as far as the deck is so wet: its streak lies as it would were all of the deck so
 * wet, and is seen on the places that are.
 */
function highlightOn(
  scene: LightScene,
  setup: Setup,
  camera: Camera,
  lamp: SceneLamp,
  deck: DeckPlane,
  wetness: Wetness,
): Highlight | null {
  const eye = camera.pose.position;
  const { face, form, reachMetres } = lamp;
  const at = mirrorPoint(face.middle, eye, deck.topMetres);
  const frame = at && frameOf(camera, at);
  if (!at || !frame) return null;
  const skins = DECK_SKINS[wetness];
  const skin = streakSkin(skins);
  const foot: Vec3 = [eye[0], deck.topMetres, eye[2]];
  const lampFoot: Vec3 = [face.middle[0], deck.topMetres, face.middle[2]];
  const apartMetres = Math.max(1e-6, length(subtract(lampFoot, foot)));
  const over: OverFloor = {
    eyeMetres: eye[1] - deck.topMetres,
    lampMetres: face.middle[1] - deck.topMetres,
    apartMetres,
  };
  const streak = streakOf(over, skin.slope, reachMetres);
  const way = subtract(at, face.middle);
  const toLamp = length(way);
  const area = glowFaceArea(face, dot(scale(way, 1 / toLamp), form.direction));
  const atMirror = ({ index, slope }: DeckSkin, candela: number): number =>
    highlightLuminance(
      fresnel(sin(streak.elevation), index).unpolarised,
      candela,
      area,
      slope,
      toLamp,
      streak.elevation,
    );
  const places = Array.from({ length: PLACES }, (_, k) => {
    const share = (2 * k) / (PLACES - 1);
    const metres =
      share < 1
        ? streak.nearMetres + (streak.mirrorMetres - streak.nearMetres) * share
        : streak.mirrorMetres + (streak.farMetres - streak.mirrorMetres) * (share - 1);
    return { metres, at: mix(foot, lampFoot, metres / apartMetres) };
  });
  const inFrame = places.filter((place) => isInFrame(frameOf(camera, place.at)));
  if (inFrame.length === 0) return null;
  let seen = 0;
  let luminance = 0;
  let brightest = 0;
  for (const { at: place, metres } of inFrame) {
    const spot: Spot = [place[0], place[2]];
    if (deckAt(scene.plan, spot)?.pieceId !== deck.pieceId || wetnessAt(scene.plan, spot) !== wetness)
      continue;
    const sent = towards(scene, lamp, place);
    const passing = sent.visible === 0 ? 0 : sent.visible * reachesLens(scene, eye, place);
    if (passing === 0) continue;
    seen += passing;
    const bright = skins.map((each) => ({
      share: each.share,
      luminance: passing * leftAlong(over, metres, each.slope, reachMetres) * atMirror(each, sent.candela),
    }));
    luminance = Math.max(
      luminance,
      bright.reduce((sum, each) => sum + each.share * each.luminance, 0),
    );
    brightest = Math.max(brightest, ...bright.map((each) => each.luminance));
  }
  if (luminance === 0) return null;
  return {
    lampId: form.itemId,
    deckId: deck.pieceId,
    wetness,
    seconds: scene.seconds,
    at,
    frame,
    frameNear: frameOf(camera, places[0].at),
    frameFar: frameOf(camera, places[PLACES - 1].at),
    lengthMetres: streak.farMetres - streak.nearMetres,
    widthMetres: streak.widthMetres,
    seen: seen / PLACES,
    incidenceDegrees: (acos(sin(streak.elevation)) * 180) / Math.PI,
    reflectance: fresnel(sin(streak.elevation), skin.index).unpolarised,
    luminance,
    brightest,
    stops: stopsBetween(greyLuminance(setup), luminance),
  };
}

/** Of a lamp's highlights in the dry and the wet areas of a deck, the brightest. */
function highlightOf(
  scene: LightScene,
  setup: Setup,
  camera: Camera,
  lamp: SceneLamp,
  deck: DeckPlane,
): Highlight | null {
  let best: Highlight | null = null;
  for (const wetness of wetnessesOf(scene.plan.ground)) {
    const found = highlightOn(scene, setup, camera, lamp, deck, wetness);
    if (found && (!best || found.luminance > best.luminance)) best = found;
  }
  return best;
}

/**
 * The highlights that lamps put into the decks of a scene for a setup: where, how long, how bright; of each lamp and
 * each bulb of a string whose streak is in frame, lit and not wholly covered, brightest first. On dry ground too, where
 * they are faint and broad; where areas of a deck are wetter than others, the brightest on any of them. Cloths and
 * windows are not asked.
 *
 * Source: [water-reflectance], [microfacets], [glitter-path]
 */
export function highlightsIn(scene: LightScene, setup: Setup, camera: Camera): readonly Highlight[] {
  const decks = deckPlanes(scene.plan);
  return scene.lamps
    .flatMap((lamp) => decks.flatMap((deck) => highlightOf(scene, setup, camera, lamp, deck) ?? []))
    .sort((a, b) => b.luminance - a.luminance);
}

/** The highlights of a setup at an instant of the action's clock, seconds. */
export const highlightsAt = (plan: Plan, setup: Setup, seconds: number): readonly Highlight[] =>
  highlightsIn(lightScene(plan, setup, seconds), setup, cameraAt(plan, setup, seconds));

/** What one lamp, or all bulbs of a string, put into the decks over a setup's span. */
export interface LampHighlight {
  readonly lampId: string;
  /** When it is in frame, [from, to] on the action's clock. */
  readonly spans: readonly (readonly [number, number])[];
  /** At its brightest. */
  readonly brightest: Highlight;
  /** How many bulbs of a string show at that moment; 1 of any other lamp. */
  readonly count: number;
}

/** How often a span is asked for highlights, seconds. */
export const HIGHLIGHT_STEP_SECONDS = 0.5;
/** Highlights farther under middle grey than this are tone without texture, and are not told. Source: [zone-system] */
export const LEAST_HIGHLIGHT_STOPS = -4;

/**
 * Which lamps put a highlight in frame over a setup's span, every half second and at its end, brightest first.
 * @param leastStops over middle grey; fainter ones are left out
 * @param span another stretch of the action's clock than the setup's own
 */
export function highlightsOver(
  plan: Plan,
  setup: Setup,
  leastStops = LEAST_HIGHLIGHT_STOPS,
  span: readonly [from: number, to: number] = spanOf(plan, setup),
): readonly LampHighlight[] {
  const [from, to] = span;
  const steps = Math.max(0, Math.ceil((to - from) / HIGHLIGHT_STEP_SECONDS - 1e-9));
  const byLamp = new Map<string, { spans: [number, number][]; brightest: Highlight; count: number }>();
  let scene: LightScene | null = null;
  let before = -Infinity;
  for (let step = 0; step <= steps; step += 1) {
    const seconds = Math.min(to, from + step * HIGHLIGHT_STEP_SECONDS);
    scene = lightScene(plan, setup, seconds, scene);
    const counts = new Map<string, number>();
    const found = highlightsIn(scene, setup, cameraAt(plan, setup, seconds)).filter(
      ({ stops }) => stops >= leastStops,
    );
    for (const { lampId } of found) counts.set(lampId, (counts.get(lampId) ?? 0) + 1);
    for (const [lampId, count] of counts) {
      const brightest = found.find((highlight) => highlight.lampId === lampId) ?? found[0];
      const known = byLamp.get(lampId) ?? { spans: [], brightest, count };
      const last = known.spans[known.spans.length - 1];
      if (last && last[1] === before) last[1] = seconds;
      else known.spans.push([seconds, seconds]);
      const isBrighter = brightest.luminance > known.brightest.luminance;
      byLamp.set(lampId, isBrighter ? { ...known, brightest, count } : known);
    }
    before = seconds;
  }
  return [...byLamp]
    .map(([lampId, found]): LampHighlight => ({ lampId, ...found }))
    .sort((a, b) => b.brightest.luminance - a.brightest.luminance);
}
