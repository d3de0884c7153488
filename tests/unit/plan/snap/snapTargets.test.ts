import { expect, test } from 'vitest';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { gapsLike, snapTargets } from '../../../../src/core/plan/snap/snapTargets';
import { rooftop } from '../../core/plan/edits/rooftop';

const everywhere = (plan: Plan, except?: ReadonlySet<string>) =>
  snapTargets(plan, except).around([0, 0], Number.POSITIVE_INFINITY);
const wordsOf = (plan = rooftop(), except: readonly string[] = []) => {
  const { edges, points } = everywhere(plan, new Set(except));
  return [...edges, ...points].map(({ word }) => word);
};

test('legs, ends and middles of a run are named by the run', () => {
  const { edges, points } = everywhere(rooftop());
  const legs = edges.filter(({ word }) => word === 'along the fence');
  expect(legs.map(({ from, to }) => [from, to])).toEqual([
    [
      [-4, -6],
      [2, -6],
    ],
    [
      [2, -6],
      [2, -3],
    ],
  ]);
  const fence = points.filter(({ name }) => name === 'the fence').map(({ at, word }) => [word, at]);
  expect(fence).toEqual([
    ['at the end of the fence', [-4, -6]],
    ['at the corner of the fence', [2, -6]],
    ['at the end of the fence', [2, -3]],
    ['half way along the fence', [-1, -6]],
    ['half way along the fence', [2, -4.5]],
  ]);
});

test('what is hidden, or left out, is nothing to catch on', () => {
  expect(wordsOf()).toContain('at the middle of the tank');
  expect(wordsOf(rooftop(), ['tank'])).not.toContain('at the middle of the tank');
  const plan = rooftop();
  const hidden = { ...plan, pieces: plan.pieces.map((piece) => ({ ...piece, hidden: true })) };
  expect(wordsOf(hidden).filter((word) => /fence|tank|washing/.test(word))).toEqual([]);
});

test('a box turned by 90 degrees has its corners where they stand', () => {
  const plan = rooftop();
  const box = {
    id: 'box',
    label: 'Box 3',
    kind: 'box',
    at: [1, 0, 2],
    headingDegrees: 90,
    size: [2, 1, 4],
    material: 'timber',
  } as const;
  const { points } = everywhere({ ...plan, pieces: [{ ...box, at: [1, 0, 2], size: [2, 1, 4] }] });
  const corners = points.filter(({ word }) => word === 'at the corner of box 3').map(({ at }) => at);
  const rounded = corners.map(([x, z]) => [Math.round(x * 1e6) / 1e6, Math.round(z * 1e6) / 1e6]);
  // Its width runs along z now, its depth along x.
  expect(rounded.sort()).toEqual(
    [
      [-1, 1],
      [-1, 3],
      [3, 1],
      [3, 3],
    ].sort(),
  );
});

test('gaps are those of the same kind, measured from the deck’s edges', () => {
  const plan = rooftop();
  const deck = {
    id: 'deck',
    label: 'Deck',
    kind: 'deck' as const,
    outline: [
      [-12, -8],
      [12, -8],
      [12, 8],
      [-12, 8],
    ] as [number, number][],
    topMetres: 0,
    dropMetres: 3,
  };
  const withDeck = { ...plan, pieces: [...plan.pieces, deck] };
  // The tank stands at [8, 4]: four metres from the right edge and from the near one.
  expect(gapsLike(withDeck, 'tank', [0, 0]).map(({ metres }) => metres)).toEqual([4, 4]);
  expect(gapsLike(withDeck, 'tank', [0, 0], new Set(['tank']))).toEqual([]);
  expect(gapsLike(withDeck, 'post', [0, 0])).toEqual([]);
});
