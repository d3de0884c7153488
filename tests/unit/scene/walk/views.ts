import { PerspectiveCamera } from 'three';
import type { Vec3 } from '../../../../src/core/form/build/vector';
import { WalkView } from '../../../../src/scene/walk/walkView';

/** A pane of 800 by 600 pixels that looks from one place to another. */
export function viewFrom(eye: Vec3, target: Vec3): WalkView {
  const camera = new PerspectiveCamera(42, 800 / 600, 0.1, 4000);
  camera.position.set(...eye);
  camera.lookAt(...target);
  return new WalkView(camera, 800, 600);
}
