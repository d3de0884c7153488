import { describe, expect, it } from 'vitest';
import { alignToFrame } from '../../../src/core/clearance/alignToFrame';
import { formOf } from '../../../src/core/form/formsAt';
import { cameraAt } from '../../../src/core/optics/camera';
import { projectPoint } from '../../../src/core/optics/project';
import type { Distortion } from '../../../src/core/plan/schema/kit';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { look, scratchFor } from '../../../src/core/sight/look';
import { outsideOf } from '../../../src/core/sight/margin';
import { stageOf } from '../../../src/core/sight/stage';
import { dice } from '../../plans/draw';
import { cases } from '../../thorough';
import { smallRoof } from '../../unit/smallRoof';
import { trianglesOf } from '../sight/pyramid';

const LENSES: readonly (Distortion | null)[] = [
  null,
  { k1: -0.15, k2: 0.03, k3: 0, p1: 0.003, p2: -0.002 },
  { k1: 0.1, k2: -0.02, k3: 0, p1: 0, p2: 0 },
];

/** One thing before a camera that leans, rolls and may bend. */
function drawnPlan(seed: number): Plan {
  const roll = dice(seed);
  const roof = smallRoof();
  const at: [number, number, number] = [roll(-3, 3), 0, roll(-12, -4)];
  const common = { id: 'thing', label: 'Thing', at, headingDegrees: roll(0, 360) };
  const kinds: readonly Piece[] = [
    { ...common, kind: 'box', size: [roll(0.2, 2), roll(0.5, 3), roll(0.2, 2)], material: 'timber' },
    {
      ...common,
      kind: 'post',
      heightMetres: roll(1, 4),
      diameterMetres: roll(0.02, 0.2),
      armMetres: roll(0, 1),
    },
    { ...common, kind: 'tank', diameterMetres: roll(1, 2), drumMetres: roll(1, 2), legMetres: roll(0.5, 2) },
  ];
  const distortion = LENSES[seed % LENSES.length];
  return {
    ...roof,
    safety: { metres: roll(0.05, 0.6), frameWidths: roll(0, 0.05) },
    kit: {
      ...roof.kit,
      lenses: roof.kit.lenses.map((lens) => ({ ...lens, ...(distortion ? { distortion } : {}) })),
    },
    pieces: [kinds[Math.floor(roll(0, kinds.length))]],
    cast: [],
    gear: [],
    setups: roof.setups.slice(0, 1).map((setup) => ({
      ...setup,
      focus: { metres: 5 },
      move: {
        ease: 'linear' as const,
        keys: [
          {
            atSeconds: 0,
            position: [roll(-1, 1), roll(1, 2), roll(1, 3)] as [number, number, number],
            headingDegrees: roll(-25, 25),
            tiltDegrees: roll(-5, 5),
            rollDegrees: roll(-8, 8),
          },
        ],
      },
    })),
  };
}

/** The outermost places of its triangles within the frame's height, by plain sampling along their sides. */
function sampledEdges(plan: Plan): readonly [number, number] {
  const form = formOf(plan, 'thing', 0);
  if (!form) throw new Error('the thing has no form');
  const camera = cameraAt(plan, plan.setups[0], 0);
  const upright = { ...camera, pose: { ...camera.pose, position: [0, 0, 0] as const } };
  let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const { right: r, up: u, forward: f } = camera.pose;
  const sampled = new Set<string>();
  for (const triangle of trianglesOf(stageOf([form]), 0, camera)) {
    for (let side = 0; side < 3; side += 1) {
      const [p, q] = [triangle[side], triangle[(side + 1) % 3]];
      // Two triangles share most of their sides, each the other way round.
      const name = [p.join(), q.join()].sort().join(' to ');
      if (sampled.has(name)) continue;
      sampled.add(name);
      for (let k = 0; k <= 200; k += 1) {
        const [x, y, z] = p.map((value, axis) => value + ((q[axis] - value) * k) / 200);
        const place = [0, 1, 2].map((axis) => r[axis] * x + u[axis] * y + f[axis] * z);
        const at = projectPoint(upright, [place[0], place[1], place[2]]);
        if (!at || at.y < 0 || at.y > 1) continue;
        left = Math.min(left, at.x);
        right = Math.max(right, at.x);
      }
    }
  }
  return [left, right];
}

const SEEDS = Array.from({ length: cases(12) }, (_, k) => 3000 + k);

describe('a thing put on a line of the frame', () => {
  it.each(SEEDS)('meets it, and its distance stays: seed %i', (seed) => {
    const plan = drawnPlan(seed);
    const { id: setupId } = plan.setups[0];
    const camera = cameraAt(plan, plan.setups[0], 0);
    for (const to of ['left', 'right', 'centre', 'left third', 'right third'] as const) {
      const result = alignToFrame(plan, { id: 'thing', setupId, seconds: 0, to });
      if ('why' in result) throw new Error(`${to}: ${result.why}`);
      const [left, right] = sampledEdges(result.plan);
      const line = { left: 0, right: 1, centre: 1 / 2, 'left third': 1 / 3, 'right third': 2 / 3 }[to];
      const found = to === 'left' ? left : to === 'right' ? right : (left + right) / 2;
      expect(Math.abs(found - line), `${to}: at ${found}`).toBeLessThan(1e-4);
      const depthOf = (each: Plan) => {
        const [piece] = each.pieces;
        if (!('at' in piece)) throw new Error('the thing stands nowhere');
        return piece.at.reduce(
          (sum, value, axis) => sum + (value - camera.pose.position[axis]) * camera.pose.forward[axis],
          0,
        );
      };
      expect(depthOf(result.plan)).toBeCloseTo(depthOf(plan), 5);
      // What the lens sees agrees to two of its pixels.
      const form = formOf(result.plan, 'thing', 0);
      if (!form) throw new Error('the thing has no form');
      const seen = look(stageOf([form]), camera, scratchFor(camera));
      const [from, , until] = seen.direct.boxes;
      const middle = (seen.direct.boxes[1] + seen.direct.boxes[3]) / 2;
      const pixel = 2 / (seen.grid.width / 1.2);
      if (to === 'left') expect(Math.abs(seen.grid.frameX(from, middle))).toBeLessThan(pixel + bend(seed));
      if (to === 'right')
        expect(Math.abs(seen.grid.frameX(until, middle) - 1)).toBeLessThan(pixel + bend(seed));
    }
  });

  it.each(SEEDS)('or just outside, is outside by the margin and no more: seed %i', (seed) => {
    const plan = drawnPlan(seed);
    const { id: setupId } = plan.setups[0];
    const camera = cameraAt(plan, plan.setups[0], 0);
    for (const to of ['just outside left', 'just outside right'] as const) {
      const result = alignToFrame(plan, { id: 'thing', setupId, seconds: 0, to });
      if ('why' in result) throw new Error(`${to}: ${result.why}`);
      const form = formOf(result.plan, 'thing', 0);
      if (!form) throw new Error('the thing has no form');
      const outside = outsideOf(stageOf([form]), 0, camera);
      if (outside === null || outside === 'inside') throw new Error(`${to}: ${outside}`);
      expect(outside.metres).toBeGreaterThanOrEqual(plan.safety.metres);
      expect(outside.frameWidths).toBeGreaterThanOrEqual(plan.safety.frameWidths);
    }
  });
});

/** The report's box of a bent picture is read at its own middle, which is not where the line was met. */
const bend = (seed: number): number => (LENSES[seed % LENSES.length] ? 0.02 : 0);
