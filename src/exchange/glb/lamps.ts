import type { LampForm } from '../../core/form/types';
import type { GltfLight, GltfNode } from './document';
import { linearColour } from './linearColour';
import { rotationTowards } from './rotation';

const WHITE = [1, 1, 1];
/** A wider field than this has no cone. */
const WIDEST_CONE_DEGREES = 180;
/** The extension wants the inner cone inside the outer one, also for a lamp whose beam is its field. */
const LARGEST_INNER_SHARE = 0.999;

const half = (degrees: number): number => (degrees * Math.PI) / 360;

/**
 * A lamp as KHR_lights_punctual has it: candela along the axis, full within the beam angle, falling off to the
 * field angle. That is coarser than the lamp's own distribution; the angles themselves go into the node's extras.
 * @param place the light's number in the document
 */
export function lightOf(
  lamp: LampForm,
  place: number,
): { readonly light: GltfLight; readonly node: GltfNode } {
  const name = `${lamp.itemId}:lamp`;
  const outer = half(Math.min(lamp.fieldDegrees, WIDEST_CONE_DEGREES));
  const common = {
    name,
    color: lamp.tint === null ? WHITE : linearColour(lamp.tint),
    intensity: lamp.peakCandela,
  };
  return {
    light:
      lamp.fieldDegrees > WIDEST_CONE_DEGREES
        ? { ...common, type: 'point' }
        : {
            ...common,
            type: 'spot',
            spot: {
              innerConeAngle: Math.min(half(lamp.beamDegrees), outer * LARGEST_INNER_SHARE),
              outerConeAngle: outer,
            },
          },
    node: {
      name,
      translation: [...lamp.position],
      rotation: rotationTowards(lamp.direction),
      extensions: { KHR_lights_punctual: { light: place } },
      extras: {
        lamp: lamp.itemId,
        kelvin: lamp.kelvin,
        beamDegrees: lamp.beamDegrees,
        fieldDegrees: lamp.fieldDegrees,
      },
    },
  };
}
