import { expect, it } from 'vitest';
import { cameraAt, spanOf } from '../../../src/core/optics/camera';
import { formsThrough } from '../../../src/core/optics/riding';
import type { Camera } from '../../../src/core/optics/types';
import { Blocks } from '../../../src/core/sight/blocks';
import { eyesOf } from '../../../src/core/sight/eyes';
import { reachOf } from '../../../src/core/sight/grid';
import { look, scratchFor } from '../../../src/core/sight/look';
import { isNearer, outsideOf } from '../../../src/core/sight/margin';
import { rectsOf } from '../../../src/core/sight/rects';
import { type SightStage, stageOf } from '../../../src/core/sight/stage';
import { mirrorsIn } from '../../../src/core/sight/sweep';
import { findThin } from '../../../src/core/sight/thin';
import { DEMO, readPlan } from '../../plans/readPlan';
import { cases } from '../../thorough';
import { randomCamera, randomForms } from './randomForms';

interface Scene {
  readonly name: string;
  readonly stage: SightStage;
  readonly camera: Camera;
}

/** The demo through all its setups, and random roofs. */
function* scenes(): Generator<Scene> {
  const demo = readPlan(DEMO);
  for (const setup of demo.setups) {
    const [from, to] = spanOf(demo, setup);
    for (const share of [0.55, 0, 1].slice(0, cases(3))) {
      const seconds = from + (to - from) * share;
      const stage = stageOf(formsThrough(demo, setup, seconds));
      yield { name: `${setup.id} at ${seconds}`, stage, camera: cameraAt(demo, setup, seconds) };
    }
  }
  for (let seed = 801; seed <= 800 + cases(12); seed += 1)
    yield { name: `seed ${seed}`, stage: stageOf(randomForms(seed)), camera: randomCamera(seed) };
}

it('what blocks are said to hide no look finds, nor anything beyond what they leave open', () => {
  let [hidden, partly] = [0, 0];
  for (const { name, stage, camera } of scenes()) {
    const scratch = scratchFor(camera);
    const { grid } = scratch;
    const mirrors = mirrorsIn({
      stages: [stage],
      camera,
      field: reachOf(grid),
      motion: { metres: 0, chord: 0 },
    });
    const seen = look(stage, camera, scratch);
    const eyes = eyesOf(camera, grid, mirrors);
    const blocks = new Blocks();
    const asked = stage.forms.flatMap(({ id }, item) => {
      if (rectsOf(stage, item, camera, grid, mirrors).length === 0) return [];
      return [{ id, item, open: blocks.open(stage, item, eyes, camera, grid) }];
    });
    findThin(seen, new Set(asked.flatMap(({ item, open }) => (open.length === 0 ? [item] : []))));
    for (const { id, item, open } of asked) {
      if (open.length > 0) partly += 1;
      else hidden += 1;
      for (const { itemPixels, boxes } of [seen.direct, seen.mirrored]) {
        if (open.length === 0) expect(itemPixels[item], `${id}, ${name}`).toBe(0);
        if (open.length === 0 || itemPixels[item] === 0) continue;
        const [left, top, right, bottom] = boxes.slice(4 * item, 4 * item + 4);
        expect(Math.min(...open.map((rect) => rect.left)), `${id}, ${name}`).toBeLessThanOrEqual(left);
        expect(Math.min(...open.map((rect) => rect.top)), `${id}, ${name}`).toBeLessThanOrEqual(top);
        expect(Math.max(...open.map((rect) => rect.right)), `${id}, ${name}`).toBeGreaterThanOrEqual(right);
        expect(Math.max(...open.map((rect) => rect.bottom)), `${id}, ${name}`).toBeGreaterThanOrEqual(bottom);
      }
    }
  }
  expect(hidden).toBeGreaterThan(5);
  expect(partly).toBeGreaterThan(5);
});

it('an item is nearer to a frame than a distance where it is measured to be', () => {
  let [near, far] = [0, 0];
  for (const { name, stage, camera } of scenes())
    for (const [item, { id }] of stage.forms.entries()) {
      const outside = outsideOf(stage, item, camera);
      for (const berth of [
        { metres: 0.3, frameWidths: 0.02 },
        { metres: 1, frameWidths: 0 },
        { metres: 0, frameWidths: 0.2 },
      ]) {
        const isNear =
          outside !== null &&
          (outside === 'inside' || outside.metres < berth.metres || outside.frameWidths < berth.frameWidths);
        if (isNear) near += 1;
        else far += 1;
        expect(isNearer(stage, item, camera, berth), `${id}, ${name}`).toBe(isNear);
      }
    }
  expect(near).toBeGreaterThan(100);
  expect(far).toBeGreaterThan(100);
});
