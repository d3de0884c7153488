import { describe, expect, it } from 'vitest';
import { clearGround } from '../../../src/core/clearance/ground/clearGround';
import { heightLimitSteps } from '../../../src/core/clearance/ground/heightLimit';
import {
  type ClearGround,
  GROUND_STATES,
  type GroundQuestion,
  type GroundSquares,
} from '../../../src/core/clearance/ground/types';
import { cameraAt } from '../../../src/core/optics/camera';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { inOneGo } from '../../../src/core/units/steps';
import { staged } from '../../plans/staged';

/**
 * One camera on a bare deck, worked on paper by similar triangles. It stands at [0, 5], `HIGH` over the deck, looks level
 * along −z; a lens of half angles with the tangents `tanX` and `tanY` takes in d · tanX to each side at a distance d,
 * and what is higher than HIGH − d · tanY. Paper: our own sums, no source.
 */
const HIGH = 1.5;
const bare = staged({
  cast: {},
  setups: [{ id: 'a', keys: [{ at: [0, 5], height: HIGH, heading: 0 }], from: 'start', to: 'start' }],
});
const dry: Plan = { ...bare, ground: { ...bare.ground, wetness: 'dry' } };
const { tanHalfWidth: tanX, tanHalfHeight: tanY } = cameraAt(dry, dry.setups[0], 0).frame;

function groundFor(plan: Plan, question: Partial<GroundQuestion> = {}): ClearGround {
  const answer = clearGround(plan, { setupIds: ['a'], of: { heightMetres: 2.4 }, ...question });
  if ('why' in answer) throw new Error(answer.why);
  return answer.ground;
}

/** Side of a square where none is asked for. */
const STEP_METRES = 0.25;

const at = ({ corner, stepMetres, columns }: GroundSquares, x: number, z: number): number =>
  Math.floor((z - corner[1]) / stepMetres) * columns + Math.floor((x - corner[0]) / stepMetres);
const stateAt = (ground: ClearGround, x: number, z: number): string =>
  GROUND_STATES[ground.states[at(ground, x, z)]];

describe('one camera on a bare deck', () => {
  const ground = groundFor(dry);
  const { stepMetres, columns, rows, corner, limitMetres } = ground;

  it('a column shows where it is within d · tanX of the axis, give or take a square and what it reaches', () => {
    let shown = 0;
    for (let row = 0; row < rows; row += 1) {
      for (let column = 0; column < columns; column += 1) {
        const [x, z] = [corner[0] + (column + 0.5) * stepMetres, corner[1] + (row + 0.5) * stepMetres];
        const side = (5 - z) * tanX;
        const state = stateAt(ground, x, z);
        if (z < 4 && Math.abs(x) < side) {
          expect(state, `${x}, ${z}`).toBe('showing');
          shown += 1;
        }
        // The legs reach 0.7 m at most; the margin is as much as the plan's.
        const far =
          0.7 + stepMetres + Math.max(dry.safety.metres, 2 * tanX * dry.safety.frameWidths * (5 - z));
        if (Math.abs(x) > side + far && z < 4) expect(state, `${x}, ${z}`).toBe('clear');
        if (z > 6.5) expect(state, `${x}, ${z}`).toBe('clear');
      }
    }
    expect(shown).toBeGreaterThan(500);
  });

  it('something thin may be as tall as the lower frame line is over the deck there: HIGH − d · tanY', () => {
    for (const distance of [1, 1.5, 2, 3, 4]) {
      // The far side of the square has the lowest line; thin is 50 mm to each side.
      const z = 5 - distance;
      const farthest = distance + stepMetres + 0.05;
      const limit = limitMetres[at(ground, 0.01, z)];
      expect(limit).toBeGreaterThanOrEqual(Math.max(0, HIGH - farthest * tanY) - 1e-6);
      expect(limit).toBeLessThanOrEqual(Math.max(0, HIGH - distance * tanY) + 1e-6);
    }
    expect(limitMetres[at(ground, 0, 7)]).toBe(Infinity);
  });
});

it('behind a wall it is covered as far as its top is below the line over the edge of the wall', () => {
  // A box 1 m high, 8 m wide, whose face is 3 m from a camera at 0.5 m: at 2 · 3 m the shadow is 1.5 m high.
  const low = staged({
    cast: {},
    setups: [{ id: 'a', keys: [{ at: [0, 5], height: 0.5, heading: 0 }], from: 'start', to: 'start' }],
  });
  const wall: Plan = {
    ...low,
    ground: { ...low.ground, wetness: 'dry' },
    pieces: [
      ...low.pieces,
      {
        id: 'wall',
        label: 'Wall',
        kind: 'box',
        at: [0, 0, 1.5],
        headingDegrees: 0,
        size: [8, 1, 1],
        material: 'timber',
      },
    ],
  };
  // What is 1.3 m tall hides beyond a distance of 0.8 / (0.5 / 3) = 4.8 m from the camera, so at z < 0.2.
  const ground = groundFor(wall, { of: { heightMetres: 1.3 } });
  expect(stateAt(ground, 0, -1)).toBe('covered');
  expect(stateAt(ground, 0, -3)).toBe('covered');
  const tall = groundFor(wall, { of: { heightMetres: 2.4 } });
  // 2.4 m hides beyond 1.9 / (0.5 / 3) = 11.4 m, at z < −6.4.
  expect(stateAt(tall, 0, -5)).toBe('showing');
  expect(stateAt(tall, 0, -7.5)).toBe('covered');
});

it('on a wet deck what hangs over the upper frame line may be seen mirrored', () => {
  const wet: Plan = { ...bare, ground: { ...bare.ground, wetness: 'wet down' } };
  const ground = groundFor(wet);
  const without = groundFor(dry);
  for (const square of ground.states.keys())
    expect(ground.states[square]).toBeGreaterThanOrEqual(without.states[square]);
});

describe('what hangs, and how tall a stand may be, by the same triangles', () => {
  it('a box that hangs over the upper line d · tanY above the lens is clear, lower down it shows', () => {
    const distance = 4;
    const top = HIGH + (distance + STEP_METRES) * tanY;
    const far = Math.max(dry.safety.metres, 2 * tanX * dry.safety.frameWidths * (distance + 1));
    const over = groundFor(dry, { of: { lowMetres: top + far + 0.6, highMetres: top + far + 1 } });
    expect(stateAt(over, 0.01, 5 - distance)).toBe('clear');
    const inside = groundFor(dry, { of: { lowMetres: HIGH - 0.2, highMetres: HIGH + 0.2 } });
    expect(stateAt(inside, 0.01, 5 - distance)).toBe('showing');
    // Where a stand that reaches as high shows, what hangs there alone may be clear.
    const stand = groundFor(dry, { of: { heightMetres: top + far + 1 } });
    expect(stateAt(stand, 0.01, 5 - distance)).toBe('showing');
  });

  it('a stand is clear up to the lower line less the margin, HIGH − d · tanY − margin, where its legs are', () => {
    const answer = inOneGo(heightLimitSteps(dry, { setupIds: ['a'] }));
    if ('why' in answer) throw new Error(answer.why);
    const { limits } = answer;
    const square = (z: number): number => at(limits, 0.01, z);
    for (const distance of [0.5, 0.75]) {
      const metres = limits.limitMetres[square(5 - distance)];
      const widest = Math.max(dry.safety.metres, 2 * tanX * dry.safety.frameWidths * distance);
      // The column is no thicker than 0.1 m; the square's far side has the lowest line.
      expect(metres).toBeLessThanOrEqual(HIGH - distance * tanY - widest + 1e-6);
      expect(metres).toBeGreaterThanOrEqual(HIGH - (distance + STEP_METRES + 0.1) * tanY - widest - 0.15);
    }
    expect(limits.limitMetres[square(7.5)]).toBe(Infinity);
    // Far before it the ground itself is in frame: not even legs stand there.
    expect(limits.limitMetres[square(-5)]).toBe(0);
  });
});
