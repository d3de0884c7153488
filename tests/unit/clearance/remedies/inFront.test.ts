import { describe, expect, it } from 'vitest';
import { withRemedy } from '../../../../src/core/clearance/remedies/remedyEdits';
import type { Performer } from '../../../../src/core/plan/schema/cast';
import type { Gear } from '../../../../src/core/plan/schema/gear';
import type { Piece } from '../../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { setupReport } from '../../../../src/core/report/setupReport';
import { smallRoof } from '../../smallRoof';
import { ofKind, remediesOf, stillRoof } from './remedied';

/** A chest 8 m before the camera, half a metre to its right, low enough to be hidden by somebody. */
const CHEST: Gear = {
  id: 'chest',
  label: 'Chest',
  kind: 'generator',
  at: [0.5, 0, -4],
  headingDegrees: 0,
  size: [0.3, 1.2, 0.3],
};

const crate = (over: Partial<Extract<Piece, { kind: 'box' }>> = {}): Piece => ({
  id: 'crate',
  label: 'Crate',
  kind: 'box',
  at: [1.4, 0, -2],
  headingDegrees: 0,
  size: [0.9, 1.5, 0.5],
  material: 'timber',
  ...over,
});

/** Ana on one mark all through, 6 m before the camera. */
function ana(x: number): Performer {
  const [performer] = smallRoof().cast;
  const [mark] = performer.marks;
  return { ...performer, marks: [{ ...mark, at: [x, -2], headingDegrees: 180 }] };
}

function roofWith({ cast = [], pieces = [] }: { cast?: Performer[]; pieces?: Piece[] }): Plan {
  const roof = stillRoof([CHEST], {}, -3);
  return { ...roof, cast, pieces: [...roof.pieces, ...pieces] };
}

const verdictsOf = (plan: Plan): Record<string, string> =>
  Object.fromEntries(setupReport(plan, plan.setups[0]).items.map(({ id, verdict }) => [id, verdict]));

describe('what is put before a finding', () => {
  it('cheats somebody who stands beside the line of sight on to it, for that setup alone', () => {
    const plan = roofWith({ cast: [ana(0.8)] });
    expect(verdictsOf(plan).chest).toBe('showing');
    const cheat = ofKind(remediesOf(plan, 'chest'), 'cheat in front');
    expect(cheat.words).toMatch(/^Ana cheated 0\.\d.m to frame left of A hides it in A\.$/);
    expect(cheat).toMatchObject({ after: 'covered', relies: 'geometry', proved: true });
    expect(cheat.cost.metres).toBeGreaterThan(0.2);
    expect(cheat.cost.metres).toBeLessThanOrEqual(0.6);
    const after = withRemedy(plan, cheat);
    expect(after.cast).toBe(plan.cast);
    expect(after.setups[0].cheats).toHaveLength(1);
    expect(verdictsOf(after).chest).toBe('covered');
  });

  it('cheats nobody who stands too far aside, or behind the thing, or is too short for it', () => {
    const short = ana(0.8);
    for (const cast of [
      [ana(1.6)],
      [{ ...short, marks: [{ ...short.marks[0], at: [0.8, -5] as [number, number] }] }],
    ])
      expect(remediesOf(roofWith({ cast }), 'chest').filter(({ kind }) => kind === 'cheat in front')).toEqual(
        [],
      );
    const roof = roofWith({ cast: [short] });
    const high = { ...roof, gear: [{ ...CHEST, size: [0.3, 2.6, 0.3] as [number, number, number] }] };
    const wide = { ...high, setups: high.setups.map((setup) => ({ ...setup, lens: high.kit.lenses[0].id })) };
    expect(remediesOf(wide, 'chest').filter(({ kind }) => kind === 'cheat in front')).toEqual([]);
  });

  it('puts a crate before it, as near to where it stood as will do', () => {
    const plan = roofWith({ pieces: [crate()] });
    expect(verdictsOf(plan).chest).toBe('showing');
    const put = ofKind(remediesOf(plan, 'chest'), 'put in front');
    expect(put.words).toMatch(/^Crate put [01]\.\d.m .* hides it in A\.$/);
    expect(put).toMatchObject({ after: 'covered', relies: 'geometry', proved: true });
    expect(put.cost.metres).toBeLessThanOrEqual(2);
    expect(verdictsOf(withRemedy(plan, put)).chest).toBe('covered');
  });

  it('leaves a crate that is locked, too low, too long or too far away', () => {
    for (const over of [
      { locked: true },
      { size: [0.9, 0.3, 0.5] as [number, number, number] },
      { size: [3, 1.5, 0.5] as [number, number, number] },
      { at: [4, 0, -2] as [number, number, number] },
    ]) {
      const found = remediesOf(roofWith({ pieces: [crate(over)] }), 'chest');
      expect(found.filter(({ kind }) => kind === 'put in front')).toEqual([]);
    }
  });

  it('says what the thing put before it hides that must show', () => {
    const plan = roofWith({ pieces: [crate()] });
    const behind = crate({
      id: 'sign',
      label: 'Sign',
      at: [0.45, 0, -3],
      size: [0.3, 0.9, 0.1],
      wish: 'must show',
    });
    const signed = { ...plan, pieces: [...plan.pieces, behind] };
    const found = remediesOf(signed, 'chest').filter(({ kind }) => kind === 'put in front');
    expect(found).not.toEqual([]);
    for (const remedy of found) {
      const now = verdictsOf(withRemedy(signed, remedy)).sign;
      const told = remedy.cost.otherSetups.find(({ itemId }) => itemId === 'sign')?.after;
      expect(told ?? verdictsOf(signed).sign).toBe(now);
    }
  });
});
