import { createHash } from 'node:crypto';
import type { Asset } from '../../src/core/plan/schema/asset';
import type { Plan } from '../../src/core/plan/schema/plan';
import { smallRoof } from '../unit/smallRoof';
import { triangleGlb } from './glbOf';

const asset = (name: string, bytes: Uint8Array): Asset => ({
  sha256: createHash('sha256').update(bytes).digest('hex'),
  name,
  bytes: bytes.length,
});

/** A plan with a model and a picture under its roof, and their files by their SHA-256. */
export function packedPlan(): { readonly plan: Plan; readonly files: ReadonlyMap<string, Uint8Array> } {
  const model = triangleGlb();
  const picture = Uint8Array.from({ length: 3000 }, (_, k) => (k * k * 31) % 251);
  const [modelFile, pictureFile] = [asset('Tank house.GLB', model), asset('roof.jpg', picture)];
  const plain = smallRoof();
  return {
    plan: {
      ...plain,
      pieces: [
        ...plain.pieces,
        {
          id: 'tank',
          label: 'Tank',
          kind: 'model',
          at: [1, 0, 1],
          headingDegrees: 0,
          asset: modelFile,
          up: 'y',
          metresPerUnit: 1,
          extent: { lowest: [0, 0, 0], highest: [1, 1, 1] },
        },
      ],
      underlay: {
        asset: pictureFile,
        pixels: [40, 30],
        at: [0, 0],
        headingDegrees: 0,
        metresPerPixel: 0.5,
        strength: 0.5,
      },
    },
    files: new Map([
      [modelFile.sha256, model],
      [pictureFile.sha256, picture],
    ]),
  };
}
