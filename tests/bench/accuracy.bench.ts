import { look, scratchFor } from '../../src/core/sight/look';
import { stageOf } from '../../src/core/sight/stage';
import { findThin } from '../../src/core/sight/thin';
import { randomCamera, randomForms } from '../properties/sight/randomForms';
import { Tracer } from '../properties/sight/tracer';
import { printTable } from './table';

/** Shares against rays of another library, 4,096 across; thin tubes against dense rays along them. */
const WIDE = 4096;
let largest = 0;
let parts = 0;
for (let seed = 1001; seed <= 1004; seed += 1) {
  const stage = stageOf(randomForms(seed));
  const camera = randomCamera(seed);
  const scratch = scratchFor(camera);
  const found = look(stage, camera, scratch);
  const truth = new Tracer(stage).raster(camera, WIDE, Math.round(WIDE / camera.frame.aspect));
  for (const { index } of stage.parts) {
    for (const way of ['direct', 'mirrored'] as const) {
      const share = found[way].partPixels[index] / scratch.grid.framePixels;
      const real = truth[way][index] / truth.rays;
      largest = Math.max(largest, Math.abs(share - real));
      if (real > 0) parts += 1;
    }
  }
}

let present = 0;
let lost = 0;
let absent = 0;
let invented = 0;
for (let seed = 2001; seed <= 2160; seed += 1) {
  const stage = stageOf(randomForms(seed));
  const camera = randomCamera(seed);
  const found = look(stage, camera, scratchFor(camera));
  findThin(found);
  const tracer = new Tracer(stage);
  for (const part of stage.parts) {
    if (part.shape.tubes.length === 0 || part.shape.openness !== null) continue;
    const isFound = found.direct.partPixels[part.index] > 0;
    if (tracer.meetsAnyTube(camera, part)) {
      present += 1;
      if (!isFound) lost += 1;
    } else {
      absent += 1;
      if (isFound && !tracer.meetsInBox(camera, part)) invented += 1;
    }
  }
}

printTable([
  {
    what: `share of frame per part against rays ${WIDE.toLocaleString('en')} across, ${parts} parts`,
    reach: 'within 0.1 %',
    reached: `largest difference ${(largest * 100).toFixed(3)} %`,
  },
  {
    what: `thin tubes that dense rays find, of ${present}`,
    reach: '99.9 %',
    reached: `${((1 - lost / present) * 100).toFixed(2)} %`,
  },
  {
    what: `found where no ray finds any, of ${absent}`,
    reach: 'under 0.1 %',
    reached: `${((invented / absent) * 100).toFixed(2)} %`,
  },
]);
