import { expect, test } from 'vitest';
import { headroomFindings } from '../../../src/core/continuity/headroom';
import { headroomSentence } from '../../../src/core/report/continuity/headroomSentence';
import { faceOff, keyAt, OVER_ANA } from '../../plans/faceOff';

/** Square to Bea, with the tilt that is asked for; the lens says how close. */
const onBea = (tiltDegrees: number, lens = 'short') =>
  faceOff({ setups: [{ keys: [keyAt([-0.6, 1.5, 1.8], 31.4, tiltDegrees)], lens }] });

const sentences = (plan: ReturnType<typeof onBea>, most?: number) =>
  headroomFindings(plan, most).map((finding) => headroomSentence(plan, finding));

test('a head framed as usual is not spoken of', () => {
  expect(sentences(onBea(0))).toEqual([]);
});

test('a crown cut in a medium close-up is, in a close-up not', () => {
  expect(sentences(onBea(-2.5))).toEqual([
    expect.stringMatching(
      /^A, medium close-up: Bea’s crown is cut by \d+(\.\d)?\u00a0% of the frame’s height\.$/,
    ),
  ]);
  expect(sentences(onBea(1, 'long'))).toEqual([]);
});

test('much room is told with what is usual, which may be another', () => {
  expect(sentences(onBea(5))).toEqual([
    expect.stringMatching(
      /^A, [a-z -]+: \d+\u00a0% of the frame’s height is left over Bea’s head; 20\u00a0% is usual at most\.$/,
    ),
  ]);
  expect(sentences(onBea(5), 0.9)).toEqual([]);
  expect(sentences(onBea(0), 0.01)).toHaveLength(1);
});

test('the cut head of a shoulder in the foreground is no fault', () => {
  const plan = faceOff({ setups: [{ keys: [{ ...OVER_ANA, tiltDegrees: -1.4 }] }] });
  expect(headroomFindings(plan).filter(({ performerIds }) => performerIds.includes('ana'))).toEqual([]);
});

test('a crown cut for less than half of the time, as a tilt up finds a head, is none', () => {
  const tilt = (from: number, to: number) =>
    faceOff({
      setups: [
        { keys: [keyAt([-0.6, 1.5, 1.8], 31.4, from), keyAt([-0.6, 1.5, 1.8], 31.4, to)], lens: 'short' },
      ],
    });
  expect(headroomFindings(tilt(-4, 2))).toEqual([]);
  expect(headroomFindings(tilt(-4, -2.4))).toHaveLength(1);
});
