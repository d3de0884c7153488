import { DirectionalLight, FogExp2, Group, HemisphereLight, type LightShadow } from 'three';
import { type Ambient, MOON_KELVIN } from '../../core/light/ambient';
import { differs } from '../drive/differs';
import { colourOfKelvin } from './kelvin';
import { setMoonDisc, setNight } from './night';

/** How far round the middle of the action the moon's shadows are drawn, and how far off its light stands, metres. */
const ROUND_METRES = 14;
const OFF_METRES = 60;

/** The light of sky, streets and moon. */
export class NightLights {
  readonly group = new Group();
  private readonly sky = new HemisphereLight();
  private readonly moon = new DirectionalLight(0xffffff, 0);
  /** What the moon was last set to. */
  private moonlit: readonly number[] | null = null;

  constructor() {
    this.moon.visible = false;
    this.moon.shadow.autoUpdate = false;
    this.moon.shadow.bias = -0.0008;
    this.moon.shadow.normalBias = 0.03;
    const { camera } = this.moon.shadow;
    Object.assign(camera, {
      left: -ROUND_METRES,
      right: ROUND_METRES,
      top: ROUND_METRES,
      bottom: -ROUND_METRES,
    });
    Object.assign(camera, { near: 1, far: 2 * OFF_METRES });
    this.moon.color.setRGB(...colourOfKelvin(MOON_KELVIN));
    this.group.add(this.sky, this.moon, this.moon.target);
  }

  /**
   * Sets the night: its glow, its haze, and the moon, whose shadows are drawn round `middle` where `texels` is above 0.
   * Gives the shadows that have moved.
   */
  set(
    ambient: Ambient,
    middle: readonly [number, number, number],
    texels: number,
    fog: unknown,
  ): readonly LightShadow[] {
    const { night, moon } = ambient;
    setNight(night);
    setMoonDisc(moon);
    this.sky.color.setRGB(...night.above);
    this.sky.groundColor.setRGB(...night.below);
    if (fog instanceof FogExp2) fog.color.setRGB(...night.horizon);
    const before = this.moonlit;
    this.moonlit = moon && [...moon.way, moon.lux, ...middle, texels];
    this.moon.visible = moon !== null;
    if (!differs(before ?? [], this.moonlit ?? [])) return [];
    if (!moon) return [];
    this.moon.intensity = moon.lux;
    this.moon.castShadow = texels > 0;
    if (texels > 0 && this.moon.shadow.mapSize.x !== texels) {
      this.moon.shadow.mapSize.set(texels, texels);
      this.moon.shadow.map?.dispose();
      this.moon.shadow.map = null;
    }
    const [x, y, z] = middle;
    const [dx, dy, dz] = moon.way;
    this.moon.target.position.set(x, y, z);
    this.moon.position.set(x + dx * OFF_METRES, y + dy * OFF_METRES, z + dz * OFF_METRES);
    this.group.updateMatrixWorld();
    return this.shadows;
  }

  /** The moon's, while it is up and casts any. */
  get shadows(): readonly LightShadow[] {
    return this.moon.visible && this.moon.castShadow ? [this.moon.shadow] : [];
  }

  dispose(): void {
    this.moon.dispose();
  }
}
