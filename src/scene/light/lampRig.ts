import { Group, type LightShadow, PointLight, SpotLight } from 'three';
import { beamPower } from '../../core/form/beam';
import type { Vec3 } from '../../core/form/build/vector';
import type { LampForm } from '../../core/form/types';
import type { GivingFace } from '../../core/light/clothLight';
import type { GlowUniforms } from '../materials/glowMaterial';
import { BRIGHTEST } from '../materials/glowMaterial';
import { coneOf, curveOf, radians, SPILL } from './beam';
import { CandelaRows } from './candelaRows';
import { gathered } from './gathered';
import type { Housings } from './housings';
import { colourOfLamp } from './kelvin';
import { LAMP_UNIFORMS, resized } from './lampUniforms';
import { isPoint, luxAt, type SpotSource, spotOfCloth, spotOfLamp } from './spotSources';

/** Lights come in whole sizes, dark ones included: each new number of lights would build every shader again. */
const SPOT_STEP = 2;
const POINT_STEP = 4;
const MOST_SPOTS = 24;
/** A lit cloth that gives less than this, candela, is no light in a picture: 0.1 lx at three metres. */
const FAINT_CLOTH_CANDELA = 1;
/** Half the widest angle that a shadow map takes in. */
const WIDEST_SHADOW = radians(75);
const FARTHEST_SHADOW_METRES = 150;
/** Wider than this, a lamp's lens glows alike all round. */
const ROUND_DEGREES = 175;

export interface RigOptions {
  /** How many of the strongest spots cast shadows, and how wide their maps are in texels. */
  readonly shadows: number;
  readonly shadowTexels: number;
  /** Looks at the map for what is in the way, and past it for the soft edge, a pixel and lamp. */
  readonly shadowTaps: readonly [number, number];
  /** How many lights there may be for all the lamps that shine all round. */
  readonly points: number;
}

/** All that shines at an instant. */
export interface Shining {
  readonly lamps: readonly LampForm[];
  /** Bounces and frames that are lit. */
  readonly cloths: readonly GivingFace[];
  readonly housings: Housings;
  /** Lamps that shine at a frame: they need a shadow first of all. */
  readonly framed: ReadonlySet<string>;
}

type Candidate = SpotSource & { readonly isFramed: boolean };

/** The lamps of an instant as lights in candela, and what their lenses and bulbs glow with. */
export class LampRig {
  readonly group = new Group();
  private readonly shadowed: SpotLight[] = [];
  private readonly spots: SpotLight[] = [];
  private readonly points: PointLight[] = [];
  private readonly rows = new CandelaRows();

  /**
   * Sets all lights to the lamps. `middle` is where the action is: the spots that light it most cast the shadows.
   * Gives the shadows whose lamps have moved.
   */
  set(shining: Shining, middle: Vec3, options: RigOptions): readonly LightShadow[] {
    const sources = this.sourcesOf(shining).sort(
      (a, b) => Number(b.isFramed) - Number(a.isFramed) || luxAt(b, middle) - luxAt(a, middle),
    );
    const rest = sources.slice(options.shadows, MOST_SPOTS);
    this.resize(this.shadowed, options.shadows, true);
    this.resize(this.spots, Math.ceil(rest.length / SPOT_STEP) * SPOT_STEP, false);
    const { lampFaces, lampShadows, candelaRows, shadowTaps } = LAMP_UNIFORMS;
    const faces = resized(lampFaces.value, this.shadowed.length + this.spots.length);
    const lenses = resized(lampShadows.value, this.shadowed.length);
    candelaRows.value = this.rows.texture;
    shadowTaps.value.set(...options.shadowTaps);
    const movedShadows: LightShadow[] = [];
    const setFace = (k: number, source: SpotSource | undefined): void => {
      if (!source) return;
      const { first, planes } = source.rows;
      const { end } = curveOf(source.beamDegrees, source.fieldDegrees);
      faces[k].set(...source.spreadMetres, planes > 0 ? first : end, planes);
    };
    this.shadowed.forEach((light, k) => {
      const source = sources[k];
      let moved = setSpot(light, source);
      setFace(k, source);
      const { camera, mapSize } = light.shadow;
      if (source) {
        if (camera.near !== source.nearMetres) {
          camera.near = source.nearMetres;
          camera.updateProjectionMatrix();
          moved = true;
        }
        const tangent = Math.tan(light.angle * light.shadow.focus);
        lenses[k].set(1 / camera.near, 1 / camera.near - 1 / camera.far, tangent, source.radiusMetres);
      }
      if (mapSize.x !== options.shadowTexels) {
        mapSize.set(options.shadowTexels, options.shadowTexels);
        light.shadow.map?.dispose();
        light.shadow.map = null;
        moved = true;
      }
      if (moved) movedShadows.push(light.shadow);
    });
    this.spots.forEach((light, k) => {
      setSpot(light, rest[k]);
      setFace(this.shadowed.length + k, rest[k]);
    });
    this.setPoints(shining.lamps, options.points);
    this.group.updateMatrixWorld();
    return movedShadows;
  }

  /** The shadows of the lamps that cast any. */
  get shadows(): readonly LightShadow[] {
    return this.shadowed.map(({ shadow }) => shadow);
  }

  dispose(): void {
    for (const light of [...this.shadowed, ...this.spots, ...this.points]) light.dispose();
    this.rows.dispose();
  }

  private sourcesOf({ lamps, cloths, housings, framed }: Shining): Candidate[] {
    const lit = lamps.filter((lamp) => lamp.peakCandela > 0 && !isPoint(lamp));
    const colours = new Map(lamps.map((lamp) => [lamp.itemId, colourOfLamp(lamp)]));
    return [
      ...lit.map((lamp) => ({
        ...spotOfLamp(lamp, this.rows, housings.withDoors.has(lamp.itemId), housings.round.has(lamp.itemId)),
        isFramed: framed.has(lamp.itemId),
      })),
      ...cloths
        .filter(({ candela }) => candela >= FAINT_CLOTH_CANDELA)
        .map((face) => ({ ...spotOfCloth(face, this.rows, colours), isFramed: false })),
    ];
  }

  private setPoints(lamps: readonly LampForm[], most: number): void {
    const points = gathered(
      lamps.filter((lamp) => lamp.peakCandela > 0 && isPoint(lamp)),
      most,
    );
    this.resizePoints(Math.ceil(points.length / POINT_STEP) * POINT_STEP);
    this.points.forEach((light, k) => {
      const point = points[k];
      light.intensity = point?.candela ?? 0;
      if (point) {
        light.color.setRGB(...point.colour);
        light.position.set(...point.position);
      }
    });
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
      light.shadow.autoUpdate = false;
      light.shadow.normalBias = 0.008;
      light.shadow.camera.near = 0.25;
      light.shadow.camera.far = FARTHEST_SHADOW_METRES;
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

function setSpot(light: SpotLight, source: SpotSource | undefined): boolean {
  if (!source) {
    const was = light.intensity;
    light.intensity = 0;
    return was > 0;
  }
  const { angle, penumbra } = coneOf(source.beamDegrees, source.fieldDegrees);
  const [x, y, z] = source.position;
  const [dx, dy, dz] = source.direction;
  const moved =
    light.intensity === 0 ||
    light.position.x !== x ||
    light.position.y !== y ||
    light.position.z !== z ||
    light.target.position.x !== x + dx ||
    light.target.position.y !== y + dy ||
    light.target.position.z !== z + dz ||
    light.angle !== angle;
  light.intensity = source.candela;
  light.color.setRGB(...source.colour);
  light.position.set(x, y, z);
  light.target.position.set(x + dx, y + dy, z + dz);
  light.angle = angle;
  light.penumbra = penumbra;
  // Our loop over the lamps does not ask for a decay: it finds the power of the curve there.
  light.decay = curveOf(source.beamDegrees, source.fieldDegrees).power;
  // The shadow reaches as far as the spill, up to what one flat map can hold.
  light.shadow.focus = Math.min(SPILL, WIDEST_SHADOW / angle);
  return moved;
}

/** Sets what an item's glowing parts shine with: the lamp's peak over the area of its round or square face, along its axis. */
export function setGlow(glow: GlowUniforms, lamp: LampForm, hasRoundFace: boolean): void {
  const [width, height, depth] = lamp.sizeMetres;
  const isRound = lamp.fieldDegrees >= ROUND_DEGREES;
  const flat = hasRoundFace ? Math.PI / 4 : 1;
  const area = isRound ? (Math.PI / 4) * Math.max(width, depth) * height : flat * width * height;
  const luminance = Math.min(BRIGHTEST, lamp.peakCandela / Math.max(1e-4, area));
  glow.shine.value.set(...colourOfLamp(lamp)).multiplyScalar(luminance);
  glow.axis.value.set(...lamp.direction);
  const half = isRound ? 0 : 1 - Math.cos(radians(lamp.beamDegrees) / 2);
  glow.beam.value.set(half, beamPower(lamp.beamDegrees, lamp.fieldDegrees));
}
