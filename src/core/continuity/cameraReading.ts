import { subtract } from '../form/build/vector';
import { whereabouts } from '../form/figure/whereabouts';
import { glassOf, stateAt } from '../optics/camera';
import { poseOf } from '../optics/pose';
import { cameraFromWorld } from '../optics/project';
import { calledBy } from '../plan/named';
import { played } from '../plan/played';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { surfaceUnder } from '../plan/surfaces';
import { atan2, hypot } from '../units/steadyMath';

/** How a performer stands to a camera at an instant. */
export interface PerformerReading {
  readonly performerId: string;
  readonly label: string;
  /** With the tape: from the image plane to the eyes, metres. */
  readonly tapeMetres: number;
  /** Along the axis from the image plane, metres; negative behind it. */
  readonly axisMetres: number;
  /** Off the axis, positive to frame right, degrees. */
  readonly offAxisDegrees: number;
  /** From where the face looks to the camera, clockwise from above, −180 to 180: 0 is straight into the lens. */
  readonly offFaceDegrees: number;
}

/** What an assistant reads off a camera at an instant. */
export interface CameraReading {
  /** Lens above what is under it, metres. */
  readonly heightMetres: number;
  /** Up-positive. */
  readonly tiltDegrees: number;
  readonly rollDegrees: number;
  /** True heading, 0 to 360, by the plan's north. */
  readonly bearingDegrees: number;
  readonly focalMm: number;
  readonly performers: readonly PerformerReading[];
}

const DEGREES = 180 / Math.PI;

/** Degrees in 0 ≤ d < 360. */
const round = (degrees: number): number => ((degrees % 360) + 360) % 360;
/** Degrees in −180 < d ≤ 180. */
const signed = (degrees: number): number => 180 - round(180 - degrees);

/** The reading of a setup's camera at an instant of the action's clock, on its steady way. Performers who are nowhere are left out. */
export function cameraReading(plan: Plan, setup: Setup, seconds: number): CameraReading {
  const state = stateAt(plan, setup, seconds);
  const { position } = state;
  const behind = (glassOf(plan, setup).lens.pupilToImageMm ?? 0) / 1000;
  const pose = poseOf(position, state.headingDegrees, state.tiltDegrees, state.rollDegrees);
  const ground = surfaceUnder(plan, [position[0], position[2]], { belowMetres: position[1] });
  const scene = played(plan, setup);
  const performers = scene.cast.flatMap((performer): PerformerReading[] => {
    const place = whereabouts(performer, scene, seconds);
    if (!place) return [];
    const [x, y, z] = cameraFromWorld(pose, place.eyes);
    const towards = subtract(position, place.eyes);
    return [
      {
        performerId: performer.id,
        label: calledBy(performer.label, 'performer'),
        tapeMetres: hypot(x, y, z + behind),
        axisMetres: z + behind,
        offAxisDegrees: atan2(x, z) * DEGREES,
        offFaceDegrees: signed(atan2(towards[0], -towards[2]) * DEGREES - place.headingDegrees),
      },
    ];
  });
  return {
    heightMetres: position[1] - ground.metres,
    tiltDegrees: state.tiltDegrees,
    rollDegrees: state.rollDegrees,
    bearingDegrees: round(state.headingDegrees - plan.place.northDegrees),
    focalMm: state.focalMm,
    performers,
  };
}
