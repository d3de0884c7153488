import { describe, expect, test } from 'vitest';
import type { Anchor } from '../../../../src/core/form/tape/anchor';
import { costOf, NearAnchors } from '../../../../src/core/form/tape/nearAnchors';
import { type AnchorPair, bestPair } from '../../../../src/core/form/tape/pair';
import type { TapeFloor } from '../../../../src/core/form/tape/reach';
import type { Spot } from '../../../../src/core/plan/schema/numbers';
import { drawFrom } from '../../../plans/draw';

const anchorAt = (at: Spot, k: number, reluctance = 0): Anchor => ({
  label: `corner ${k}`,
  at,
  levels: [0],
  pieceId: `p${k}`,
  hold: 'corner',
  withinMetres: 0,
  reluctance,
});

/** A number between 0 and 1 that is always the same for the same places. */
const chance = (...numbers: readonly number[]): number => {
  const wave = Math.sin(numbers.reduce((sum, each, k) => sum + each * (k + 1) * 12.9898, 0)) * 43_758.5453;
  return wave - Math.floor(wave);
};

/** A floor on which a share of all tapes is in somebody's way, and of all places is off the deck. */
const floorOf = (reached: number, counted: () => void): TapeFloor => ({
  reaches: (from, to) => {
    counted();
    return chance(...from, ...to) < reached;
  },
  isTaken: (spot) => (chance(...spot) < 0.4 ? 'off the deck' : null),
});

const FLOORS: readonly number[] = [1, 0.6, 0.1, 0.02];

const away = (a: Spot, b: Spot): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** The best two of the 24 nearest that are reached, by trying all of them in the order of their cost. */
function plainly(floor: TapeFloor, at: Spot, anchors: readonly Anchor[]): readonly Anchor[] | null {
  const near = anchors
    .filter((anchor) => costOf(anchor, at) <= 105 && away(anchor.at, at) >= 0.05)
    .toSorted((a, b) => costOf(a, at) - costOf(b, at))
    .filter((anchor) => floor.reaches(anchor.at, at))
    .slice(0, 24);
  let best: { readonly two: readonly [Anchor, Anchor]; readonly cost: number } | null = null;
  for (const [k, one] of near.entries())
    for (const other of near.slice(k + 1)) {
      const [p, q, base] = [away(one.at, at), away(other.at, at), away(one.at, other.at)];
      const cosine = (p * p + q * q - base * base) / (2 * p * q);
      if (base < 0.05 || 1 - cosine * cosine < 1e-6) continue;
      const [ux, uz] = [(other.at[0] - one.at[0]) / base, (other.at[1] - one.at[1]) / base];
      const along = (at[0] - one.at[0]) * ux + (at[1] - one.at[1]) * uz;
      const mirrored: Spot = [2 * (one.at[0] + along * ux) - at[0], 2 * (one.at[1] + along * uz) - at[1]];
      const isPossible =
        floor.isTaken(mirrored) === null &&
        [one, other].every(({ at: from }) => floor.reaches(from, mirrored));
      const error = Math.sqrt((1 + Math.abs(cosine)) / (1 - cosine * cosine)) - 1;
      // Tapes that cross narrowly are taken only where no others do.
      const narrow = Math.abs(cosine) > Math.cos(Math.PI / 6) ? 1e6 : 0;
      const cost = costOf(one, at) + costOf(other, at) + 4 * error + (isPossible ? 1.5 : 0) + narrow;
      if (!best || cost < best.cost - 1e-9) best = { two: [one, other], cost };
    }
  return best?.two ?? null;
}

const labelsOf = (pair: AnchorPair | null): readonly string[] | null =>
  pair?.anchors.map(({ label }) => label) ?? null;

describe('the best two of many corners', () => {
  test.each(FLOORS)(
    'are those that trying all by twos finds, where a share of %d of the tapes is free',
    (reached) => {
      const draw = drawFrom(71);
      let found = 0;
      for (let round = 0; round < 60; round += 1) {
        const anchors = Array.from({ length: draw.whole(0, 400) }, (_, k) =>
          anchorAt([draw.between(-40, 40), draw.between(-40, 40)], k, draw.pick([0, 0, 1.5, 3, 20])),
        );
        const at: Spot = [draw.between(-30, 30), draw.between(-30, 30)];
        const floor = floorOf(reached, () => {});
        const expected = plainly(floor, at, anchors)?.map(({ label }) => label) ?? null;
        expect(labelsOf(bestPair(floor, at, new NearAnchors(anchors), ''))).toEqual(expected);
        if (expected) found += 1;
      }
      expect(found).toBeGreaterThan(20);
    },
  );

  test('are found without a look at the many corners that are dearer than both', () => {
    let asked = 0;
    const draw = drawFrom(5);
    const anchors = Array.from({ length: 10_000 }, (_, k) =>
      anchorAt([(k % 100) - 49.5, Math.floor(k / 100) - 49.5], k),
    );
    const near = new NearAnchors(anchors);
    const floor = floorOf(0.1, () => {
      asked += 1;
    });
    for (let k = 0; k < 100; k += 1) bestPair(floor, [draw.between(-4, 4), draw.between(-4, 4)], near, '');
    // Of ten one is reached, so that two dozen of them are found among some 240.
    expect(asked / 100).toBeLessThan(100);
  });
});
