import { expect, it } from 'vitest';
import { bufferFor, makeRoomFor } from '../../../src/core/sight/buffer';
import { look, scratchFor } from '../../../src/core/sight/look';
import { type SightStage, stageOf } from '../../../src/core/sight/stage';
import { randomCamera, randomForms } from '../../properties/sight/randomForms';

const MOST_IN_TWO_BYTES = 65535;

/** A stage with so many parts before its own that their numbers need more than two bytes. */
function crowded(stage: SightStage): SightStage {
  const [form] = stage.forms;
  const far = { ...form, id: 'far', parts: form.parts.slice(0, 1) };
  const filling = Array.from({ length: 9 }, () => ({
    ...far,
    parts: Array.from({ length: MOST_IN_TWO_BYTES / 9 + 1 }, () => ({
      ...far.parts[0],
      worldFromPart: [1, 0, 0, 0, 0, 1, 0, -1e6, 0, 0, 1, 0] as const,
    })),
  }));
  return stageOf([...filling, ...stage.forms]);
}

it('parts beyond what two bytes can number are seen as the same parts alone', () => {
  const few = stageOf(randomForms(5));
  const camera = randomCamera(5);
  const alone = look(few, camera, scratchFor(camera));
  const scratch = scratchFor(camera);
  const many = crowded(few);
  expect(many.parts.length).toBeGreaterThan(MOST_IN_TWO_BYTES);
  const seen = look(many, camera, scratch);
  expect(scratch.buffer.owner.BYTES_PER_ELEMENT).toBe(4);
  expect([...seen.direct.itemPixels].slice(9)).toEqual([...alone.direct.itemPixels]);
  expect([...seen.mirrored.itemPixels].slice(9)).toEqual([...alone.mirrored.itemPixels]);
  expect([...alone.direct.itemPixels].some((pixels) => pixels > 0)).toBe(true);
});

it('a buffer keeps its two bytes a tag where they do', () => {
  const camera = randomCamera(5);
  const buffer = bufferFor(scratchFor(camera).grid);
  makeRoomFor(buffer, stageOf(randomForms(5)));
  expect(buffer.owner.BYTES_PER_ELEMENT).toBe(2);
});
