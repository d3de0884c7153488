import { expect, test } from 'vitest';
import { moveItem } from '../../../../src/core/plan/edits/moveItem';
import { removeItems } from '../../../../src/core/plan/edits/removeItems';
import { setLens } from '../../../../src/core/plan/edits/setLens';
import { setStandHeight } from '../../../../src/core/plan/edits/setStandHeight';
import { differencesOf } from '../../../../src/core/plan/merge/differences';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { compared } from '../../../../src/core/report/merge/changes';
import { differenceLine, differenceWords } from '../../../../src/core/report/merge/differenceWords';
import type { LengthSystem } from '../../../../src/core/units/lengths';
import { DEMO, readPlan } from '../../../plans/readPlan';

const base = readPlan(DEMO);

/** The lines of all differences, with plain spaces. */
function lines(mine: Plan, theirs: Plan, from: Plan | null, lengths: LengthSystem = 'm'): readonly string[] {
  const of = compared(mine, theirs, lengths);
  return differencesOf(mine, theirs, from).map((difference) =>
    differenceLine(differenceWords(difference, of)).replaceAll('\u00a0', ' '),
  );
}

const standHeight = (plan: Plan, id: string): number => {
  const stand = plan.gear.find((gear) => gear.id === id);
  if (stand?.kind !== 'stand') throw new Error(`${id} is no stand`);
  return stand.heightMetres;
};

test('a moved and raised stand, and another lens, are said with both values and who it was', () => {
  const [x, , z] = base.pieces.flatMap((piece) => (piece.kind === 'stair house' ? [piece.at] : []))[0];
  const stand = base.gear.flatMap((gear) => (gear.kind === 'stand' ? [gear] : []))[0];
  const far = Math.hypot(x - stand.at[0], z - stand.at[2]);
  const by: [number, number] = [((x - stand.at[0]) / far) * 0.4, ((z - stand.at[2]) / far) * 0.4];
  const at: [number, number] = [stand.at[0] + by[0], stand.at[2] + by[1]];
  const moved = moveItem(base, { id: stand.id, to: at });
  const theirs = setStandHeight(moved, { id: stand.id, heightMetres: standHeight(base, stand.id) - 0.3 });
  const other = base.kit.lenses.find(({ id }) => id !== base.setups[1].lens);
  const mine = setLens(base, { setupId: base.setups[1].id, lens: other?.id ?? '' });
  const said = lines(mine, theirs, base);
  expect(said).toContainEqual(
    expect.stringMatching(
      /^Lamp stand 1: Changed by them\..*place .* m, theirs 0\.40 m towards the stair house/,
    ),
  );
  expect(said).toContainEqual(
    expect.stringMatching(
      new RegExp(
        `^Lamp stand 1: .*height ${standHeight(base, stand.id).toFixed(2)} m, theirs ${(standHeight(base, stand.id) - 0.3).toFixed(2)} m`,
      ),
    ),
  );
  const was = base.kit.lenses.find(({ id }) => id === base.setups[1].lens);
  expect(said).toContainEqual(
    `Setup B, ${base.setups[1].label}: Changed by you. lens ${other?.label}, theirs ${was?.label}.`.replaceAll(
      '\u00a0',
      ' ',
    ),
  );
  expect(lines(mine, theirs, base, 'ft-in').join(' ')).toContain('theirs 1′ 3¾″ towards the stair house');
  // Whose it was is known from what both began with alone.
  expect(lines(mine, theirs, null).join(' ')).not.toContain('Changed by');
});

test('what one of two lacks is said by who took it out or put it in', () => {
  const less = removeItems(base, { ids: ['crate-2'] });
  expect(lines(base, less, null)).toEqual(['Crate 2: Only in yours.']);
  expect(lines(less, base, null)).toEqual(['Crate 2: Only in theirs.']);
  expect(lines(base, less, base)).toEqual(['Crate 2: They took it out.']);
  expect(lines(less, base, base)).toEqual(['Crate 2: You took it out.']);
  expect(lines(base, less, less)).toEqual(['Crate 2: You put it in.']);
  const moved = moveItem(base, { id: 'crate-2', to: [0, 0] });
  expect(lines(moved, less, base)).toEqual(['Crate 2: They took it out, you changed it.']);
});

test('numbers that are no lengths are not said in metres', () => {
  const [setup, ...others] = base.setups;
  const having = (rect: [number, number, number, number], at: [number, number], strength: number): Plan => ({
    ...base,
    frameLines: [{ id: 'corner', label: 'Corner', rect }],
    setups: [
      {
        ...setup,
        operator: { hold: base.cast[0].id, at },
        filter: { kind: 'mist', strength },
        sway: { seed: 1, metres: 0.02, degrees: strength, counted: true },
      },
      ...others,
    ],
  });
  const said = lines(
    having([0, 0, 0.5, 0.5], [0.25, 0.5], 2),
    having([0.1, 0, 0.5, 0.5], [0.5, 0.5], 3),
    null,
  ).join('\n');
  expect(said).toContain('0 %, 0 %, 50 %, 50 %, theirs 10 %, 0 %, 50 %, 50 %');
  expect(said).toContain('25 %, 50 %, theirs 50 %, 50 %');
  expect(said).toContain('strength 2, theirs 3');
  expect(said).toContain('2.0°, theirs 3.0°');
});
