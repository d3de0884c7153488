import { type MatchBy, type MatchingSetup, matchSetup } from '../../../core/continuity/matchSetup';
import { type MatchingSinglesFinding, type Single, singleAt } from '../../../core/continuity/singles';
import { reposeCamera } from '../../../core/plan/edits/reposeCamera';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatDegrees } from '../../../core/units/angles';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import { formatShare } from '../../../core/units/shares';

/** Which of two singles changes, and by what it is matched to the other. */
export interface Matching {
  readonly finding: MatchingSinglesFinding;
  /** True where the earlier setup is matched to the later one. */
  readonly earlier: boolean;
  readonly by: MatchBy;
}

/** The camera that matches one single to the other, and all three as they are framed; null where there is none. */
export interface Matched {
  readonly match: MatchingSetup;
  readonly model: Single;
  readonly now: Single;
  readonly then: Single | null;
}

export function matched(
  plan: Plan,
  { finding, earlier, by }: Matching,
  lengths: LengthSystem,
): Matched | null {
  const { singles, atSeconds } = finding;
  const [own, model] = earlier ? singles : [singles[1], singles[0]];
  if (atSeconds === null) return null;
  const match = matchSetup(plan, {
    setupId: own.setupId,
    modelId: model.setupId,
    seconds: atSeconds,
    by,
    performerId: own.performerId,
    modelPerformerId: model.performerId,
    lengths,
  });
  if (!match) return null;
  const moved = reposeCamera(plan, match.change);
  const after = moved.setups.find(({ id }) => id === own.setupId);
  const then = after ? singleAt(moved, after, atSeconds, own.performerId) : null;
  return { match, model, now: own, then };
}

const lens = ({ focalMm }: Single): string =>
  `${formatNumber(focalMm, Number.isInteger(focalMm) ? 0 : 1)}${NBSP}mm`;

/** What two singles are compared by, in the order of a camera report: each in words. */
export const MATCH_ROWS: readonly {
  readonly word: string;
  readonly text: (single: Single, lengths: LengthSystem) => string;
}[] = [
  { word: 'lens', text: lens },
  { word: 'distance', text: (single, lengths) => formatLength(single.distanceMetres, lengths) },
  { word: 'height over the eyes', text: (single, lengths) => formatLength(single.aboveEyesMetres, lengths) },
  { word: 'tilt', text: (single) => formatDegrees(single.tiltDegrees, 1) },
  { word: 'head', text: (single) => formatShare(single.headHeight) },
  { word: 'looking room', text: (single) => formatShare(single.aheadShare) },
  { word: 'headroom', text: (single) => formatShare(single.headroom) },
];
