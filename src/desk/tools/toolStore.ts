import { createStore } from 'zustand/vanilla';
import type { Spot } from '../../core/plan/schema/numbers';
import type { SnapReason } from '../../core/plan/snap/types';

/** What two points are pressed for: to say how large a model or the picture under the roof is. */
export type Scaled = { readonly type: 'model'; readonly id: string } | { readonly type: 'underlay' };

/** A place of the roof that is wanted for something: the next press takes it. */
export interface WantedPlace {
  /** Tells whoever asked from others. */
  readonly key: string;
  /** What it is called, within a sentence: `point that Vera faces`. */
  readonly word: string;
  /** Takes the place, metres; a sentence where it is refused. */
  readonly take: (at: Spot) => string | null;
}

/** What is in the hand. Entries are those of the palette. */
export type Tool =
  | { readonly type: 'hand' }
  | { readonly type: 'put'; readonly entryId: string }
  | { readonly type: 'draw'; readonly entryId: string }
  | { readonly type: 'tape' }
  | { readonly type: 'opening'; readonly itemId: string }
  | { readonly type: 'two points'; readonly purpose: Scaled }
  | { readonly type: 'place'; readonly wanted: WantedPlace };

/** How the hand points. */
export interface Aim {
  /** How far things catch, metres. */
  readonly reachMetres: number;
  /** Whether nothing catches. */
  readonly free: boolean;
  /** Whether bearings are held to steps of 15 degrees. */
  readonly straight: boolean;
}

/** What is being drawn. */
export interface Stroke {
  /** Corners that are pressed already, metres. */
  readonly corners: readonly Spot[];
  /** Where the next one would be; null while nobody points. */
  readonly next: Spot | null;
  /** Why it would be there. */
  readonly why: readonly SnapReason[];
  readonly typedLengthMetres: number | null;
  readonly typedBearingDegrees: number | null;
  /** Where the hand itself is, and how it points. */
  readonly raw: Spot | null;
  readonly aim: Aim;
  /** Where a press began that may still be dragged: to turn what is put, to say how wide an opening is. */
  readonly held: Spot | null;
  /** Whether the keys point, so that it is read out. */
  readonly byKeys: boolean;
}

/** A length, a bearing or a measured distance that is being typed on the drawing. */
export interface Entry {
  readonly field: 'length' | 'bearing' | 'distance';
  readonly text: string;
  /** What would be understood instead; null while it is. */
  readonly fault: string | null;
}

/** Two points that wait for the distance between them as it was measured. */
export interface AskedDistance {
  readonly purpose: Scaled;
  readonly from: Spot;
  readonly to: Spot;
}

export interface ToolState {
  readonly tool: Tool;
  readonly stroke: Stroke | null;
  readonly entry: Entry | null;
  /** Why the last press or end was not taken, as a sentence; null once something else is done. */
  readonly refusal: string | null;
  readonly asksDistance: AskedDistance | null;
  /** Fields of what is being drawn that were typed while it is drawn; they hold for the next one too. */
  readonly fields: Readonly<Record<string, unknown>>;
}

export const HAND: Tool = { type: 'hand' };

/** The tool that is picked and what it is doing. Changed through the functions in this folder. */
export const toolStore = createStore<ToolState>()(() => ({
  tool: HAND,
  stroke: null,
  entry: null,
  refusal: null,
  asksDistance: null,
  fields: {},
}));

const NO_AIM: Aim = { reachMetres: 0, free: false, straight: false };

/** A stroke with nothing in it yet. */
export const EMPTY_STROKE: Stroke = {
  corners: [],
  next: null,
  why: [],
  typedLengthMetres: null,
  typedBearingDegrees: null,
  raw: null,
  aim: NO_AIM,
  held: null,
  byKeys: false,
};

/** Whether something other than the bare hand is picked. */
export const isPicked = (): boolean => toolStore.getState().tool.type !== 'hand';
