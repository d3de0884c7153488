import type { Camera } from '../optics/types';
import type { SightStage } from './stage';

/** Everything that there is to see at one instant, and the camera that sees it. */
export interface Instant {
  readonly stage: SightStage;
  readonly camera: Camera;
}

/** Whether a zoom has not moved between two instants. */
const isSameFrame = ({ frame: a }: Camera, { frame: b }: Camera): boolean =>
  a.tanHalfWidth === b.tanHalfWidth && a.tanHalfHeight === b.tanHalfHeight;

/** Whether nothing at all moved between two instants. */
export function isSame(a: Instant, b: Instant): boolean {
  const [p, q] = [a.camera.pose, b.camera.pose];
  for (let k = 0; k < 3; k += 1) {
    if (p.position[k] !== q.position[k] || p.forward[k] !== q.forward[k] || p.up[k] !== q.up[k]) return false;
  }
  if (!isSameFrame(a.camera, b.camera) || a.stage.parts.length !== b.stage.parts.length) return false;
  return a.stage.parts.every((part, index) => {
    const other = b.stage.parts[index];
    if (part.shape !== other.shape) return false;
    if (part.worldFromPart === other.worldFromPart) return true;
    if (!part.worldFromPart || !other.worldFromPart) return false;
    return part.worldFromPart.every((value, k) => value === other.worldFromPart?.[k]);
  });
}
