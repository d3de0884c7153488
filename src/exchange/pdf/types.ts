import type { ClearGround } from '../../core/clearance/ground/types';
import type { PackingLine } from '../../core/night/packing/types';
import type { Night } from '../../core/night/types';
import type { Plan } from '../../core/plan/schema/plan';
import type { Report } from '../../core/report/types';
import type { LengthSystem } from '../../core/units/lengths';
import type { PackLink } from './link/packLink';
import type { PaperName } from './paper';
import type { Standing } from './standing';

/** What the parts of a pack that are words and tables are made of. */
export interface PartInput {
  readonly plan: Plan;
  readonly report: Report;
  readonly night: Night;
  readonly packing: readonly PackingLine[];
  /** What is set by tapes. */
  readonly standing: readonly Standing[];
  /** The crew's link; null where nobody said to which page, and where the plan is too large for one. */
  readonly link: PackLink | null;
  /** Why there is no link though a page was said, a sentence. */
  readonly noLink?: string;
  /** Digits that tell this state of the plan from others. */
  readonly fingerprint: string;
  /** Lengths in metres, light in lux; or feet and inches, and footcandles. Sentences of the plan as a whole stay metric. */
  readonly lengths: LengthSystem;
}

/** What a pack is made of. */
export interface PackInput extends PartInput {
  /** Clear ground, or a sentence that says why there is none. */
  readonly ground: { readonly ground: ClearGround } | { readonly why: string };
  readonly paper: PaperName;
  /** Pictures of setups by their ids, PNG files of the delivered frame. */
  readonly stills?: ReadonlyMap<string, Uint8Array>;
}

/** A pack as a file. */
export interface Pack {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly pages: number;
  /** What could not be printed as it is, in sentences. */
  readonly notes: readonly string[];
}
