import { expect, test } from 'vitest';
import { withRemedy } from '../../../src/core/clearance/remedies/remedyEdits';
import { standingRoom } from '../../../src/core/clearance/remedies/standingRoom';
import type { Steps } from '../../../src/core/clearance/solve/places';
import { solveBySteps, solveSteps } from '../../../src/core/clearance/solve/solve';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import { setStandHeight } from '../../../src/core/plan/edits/setStandHeight';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { setupReport } from '../../../src/core/report/setupReport';
import { inOneGo } from '../../../src/core/units/steps';
import { drawFrom } from '../../plans/draw';
import { cases } from '../../thorough';
import { standAt, stillRoof } from '../../unit/clearance/remedies/remedied';

const tolerance = { levelStops: 4, angleDegrees: 90 };

/** Two stands round the edge of the frames of two still cameras at one instant, and a crate that may hide one. */
function randomRoof(seed: number): Plan {
  const draw = drawFrom(seed);
  const gear = Array.from({ length: 2 }, (_, k) =>
    standAt({
      id: `stand-${k}`,
      label: `Stand ${k}`,
      at: [draw.between(-1.6, 1.6), 0, draw.between(-5, -2)],
      headingDegrees: draw.between(0, 360),
      heightMetres: draw.between(1.3, 2.6),
      spreadMetres: 0.6,
    }),
  );
  const roof = stillRoof(gear);
  const [setup] = roof.setups;
  const [key] = setup.move.keys;
  return {
    ...roof,
    ground: { surface: 'asphalt', wetness: draw.pick(['dry', 'wet down'] as const) },
    pieces: [
      ...roof.pieces,
      {
        id: 'box',
        label: 'Crate',
        kind: 'box',
        at: [draw.between(-1.5, 1.5), 0, draw.between(-2, 0)],
        headingDegrees: draw.between(-20, 20),
        size: [draw.between(0.5, 1.2), draw.between(1, 3), 0.5],
        material: 'timber',
      },
    ],
    setups: [0, draw.between(-2, 2)].map((x, k) => ({
      ...setup,
      id: `camera-${k}`,
      span: { from: 'start', to: 'start' },
      move: {
        ease: 'linear' as const,
        keys: [{ ...key, position: [x, 1.6, 4] as [number, number, number], headingDegrees: -4 * x }],
      },
    })),
  };
}

const STEPS: Steps = { stepMetres: 0.8, mostMetres: 1.2, heightStepMetres: 9, isFine: false };

interface Tried {
  readonly change: number;
  readonly by: readonly [number, number];
  readonly plan: (plan: Plan) => Plan;
}

type Stand = Extract<Gear, { readonly kind: 'stand' }>;
const standsOf = (plan: Plan): readonly Stand[] =>
  plan.gear.flatMap((gear) => (gear.kind === 'stand' ? [gear] : []));

/** Every place and height of a stand by the steps: as it is, as low and as high as it goes. */
function triesOf(plan: Plan, { id, at, heightMetres }: Stand): readonly Tried[] {
  const alone = { ...plan, gear: plan.gear.filter((gear) => gear.id === id) };
  const room = standingRoom(alone, id, new Set([id]));
  const tries: Tried[] = [];
  for (const height of [heightMetres, 1.2, 4])
    for (let column = -1; column <= 1; column += 1)
      for (let row = -1; row <= 1; row += 1) {
        const by = [column * 0.8, row * 0.8] as const;
        const metres = Math.hypot(...by);
        if (metres > 1.2 + 1e-9 || !room([at[0] + by[0], at[2] + by[1]])) continue;
        tries.push({
          change: metres + Math.abs(height - heightMetres),
          by,
          plan: (before) =>
            moveItem(setStandHeight(before, { id, heightMetres: height }), {
              id,
              to: [at[0] + by[0], at[2] + by[1]],
            }),
        });
      }
  return tries;
}

/** The least change of all combinations, each asked by whole reports, least first; null where none will do. */
function byTryingAll(plan: Plan): number | null {
  const stands = standsOf(plan);
  const before = plan.setups.map((setup) => setupReport(plan, setup).items);
  let rows: { readonly change: number; readonly tries: readonly Tried[] }[] = [{ change: 0, tries: [] }];
  for (const stand of stands)
    rows = rows.flatMap((row) =>
      triesOf(plan, stand).map((each) => ({ change: row.change + each.change, tries: [...row.tries, each] })),
    );
  rows.sort((a, b) => a.change - b.change);
  const verdicts = new Map<string, boolean>();
  for (const { change, tries } of rows) {
    const spots = stands.map(({ at }, k) => [at[0] + tries[k].by[0], at[2] + tries[k].by[1]] as const);
    const apart = (a: number, b: number): boolean => {
      const now = Math.hypot(stands[a].at[0] - stands[b].at[0], stands[a].at[2] - stands[b].at[2]);
      return Math.hypot(spots[a][0] - spots[b][0], spots[a][1] - spots[b][1]) >= Math.min(0.4, now) - 1e-6;
    };
    if (!stands.every((_, b) => stands.every((__, a) => a >= b || apart(a, b)))) continue;
    const after = tries.reduce((now, each) => each.plan(now), plan);
    const key = JSON.stringify(after.gear);
    if (verdicts.has(key)) continue;
    const isFine = after.setups.every((setup, s) =>
      setupReport(after, setup).items.every(({ id, verdict }) => {
        const k = stands.findIndex((stand) => stand.id === id);
        if (k < 0) return true;
        if (verdict !== 'close') return verdict === 'clear' || verdict === 'covered';
        return tries[k].change === 0 || before[s].some((item) => item.id === id && item.verdict === 'close');
      }),
    );
    verdicts.set(key, isFine);
    if (isFine) return change;
  }
  return null;
}

test('over steps, finds the least change that trying all combinations by whole reports finds', () => {
  const counted = { solved: 0, none: 0, clear: 0 };
  for (let seed = 1; seed <= cases(18); seed += 1) {
    const plan = randomRoof(seed);
    const answer = inOneGo(solveBySteps(plan, { tolerance }, STEPS));
    if (answer.outcome === 'refused') throw new Error(answer.sentence);
    counted[answer.outcome] += 1;
    if (answer.outcome === 'clear') continue;
    const best = byTryingAll(plan);
    if (best === null) expect(answer.outcome, `seed ${seed}`).toBe('none');
    else {
      expect(answer.outcome, `seed ${seed}: ${answer.sentence}`).toBe('solved');
      expect(answer.best?.change, `seed ${seed}`).toBeCloseTo(best, 5);
    }
  }
  expect(counted.solved).toBeGreaterThan(1);
  expect(counted.none).toBeGreaterThan(0);
}, 400_000);

test('what it finds between the steps clears all by whole reports, and is no more than over steps', () => {
  let solved = 0;
  for (let seed = 1; seed <= cases(12); seed += 1) {
    const plan = randomRoof(seed);
    const answer = inOneGo(solveSteps(plan, { tolerance }));
    if (answer.outcome !== 'solved' || !answer.best) continue;
    solved += 1;
    const after = withRemedy(plan, answer.best);
    for (const setup of after.setups)
      for (const { id, wish, verdict } of setupReport(after, setup).items)
        if (wish === 'keep out')
          expect(['clear', 'close', 'covered'], `seed ${seed} ${id}`).toContain(verdict);
    const stepped = inOneGo(
      solveBySteps(plan, { tolerance }, { ...STEPS, mostMetres: 1.6, stepMetres: 0.4 }),
    );
    if (stepped.outcome === 'solved' && stepped.best)
      expect(answer.best.change, `seed ${seed}`).toBeLessThanOrEqual(stepped.best.change + 0.05);
  }
  expect(solved).toBeGreaterThan(1);
}, 400_000);
