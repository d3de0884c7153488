/** The few shapes of a framing decision list that this program writes. Source: [fdl] */
export interface Dimensions {
  readonly width: number;
  readonly height: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A shape that somebody wants, in no camera yet. Width and height are whole numbers. */
export interface FramingIntent {
  readonly label: string;
  readonly id: string;
  readonly aspect_ratio: Dimensions;
  readonly protection: 0;
}

/** Where an intent lies in a canvas, in its units from its upper left corner. */
export interface FramingDecision {
  readonly label: string;
  readonly id: string;
  readonly framing_intent_id: string;
  readonly dimensions: Dimensions;
  readonly anchor_point: Point;
}

/** What a camera records. */
export interface Canvas {
  readonly label: string;
  readonly id: string;
  readonly source_canvas_id: string;
  readonly dimensions: Dimensions;
  readonly effective_dimensions?: Dimensions;
  readonly effective_anchor_point?: Point;
  readonly physical_dimensions: Dimensions;
  readonly anamorphic_squeeze: number;
  readonly framing_decisions: readonly FramingDecision[];
  readonly _standclear: Readonly<Record<string, string | number>>;
}

export interface Context {
  readonly label: string;
  readonly context_creator: string;
  readonly canvases: readonly Canvas[];
}

export interface FramingDecisionList {
  readonly uuid: string;
  readonly version: { readonly major: 2; readonly minor: 0 };
  readonly fdl_creator: string;
  readonly default_framing_intent?: string;
  readonly framing_intents: readonly FramingIntent[];
  readonly contexts: readonly Context[];
}
