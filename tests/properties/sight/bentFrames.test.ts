import { describe, expect, it } from 'vitest';
import { distort, goodRadius } from '../../../src/core/optics/distortion';
import { poseOf } from '../../../src/core/optics/pose';
import type { Camera } from '../../../src/core/optics/types';
import type { Distortion } from '../../../src/core/plan/schema/kit';
import { gridOf } from '../../../src/core/sight/grid';
import { look, scratchFor } from '../../../src/core/sight/look';
import { moveOutOf } from '../../../src/core/sight/margin';
import { stageOf } from '../../../src/core/sight/stage';
import { cases } from '../../thorough';
import { randomForms } from './randomForms';

const STRAIGHT: Distortion = { k1: 0, k2: 0, k3: 0, p1: 0, p2: 0 };

describe('the grid of a bending lens', () => {
  it.each<{ lens: Distortion; tanHalfWidth: number }>([
    { lens: { ...STRAIGHT, k1: -0.2, k2: 0.04 }, tanHalfWidth: 0.7 },
    { lens: { ...STRAIGHT, k1: 0.2, k2: -0.04 }, tanHalfWidth: 0.7 },
    { lens: { ...STRAIGHT, k1: 2, k2: 2, k3: 2 }, tanHalfWidth: 3 },
    { lens: { ...STRAIGHT, k1: 2, k2: 2, k3: 2 }, tanHalfWidth: 100 },
  ])(
    'counts each pixel of the delivered frame once: $lens.k1 $lens.k2 $lens.k3',
    ({ lens, tanHalfWidth }) => {
      const grid = gridOf({ tanHalfWidth, tanHalfHeight: tanHalfWidth / 2, aspect: 2, distortion: lens });
      const counted = grid.weights.reduce((sum, weight) => sum + weight, 0);
      expect(counted).toBe(grid.framePixels);
    },
  );

  it('leaves out what a barrel does not draw, and nothing else', () => {
    const lens = { ...STRAIGHT, k1: -0.3 };
    const farthest = distort(lens, goodRadius(lens), 0)[0];
    const tanHalfWidth = 1;
    const grid = gridOf({ tanHalfWidth, tanHalfHeight: tanHalfWidth, aspect: 1, distortion: lens });
    const counted = grid.weights.reduce((sum, weight) => sum + weight, 0);
    expect(counted / grid.framePixels).toBeCloseTo((Math.PI * farthest ** 2) / 4, 2);
  });
});

describe('the move that takes an item out of a bent frame', () => {
  it.each([
    { ...STRAIGHT, k1: -0.2, k2: 0.04 },
    { ...STRAIGHT, k1: 0.2, k2: -0.04 },
    { ...STRAIGHT, k1: -0.15, p1: 0.01, p2: -0.01 },
  ])('takes it out: k1 $k1, p1 $p1', (lens) => {
    let moved = 0;
    for (let seed = 701; seed <= 700 + cases(8); seed += 1) {
      const camera: Camera = {
        pose: poseOf([0, 2, 11], 0, -5, 0),
        frame: { tanHalfWidth: 0.6, tanHalfHeight: 0.3, aspect: 2, distortion: lens },
      };
      const scratch = scratchFor(camera);
      for (const form of randomForms(seed)) {
        if (form.id === 'deck') continue;
        const stage = stageOf([form]);
        if (look(stage, camera, scratch).alone[0] === 0) continue;
        moved += 1;
        const metres = moveOutOf(stage, 0, camera);
        // The camera looks along −z: frame right is +x, and moving the item is moving the camera the other way.
        const past = metres + Math.sign(metres) * 1e-6;
        const after = { ...camera, pose: poseOf([-past, 2, 11], 0, -5, 0) };
        expect(look(stage, after, scratch).alone[0], `seed ${seed}, ${form.id}, ${metres} m`).toBe(0);
      }
    }
    expect(moved).toBeGreaterThan((30 / 8) * cases(8));
  });
});
