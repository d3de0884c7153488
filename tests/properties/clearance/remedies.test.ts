import { expect, it, test } from 'vitest';
import { nearestMove } from '../../../src/core/clearance/remedies/nearestSpot';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import { setupReport } from '../../../src/core/report/setupReport';
import { drawFrom } from '../../plans/draw';
import { fewCases, handful } from '../../thorough';
import { standAt, stillRoof } from '../../unit/clearance/remedies/remedied';
import { allOf, crowdedRoof, tryAll, tryRemedies } from './remedyLaw';

const SEEDS = [1, 2, 3];
/** So short a move has its two ends alone, which most of the ways are about. */
const BRIEF_SECONDS = 1 / 24;

// Roofs where something can be done: on every third one nothing can.
test.each([1, 4, 6, 11, 15].slice(0, fewCases(5)))(
  'every remedy, done, does what it says by the whole report, on a random roof of seed %i',
  (seed) => {
    const { done, breaches } = tryRemedies(seed);
    expect(done).toContain('move');
    expect(breaches).toEqual([]);
  },
);

it('so it does on random roofs by the hundred, seen for an instant', () => {
  const counted = new Map<string, number>();
  for (let seed = 21; seed <= 20 + handful(200); seed += 1) {
    const { done, breaches } = tryRemedies(seed, BRIEF_SECONDS);
    expect(breaches, `seed ${seed}`).toEqual([]);
    for (const kind of done) counted.set(kind, (counted.get(kind) ?? 0) + 1);
  }
  expect(counted.get('move') ?? 0).toBeGreaterThan(handful(200) / 4);
  expect(counted.size).toBeGreaterThan(2);
}, 400_000);

it('so it does where somebody or a crate may stand in front', () => {
  const counted = new Map<string, number>();
  for (let seed = 1; seed <= fewCases(24); seed += 1) {
    const { done, breaches } = tryAll(crowdedRoof(seed));
    expect(breaches, `seed ${seed}`).toEqual([]);
    for (const kind of done) counted.set(kind, (counted.get(kind) ?? 0) + 1);
  }
  expect(counted.get('cheat in front') ?? 0).toBeGreaterThan(0);
  expect(counted.get('put in front') ?? 0).toBeGreaterThan(0);
}, 400_000);

it('no place round about that is more than 5 cm nearer than the move would do', () => {
  for (const seed of SEEDS) {
    const draw = drawFrom(seed);
    const at: [number, number, number] = [draw.between(-0.5, 0.5), 0, draw.between(-5, -2)];
    const plan = stillRoof([standAt({ at, headingDegrees: draw.between(0, 360) })]);
    const [move] = allOf(plan, 'single', 'stand', []).filter(({ kind }) => kind === 'move');
    const [setup] = plan.setups;
    const isClear = (to: Spot): boolean => {
      const moved = moveItem(plan, { id: 'stand', to });
      return setupReport(moved, setup, { at: 0 }).items.some(
        ({ id, verdict }) => id === 'stand' && verdict === 'clear',
      );
    };
    // Every ten degrees, 5 cm nearer and a fifth nearer still.
    const metres = move.cost.metres - 0.05;
    for (let k = 0; k < 36; k += 1) {
      const angle = (k * Math.PI) / 18;
      for (const share of [1, 0.8]) {
        const by = metres * share;
        expect(isClear([at[0] + Math.sin(angle) * by, at[2] + Math.cos(angle) * by]), `seed ${seed}`).toBe(
          false,
        );
      }
    }
  }
});

it('the nearest place out of random discs is within 5 cm of the true one', () => {
  for (let seed = 1; seed <= 20; seed += 1) {
    const draw = drawFrom(seed);
    const discs = Array.from({ length: draw.whole(1, 4) }, () => ({
      at: [draw.between(-1, 1), draw.between(-1, 1)] as const,
      radius: draw.between(0.3, 1.5),
    }));
    const holds = ([x, z]: Spot): boolean =>
      discs.every(({ at, radius }) => (x - at[0]) ** 2 + (z - at[1]) ** 2 >= radius * radius);
    if (holds([0, 0])) continue;
    const found = nearestMove(holds, 4);
    const metres = found ? Math.hypot(found[0], found[1]) : Number.POSITIVE_INFINITY;
    expect(found && holds(found)).toBe(true);
    for (let x = -2.6; x <= 2.6; x += 0.02)
      for (let z = -2.6; z <= 2.6; z += 0.02)
        if (Math.hypot(x, z) < metres - 0.05) expect(holds([x, z]), `seed ${seed} at ${x}, ${z}`).toBe(false);
  }
});
