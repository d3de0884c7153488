import { metresBetween, spotFrom } from '../../plan/runs';
import type { Plan } from '../../plan/schema/plan';
import type { Anchor, RawAnchor } from './anchor';
import { type Landmark, landmarksOf } from './landmarks';

/** Nearer to a landmark than another by this much is seen without a tape, metres. Source: common practice, no source */
const PLAINLY_METRES = 0.5;

const COUNTED = ', number ';
/** What having to count corners is worth in metres of tape. Source: common practice, no source */
const COUNTED_METRES = 4;

/** `the stair house` as `the stair house’s`, `the feed boxes` as `the feed boxes’`. */
const whose = (owner: string): string => (owner.endsWith('s') ? `${owner}’` : `${owner}’s`);

function plainWords({ owner, wind, what, face, hold }: RawAnchor): string {
  const words = what === '' ? owner : `${whose(owner)} ${wind} ${what}${face ? `, on its ${face} face` : ''}`;
  return hold === 'post' ? `the middle of ${words}` : words;
}

/** Gives each anchor words that no other has: of those that would sound alike, which is nearest to what, else a number. */
export function told(raw: readonly RawAnchor[], plan: Plan): readonly Anchor[] {
  const byWords = new Map<string, RawAnchor[]>();
  for (const anchor of raw) {
    const words = plainWords(anchor);
    const alike = byWords.get(words);
    if (alike) alike.push(anchor);
    else byWords.set(words, [anchor]);
  }
  const labels = new Map<RawAnchor, string>();
  for (const [words, alike] of byWords)
    for (const [anchor, suffix] of suffixes(alike, plan)) labels.set(anchor, words + suffix);
  const used = new Set<string>();
  return raw.map((anchor) => {
    const words = labels.get(anchor) ?? plainWords(anchor);
    const isCounted = words.includes(COUNTED);
    let label = words;
    for (let number = 2; used.has(label); number += 1) label = `${words}${COUNTED}${number}`;
    used.add(label);
    const { at, levels, pieceId, hold, withinMetres } = anchor;
    const reluctance = anchor.reluctance + (isCounted ? COUNTED_METRES : 0);
    return { label, at, levels, pieceId, hold, withinMetres, reluctance };
  });
}

function suffixes(alike: readonly RawAnchor[], plan: Plan): ReadonlyMap<RawAnchor, string> {
  if (alike.length === 1) return new Map([[alike[0], '']]);
  const own = new Set(alike.map(({ pieceId }) => pieceId));
  const near = new Map<RawAnchor, { readonly landmark: Landmark; readonly metres: number }>();
  for (const landmark of landmarksOf(plan)) {
    if (own.has(landmark.pieceId)) continue;
    const plain = plainlyNearest(alike, landmark);
    if (plain && plain.metres < (near.get(plain.anchor)?.metres ?? Number.POSITIVE_INFINITY))
      near.set(plain.anchor, { landmark, metres: plain.metres });
  }
  const [toEast, toSouth] = spotFrom([0, 0], plan.place.northDegrees + 180, 1);
  const southing = ({ at }: RawAnchor): number => at[0] * toEast + at[1] * toSouth;
  const fromNorth = [...alike].sort((a, b) => southing(a) - southing(b));
  return new Map(
    fromNorth.map((anchor, k) => {
      const nearest = near.get(anchor);
      const suffix = nearest
        ? `, the one nearest to ${nearest.landmark.name}`
        : `${COUNTED}${k + 1} from the north`;
      return [anchor, suffix];
    }),
  );
}

/** The one of some anchors that is plainly nearer to a landmark than all others, and how far it is; null for none. */
function plainlyNearest(
  alike: readonly RawAnchor[],
  { at }: Landmark,
): { readonly anchor: RawAnchor; readonly metres: number } | null {
  let [first, second] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  let found: RawAnchor | null = null;
  for (const anchor of alike) {
    const metres = metresBetween(anchor.at, at);
    if (metres < first) [first, second, found] = [metres, first, anchor];
    else second = Math.min(second, metres);
  }
  return found && second > first + PLAINLY_METRES ? { anchor: found, metres: first } : null;
}
