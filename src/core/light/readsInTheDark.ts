import { unit } from '../form/build/vector';
import { takesBlack } from '../form/gear/blacked';
import { cameraAt } from '../optics/camera';
import type { Plan, UprightLimits } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { borrowScratch, type Look, look } from '../sight/look';
import type { StagePart } from '../sight/stage';
import { findThin } from '../sight/thin';
import { greyLuminance, LEAST_LUMINANCE, stopsBetween } from './exposure';
import { BLACKED } from './finishes';
import { JUST_NOTICEABLE_RATIO } from './flickerSafe';
import {
  pixelsAround,
  pixelsByPart,
  rayAt,
  rayOfPixel,
  rectWithSurroundings,
  type Sample,
  samplesOf,
  thinSamples,
} from './frameSamples';
import { type LightScene, lightScene } from './lightScene';
import { type PartLuminance, partLuminance } from './partLuminance';
import { skyLuminance, throughHaze } from './surroundings';
import { likeOf, UPRIGHTS, type Upright, uprightOf, uprightsOf } from './uprights';

/** When something is lost in the dark. */
export interface DarkThresholds {
  /** Less contrast with what is round it than this, stops, cannot be told apart. */
  readonly contrastStops: number;
  /** Where it and what is round it both lie this far under middle grey, stops, no texture is left. */
  readonly stopsUnder: number;
  /** What passes for one of the set's uprights. */
  readonly uprights: UprightLimits;
}

/**
 * The ratio that is just noticed, and zone I, tone without texture. Both are of the picture as it is shot: whoever lifts
 * the shadows afterwards brings things back. Source: [just-noticeable], [zone-system]
 */
export const DARK: DarkThresholds = {
  contrastStops: stopsBetween(1, JUST_NOTICEABLE_RATIO),
  stopsUnder: 4,
  uprights: UPRIGHTS,
};

/** What a plan counts as lost in the dark. */
export const darkOf = ({ dark }: Plan): DarkThresholds => ({
  ...(dark ?? DARK),
  uprights: dark?.uprights ?? UPRIGHTS,
});

/** How bright something is beside what is round it. */
export interface Reads {
  /** cd/m². */
  readonly luminance: number;
  /** Over what is round it; negative where it is darker. */
  readonly contrastStops: number;
  /** Under what the set exposure renders as middle grey; negative over it. */
  readonly stopsUnder: number;
  readonly isLost: boolean;
}

/** One named part of an item, or several of one name. */
export interface PartReads extends Reads {
  readonly name: string;
  /** Share of the frame. */
  readonly share: number;
  /** Mean luminance of what is round it in frame, cd/m². */
  readonly around: number;
  /** With black tape or cloth over it, where it takes any. */
  readonly blacked: Reads;
  /** The lamp or cloth that gives it most, and how it reads with that flagged off it; null where none reaches it. */
  readonly flagged: (Reads & { readonly itemId: string }) | null;
  /** How many uprights of the set it is like in width and brightness; null for what is no upright. */
  readonly likeUprights: number | null;
}

/** Lost: no part reads. Passes: those that do are uprights among others like them. */
export type DarkVerdict = 'reads' | 'passes for an upright' | 'lost in the dark';

/** How an item reads in the dark. */
export interface ItemReads {
  readonly itemId: string;
  readonly seconds: number;
  readonly verdict: DarkVerdict;
  /** Largest share first. */
  readonly parts: readonly PartReads[];
  /** The verdict with all of it blacked, and with each of its parts flagged off its strongest lamp. */
  readonly blackedVerdict: DarkVerdict;
  readonly flaggedVerdict: DarkVerdict;
}

/** Surroundings are worked out once for squares of so many pixels. */
const CELL_PIXELS = 12;

/** What one look at one instant shares between all items. */
interface Scenery {
  readonly seen: Look;
  readonly scene: LightScene;
  readonly grey: number;
  readonly thresholds: DarkThresholds;
  readonly uprights: () => readonly Upright[];
  /** Luminance by part and square. */
  readonly known: Map<string, number>;
}

function luminanceAround({ seen, scene, known }: Scenery, at: number): number {
  const { grid, buffer, stage } = seen;
  const [x, y] = [Math.floor(at / grid.height), at % grid.height];
  const tag = buffer.owner[at];
  const ray = rayOfPixel(seen, x, y);
  if (tag === 0) return skyLuminance(scene.ambient, unit(ray.direction));
  const key = `${tag} ${Math.floor(x / CELL_PIXELS)} ${Math.floor(y / CELL_PIXELS)}`;
  const luminance =
    known.get(key) ??
    partLuminance(scene, stage.parts[tag - 1], ray)?.total ??
    skyLuminance(scene.ambient, unit(ray.direction));
  known.set(key, luminance);
  return luminance;
}

function readsAt({ grey, thresholds }: Scenery, luminance: number, around: number): Reads {
  const [own, other] = [Math.max(LEAST_LUMINANCE, luminance), Math.max(LEAST_LUMINANCE, around)];
  const contrastStops = stopsBetween(other, own);
  const stopsUnder = stopsBetween(own, grey);
  const isBlack = Math.min(stopsUnder, stopsBetween(other, grey)) >= thresholds.stopsUnder;
  return {
    luminance: own,
    contrastStops,
    stopsUnder,
    isLost: isBlack || Math.abs(contrastStops) < thresholds.contrastStops,
  };
}

const mean = (values: readonly number[]): number =>
  values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;

function lit(
  { seen, scene }: Scenery,
  part: StagePart,
  samples: readonly Sample[],
): readonly PartLuminance[] {
  return samples.flatMap(({ x, y, at }) => {
    const ray = at ? rayAt(seen, x + 0.5, y + 0.5) : rayOfPixel(seen, x, y);
    return partLuminance(scene, part, ray, at) ?? [];
  });
}

/** What samples have from the lamp that gives them most. */
function strongest(
  found: readonly PartLuminance[],
): { readonly itemId: string; readonly given: number } | null {
  const byItem = new Map<string, number>();
  for (const each of found)
    for (const [id, given] of each.byItem) byItem.set(id, (byItem.get(id) ?? 0) + given / found.length);
  const [most] = [...byItem].sort((a, b) => b[1] - a[1]);
  return most ? { itemId: most[0], given: most[1] } : null;
}

/** How bright all placed parts of one name are together, and what is round them. */
interface Brightness {
  readonly litParts: readonly { readonly part: StagePart; readonly found: readonly PartLuminance[] }[];
  readonly found: readonly PartLuminance[];
  readonly own: number;
  readonly around: number;
}

function brightnessOf(
  scenery: Scenery,
  parts: readonly StagePart[],
  pixels: ReadonlyMap<number, readonly number[]>,
): Brightness | null {
  const { seen } = scenery;
  const sampled = parts.map((part) => {
    const own = pixels.get(part.index);
    return { part, samples: own ? samplesOf(seen, own) : thinSamples(seen, part) };
  });
  const litParts = sampled.map(({ part, samples }) => ({ part, found: lit(scenery, part, samples) }));
  const found = litParts.flatMap((each) => each.found);
  if (found.length === 0) return null;
  const samples = sampled.flatMap((each) => each.samples);
  const around = mean(pixelsAround(seen, parts[0].item, samples).map((at) => luminanceAround(scenery, at)));
  return { litParts, found, own: mean(found.map(({ total }) => total)), around };
}

/** How all placed parts of one name read together. */
function readsOfParts(
  scenery: Scenery,
  name: string,
  parts: readonly StagePart[],
  pixels: ReadonlyMap<number, readonly number[]>,
): PartReads | null {
  const { seen, scene, uprights, thresholds } = scenery;
  const brightness = brightnessOf(scenery, parts, pixels);
  if (!brightness) return null;
  const { litParts, found, own, around } = brightness;
  const most = strongest(found);
  // What glows, and what a lens looks through, is left uncovered.
  const blacked = mean(
    litParts.flatMap(({ part, found: own }) =>
      own.map(({ lux, total, metres }) =>
        takesBlack(part.shape.substance)
          ? throughHaze(scene.ambient, (BLACKED.diffuse * lux) / Math.PI, metres)
          : total,
      ),
    ),
  );
  const upright = parts
    .flatMap((part) => uprightOf(seen, scene, part, thresholds.uprights) ?? [])
    .sort((a, b) => b.pixels - a.pixels)[0];
  return {
    ...readsAt(scenery, own, around),
    name,
    share: parts.reduce((sum, part) => sum + seen.direct.partPixels[part.index], 0) / seen.grid.framePixels,
    around,
    blacked: readsAt(scenery, blacked, around),
    flagged: most && { itemId: most.itemId, ...readsAt(scenery, own - most.given, around) },
    likeUprights: upright ? likeOf(upright, uprights(), thresholds.uprights) : null,
  };
}

function verdictOf(
  { thresholds }: Scenery,
  parts: readonly PartReads[],
  isLost: (part: PartReads) => boolean,
): DarkVerdict {
  const showing = parts.filter((part) => !isLost(part));
  if (showing.length === 0) return 'lost in the dark';
  return showing.every(
    ({ likeUprights }) => likeUprights !== null && likeUprights >= thresholds.uprights.among,
  )
    ? 'passes for an upright'
    : 'reads';
}

/** The parts of an item that show, by their names. */
function shownParts({ stage, direct }: Look, item: number): ReadonlyMap<string, readonly StagePart[]> {
  const byName = new Map<string, StagePart[]>();
  for (let k = stage.firstPart[item]; k < stage.firstPart[item + 1]; k += 1) {
    if (direct.partPixels[k] === 0) continue;
    const part = stage.parts[k];
    byName.set(part.name, [...(byName.get(part.name) ?? []), part]);
  }
  return byName;
}

function readsOfItem(
  scenery: Scenery,
  item: number,
  pixels: ReadonlyMap<number, readonly number[]>,
): ItemReads | null {
  const { seen, scene } = scenery;
  const parts = [...shownParts(seen, item)]
    .flatMap(([name, own]) => readsOfParts(scenery, name, own, pixels) ?? [])
    .sort((a, b) => b.share - a.share || (a.name < b.name ? -1 : 1));
  if (parts.length === 0) return null;
  return {
    itemId: seen.stage.forms[item].id,
    seconds: scene.seconds,
    verdict: verdictOf(scenery, parts, ({ isLost }) => isLost),
    parts,
    blackedVerdict: verdictOf(scenery, parts, ({ blacked }) => blacked.isLost),
    flaggedVerdict: verdictOf(scenery, parts, ({ flagged, isLost }) => flagged?.isLost ?? isLost),
  };
}

/** Lends the look of a setup at an instant, with the light, and takes it back: at all pixels, or at some items'. */
function inScenery<Answer>(
  plan: Plan,
  setup: Setup,
  seconds: number,
  thresholds: DarkThresholds,
  itemIds: readonly string[],
  where: 'everywhere' | 'at the items',
  ask: (scenery: Scenery, items: ReadonlySet<number>) => Answer,
): Answer | null {
  const scene = lightScene(plan, setup, seconds);
  const { stage } = scene.blockers;
  const camera = cameraAt(plan, setup, seconds);
  const { scratch, giveBack } = borrowScratch(camera);
  try {
    const items = new Set(
      itemIds.map((id) => stage.forms.findIndex((form) => form.id === id)).filter((item) => item >= 0),
    );
    const rect =
      where === 'everywhere' ? undefined : rectWithSurroundings(stage, items, camera, scratch.grid);
    if (rect === null) return null;
    const seen = look(stage, camera, scratch, rect && { rect });
    findThin(seen, items);
    let uprights: readonly Upright[] | null = null;
    const scenery: Scenery = {
      seen,
      scene,
      grey: greyLuminance(setup),
      thresholds,
      uprights: () => {
        uprights ??= uprightsOf(seen, scene, thresholds.uprights);
        return uprights;
      },
      known: new Map(),
    };
    return ask(scenery, items);
  } finally {
    giveBack();
  }
}

/**
 * How items read in the dark through a setup at an instant of the action's clock, seconds: each part that shows by the
 * mean luminance of a dozen of its pixels against that of the pixels beside the item's outline, and against the set
 * exposure. Items that do not show are left out. The deck's highlights and what stands behind wire or glass are not in
 * it. An instant's looks and light are shared: ask for all items of one instant at once.
 */
export function readsInTheDark(
  plan: Plan,
  setup: Setup,
  seconds: number,
  itemIds: readonly string[],
  thresholds: DarkThresholds = darkOf(plan),
): readonly ItemReads[] {
  return (
    inScenery(plan, setup, seconds, thresholds, itemIds, 'everywhere', (scenery, items) => {
      const pixels = pixelsByPart(scenery.seen, items);
      return [...items].flatMap((item) => readsOfItem(scenery, item, pixels) ?? []);
    }) ?? []
  );
}

/**
 * Whether no part of an item reads there that shows: what `readsInTheDark` says of it, asked part by part in the
 * same order, until one reads, and looked at nowhere but round the item. Null where none shows.
 */
export function isLostAt(plan: Plan, setup: Setup, seconds: number, itemId: string): boolean | null {
  return inScenery(plan, setup, seconds, darkOf(plan), [itemId], 'at the items', (scenery, items) => {
    const { seen } = scenery;
    const pixels = pixelsByPart(seen, items);
    const named = [...items].flatMap((item) => [...shownParts(seen, item).values()]);
    let shows = false;
    for (const parts of named) {
      const brightness = brightnessOf(scenery, parts, pixels);
      if (!brightness) continue;
      if (!readsAt(scenery, brightness.own, brightness.around).isLost) return false;
      shows = true;
    }
    return shows || null;
  });
}
