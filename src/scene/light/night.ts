import { Vector3 } from 'three';
import type { Moonlight } from '../../core/light/ambient';
import { USUAL_AMBIENT } from '../../core/light/ambient';
import type { Night } from '../../core/light/glows';

const USUAL = USUAL_AMBIENT.night;

/** The night round the roof as the picture has it; whatever draws with it holds these very vectors. */
export const NIGHT: Readonly<Record<keyof Night, Vector3>> = {
  zenith: new Vector3(...USUAL.zenith),
  horizon: new Vector3(...USUAL.horizon),
  ground: new Vector3(...USUAL.ground),
  above: new Vector3(...USUAL.above),
  below: new Vector3(...USUAL.below),
};

/** Half of what the moon's disc takes up in the mean, 15.5 minutes of arc, radians; from memory. */
const MOON_RADIUS = (15.5 / 60) * (Math.PI / 180);

/** The moon's disc as the dome draws it: towards it, towards the sun, and its luminance, 0 where it is not out. */
export const MOON_UNIFORMS = {
  moonWay: { value: new Vector3(0, 1, 0) },
  moonSun: { value: new Vector3(0, 1, 0) },
  moonRadius: { value: MOON_RADIUS },
  moonLuminance: { value: 0 },
};

/** Sets the moon that is seen: as bright as its light on the roof asks of what is lit of its disc. */
export function setMoonDisc(moon: Moonlight | null): void {
  MOON_UNIFORMS.moonLuminance.value = moon
    ? moon.lux / (Math.PI * MOON_RADIUS * MOON_RADIUS * Math.max(0.02, moon.lit))
    : 0;
  if (!moon) return;
  MOON_UNIFORMS.moonWay.value.set(...moon.way);
  MOON_UNIFORMS.moonSun.value.set(...moon.sun);
}

/** Sets the night of all that draws with it. */
export function setNight(night: Night): void {
  NIGHT.zenith.set(...night.zenith);
  NIGHT.horizon.set(...night.horizon);
  NIGHT.ground.set(...night.ground);
  NIGHT.above.set(...night.above);
  NIGHT.below.set(...night.below);
}
