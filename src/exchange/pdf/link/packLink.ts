import type { Plan } from '../../../core/plan/schema/plan';
import { linkOfPlan } from '../../link/link';
import { type QrSquares, qrOf } from '../../link/qr';

/** The link of a plan as it goes on paper and into a file. */
export interface PackLink {
  /** The whole address, plan included. */
  readonly address: string;
  /** Its code; null where it is too long for one. */
  readonly code: QrSquares | null;
  /** What the link does not carry, a sentence each. */
  readonly leftOut: readonly string[];
}

/**
 * The link of a plan to a page.
 * @param page the page's address without anything after `#`
 * @throws LinkTooLarge for a plan that no link can hold
 */
export function packLinkOf(plan: Plan, page: string): PackLink {
  const { fragment, leftOut } = linkOfPlan(plan);
  const address = `${page.replace(/#.*$/s, '')}#${fragment}`;
  return { address, code: qrOf(address), leftOut };
}

/** Why a link has no code. */
export const noCodeWords = ({ address }: PackLink): string =>
  `The link has ${address.length} characters, too many for one code.`;
