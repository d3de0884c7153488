import { areaOf } from '../../plan/areas';
import { tidySpot } from '../../plan/edits/tidy';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { boundsOf } from '../../plan/walkWays/planar';
import { areaAt, isMirroring } from '../../plan/wetness';
import { hypot } from '../../units/steadyMath';
import { type Case, type Finding, NO_COST, worstWatch } from './case';
import { stageIn, verdictsOn } from './judge';
import { isFinding } from './known';
import { type RemedyEdit, withRemedy } from './remedyEdits';
import type { Remedy } from './types';
import { lengthWords, letterOf } from './words';

/** What is dried round the spots where a thing is mirrored, metres; an estimate, no source. */
const ROUND_METRES = 0.3;

/** More of the decks than this is no patch of them any more; an estimate, no source. */
const MOST_OF_DECKS = 0.5;

/** Whether an outline is a patch of the decks, and not as good as all of them. */
function isPatch(plan: Plan, outline: readonly Spot[]): boolean {
  const decks = plan.pieces.reduce(
    (sum, piece) => sum + (piece.kind === 'deck' ? areaOf(piece.outline) : 0),
    0,
  );
  return areaOf(outline) <= MOST_OF_DECKS * decks;
}

/** Where the image of a thing lies in the level deck below it, over all cameras of the case's setup: spots [x, z]. */
function imageSpots({ known, one, item }: Case): readonly Spot[] {
  const stage = stageIn(known.plan, one, item.record.id);
  if (!stage) return [];
  return one.watches.flatMap(({ camera: { pose } }) =>
    stage.parts.flatMap(({ centre, radius }): Spot[] => {
      const [x, y, z] = pose.position;
      const [low, high] = [Math.max(0, centre[1] - radius), centre[1] + radius];
      return [low, high].flatMap((height): Spot[] => {
        if (y <= 0 || y + height <= 0) return [];
        const share = y / (y + height);
        const spread = Math.min(radius, 0.5) * share;
        const spot: Spot = [x + (centre[0] - x) * share, z + (centre[2] - z) * share];
        return [
          [spot[0] - spread, spot[1] - spread],
          [spot[0] + spread, spot[1] + spread],
        ];
      });
    }),
  );
}

/** The rectangle round some spots along a camera's view, and its sides, metres. */
function rectangleAround(spots: readonly Spot[], { camera }: ReturnType<typeof worstWatch>) {
  const { right } = camera.pose;
  const long = hypot(right[0], right[2]);
  const across: Spot = [right[0] / long, right[2] / long];
  const deep: Spot = [across[1], -across[0]];
  const along = ([x, z]: Spot, way: Spot): number => x * way[0] + z * way[1];
  const [u0, v0, u1, v1] = boundsOf(
    spots.map((spot): Spot => [along(spot, across), along(spot, deep)]),
    ROUND_METRES,
  );
  const at = (p: number, q: number): Spot =>
    tidySpot([across[0] * p + deep[0] * q, across[1] * p + deep[1] * q]);
  return {
    outline: [at(u0, v0), at(u1, v0), at(u1, v1), at(u0, v1)],
    metres: [u1 - u0, v1 - v0] as const,
  };
}

/** The patch of a wet deck that mirrors the item, dried: where it is seen in the deck alone. */
export function* dryings(of: Case): Finding {
  const { known, one, item, report } = of;
  const { plan } = known;
  const isWet =
    isMirroring(plan.ground.wetness) || (plan.ground.areas ?? []).some(({ wetness }) => isMirroring(wetness));
  if (report.verdict !== 'mirrored' || !isWet) return [];
  const spots = imageSpots(of);
  if (spots.length === 0) return [];
  const { outline, metres } = rectangleAround(spots, worstWatch(of));
  if (!isPatch(plan, outline)) return [];
  const edits: readonly RemedyEdit[] = [{ edit: 'addArea', args: { wetness: 'dry', outline } }];
  const after = withRemedy(plan, { edits });
  if (after === plan || areaAt(after.ground, spots[0])?.wetness !== 'dry') return [];
  const verdicts = yield* verdictsOn(after, one, [item.record.id]);
  const verdict = verdicts.get(item.record.id);
  if (!verdict || isFinding(report.wish, verdict)) return [];
  const size = metres.map(lengthWords).join(' by ');
  return [
    {
      kind: 'dry the floor',
      edits,
      words: `Drying ${size} of the deck takes its image out of ${letterOf(plan, one.setup.id)}.`,
      cost: NO_COST,
      after: verdict,
      relies: 'geometry',
      proved: true,
    },
  ];
}

/** Accepting the finding, with a reason that somebody has to say. */
export function* lettingShow({ known, one, item, report }: Case): Finding {
  yield 0.5;
  const remedy: Remedy = {
    kind: 'let it show',
    edits: [{ edit: 'letShow', args: { id: item.record.id, setupId: one.setup.id, reason: '' } }],
    words: `Let it show in ${letterOf(known.plan, one.setup.id)}, with the reason why it may.`,
    cost: NO_COST,
    after: report.verdict,
    relies: 'likeness',
    proved: true,
    asksReason: true,
  };
  return report.accepted ? [] : [remedy];
}

/** A remedy that asks for a reason, with it. */
export const withReason = (remedy: Remedy, reason: string): Remedy => ({
  ...remedy,
  edits: remedy.edits.map(
    (each): RemedyEdit => (each.edit === 'letShow' ? { ...each, args: { ...each.args, reason } } : each),
  ),
});
