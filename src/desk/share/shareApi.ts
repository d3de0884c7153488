import type { Plan } from '../../core/plan/schema/plan';
import type { Hearing } from '../workers/hearing';

/** A code as one outline: dark squares of side 1 in a square of `size`, without the quiet zone around it. */
export interface CodeOutline {
  readonly size: number;
  /** For the `d` of a path. */
  readonly path: string;
}

/** A plan as a link, its code with it. */
export interface LinkAnswer {
  /** The whole address. */
  readonly address: string;
  /** What the link does not carry, as sentences. */
  readonly leftOut: readonly string[];
  /** What of the plan takes the most room in it, the most first. */
  readonly heaviest: readonly string[];
  /** Null where the address is too long for one code. */
  readonly code: CodeOutline | null;
}

/** What the worker that makes links answers. */
export interface ShareApi extends Hearing {
  /** @param page the address that opens the page, without anything after # */
  readonly link: (plan: Plan, page: string) => LinkAnswer;
}
