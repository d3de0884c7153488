import { expect, test } from 'vitest';
import { FIRST_SHOWS } from '../../../src/desk/pictureShows';
import { differs } from '../../../src/scene/drive/differs';
import { QUALITIES, STRAINED } from '../../../src/scene/drive/quality';
import type { Moment } from '../../../src/scene/drive/stageDriver';
import { thumbInputs } from '../../../src/scene/drive/thumbInputs';
import { readPlan } from '../../plans/readPlan';

const plan = readPlan('assets/loft-night.plan.json');
const thumb = { setup: plan.setups[0], seconds: 2, canvas: {}, size: { width: 352, height: 148 } };
const RESTING: Moment = {
  plan,
  seconds: 2,
  quality: QUALITIES.full,
  shows: FIRST_SHOWS,
  pixelRatio: 1,
  turn: null,
  isStrained: false,
};

test('a thumbnail that was printed while a move played, or while frames came late, is printed again at rest; one at rest is not', () => {
  const atRest = thumbInputs(RESTING, thumb);
  expect(differs(atRest, thumbInputs({ ...RESTING }, thumb))).toBe(false);
  for (const hurried of [{ turn: 7 }, { quality: STRAINED, isStrained: true }])
    expect(differs(thumbInputs({ ...RESTING, ...hurried }, thumb), atRest)).toBe(true);
});
