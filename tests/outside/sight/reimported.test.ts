import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { holdModel } from '../../../src/core/form/models/modelShelf';
import { spanOf } from '../../../src/core/optics/camera';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { setupReport } from '../../../src/core/report/setupReport';
import { planToGlb } from '../../../src/exchange/glb';
import { readModel } from '../../../src/exchange/gltf-in/readModel';
import { DEMO, readPlan } from '../../plans/readPlan';
import { makeDraco } from '../../plans/realModels';

const demo = readPlan(DEMO);
/** Things that stand in the demo's frames, of one solid and of many, with mesh and without. */
const PIECES = ['stair-house', 'crate-1', 'chimney', 'feed-boxes'];
/** Shares may differ by so much of the frame: corners go through the file in single precision. */
const WITHIN = 0.0005;

/** The plan with one of its pieces exported by itself, read again and put in its place as a model. */
async function reimported(piece: Piece): Promise<Plan> {
  const alone: Plan = { ...demo, pieces: [piece], cast: [], gear: [], setups: [] };
  const bytes = Uint8Array.from(planToGlb(alone, 0));
  const { model, extent } = await readModel(bytes, makeDraco);
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  holdModel(sha256, model);
  const { lowest, highest } = extent;
  const record: Piece = {
    id: piece.id,
    label: piece.label,
    kind: 'model',
    at: [(lowest[0] + highest[0]) / 2, lowest[1], (lowest[2] + highest[2]) / 2],
    headingDegrees: 0,
    asset: { sha256, name: 'piece.glb', bytes: bytes.length },
    up: 'y',
    metresPerUnit: 1,
    extent,
  };
  return { ...demo, pieces: demo.pieces.map((each) => (each === piece ? record : each)) };
}

describe('a set piece that went out as a GLB and came back is judged as it was', () => {
  const pieces = demo.pieces.filter(({ id }) => PIECES.includes(id));
  const before = demo.setups.map((setup) => setupReport(demo, setup, { at: spanOf(demo, setup)[0] }));
  test('the pieces are in the demo', () => expect(pieces.length).toBeGreaterThanOrEqual(3));

  test.each(pieces.map((piece) => [piece.label, piece] as const))('%s', async (_, piece) => {
    const plan = await reimported(piece);
    let seen = 0;
    for (const [index, setup] of demo.setups.entries()) {
      const at = spanOf(demo, setup)[0];
      const after = setupReport(plan, plan.setups[index], { at });
      before[index].items.forEach((item, k) => {
        expect(Math.abs(item.share - after.items[k].share)).toBeLessThan(WITHIN);
      });
      const own = before[index].items.find(({ id }) => id === piece.id);
      if (own && own.share > 0.002) seen += 1;
    }
    expect(seen, 'the piece has to be in a frame, or nothing was compared').toBeGreaterThan(0);
  });
});
