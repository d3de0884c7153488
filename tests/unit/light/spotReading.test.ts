import { expect, test } from 'vitest';
import { frameLevelSteps, spotAt } from '../../../src/core/light/spotReading';
import { inOneGo } from '../../../src/core/units/steps';
import { litBoardsPlan, onBoard } from '../../plans/litBoards';
import { DEMO, readPlan } from '../../plans/readPlan';

test('a spot reads what the board sends to the lens, and says what it hits, how far off and in what light', () => {
  const plan = litBoardsPlan();
  const [, beam] = plan.setups;
  const reading = spotAt(plan, beam, 0, 0.5, 0.5);
  const luminance = onBoard(plan, beam.id)(0.5, 0.5)?.luminance;
  expect(reading?.hit).toMatchObject({ itemId: 'board-beam', part: 'card' });
  expect(reading?.hit?.metres).toBeCloseTo(4.6, 2);
  expect((reading?.luminance ?? 0) / (luminance ?? 1)).toBeCloseTo(1, 2);
  // The plan has it at middle grey there.
  expect(reading?.stops).toBeCloseTo(0, 1);
});

test('over the roofs it reads the sky, and the cells of a frame are such readings', () => {
  const plan = readPlan(DEMO);
  const [wide] = plan.setups;
  const along = Array.from({ length: 40 }, (_, k) => spotAt(plan, wide, 4, (k + 0.5) / 40, 0.01));
  const sky = along.find((reading) => reading?.hit === null);
  expect(sky?.luminance).toBeGreaterThan(0.1);
  const { columns, rows, stops } = inOneGo(frameLevelSteps(plan, wide, 4, 12));
  expect(columns).toBe(12);
  expect(stops).toHaveLength(columns * rows);
  expect(stops.every(Number.isFinite)).toBe(true);
});
