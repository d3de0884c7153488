import { afterAll, describe, expect, it } from 'vitest';
import { undistort } from '../../../src/core/optics/distortion';
import type { Camera } from '../../../src/core/optics/types';
import type { Distortion } from '../../../src/core/plan/schema/kit';
import { look, scratchFor } from '../../../src/core/sight/look';
import { stageOf } from '../../../src/core/sight/stage';
import { dice } from '../../plans/draw';
import { raysAcross } from '../../thorough';
import { randomCamera, randomForms } from './randomForms';
import { Tracer } from './tracer';

/** Most that a share may differ, of the frame. */
const CEILING = 0.001;

const LENSES: readonly Distortion[] = [-0.2, -0.12, -0.05, 0.05, 0.12, 0.2].map((k1, k) => ({
  k1,
  k2: k1 * -0.2,
  k3: 0,
  p1: k % 2 === 0 ? 0 : 0.004,
  p2: k % 3 === 0 ? 0.003 : 0,
}));

let largest = 0;

/** Rays in the directions that the lens draws at random places of the frame, one in each cell of a raster. */
function trace(tracer: Tracer, camera: Camera, lens: Distortion, seed: number) {
  const roll = dice(seed);
  const straight = { ...camera, frame: { ...camera.frame, distortion: null } };
  const { tanHalfWidth, tanHalfHeight, aspect } = camera.frame;
  const width = raysAcross(640);
  const height = Math.round(width / aspect);
  const direct = new Float64Array(4096);
  const mirrored = new Float64Array(4096);
  for (let row = 0; row < height; row += 1) {
    for (let column = 0; column < width; column += 1) {
      const x = (2 * (column + roll(0, 1))) / width - 1;
      const y = (2 * (row + roll(0, 1))) / height - 1;
      const way = undistort(lens, x * tanHalfWidth, y * tanHalfHeight);
      if (!way) throw new Error(`the lens draws nothing at ${x}, ${y}`);
      tracer.see(
        straight,
        0.5 + way[0] / (2 * tanHalfWidth),
        0.5 + way[1] / (2 * tanHalfHeight),
        direct,
        mirrored,
      );
    }
  }
  return { direct, mirrored, rays: width * height };
}

describe('a lens that bends', () => {
  it.each(LENSES.map((lens, k) => ({ lens, seed: 400 + k })))(
    'gives every part its share within 0.1 % of the frame: k1 $lens.k1, seed $seed',
    ({ lens, seed }) => {
      const stage = stageOf(randomForms(seed));
      const { pose, frame } = randomCamera(seed);
      // At most 35 degrees to each side, where even the strongest barrel still draws every corner of the frame.
      const tanHalfWidth = Math.min(0.7, Math.max(0.4, frame.tanHalfWidth));
      const camera: Camera = {
        pose,
        frame: { ...frame, tanHalfWidth, tanHalfHeight: tanHalfWidth / frame.aspect, distortion: lens },
      };
      const found = look(stage, camera, scratchFor(camera));
      const truth = trace(new Tracer(stage), camera, lens, seed);
      let inView = 0;
      for (const part of stage.parts) {
        for (const [way, told, traced] of [
          ['direct', found.direct, truth.direct],
          ['mirrored', found.mirrored, truth.mirrored],
        ] as const) {
          const share = told.partPixels[part.index] / found.grid.framePixels;
          const other = traced[part.index] / truth.rays;
          if (other > 0) inView += 1;
          largest = Math.max(largest, Math.abs(share - other));
          const name = `${stage.forms[part.item].id} ${part.name}, ${way}`;
          expect(Math.abs(share - other), `${name}: ${share} against ${other}`).toBeLessThan(CEILING);
        }
      }
      expect(inView).toBeGreaterThan(5);
    },
  );
});

afterAll(() =>
  console.log(`bending lenses: largest difference ${(largest * 100).toFixed(4)} % of the frame`),
);
