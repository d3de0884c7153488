import { cross, frameAround, scale } from '../../core/form/build/vector';
import type { LampForm } from '../../core/form/types';
import type { Plan } from '../../core/plan/schema/plan';
import { linearColour } from '../glb/linearColour';
import { CENTIMETRES, placementLines } from './placement';
import { lengthText, metadata, numberText, prim, tuple } from './text';

/** A wider field than this goes all round. */
const WIDEST_CONE_DEGREES = 180;
/** What glows is never taken to be smaller than this, metres. */
const LEAST_METRES = 0.001;
const ROUND_FORMS = ['spot', 'fresnel', 'bulb', 'street'];
const WHITE = [1, 1, 1];

interface Emitter {
  readonly type: 'SphereLight' | 'DiskLight' | 'RectLight';
  readonly size: readonly string[];
  /** As seen along the axis, square metres. */
  readonly area: number;
}

/** What glows: a ball where it shines all round, a disc where the lamp is round, else its rectangle. */
function emitterOf(plan: Plan, lamp: LampForm): Emitter {
  const [width, height] = lamp.sizeMetres.map((metres) => Math.max(metres, LEAST_METRES));
  const centimetres = (metres: number): string => lengthText(metres * CENTIMETRES);
  const radius = Math.max(width, height) / 2;
  const disc = { size: [`float inputs:radius = ${centimetres(radius)}`], area: Math.PI * radius * radius };
  if (lamp.fieldDegrees > WIDEST_CONE_DEGREES) return { type: 'SphereLight', ...disc };
  const form = plan.kit.heads.find(({ id }) => id === lamp.headClassId)?.form ?? '';
  if (ROUND_FORMS.includes(form) && width === height) return { type: 'DiskLight', ...disc };
  return {
    type: 'RectLight',
    size: [`float inputs:width = ${centimetres(width)}`, `float inputs:height = ${centimetres(height)}`],
    area: width * height,
  };
}

/**
 * A lamp as a light that gives the plan's candela along its axis: its intensity is the luminance of what glows, candela
 * over its area in square metres, not normalised. The cone is the field angle, its softness what the beam leaves of it;
 * the angles, the candela and the kelvin are in the custom data too. Dimmed to nothing it is there with 0.
 * From memory: UsdLux, whose intensity is a luminance in nits where a light is not normalised.
 */
export function lampLines(identifier: string, plan: Plan, lamp: LampForm): string[] {
  const { type, size, area } = emitterOf(plan, lamp);
  const back = scale(lamp.direction, -1);
  const [right] = frameAround(back);
  const isCone = lamp.fieldDegrees <= WIDEST_CONE_DEGREES;
  const custom = {
    item: lamp.itemId,
    candela: lamp.peakCandela,
    kelvin: lamp.kelvin,
    beamDegrees: lamp.beamDegrees,
    fieldDegrees: lamp.fieldDegrees,
    measured: lamp.distribution !== null,
  };
  const label = plan.gear.find(({ id }) => id === lamp.itemId)?.label ?? lamp.itemId;
  return prim(`${type} "${identifier}"`, metadata(label, custom, isCone ? ['ShapingAPI'] : []), [
    `float inputs:intensity = ${numberText(lamp.peakCandela / area)}`,
    'bool inputs:normalize = 0',
    `color3f inputs:color = ${tuple(lamp.tint === null ? WHITE : linearColour(lamp.tint))}`,
    'bool inputs:enableColorTemperature = 1',
    `float inputs:colorTemperature = ${numberText(lamp.kelvin)}`,
    ...size,
    ...(isCone
      ? [
          `float inputs:shaping:cone:angle = ${numberText(lamp.fieldDegrees / 2)}`,
          `float inputs:shaping:cone:softness = ${numberText(Math.max(0, 1 - lamp.beamDegrees / lamp.fieldDegrees))}`,
        ]
      : []),
    ...placementLines({
      right,
      up: cross(back, right),
      forward: lamp.direction,
      position: lamp.position,
    }),
  ]);
}
