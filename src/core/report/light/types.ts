import type { Standing } from '../../continuity/types';
import type { CatchLights } from '../../light/catchLight';
import type { EdgeLight } from '../../light/edgeLight';
import type { BeatLevels, Level } from '../../light/levels';
import type { SetupFlicker } from '../../light/mains';
import type { ItemReads } from '../../light/readsInTheDark';
import type { LampHighlight } from '../../light/wetFloor';
import type { FaceNow } from './lightNow';

/** What a sentence about light is about. */
export const LIGHT_SUBJECTS = [
  'flicker',
  'dark',
  'level',
  'ratio',
  'catch light',
  'edge',
  'highlight',
] as const;
export type LightSubject = (typeof LIGHT_SUBJECTS)[number];

/** One finding of light in words: `${name}: ${text}` or `${name} ${text}`. */
export interface LightSentence {
  readonly about: LightSubject;
  /** The gear or set piece that it is about; null for none. */
  readonly itemId: string | null;
  /** The performer that it is about; null for none. */
  readonly performerId: string | null;
  readonly name: string;
  /** Starts in lower case, or with a number; ends with a full stop. */
  readonly text: string;
  /** Whether a colon belongs after the name. */
  readonly colon: boolean;
  /** Breaks: the picture will not do as it stands. Said: worth knowing. Holds: as it should be. */
  readonly standing: Standing;
  /** When it is seen best, on the action's clock; null where it is about the whole span. */
  readonly atSeconds: number | null;
}

/** The light on a face through a setup. */
export interface FaceThrough extends FaceNow {
  /** Whether the setup shows the face then: in frame, large enough, turned towards the lens, nothing solid before it. */
  readonly isShown: boolean;
}

/** The levels at one beat of a setup's span, or at the one instant that was asked for. */
export interface LevelsThrough extends Omit<BeatLevels, 'faces' | 'probes'> {
  readonly faces: readonly FaceThrough[];
  /** By the ids of the plan's probes, in its order. */
  readonly probes: readonly (Level & { readonly id: string })[];
}

/** The light of one setup over its span, or at one instant. Nothing is rounded. */
export interface SetupLight {
  /** What the stop asks for on a face, lux. */
  readonly askedLux: number;
  /** What the exposure renders as middle grey, cd/m². */
  readonly greyLuminance: number;
  readonly flicker: SetupFlicker;
  readonly levels: readonly LevelsThrough[];
  /** In the decks, brightest first. */
  readonly highlights: readonly LampHighlight[];
  /**
   * How gear that shows reads in the dark, and of set pieces those that should keep out or must show: each when most of
   * it is seen, or, where it is lost then and not at other instants, at one of those.
   */
  readonly reads: readonly ItemReads[];
  /** What is mirrored in the eyes of every face that is shown, at the same moments as the levels. */
  readonly catchLights: readonly (CatchLights & { readonly seconds: number })[];
  /** The lit edges of every figure in frame, at the same moments. */
  readonly edges: readonly (EdgeLight & { readonly seconds: number })[];
  readonly sentences: readonly LightSentence[];
}
