import type { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { greyLuminance } from '../../src/core/light/exposure';
import { litBoardsPlan, onBoard } from '../plans/litBoards';
import { withFolder } from './chosenFolder';
import { openPage } from './harness';
import { lightOf, MIDDLE_GREY } from './picture';
import { savedStills } from './savedStills';
import { withoutDemo } from './withoutDemo';
import { withoutReports } from './withoutReports';

/** Without a graphics card a page may take its time. */
const PATIENT = { timeout: 240_000 };

/** Mean light of 13 by 13 pixels, all channels alike: the boards are lit in the light that is balanced for. */
function lightAround({ data, width, height }: PNG, x: number, y: number): number {
  let sum = 0;
  for (let dy = -6; dy <= 6; dy += 1)
    for (let dx = -6; dx <= 6; dx += 1) {
      const pixel = (Math.round(y * height) + dy) * width + Math.round(x * width) + dx;
      for (const channel of [0, 1, 2]) sum += lightOf(data[pixel * 4 + channel] / 255);
    }
  return sum / 13 / 13 / 3;
}

type Board = ReturnType<typeof onBoard>;

const around = (board: Board, x: number, y: number, by: number) =>
  [-by, by].flatMap((each) => [board(x + each, y), board(x, y + each)]);

/** Whether a place lies in a hard shadow's edge or so near to it that some of its pixels do. */
const isNearEdge = (board: Board, x: number, y: number): boolean => {
  const here = board(x, y)?.luminance ?? 0;
  return around(board, x, y, 0.03).some((each) => each === null || Math.abs(each.luminance / here - 1) > 0.2);
};

/** How far the picture is off, as shares, where lamps are seen whole or not at all, and in the soft edges of shadows. */
function deviations(
  still: PNG,
  board: Board,
  grey: number,
): {
  readonly sharp: readonly number[];
  readonly soft: readonly number[];
  readonly stops: readonly number[];
} {
  const found = { sharp: [] as number[], soft: [] as number[], stops: [] as number[] };
  for (let row = 0; row < 7; row += 1)
    for (let column = 0; column < 17; column += 1) {
      const [x, y] = [0.1 + column * 0.05, 0.1 + row * (0.8 / 6)];
      const reckoned = board(x, y);
      // Farther under grey a code value is too large a part of the light.
      if (!reckoned || reckoned.luminance < grey / 16 || isNearEdge(board, x, y)) continue;
      const shown = (lightAround(still, x, y) * grey) / MIDDLE_GREY;
      const isSoft = reckoned.isSoft || around(board, x, y, 0.06).some((each) => each?.isSoft);
      found[isSoft ? 'soft' : 'sharp'].push(shown / reckoned.luminance - 1);
      found.stops.push(Math.log2(reckoned.luminance / grey));
    }
  return found;
}

const percent = (share: number): string => `${(100 * share).toFixed(2)} %`;
const mostOf = (values: readonly number[]): number => Math.max(0, ...values.map(Math.abs));
const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, each) => sum + Math.abs(each), 0) / Math.max(1, values.length);

test(
  'what the picture shows of a grey board is what core reckons: beams, tables, broad faces, a bounce, a frame, the shadow of a flag, nets',
  PATIENT,
  async () => {
    const page = await openPage({
      width: 1000,
      height: 640,
      before: [withFolder, withoutReports, withoutDemo],
    });
    page.context().setDefaultTimeout(200_000);
    const plan = litBoardsPlan();
    const stills = await savedStills(page, plan);
    for (const setup of plan.setups) {
      const still = stills.get(setup.id);
      if (!still) throw new Error(`no picture of ${setup.id}`);
      const { sharp, soft, stops } = deviations(still, onBoard(plan, setup.id), greyLuminance(setup));
      console.log(
        `${setup.id}: ${sharp.length} places, off by ${percent(meanOf(sharp))} in the mean and ${percent(mostOf(sharp))} at most; ${soft.length} in soft edges, ${percent(meanOf(soft))} and ${percent(mostOf(soft))}; ${Math.min(...stops).toFixed(1)} to ${Math.max(...stops).toFixed(1)} stops from grey`,
      );
      expect.soft(sharp.length + soft.length).toBeGreaterThan(40);
      expect.soft(mostOf(sharp)).toBeLessThan(0.02);
      // A soft edge is drawn from the mean depth of what is in the way: it is as wide as it should be, not of its very shape.
      expect.soft(meanOf(soft)).toBeLessThan(0.04);
      expect.soft(mostOf(soft)).toBeLessThan(0.1);
    }
  },
);
