import type { Caution, CautionStanding } from '../../../core/cautions/types';
import { standingOf } from '../../../core/cautions/wind/standingOf';
import { tippingOf } from '../../../core/cautions/wind/tipping';
import { windWords } from '../../../core/cautions/words';
import { anchorOf } from '../../../core/plan/edits/anchorOf';
import { metresBetween } from '../../../core/plan/runs';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import { isUnnoted } from '../../../desk/cautions/cautionsStore';
import { distance, type Spot } from '../geometry/spots';

/** Cautions in one place of the roof, as one mark. */
export interface CautionMark {
  readonly at: Spot;
  /** Keys, the heaviest first. */
  readonly keys: readonly string[];
  readonly standing: CautionStanding;
  /** Whether all of them are noted. */
  readonly noted: boolean;
  /** What a screen reader says of it. */
  readonly spoken: string;
}

/** One mark for all cautions within a distance of each other, metres; they come heaviest first. */
export function marksOf(
  cautions: readonly Caution[],
  noted: ReadonlySet<string>,
  samePlaceMetres: number,
): readonly CautionMark[] {
  const groups: { readonly at: Spot; readonly of: Caution[] }[] = [];
  for (const caution of cautions) {
    if (!caution.place) continue;
    const at: Spot = [caution.place[0], caution.place[2]];
    const same = groups.find((group) => distance(group.at, at) < samePlaceMetres);
    if (same) same.of.push(caution);
    else groups.push({ at, of: [caution] });
  }
  return groups.map(({ at, of }) => ({
    at,
    keys: of.map(({ id }) => id),
    standing: of[0].standing,
    noted: of.every((caution) => !isUnnoted(caution, noted)),
    spoken:
      of.length === 1
        ? `Caution: ${of[0].sentence}`
        : `${of.length} cautions in this place, the first: ${of[0].sentence}`,
  }));
}

/** A distance that a caution is about, metres. */
interface Measured {
  readonly from: Spot;
  readonly to: Spot;
  readonly words: string;
}

/** What of an opened caution is drawn on the roof, metres. */
export interface DrawnCaution {
  readonly standing: CautionStanding;
  /** What it is about, each to have a ring. */
  readonly rings: readonly Spot[];
  /** Edges that it is about, along their whole length. */
  readonly edges: readonly (readonly [Spot, Spot])[];
  readonly distances: readonly Measured[];
  /** The wind that tips it: where it stands, and which way the wind blows, compass degrees. */
  readonly wind: { readonly at: Spot; readonly headingDegrees: number } | null;
  /** Where its words stand, and what they are; empty for none. */
  readonly at: Spot | null;
  readonly words: string;
}

/** Cautions whose stretches are the edges themselves; those of the others are how far something is from an edge. */
const ALONG_EDGES = /^edge-(open|hole)\//;
/** Places closer than this have one ring, metres. */
const SAME_RING_METRES = 0.05;

function windOf(plan: Plan, { kind, itemIds }: Caution): DrawnCaution['wind'] {
  const stand = kind === 'wind' ? plan.gear.find(({ id }) => id === itemIds[0]) : undefined;
  if (stand?.kind !== 'stand') return null;
  const { headingDegrees } = tippingOf(standingOf(plan, stand));
  return headingDegrees === null ? null : { at: [stand.at[0], stand.at[2]], headingDegrees };
}

/** Words beside an opened caution: the wind that tips it, what it weighs, how wide a way is. */
function wordsOf({ kind, figures, id }: Caution, lengths: LengthSystem): string {
  const [first] = figures;
  if (!first) return '';
  if (kind === 'wind' && first.unit === 'm/s') return `tips in ${windWords(first.value)}`;
  if (kind === 'wind') return `${formatNumber(first.value, 0)}${NBSP}${first.unit} in a gust`;
  if (kind === 'load') return `${formatNumber(first.value, 0)}${NBSP}kg`;
  return kind === 'way out' && id.startsWith('way-out-narrow')
    ? `${formatLength(first.value, lengths, { decimals: 2 })} wide`
    : '';
}

/** What of a caution is drawn. */
export function drawnCaution(plan: Plan, caution: Caution, lengths: LengthSystem): DrawnCaution {
  const { id, place, stretches, itemIds, figures, standing } = caution;
  const along = ALONG_EDGES.test(id);
  const at: Spot | null = place && [place[0], place[2]];
  const [only] = figures;
  const distances = along
    ? []
    : stretches.map(([from, to]): Measured => {
        // What one caution is about is told as it is reckoned: from a housing, say, and not from its middle.
        const told = stretches.length === 1 && only ? only.value : metresBetween(from, to);
        return { from, to, words: formatLength(told, lengths, { decimals: 1 }) };
      });
  // Where a performer is meant is the caution's own place: their first mark may be elsewhere.
  const things = itemIds.filter(
    (itemId) => !along && !plan.cast.some((performer) => performer.id === itemId),
  );
  const spots = [
    ...(at && !along ? [at] : []),
    ...things.flatMap((itemId): Spot[] => {
      const anchor = anchorOf(plan, itemId);
      return anchor ? [anchor] : [];
    }),
  ];
  const rings = spots.filter(
    (spot, k) => spots.findIndex((other) => distance(other, spot) < SAME_RING_METRES) === k,
  );
  return {
    standing,
    rings,
    edges: along ? stretches : [],
    distances,
    wind: windOf(plan, caution),
    at,
    words: wordsOf(caution, lengths),
  };
}
