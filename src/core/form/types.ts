import type { Section } from '../plan/items';
import type { Distribution } from '../plan/schema/distribution';
import type { Wish } from '../plan/schema/texts';
import type { ModelSkin } from './models/heldModel';

/** What a part is made of: drives drawing and, later, light; sight only needs openness and reflection. */
export type Substance =
  | 'concrete'
  | 'asphalt'
  | 'felt'
  | 'tile'
  | 'timber'
  | 'boards'
  | 'brick'
  | 'render'
  | 'metal'
  | 'dark metal'
  | 'galvanised'
  | 'rubber'
  | 'black cloth'
  | 'white cloth'
  | 'card'
  | 'diffusion'
  | 'silver'
  | 'glass'
  | 'mirror'
  | 'wire mesh'
  | 'net'
  | 'glow'
  | 'window'
  | 'screen'
  | 'paint'
  | 'skin'
  | 'hair'
  | 'upper'
  | 'lower'
  | 'shoe'
  | 'feather'
  | 'linen'
  | 'terracotta';

/** Axis of a round member, in the part's own frame, metres. */
export interface Tube {
  readonly from: readonly [number, number, number];
  readonly to: readonly [number, number, number];
  readonly radius: number;
}

/** The shape of a part in its own frame. Immutable and shared: the same object means the same geometry. */
export interface PartShape {
  /** x, y, z per vertex, metres. Counter-clockwise triangles face outwards. */
  readonly positions: Float32Array;
  readonly indices: Uint32Array;
  readonly tubes: readonly Tube[];
  readonly substance: Substance;
  /** `#rrggbb` where the record gives a colour of its own (clothes, a tinted sign), else null. */
  readonly colour: string | null;
  /** 0 solid … 1 nothing there: share of light that passes a porous layer seen square on; null when solid. */
  readonly openness: number | null;
  /** The flat mirror that the whole part is, in its own frame: unit normal and a point on it; null when none. */
  readonly mirror: {
    readonly normal: readonly [number, number, number];
    readonly point: readonly [number, number, number];
  } | null;
  /** Whether drawing should smooth across edges (round things) or keep facets. */
  readonly smooth: boolean;
  /** Known to be no closed solid, so that nobody has to find out; where it is left out, whoever asks finds out. */
  readonly isOpen?: true;
  /** How an imported surface looks, corner by corner; it takes the place of the substance in the picture. */
  readonly skin?: ModelSkin;
}

/**
 * A part where it is at one instant. `worldFromPart` holds the rows of a 3 × 4 affine matrix
 * [m00 m01 m02 tx, m10 m11 m12 ty, m20 m21 m22 tz], a rigid motion; null means the shape is in world coordinates already.
 * Several placed parts of an item may share a name (both legs of a ladder); findings speak of the name.
 */
export interface PlacedPart {
  readonly name: string;
  readonly shape: PartShape;
  readonly worldFromPart: readonly number[] | null;
}

/** An item's form at one instant. */
export interface ItemForm {
  readonly id: string;
  readonly label: string;
  readonly kind: string;
  readonly section: Section;
  readonly wish: Wish;
  readonly parts: readonly PlacedPart[];
}

/** A source of light that an item's form carries, for drawing and photometry: where, which way, how strong. */
export interface LampForm {
  readonly itemId: string;
  readonly headClassId: string;
  readonly position: readonly [number, number, number];
  /** Unit vector along the axis. */
  readonly direction: readonly [number, number, number];
  readonly peakCandela: number;
  readonly beamDegrees: number;
  readonly fieldDegrees: number;
  /** The measured table that its light goes by, with the peak as above; null where beam and field are all there is. */
  readonly distribution: Distribution | null;
  readonly kelvin: number;
  readonly tint: string | null;
  readonly sizeMetres: readonly [number, number, number];
}
