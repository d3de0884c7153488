import { describe, expect, it } from 'vitest';
import { type Grid, sampleHeight } from '../../../src/core/sight/grid';
import { look, scratchFor } from '../../../src/core/sight/look';
import { stageOf } from '../../../src/core/sight/stage';
import { findThin } from '../../../src/core/sight/thin';
import { dice } from '../../plans/draw';
import { cases, fewCases, raysAcross } from '../../thorough';
import { randomCamera, randomForms } from './randomForms';
import { Tracer } from './tracer';

/** Places in 0..1 of the frame at which rays are to be sent. */
type Places = (grid: Grid) => Iterable<readonly [number, number]>;

/** The grid's own samples. */
function* samples({ width, height }: Grid): Iterable<readonly [number, number]> {
  for (let column = 0; column < width; column += 1) {
    for (let row = 0; row < height; row += 1) {
      yield [(column + 0.5) / width, (row + sampleHeight(column)) / height];
    }
  }
}

/**
 * One random place in each cell of a raster as fine as the buffer's own, or half as fine: error of the truth far below
 * 0.1 %.
 */
const scattered = (seed: number): Places =>
  function* places({ width, framePixels }) {
    const roll = dice(seed);
    const [columns, rows] = [raysAcross(width), raysAcross(framePixels / width)];
    for (let row = 0; row < rows; row += 1) {
      for (let column = 0; column < columns; column += 1) {
        yield [(column + roll(0, 1)) / columns, (row + roll(0, 1)) / rows];
      }
    }
  };

function compare(seed: number, places: Places) {
  const stage = stageOf(randomForms(seed));
  const camera = randomCamera(seed);
  const scratch = scratchFor(camera);
  const found = look(stage, camera, scratch);
  const { framePixels } = scratch.grid;
  const tracer = new Tracer(stage);
  const direct = new Float64Array(stage.parts.length);
  const mirrored = new Float64Array(stage.parts.length);
  let rays = 0;
  for (const [x, y] of places(scratch.grid)) {
    tracer.see(camera, x, y, direct, mirrored);
    rays += 1;
  }
  return stage.parts.flatMap((part) => {
    const name = `seed ${seed}, ${stage.forms[part.item].id} ${part.name}`;
    const shareOf = (pixels: number) => pixels / framePixels;
    return [
      { name, share: shareOf(found.direct.partPixels[part.index]), truth: direct[part.index] / rays },
      {
        name: `${name}, mirrored`,
        share: shareOf(found.mirrored.partPixels[part.index]),
        truth: mirrored[part.index] / rays,
      },
    ];
  });
}

describe('the item buffer against exact rays of another library', () => {
  it('differs from rays through the same places by a few pixels at most', () => {
    let largest = 0;
    for (let seed = 1; seed < 1 + fewCases(5); seed += 1) {
      for (const { name, share, truth } of compare(seed, samples)) {
        expect(Math.abs(share - truth), `${name}: ${share} against ${truth}`).toBeLessThan(0.0001);
        largest = Math.max(largest, Math.abs(share - truth));
      }
    }
    console.log(`same places: largest difference ${(largest * 100).toFixed(4)} % of the frame`);
  });

  it('gives every part its share within 0.1 % of the frame, against rays through random places', () => {
    let largest = 0;
    let seen = 0;
    for (let seed = 101; seed < 101 + cases(6); seed += 1) {
      for (const { name, share, truth } of compare(seed, scattered(seed))) {
        expect(Math.abs(share - truth), `${name}: ${share} against ${truth}`).toBeLessThan(0.001);
        largest = Math.max(largest, Math.abs(share - truth));
        if (truth > 0) seen += 1;
      }
    }
    console.log(
      `random places: largest difference ${(largest * 100).toFixed(4)} % of the frame, ${seen} parts in view`,
    );
    expect(seen).toBeGreaterThan((100 / 6) * cases(6));
  });
});

describe('thin tubes', () => {
  it('finds what dense rays along the tubes find, and nothing else', () => {
    let present = 0;
    const lost: string[] = [];
    let absent = 0;
    const invented: string[] = [];
    for (let seed = 301; seed < 301 + fewCases(60); seed += 1) {
      const stage = stageOf(randomForms(seed));
      const camera = randomCamera(seed);
      const found = look(stage, camera, scratchFor(camera));
      findThin(found);
      const tracer = new Tracer(stage);
      for (const part of stage.parts) {
        if (part.shape.tubes.length === 0 || part.shape.openness !== null) continue;
        const name = `seed ${seed}, ${stage.forms[part.item].id} ${part.name}`;
        const isFound = found.direct.partPixels[part.index] > 0;
        if (tracer.meetsAnyTube(camera, part)) {
          present += 1;
          if (!isFound) lost.push(name);
        } else {
          absent += 1;
          // Knobs and collars belong to a part without being tubes: rays on a fine raster may know better.
          if (isFound && !tracer.meetsInBox(camera, part))
            invented.push(`${name}: ${found.direct.partPixels[part.index]} px`);
        }
      }
    }
    console.log(
      `tubes: ${present} in view, ${lost.length} lost; ${absent} not, ${invented.length} found all the same`,
      lost,
      invented,
    );
    expect(present).toBeGreaterThan((400 / 60) * fewCases(60));
    expect(lost.length / present).toBeLessThanOrEqual(0.001);
    expect(invented.length / absent).toBeLessThanOrEqual(0.001);
  });
});
