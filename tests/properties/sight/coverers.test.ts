import { expect, it } from 'vitest';
import { coverersIn, coverersOf } from '../../../src/core/sight/coverers';
import { look, scratchFor } from '../../../src/core/sight/look';
import { groupsOf } from '../../../src/core/sight/rects';
import { stageOf } from '../../../src/core/sight/stage';
import { cases } from '../../thorough';
import { randomCamera, randomForms } from './randomForms';

it('who stands before an item is the same in a look at all and from its own pixels alone', () => {
  let covered = 0;
  for (let seed = 901; seed <= 900 + cases(30); seed += 1) {
    const stage = stageOf(randomForms(seed));
    const camera = randomCamera(seed);
    const scratch = scratchFor(camera);
    const seen = look(stage, camera, scratch);
    const items = [...stage.forms.keys()].filter((item) => seen.alone[item] > seen.direct.itemPixels[item]);
    const told = new Map(items.map((item) => [item, coverersOf(seen, item)]));
    const groups = groupsOf(stage, new Set(items), camera, scratch.grid, []);
    for (const group of groups)
      for (const [item, coverers] of coverersIn(group, { stage, camera }, scratch)) {
        expect(coverers, `item ${item}, seed ${seed}`).toEqual(told.get(item));
        told.delete(item);
        covered += 1;
      }
    expect([...told.keys()], `seed ${seed}`).toEqual([]);
  }
  expect(covered).toBeGreaterThan(20);
});
