import { BufferAttribute, BufferGeometry, Mesh, MeshBasicMaterial, Raycaster, Vector3 } from 'three';
import { formsAt } from '../../src/core/form/formsAt';
import { cameraAt, spanOf } from '../../src/core/optics/camera';
import { look, scratchFor } from '../../src/core/sight/look';
import { stageOf } from '../../src/core/sight/stage';
import { findThin } from '../../src/core/sight/thin';
import { crowdedPlan } from '../plans/crowd';
import { drawFrom } from '../plans/draw';
import { someAreas } from '../plans/someAreas';
import { Tracer } from '../properties/sight/tracer';
import { medianMs, ms, printTable, times } from './table';

/**
 * One setup at one instant: ours with mirror and thin tubes, against two other ways to ask the same pixels. Of a night of
 * twenty setups the one that takes longest of those that see the wet deck mirror something.
 */
const plan = crowdedPlan(60, 20, 1);
const instants = plan.setups.map((setup) => {
  const [from, to] = spanOf(plan, setup);
  const at = (from + to) / 2;
  const stage = stageOf(formsAt(plan, at));
  const camera = cameraAt(plan, setup, at);
  const scratch = scratchFor(camera);
  const { mirrored } = look(stage, camera, scratch);
  const pixels = mirrored.itemPixels.reduce((sum, each) => sum + each, 0);
  return { at, stage, camera, scratch, pixels, tookMs: medianMs(9, () => look(stage, camera, scratch)) };
});
const mirroring = instants.filter(({ pixels }) => pixels > 0).sort((a, b) => a.tookMs - b.tookMs);
const slowest = mirroring.at(-1);
if (!slowest) throw new Error('in no setup of the night does the wet deck mirror anything');
const { at, stage, camera, scratch } = slowest;
const { width, height } = scratch.grid;
const triangles = stage.parts.reduce((sum, part) => sum + part.shape.indices.length / 3, 0);
console.log(
  `  ${stage.forms.length} items, ${triangles} triangles, ${width} × ${height} pixels; in ${mirroring.length} of ${instants.length} setups the deck mirrors something, in this one on ${((100 * slowest.pixels) / (width * height)).toFixed(0)} % of the pixels`,
);

const middle = mirroring[mirroring.length >> 1];
const ofMiddle = medianMs(15, () => look(middle.stage, middle.camera, middle.scratch));
const buffer = medianMs(15, () => look(stage, camera, scratch));
const whole = medianMs(15, () => findThin(look(stage, camera, scratch)));
const areas = Array.from({ length: 12 }, (_, k) => ({
  ...someAreas(drawFrom(k + 1), 1)[0],
  id: `area-${k}`,
}));
const patched = () => ({ ...plan, ground: { ...plan.ground, areas: areas.map((area) => ({ ...area })) } });
const patchedStage = stageOf(formsAt(patched(), at));
const inParts = medianMs(15, () => look(patchedStage, camera, scratch));
const cutting = medianMs(15, () => formsAt(patched(), at));

const tracer = new Tracer(stage);
const started = performance.now();
tracer.raster(camera, width, height);
const traced = performance.now() - started;

// The plain ray caster is far too slow for all pixels: a few rays, and their time multiplied.
const positions: number[] = [];
for (const { shape, worldFromPart: m } of stage.parts) {
  for (const index of shape.indices) {
    const p = shape.positions.subarray(index * 3, index * 3 + 3);
    if (!m) positions.push(p[0], p[1], p[2]);
    else
      for (const row of [0, 4, 8])
        positions.push(m[row] * p[0] + m[row + 1] * p[1] + m[row + 2] * p[2] + m[row + 3]);
  }
}
const geometry = new BufferGeometry();
geometry.setAttribute('position', new BufferAttribute(Float32Array.from(positions), 3));
const mesh = new Mesh(geometry, new MeshBasicMaterial());
const caster = new Raycaster();
const RAYS = 400;
const castStarted = performance.now();
for (let k = 0; k < RAYS; k += 1) {
  const x = ((k * 0.754877666) % 1) * 2 - 1;
  const y = ((k * 0.569840291) % 1) * 2 - 1;
  const { position, right, up, forward } = camera.pose;
  const direction = new Vector3(...forward)
    .addScaledVector(new Vector3(...right), x * camera.frame.tanHalfWidth)
    .addScaledVector(new Vector3(...up), y * camera.frame.tanHalfHeight)
    .normalize();
  caster.set(new Vector3(...position), direction);
  caster.intersectObject(mesh);
}
const cast = ((performance.now() - castStarted) / RAYS) * width * height;

printTable([
  {
    what: 'one setup, one instant, mirror included: item buffer',
    reach: '≤ 10 ms',
    reached: `${ms(buffer)}; in the middle one of these setups ${ms(ofMiddle)}`,
  },
  { what: 'the same with thin tubes and exact rays', reach: '', reached: ms(whole) },
  {
    what: `the item buffer over a deck in ${areas.length} wet and dry areas`,
    reach: '',
    reached: ms(inParts),
  },
  { what: 'to cut the deck along them anew', reach: '', reached: ms(cutting) },
  {
    what: 'three-mesh-bvh, same pixels, mirror included',
    reach: '≥ 50 times ours',
    reached: `${ms(traced)}, ${times(traced / buffer)}`,
  },
  {
    what: `plain ray caster of three, from ${RAYS} rays`,
    reach: '',
    reached: `${ms(cast)}, ${times(cast / buffer)}`,
  },
]);
