import { expect, test } from 'vitest';
import { backdropOf } from '../../../src/core/continuity/backdrop';
import { type CheatFinding, cheatFindings } from '../../../src/core/continuity/cheats';
import { continuityOf } from '../../../src/core/continuity/continuity';
import { setCheat } from '../../../src/core/plan/edits/setCheat';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { cheatSentence } from '../../../src/core/report/continuity/cheatSentence';
import { setupReport } from '../../../src/core/report/setupReport';
import { keyOn } from '../../plans/keyedFace';
import { staged } from '../../plans/staged';

const crate = (id: string, label: string, at: Spot): Piece => ({
  id,
  label,
  kind: 'box',
  at: [at[0], 0, at[1]],
  headingDegrees: 0,
  size: [0.5, 2.6, 0.6],
  material: 'timber',
});

/** Ana and Bea a metre left and right of the middle, seen along −z by a long lens on Ana; a crate behind her, one beside it. */
const bare: Plan = {
  ...staged({
    cast: {
      ana: [{ at: [-1, 0], heading: 180 }],
      bea: [{ at: [1, 0], faces: 'ana' }],
    },
    lines: [{ id: 'pair', pair: ['ana', 'bea'] }],
    setups: [
      { id: 'master', keys: [{ at: [0, 5], heading: 0 }] },
      { id: 'single', keys: [{ at: [-1, 4], heading: 0 }], lens: 'long' },
    ],
  }),
  gear: keyOn('key', [-4, 2], [-1, 0]),
};
const plan: Plan = {
  ...bare,
  pieces: [...bare.pieces, crate('crate', 'Crate', [-1, -3]), crate('chest', 'Chest', [-1.85, -3])],
};
const cheated = (at: Spot, headingDegrees?: number): Plan =>
  setCheat(plan, {
    setupId: 'single',
    performerId: 'ana',
    markId: 'ana-0',
    at,
    ...(headingDegrees !== undefined && { headingDegrees }),
  });
const told = (of: Plan): readonly string[] =>
  cheatFindings(of).map((finding) => cheatSentence(of, finding).replaceAll('\u00a0', ' '));
const only = (of: Plan): CheatFinding => {
  const [finding] = cheatFindings(of);
  if (!finding) throw new Error('a cheat is found');
  return finding;
};

test('without cheats there is nothing to say, nor of one that changes nothing', () => {
  expect(cheatFindings(plan)).toEqual([]);
  expect(cheatFindings(cheated([-1.001, 0]))).toEqual([]);
});

test('behind somebody is what shows where they are when they are away', () => {
  const [, single] = plan.setups;
  const [first] = backdropOf(plan, single, 'ana', 0) ?? [];
  expect(first.itemId).toBe('crate');
  expect(first.share).toBeGreaterThan(0.5);
  expect(backdropOf(plan, single, 'bea', 0), 'out of frame').toBeNull();
});

test('beside the bent frame of a wide lens nobody shows, though it is drawn wider', () => {
  const bent: Plan = {
    ...plan,
    kit: {
      ...plan.kit,
      lenses: plan.kit.lenses.map((lens) => ({
        ...lens,
        distortion: { k1: -0.3, k2: 0, k3: 0, p1: 0, p2: 0 },
      })),
    },
  };
  const standing = (x: number): Plan => ({
    ...bent,
    cast: bent.cast.map((performer) =>
      performer.id === 'bea'
        ? { ...performer, marks: performer.marks.map((mark) => ({ ...mark, at: [x, 0] as Spot })) }
        : performer,
    ),
  });
  const isOutside = (x: number): boolean => {
    const of = standing(x);
    const { items } = setupReport(of, of.setups[0], { at: 0, briefly: true });
    const verdict = items.find(({ id }) => id === 'bea')?.verdict;
    return verdict === 'clear' || verdict === 'close';
  };
  let [inside, outside] = [1, 6];
  expect([isOutside(inside), isOutside(outside)]).toEqual([false, true]);
  while (outside - inside > 0.005) {
    const middle = (inside + outside) / 2;
    if (isOutside(middle)) outside = middle;
    else inside = middle;
  }
  const of = standing(outside);
  expect(backdropOf(of, of.setups[0], 'bea', 0)).toBeNull();
});

test('a small step leaves the line, the key and the background as they are', () => {
  const finding = only(cheated([-1.1, 0]));
  expect(finding).toMatchObject({
    standing: 'said',
    setupId: 'single',
    rightMetres: expect.closeTo(-0.1, 9),
    lines: [{ pair: ['ana', 'bea'], changesSide: false }],
    key: { master: 'right', cheated: 'right' },
    behind: { goesOut: [], comesIn: [] },
    shows: { master: true, cheated: true },
  });
  expect(told(cheated([-1.1, 0]))).toEqual([
    'B cheats Ana 0.10 m to the left: the line holds; the key stays on the right of the face; what stands behind Ana stays.',
  ]);
});

test('a step to the side takes one thing out from behind and lets another in', () => {
  expect(told(cheated([-1.45, 0.02]))).toEqual([
    expect.stringMatching(
      /^B cheats Ana 0\.45 m to the left: the line holds; .*Crate goes out from behind Ana; Chest comes in behind instead\.$/,
    ),
  ]);
});

test('turned, the key changes its side of the face; behind the lens there is nobody to see', () => {
  expect(only(cheated([-1, 0], 250)).key).toEqual({ master: 'right', cheated: 'left' });
  const over = only(cheated([-1, 9]));
  expect(over.lines).toEqual([]);
  expect(over.shows).toEqual({ master: true, cheated: false });
  expect(told(cheated([-1, 9]))[0]).toContain('Ana goes out of sight');
});

test('it is told with the rest of its setup, and the others are left alone', () => {
  const all = continuityOf(cheated([-1.1, 0]));
  expect(all.map(({ findings }) => findings.filter(({ kind }) => kind === 'cheat').length)).toEqual([0, 1]);
});
