import { cameraAt, glassOf, spanOf, stateAt } from '../../core/optics/camera';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { atan } from '../../core/units/steadyMath';
import type { GltfCamera, GltfNode } from './document';
import { rotationOf } from './rotation';

const NEAREST_METRES = 0.01;

/**
 * A setup's camera as glTF has it, with the angles of the delivered frame, at an instant held within the setup's span.
 * @param place the camera's number in the document
 */
export function cameraOf(
  plan: Plan,
  setup: Setup,
  seconds: number,
  place: number,
): { readonly camera: GltfCamera; readonly node: GltfNode } {
  const [from, to] = spanOf(plan, setup);
  const instant = Math.min(Math.max(seconds, from), to);
  const { pose, frame } = cameraAt(plan, setup, instant);
  const { lens, gateMm } = glassOf(plan, setup);
  return {
    camera: {
      name: setup.label,
      type: 'perspective',
      perspective: {
        yfov: 2 * atan(frame.tanHalfHeight),
        aspectRatio: frame.tanHalfWidth / frame.tanHalfHeight,
        znear: NEAREST_METRES,
      },
    },
    node: {
      name: setup.id,
      camera: place,
      translation: [...pose.position],
      rotation: rotationOf(pose.right, pose.up, pose.forward),
      extras: {
        setup: setup.id,
        seconds: instant,
        focalMm: stateAt(plan, setup, instant).focalMm,
        squeeze: lens.squeeze,
        gateMm: [...gateMm],
      },
    },
  };
}
