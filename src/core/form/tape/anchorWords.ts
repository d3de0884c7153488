import { metresBetween, spotFrom } from '../../plan/runs';
import type { Plan } from '../../plan/schema/plan';
import type { Anchor, RawAnchor } from './anchor';
import { landmarksOf } from './landmarks';

/** Nearer to a landmark than another by this much is seen without a tape, metres. Source: common practice, no source */
const PLAINLY_METRES = 0.5;

const COUNTED = ', number ';
/** What having to count corners is worth in metres of tape. Source: common practice, no source */
const COUNTED_METRES = 4;

/** `the stair house` as `the stair house's`, `the feed boxes` as `the feed boxes'`. */
const whose = (owner: string): string => (owner.endsWith('s') ? `${owner}'` : `${owner}'s`);

function plainWords({ owner, wind, what, face, hold }: RawAnchor): string {
  const words = what === '' ? owner : `${whose(owner)} ${wind} ${what}${face ? `, on its ${face} face` : ''}`;
  return hold === 'post' ? `the middle of ${words}` : words;
}

/** Gives each anchor words that no other has: of those that would sound alike, which is nearest to what, else a number. */
export function told(raw: readonly RawAnchor[], plan: Plan): readonly Anchor[] {
  const byWords = new Map<string, RawAnchor[]>();
  for (const anchor of raw) {
    const words = plainWords(anchor);
    byWords.set(words, [...(byWords.get(words) ?? []), anchor]);
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
  const landmarks = landmarksOf(plan).filter(({ pieceId }) => !own.has(pieceId));
  const near = alike.map((anchor) => {
    const nearest = landmarks
      .filter(({ at }) =>
        alike.every(
          (other) =>
            other === anchor || metresBetween(other.at, at) > metresBetween(anchor.at, at) + PLAINLY_METRES,
        ),
      )
      .sort((a, b) => metresBetween(a.at, anchor.at) - metresBetween(b.at, anchor.at))[0];
    return nearest ? `, the one nearest to ${nearest.name}` : null;
  });
  const [toEast, toSouth] = spotFrom([0, 0], plan.place.northDegrees + 180, 1);
  const southing = ({ at }: RawAnchor): number => at[0] * toEast + at[1] * toSouth;
  const fromNorth = [...alike].sort((a, b) => southing(a) - southing(b));
  return new Map(
    alike.map((anchor, k) => [
      anchor,
      near[k] ?? `${COUNTED}${fromNorth.indexOf(anchor) + 1} from the north`,
    ]),
  );
}
