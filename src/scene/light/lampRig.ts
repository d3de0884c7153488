import { Group, HemisphereLight, PointLight, SpotLight, Vector3 } from 'three';
import { beamPower, beamShare } from '../../core/form/beam';
import type { LampForm } from '../../core/form/types';
import { SKY_LUX } from '../../core/light/ambient';
import type { GlowUniforms } from '../materials/glowMaterial';
import { BRIGHTEST } from '../materials/glowMaterial';
import { coneOf, radians, SPILL } from './beam';
import { gathered } from './gathered';
import { colourOfLamp } from './kelvin';

/** Lights come in whole sizes, dark ones included: each new number of lights would build every shader again. */
const SPOT_STEP = 4;
const POINT_STEP = 4;
const MOST_SPOTS = 16;
/** Half the widest angle that a shadow map takes in. */
const WIDEST_SHADOW = radians(75);
/** Wider than this, a lamp shines all round. */
const ROUND_DEGREES = 175;

export interface RigOptions {
  /** How many of the strongest spots cast shadows, and how wide their maps are in texels. */
  readonly shadows: number;
  readonly shadowTexels: number;
  /** How many lights there may be for all the lamps that shine all round. */
  readonly points: number;
}

/** The lamps of an instant as lights in candela, and what their lenses and bulbs glow with. */
export class LampRig {
  readonly group = new Group();
  private readonly shadowed: SpotLight[] = [];
  private readonly spots: SpotLight[] = [];
  private readonly points: PointLight[] = [];

  constructor() {
    const [above, below] = [SKY_LUX.above, SKY_LUX.below];
    const sky = new HemisphereLight();
    sky.color.setRGB(...above);
    sky.groundColor.setRGB(...below);
    sky.intensity = 1;
    this.group.add(sky);
  }

  /**
   * Sets all lights to the lamps. `middle` is where the action is: the spots that light it most cast the shadows.
   * True when anything changed that a shadow shows.
   */
  set(lamps: readonly LampForm[], middle: readonly [number, number, number], options: RigOptions): boolean {
    const lit = lamps.filter((lamp) => lamp.peakCandela > 0);
    const spots = lit
      .filter((lamp) => lamp.fieldDegrees < ROUND_DEGREES)
      .sort((a, b) => luxAt(b, middle) - luxAt(a, middle));
    const points = gathered(
      lit.filter((lamp) => lamp.fieldDegrees >= ROUND_DEGREES),
      options.points,
    );
    const rest = spots.slice(options.shadows, MOST_SPOTS);
    this.resize(this.shadowed, options.shadows, true);
    this.resize(this.spots, Math.ceil(rest.length / SPOT_STEP) * SPOT_STEP, false);
    this.resizePoints(Math.ceil(points.length / POINT_STEP) * POINT_STEP);
    let moved = false;
    this.shadowed.forEach((light, k) => {
      if (setSpot(light, spots[k] ?? null)) moved = true;
      if (light.shadow.mapSize.x !== options.shadowTexels) {
        light.shadow.mapSize.set(options.shadowTexels, options.shadowTexels);
        light.shadow.map?.dispose();
        light.shadow.map = null;
        moved = true;
      }
    });
    this.spots.forEach((light, k) => {
      setSpot(light, rest[k] ?? null);
    });
    this.points.forEach((light, k) => {
      const point = points[k];
      light.intensity = point?.candela ?? 0;
      if (point) {
        light.color.setRGB(...point.colour);
        light.position.set(...point.position);
      }
    });
    this.group.updateMatrixWorld();
    return moved;
  }

  dispose(): void {
    for (const light of [...this.shadowed, ...this.spots, ...this.points]) light.dispose();
  }

  private resize(lights: SpotLight[], count: number, casts: boolean): void {
    while (lights.length > count) {
      const light = lights.pop();
      if (light) this.group.remove(light, light.target);
      light?.dispose();
    }
    while (lights.length < count) {
      const light = new SpotLight(0xffffff, 0, 0, 0.5, 0.5, 2);
      light.castShadow = casts;
      light.shadow.bias = -0.0006;
      light.shadow.normalBias = 0.02;
      light.shadow.radius = 2.2;
      light.shadow.camera.near = 0.25;
      lights.push(light);
      this.group.add(light, light.target);
    }
  }

  private resizePoints(count: number): void {
    while (this.points.length > count) {
      const light = this.points.pop();
      if (light) this.group.remove(light);
      light?.dispose();
    }
    while (this.points.length < count) {
      const light = new PointLight(0xffffff, 0, 0, 2);
      this.points.push(light);
      this.group.add(light);
    }
  }
}

const axis = new Vector3();

/** Illuminance of a lamp at a point that faces it, lux, were nothing in the way. */
export function luxAt(lamp: LampForm, point: readonly [number, number, number]): number {
  axis.set(point[0] - lamp.position[0], point[1] - lamp.position[1], point[2] - lamp.position[2]);
  const metres = Math.max(0.5, axis.length());
  const cosine =
    (axis.x * lamp.direction[0] + axis.y * lamp.direction[1] + axis.z * lamp.direction[2]) / metres;
  return (lamp.peakCandela / metres ** 2) * beamShare(lamp.beamDegrees, lamp.fieldDegrees, cosine);
}

function setSpot(light: SpotLight, lamp: LampForm | null): boolean {
  if (!lamp) {
    const was = light.intensity;
    light.intensity = 0;
    return was > 0;
  }
  const { angle, penumbra } = coneOf(lamp.beamDegrees, lamp.fieldDegrees);
  const [x, y, z] = lamp.position;
  const [dx, dy, dz] = lamp.direction;
  const moved =
    light.intensity === 0 ||
    light.position.x !== x ||
    light.position.y !== y ||
    light.position.z !== z ||
    light.target.position.x !== x + dx ||
    light.target.position.y !== y + dy ||
    light.target.position.z !== z + dz ||
    light.angle !== angle;
  light.intensity = lamp.peakCandela;
  light.color.setRGB(...colourOfLamp(lamp));
  light.position.set(x, y, z);
  light.target.position.set(x + dx, y + dy, z + dz);
  light.angle = angle;
  light.penumbra = penumbra;
  // The shadow reaches as far as the spill, up to what one flat map can hold.
  light.shadow.focus = Math.min(SPILL, WIDEST_SHADOW / angle);
  return moved;
}

/** Sets what an item's glowing parts shine with: the lamp's peak over the area that glows, along its axis. */
export function setGlow(glow: GlowUniforms, lamp: LampForm): void {
  const [width, height, depth] = lamp.sizeMetres;
  const isRound = lamp.fieldDegrees >= ROUND_DEGREES;
  const area = isRound ? (Math.PI / 4) * Math.max(width, depth) * height : (Math.PI / 4) * width * height;
  const luminance = Math.min(BRIGHTEST, lamp.peakCandela / Math.max(1e-4, area));
  glow.shine.value.set(...colourOfLamp(lamp)).multiplyScalar(luminance);
  glow.axis.value.set(...lamp.direction);
  const half = isRound ? 0 : 1 - Math.cos(radians(lamp.beamDegrees) / 2);
  glow.beam.value.set(half, beamPower(lamp.beamDegrees, lamp.fieldDegrees));
}
