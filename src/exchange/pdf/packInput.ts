import { clearGroundSteps } from '../../core/clearance/ground/clearGround';
import { nightOf } from '../../core/night/nightOf';
import { packingOf } from '../../core/night/packing/packingOf';
import type { Plan } from '../../core/plan/schema/plan';
import { withNames } from '../../core/plan/withNames';
import type { Report } from '../../core/report/types';
import type { LengthSystem } from '../../core/units/lengths';
import { fingerprintOf } from '../fingerprint';
import { LinkTooLarge } from '../link/link';
import { packLinkOf } from './link/packLink';
import type { PaperName } from './paper';
import { standingOf } from './standing';
import type { PackInput } from './types';

/** How tall the stand is that clear ground is shown for where nobody says, metres: a lamp stand half up. Common practice, no source. */
export const STAND_METRES = 2.4;

/** What a pack is asked for; lengths in metres where nothing is said. */
export interface PackAsked {
  readonly paper: PaperName;
  readonly lengths?: LengthSystem;
  /** How tall the stand is that clear ground is shown for. */
  readonly heightMetres?: number;
  /** Of the page that the link opens, without anything after `#`; where nothing is said there is no link. */
  readonly address?: string;
}

/** The link to a page, where one is said; in a sentence why there is none where the plan is too large for one. */
function linkOf(plan: Plan, address: string | undefined): Pick<PackInput, 'link' | 'noLink'> {
  if (address === undefined) return { link: null };
  try {
    return { link: packLinkOf(plan, address) };
  } catch (error) {
    if (error instanceof LinkTooLarge) return { link: null, noLink: error.sentence };
    throw error;
  }
}

/** All that a pack needs beside the report, worked out. Yields the done share, 0..1. */
export function* packInputSteps(
  plan: Plan,
  report: Report,
  { paper, lengths = 'm', heightMetres = STAND_METRES, address }: PackAsked,
): Generator<number, PackInput, void> {
  const setupIds = plan.setups.map(({ id }) => id);
  const told = withNames(plan);
  const ground = yield* clearGroundSteps(told, { setupIds, of: { heightMetres } });
  const night = nightOf(told);
  return {
    plan,
    report,
    night,
    packing: packingOf(told, night),
    ground,
    standing: standingOf(told, lengths),
    ...linkOf(plan, address),
    fingerprint: fingerprintOf(plan),
    paper,
    lengths,
  };
}
