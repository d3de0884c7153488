import { spanOf } from '../optics/camera';
import { played } from '../plan/played';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { LUX_PER_FOOTCANDLE } from '../units/illuminance';
import { askedLux, stopsBetween } from './exposure';
import { type FaceLight, faceAt, faceLight, type LitFrom } from './face';
import { type LightScene, lightScene } from './lightScene';
import { type Probe, probeReading, probesOf } from './probes';

/** A level of light as it is metered. */
export interface Level {
  readonly lux: number;
  readonly footcandles: number;
  /** Above what the set stop asks for, negative under it; null without a setup. */
  readonly stops: number | null;
}

/** A level of one lamp or cloth. */
export interface SourceLevel extends Level {
  readonly itemId: string;
  /** The lamp that gives a cloth most of its light; null for a lamp itself. */
  readonly fedBy: string | null;
}

/** The level of a key, and how wide an edge half a metre before the face throws its shadow onto it, metres. */
export interface KeyLevel extends SourceLevel {
  /** Null for what is nearer than half a metre. */
  readonly shadowEdgeMetres: number | null;
}

/** The levels on one performer's face. */
export interface FaceLevels {
  readonly performerId: string;
  /** Where the light comes from, as seen by the face. */
  readonly from: LitFrom;
  readonly key: KeyLevel | null;
  readonly fill: Level;
  readonly back: SourceLevel | null;
  /** (Key + fill) to fill, and the same in stops. */
  readonly ratio: number;
  readonly ratioStops: number;
}

/** The levels at one beat: of every performer who is somewhere, in the plan's order, and of every probe. */
export interface BeatLevels {
  readonly beatId: string;
  readonly seconds: number;
  readonly faces: readonly FaceLevels[];
  readonly probes: readonly Level[];
}

/** The levels through a setup, or on the roof. */
export interface Levels {
  /** Null for the roof as the plan has it. */
  readonly setupId: string | null;
  /** What the set stop asks for, lux; null without a setup. */
  readonly askedLux: number | null;
  readonly beats: readonly BeatLevels[];
}

/** A level above 0 against what a stop asks for. */
export const levelOf = (lux: number, asked: number | null): Level => ({
  lux,
  footcandles: lux / LUX_PER_FOOTCANDLE,
  stops: asked === null || lux <= 0 ? null : stopsBetween(asked, lux),
});

/** The levels on one face, of what lights it. */
export function levelsOn(
  { face, key, keyLux, fillLux, back, backLux, ratio, from }: FaceLight,
  asked: number | null,
): FaceLevels {
  return {
    performerId: face.performerId,
    from,
    key: key && {
      itemId: key.itemId,
      fedBy: key.fedBy,
      ...levelOf(keyLux, asked),
      shadowEdgeMetres: key.shadowEdgeMetres,
    },
    fill: levelOf(fillLux, asked),
    back: back && { itemId: back.itemId, fedBy: back.fedBy, ...levelOf(backLux, asked) },
    ratio,
    ratioStops: stopsBetween(1, ratio),
  };
}

/** The levels on the faces of a scene; `plan` as the scene's setup plays it. */
export function faceLevels(plan: Plan, scene: LightScene, asked: number | null): readonly FaceLevels[] {
  return plan.cast.flatMap((performer): FaceLevels[] => {
    const face = faceAt(performer, plan, scene.seconds);
    return face ? [levelsOn(faceLight(scene, face), asked)] : [];
  });
}

/** What meters read in a scene. */
export const probeLevels = (
  probes: readonly Probe[],
  scene: LightScene,
  asked: number | null,
): readonly Level[] => probes.map((probe) => levelOf(probeReading(scene, probe).lux, asked));

/**
 * The levels at every performer's face, and at probes (the plan's own if no others are given), at every beat of a
 * setup's span, with its cheated marks and against its stop; at every beat of the plan, and against none, on the roof
 * (`setup` null). Key, fill and back are those of `faceLight`; the key is what its lamp alone gives, as it is metered
 * with the others off.
 */
export function levels(plan: Plan, setup: Setup | null, probes: readonly Probe[] = probesOf(plan)): Levels {
  const asked = setup && askedLux(setup);
  const acted = setup ? played(plan, setup) : plan;
  const [from, to] = setup ? spanOf(plan, setup) : [-Infinity, Infinity];
  let scene: LightScene | null = null;
  const beats = plan.beats
    .filter(({ atSeconds }) => atSeconds >= from && atSeconds <= to)
    .map(({ id, atSeconds }): BeatLevels => {
      const now = lightScene(plan, setup, atSeconds, scene);
      scene = now;
      return {
        beatId: id,
        seconds: atSeconds,
        faces: faceLevels(acted, now, asked),
        probes: probeLevels(probes, now, asked),
      };
    });
  return { setupId: setup?.id ?? null, askedLux: asked, beats };
}

/** One line of the table that the report prints: a setup, a beat, a performer, and all levels as plain numbers. */
export interface LevelRow {
  readonly setup: string | null;
  readonly beat: string;
  readonly seconds: number;
  readonly performer: string;
  readonly key: string | null;
  readonly keyLux: number | null;
  readonly keyFootcandles: number | null;
  readonly keyStops: number | null;
  readonly fillLux: number;
  readonly fillFootcandles: number;
  readonly fillStops: number | null;
  readonly back: string | null;
  readonly backLux: number | null;
  readonly backFootcandles: number | null;
  readonly backStops: number | null;
  readonly ratio: number;
  readonly ratioStops: number;
}

/** The levels of a setup as rows, a performer at a beat each. */
export const levelRows = ({ setupId, beats }: Levels): readonly LevelRow[] =>
  beats.flatMap(({ beatId, seconds, faces }) =>
    faces.map(
      ({ performerId, key, fill, back, ratio, ratioStops }): LevelRow => ({
        setup: setupId,
        beat: beatId,
        seconds,
        performer: performerId,
        key: key?.itemId ?? null,
        keyLux: key?.lux ?? null,
        keyFootcandles: key?.footcandles ?? null,
        keyStops: key?.stops ?? null,
        fillLux: fill.lux,
        fillFootcandles: fill.footcandles,
        fillStops: fill.stops,
        back: back?.itemId ?? null,
        backLux: back?.lux ?? null,
        backFootcandles: back?.footcandles ?? null,
        backStops: back?.stops ?? null,
        ratio,
        ratioStops,
      }),
    ),
  );
