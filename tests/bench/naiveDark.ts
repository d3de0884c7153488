import { type Mesh, Raycaster, Vector3 } from 'three';
import { beamShare } from '../../src/core/form/beam';
import { unit, type Vec3 } from '../../src/core/form/build/vector';
import { ambientLux } from '../../src/core/light/ambient';
import { greyLuminance, LEAST_LUMINANCE } from '../../src/core/light/exposure';
import { finishOf } from '../../src/core/light/finishes';
import {
  pixelsAround,
  pixelsByPart,
  rayAt,
  rayOfPixel,
  samplesOf,
  thinSamples,
} from '../../src/core/light/frameSamples';
import { type LightScene, lightScene } from '../../src/core/light/lightScene';
import { darkOf } from '../../src/core/light/readsInTheDark';
import { skyLuminance } from '../../src/core/light/surroundings';
import { cameraAt } from '../../src/core/optics/camera';
import type { Plan } from '../../src/core/plan/schema/plan';
import type { Setup } from '../../src/core/plan/schema/setup';
import { borrowScratch, look } from '../../src/core/sight/look';
import type { Ray } from '../../src/core/sight/rays';
import { findThin } from '../../src/core/sight/thin';
import { meshesOf } from './naiveMeshes';

/** Which of an instant's items are lost, and what it took to say so. */
export interface NaiveAnswer {
  readonly lost: ReadonlySet<string>;
  readonly casts: number;
  /** Pixels of the frame that core looks at. */
  readonly framePixels: number;
  readonly milliseconds: number;
}

/** Off a surface, so that it does not stand in its own light; metres. */
const OFF_METRES = 0.003;

/** Luminance of what rays meet, by three: a ray to the eye, then for each lamp one through all triangles. */
class Eyes {
  casts = 0;
  private readonly caster = new Raycaster();
  private readonly solid: Mesh[];
  private readonly partOf = new Map<Mesh, number>();

  constructor(private readonly scene: LightScene) {
    const meshes = meshesOf(scene.blockers.stage.parts);
    for (const [k, mesh] of meshes.entries()) if (mesh) this.partOf.set(mesh, k);
    this.solid = meshes.filter((mesh) => mesh !== null);
  }

  private cast(
    from: Vec3,
    way: Vec3,
    far: number,
  ): { readonly mesh: Mesh; readonly at: Vector3; readonly normal: Vector3 } | null {
    this.casts += 1;
    this.caster.set(new Vector3(...from), new Vector3(...way));
    this.caster.near = 0;
    this.caster.far = far;
    const [hit] = this.caster.intersectObjects<Mesh>(this.solid, false);
    if (!hit?.face) return null;
    const normal = hit.face.normal.clone().transformDirection(hit.object.matrixWorld);
    return { mesh: hit.object, at: hit.point, normal };
  }

  luminance({ origin, direction }: Ray): number {
    const way = unit(direction);
    const hit = this.cast(origin, way, Number.POSITIVE_INFINITY);
    if (!hit) return skyLuminance(this.scene.ambient, way);
    const part = this.scene.blockers.stage.parts[this.partOf.get(hit.mesh) ?? 0];
    const { normal } = hit;
    if (normal.dot(new Vector3(...way)) > 0) normal.negate();
    const place = hit.at.clone().addScaledVector(normal, OFF_METRES);
    const from: Vec3 = [place.x, place.y, place.z];
    let lux = ambientLux(this.scene.ambient, [normal.x, normal.y, normal.z]);
    const ownItem = this.scene.blockers.stage.forms[part.item].id;
    for (const { form } of this.scene.lamps) {
      if (form.peakCandela === 0) continue;
      const to = new Vector3(...form.position).sub(place);
      const metres = to.length();
      to.divideScalar(metres);
      const cosine = normal.dot(to);
      if (cosine <= 0) continue;
      const blocked = this.cast(from, [to.x, to.y, to.z], metres - 0.05);
      const by =
        blocked &&
        this.scene.blockers.stage.forms[
          this.scene.blockers.stage.parts[this.partOf.get(blocked.mesh) ?? 0].item
        ].id;
      if (by !== null && by !== form.itemId && by !== ownItem) continue;
      const candela =
        form.peakCandela *
        beamShare(form.beamDegrees, form.fieldDegrees, -to.dot(new Vector3(...form.direction)));
      lux += (candela * cosine) / (metres * metres);
    }
    return (finishOf(part.shape).diffuse * lux) / Math.PI;
  }
}

const mean = (values: readonly number[]): number =>
  values.length === 0 ? 0 : values.reduce((sum, each) => sum + each, 0) / values.length;

/**
 * The same question as `readsInTheDark` at an instant, by a double loop: luminance of the same sample pixels and of the
 * same pixels beside the outline, each over all lamps and all triangles. Which pixels they are it is told; that is not
 * in its time. Lamps are points, everything is dull and flat: it has less to do than core.
 */
export function naiveDark(
  plan: Plan,
  setup: Setup,
  seconds: number,
  itemIds: readonly string[],
): NaiveAnswer {
  const scene = lightScene(plan, setup, seconds);
  const { stage } = scene.blockers;
  const camera = cameraAt(plan, setup, seconds);
  const { scratch, giveBack } = borrowScratch(camera);
  try {
    const seen = look(stage, camera, scratch);
    const items = new Set(itemIds.map((id) => stage.forms.findIndex((form) => form.id === id)));
    findThin(seen, items);
    const pixels = pixelsByPart(seen, items);
    const asked = stage.parts.flatMap((part) => {
      if (!items.has(part.item) || seen.direct.partPixels[part.index] === 0) return [];
      const own = pixels.get(part.index);
      const samples = own ? samplesOf(seen, own) : thinSamples(seen, part);
      const around = pixelsAround(seen, part.item, samples).map((at) =>
        rayOfPixel(seen, Math.floor(at / seen.grid.height), at % seen.grid.height),
      );
      const rays = samples.map(({ x, y, at }) =>
        at ? rayAt(seen, x + 0.5, y + 0.5) : rayOfPixel(seen, x, y),
      );
      return [{ item: part.item, name: part.name, rays, around }];
    });
    const started = performance.now();
    const eyes = new Eyes(scene);
    const grey = greyLuminance(setup);
    const { contrastStops, stopsUnder } = darkOf(plan);
    const lost = new Set(itemIds);
    for (const { item, rays, around } of asked) {
      if (rays.length === 0) continue;
      const own = Math.max(LEAST_LUMINANCE, mean(rays.map((ray) => eyes.luminance(ray))));
      const beside = Math.max(LEAST_LUMINANCE, mean(around.map((ray) => eyes.luminance(ray))));
      const isBlack = Math.max(own, beside) * 2 ** stopsUnder <= grey;
      if (!isBlack && Math.abs(Math.log2(own / beside)) >= contrastStops) lost.delete(stage.forms[item].id);
    }
    return {
      lost,
      casts: eyes.casts,
      framePixels: seen.grid.framePixels,
      milliseconds: performance.now() - started,
    };
  } finally {
    giveBack();
  }
}
