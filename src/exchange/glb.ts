import { lampsAt } from '../core/form/lamps';
import type { ItemForm, PlacedPart } from '../core/form/types';
import { formsThrough } from '../core/optics/riding';
import type { Plan } from '../core/plan/schema/plan';
import { MeshBuffers } from './glb/buffers';
import { cameraOf } from './glb/cameras';
import { packGlb } from './glb/container';
import { type GltfCamera, type GltfLight, type GltfMesh, type GltfNode, listed } from './glb/document';
import { groupBy } from './glb/groupBy';
import { lightOf } from './glb/lamps';
import { Materials } from './glb/materials';
import { trianglesOf } from './glb/partMesh';

const LIGHTS = 'KHR_lights_punctual';

/**
 * The plan at one instant as a binary glTF 2.0 file, metres, y up, in the plan's own coordinates.
 *
 * Each part is a node `ITEM:PART` with extras `{item, part, openness?}`; `openness`, 0..1, is there for a porous layer,
 * and what mirrors (a wet deck, a mirror, a pane of glass) has `reflecting: true`. Each setup is a camera node named by
 * its id with extras `{setup, seconds, focalMm, squeeze, gateMm: [w, h]}`: the pose at the instant, held within the
 * setup's span, and the angles of the delivered frame, distortion left out. Lamps are lights of KHR_lights_punctual,
 * named `ITEM:lamp`. The same plan and instant give the same bytes everywhere.
 * @param seconds on the action's clock, finite
 */
export function planToGlb(plan: Plan, seconds: number): Uint8Array {
  if (!Number.isFinite(seconds))
    throw new Error(`planToGlb: found ${seconds} seconds, expected a finite number`);
  const nodes: GltfNode[] = [];
  const meshes: GltfMesh[] = [];
  const buffers = new MeshBuffers();
  const materials = new Materials();
  for (const form of formsThrough(plan, null, seconds)) {
    for (const [part, placed] of groupBy(form.parts, (each) => each.name)) {
      const primitives = [...groupBy(placed, (each) => Materials.keyOf(each.shape)).values()].map(
        (alike) => ({
          ...buffers.add(trianglesOf(alike)),
          material: materials.of(alike[0].shape),
        }),
      );
      const name = `${form.id}:${part}`;
      nodes.push({ name, mesh: meshes.length, extras: extrasOf(form, part, placed) });
      meshes.push({ name, primitives });
    }
  }

  const cameras: GltfCamera[] = [];
  for (const setup of plan.setups) {
    const { camera, node } = cameraOf(plan, setup, seconds, cameras.length);
    cameras.push(camera);
    nodes.push(node);
  }
  const lights: GltfLight[] = [];
  for (const lamp of lampsAt(plan, seconds)) {
    const { light, node } = lightOf(lamp, lights.length);
    lights.push(light);
    nodes.push(node);
  }

  const { lists, binary } = buffers.finish();
  const document = {
    asset: { version: '2.0', generator: 'Standclear', extras: { title: plan.title, seconds } },
    scene: 0,
    scenes: [
      {
        name: plan.title,
        ...listed(
          'nodes',
          nodes.map((_, index) => index),
        ),
      },
    ],
    ...listed('nodes', nodes),
    ...listed('meshes', meshes),
    ...listed('materials', materials.list),
    ...listed('cameras', cameras),
    ...(lights.length > 0 ? { extensionsUsed: [LIGHTS], extensions: { [LIGHTS]: { lights } } } : {}),
    ...lists,
  };
  return packGlb(document, binary);
}

function extrasOf(form: ItemForm, part: string, placed: readonly PlacedPart[]): Record<string, unknown> {
  const { openness } = placed[0].shape;
  return {
    item: form.id,
    part,
    ...(openness === null ? {} : { openness }),
    ...(placed.some((each) => each.shape.mirror) ? { reflecting: true } : {}),
  };
}
