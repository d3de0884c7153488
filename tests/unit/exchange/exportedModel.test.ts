import { afterEach, expect, test } from 'vitest';
import { dropModel, holdModel } from '../../../src/core/form/models/modelShelf';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { planToGlb } from '../../../src/exchange/glb';
import { readModel } from '../../../src/exchange/gltf-in/readModel';
import { makeDraco, REAL_MODELS } from '../../plans/realModels';
import { smallRoof } from '../smallRoof';

const SHA = 'd'.repeat(64);
afterEach(() => dropModel(SHA));

test('an imported model goes out with the scene, with the normals that its file gave it', async () => {
  const { model, extent, triangles } = await readModel(REAL_MODELS.bunny, makeDraco);
  holdModel(SHA, model);
  const plan: Plan = {
    ...smallRoof(),
    cast: [],
    gear: [],
    setups: [],
    pieces: [
      {
        id: 'scan',
        label: 'Bunny',
        kind: 'model',
        at: [3, 0, 0],
        headingDegrees: 90,
        asset: { sha256: SHA, name: 'bunny.glb', bytes: REAL_MODELS.bunny.length },
        up: 'y',
        metresPerUnit: 1,
        extent,
      },
    ],
  };
  const back = await readModel(Uint8Array.from(planToGlb(plan, 0)), makeDraco);
  expect(back.triangles).toBe(triangles);
  const [before, after] = [model.chunks[0].skin?.normals, back.model.chunks[0].skin?.normals];
  expect(after?.length).toBe(before?.length);
  // Turned by 90 degrees clockwise from above, what faced −z faces +x.
  for (let k = 0; k < 300; k += 3) {
    expect(after?.[k]).toBeCloseTo(-(before?.[k + 2] ?? 0), 5);
    expect(after?.[k + 1]).toBeCloseTo(before?.[k + 1] ?? 0, 5);
    expect(after?.[k + 2]).toBeCloseTo(before?.[k] ?? 0, 5);
  }
});
