import { expect, it } from 'vitest';
import { withRemedy } from '../../../../src/core/clearance/remedies/remedyEdits';
import { setupReport } from '../../../../src/core/report/setupReport';
import { ofKind, remediesOf, standAt, stillRoof } from './remedied';

it('offers nothing without a setup, an item or a finding', () => {
  const plan = stillRoof([standAt()]);
  expect(remediesOf({ ...plan, setups: [] }, 'stand')).toEqual([]);
  expect(remediesOf(plan, 'nothing')).toEqual([]);
  expect(remediesOf(plan, 'stand', { setupId: 'nowhere' })).toEqual([]);
  expect(remediesOf(stillRoof([standAt({ at: [6, 0, -4] })]), 'stand')).toEqual([]);
  expect(remediesOf(stillRoof([standAt({ wish: 'must show' })]), 'stand')).toEqual([]);
});

it('leaves what is locked where it is', () => {
  const locked = stillRoof([standAt({ locked: true })]);
  const kinds = remediesOf(locked, 'stand').map(({ kind }) => kind);
  for (const kind of ['move', 'lower', 'raise', 'turn', 'swing the arm']) expect(kinds).not.toContain(kind);
  expect(kinds).toContain('let it show');
});

it('moves nothing onto what stands on the roof or over its edge', () => {
  const plan = stillRoof([standAt()]);
  const hemmed = {
    ...plan,
    pieces: plan.pieces.map((piece) =>
      piece.kind === 'deck'
        ? {
            ...piece,
            outline: [
              [-1, -4.6],
              [1.1, -4.6],
              [1.1, 5],
              [-1, 5],
            ] as [number, number][],
          }
        : piece,
    ),
  };
  for (const { edits } of remediesOf(hemmed, 'stand').filter(({ kind }) => kind === 'move'))
    for (const each of edits) {
      const to = each.edit === 'moveItem' ? each.args.to : [0, 0];
      expect(Math.abs(to[0])).toBeLessThanOrEqual(1.1);
    }
});

it.each([
  ['well', 2],
  ['just', 1.2],
])('dries the patch of a wet deck that alone shows a thing %s above the frame', (_, footMetres) => {
  // Its image in the wet deck before it is within.
  const roof = stillRoof([], { lens: 'wide' }, -16);
  const plan = {
    ...roof,
    ground: { surface: 'asphalt' as const, wetness: 'wet down' as const },
    gear: [standAt({ at: [0.4, footMetres, -7], heightMetres: 1.5, locked: true })],
  };
  expect(setupReport(plan, plan.setups[0]).items.find(({ id }) => id === 'stand')?.verdict).toBe('mirrored');
  const dry = ofKind(remediesOf(plan, 'stand'), 'dry the floor');
  const after = withRemedy(plan, dry);
  const verdict = setupReport(after, after.setups[0]).items.find(({ id }) => id === 'stand')?.verdict;
  expect(verdict).toBe(dry.after);
  // On a deck that is hardly more than the patch, drying it would be to dry the whole floor.
  const [{ args }] = dry.edits.filter((each) => each.edit === 'addArea');
  const outline = args.outline.map(([x, z]): [number, number] => [x, z]);
  const small = {
    ...plan,
    pieces: plan.pieces.map((piece) => (piece.kind === 'deck' ? { ...piece, outline } : piece)),
  };
  const seen = setupReport(small, small.setups[0]);
  expect(seen.items.find(({ id }) => id === 'stand')?.verdict).toBe('mirrored');
  expect(remediesOf(small, 'stand', { seen: [seen] }).map(({ kind }) => kind)).not.toContain('dry the floor');
});

it('says clear of a camera whose sway is counted only where the sway does not reach', () => {
  const sway = { seed: 1, degrees: 3, metres: 0.1, counted: true };
  const plan = stillRoof([standAt({ at: [1, 0, -4] })], { sway });
  const remedies = remediesOf(plan, 'stand').filter(({ asksReason }) => !asksReason);
  expect(remedies.length).toBeGreaterThan(0);
  for (const remedy of remedies) {
    const after = withRemedy(plan, remedy);
    const { items } = setupReport(after, after.setups[0]);
    expect(items.find(({ id }) => id === 'stand')?.verdict, remedy.words).toBe(remedy.after);
  }
});
