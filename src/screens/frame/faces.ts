import { whereabouts } from '../../core/form/figure';
import { cameraAt } from '../../core/optics/camera';
import { projectPoint } from '../../core/optics/project';
import type { Box } from './pictureBox';
import type { Sighting } from './projected';

/** From the eyes to the crown, the chin and the ears, with a little air, metres. */
const AROUND_EYES = 0.17;

/** Where the cast's faces are in the picture, in pixels: no label lies over a face while there is room elsewhere. */
export function facesIn({ plan, setup, seconds }: Sighting, frame: Box): readonly Box[] {
  const camera = cameraAt(plan, setup, seconds);
  return plan.cast.flatMap((performer): Box[] => {
    const eyes = whereabouts(performer, plan, seconds)?.eyes;
    const seen = eyes && projectPoint(camera, eyes);
    if (!seen) return [];
    const across = (AROUND_EYES / (2 * camera.frame.tanHalfWidth * seen.depth)) * frame.width;
    const down = (AROUND_EYES / (2 * camera.frame.tanHalfHeight * seen.depth)) * frame.height;
    return [
      {
        left: frame.left + seen.x * frame.width - across,
        top: frame.top + seen.y * frame.height - down,
        width: 2 * across,
        height: 2 * down,
      },
    ];
  });
}
