import { describe, expect, test } from 'vitest';
import { alignToFrame, FRAME_LINES, type FrameLine } from '../../../src/core/clearance/alignToFrame';
import { formsAt } from '../../../src/core/form/formsAt';
import { cameraAt } from '../../../src/core/optics/camera';
import type { Distortion } from '../../../src/core/plan/schema/kit';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { setupReport } from '../../../src/core/report/setupReport';
import { outsideOf } from '../../../src/core/sight/margin';
import { stageOf } from '../../../src/core/sight/stage';
import { smallRoof } from '../smallRoof';

/**
 * A camera 1.5 m up at the origin that looks to north over an empty deck, with a 4 : 3 gate of 24 × 18 mm behind 24 mm:
 * tan of half the width is 0.5, of half the height 0.375. A box of 1 m stands at [0, −10].
 */
function boxPlan(more: { readonly distortion?: Distortion; readonly rollDegrees?: number } = {}): Plan {
  const roof = smallRoof();
  const [setup] = roof.setups;
  return {
    ...roof,
    safety: { metres: 0.3, frameWidths: 0.05 },
    kit: {
      ...roof.kit,
      bodies: [{ id: 'b', label: 'Body', modes: [{ id: 'm', label: 'All', gateMm: [24, 18] }] }],
      lenses: [
        {
          id: 'l',
          label: '24 mm',
          focalMm: 24,
          squeeze: 1,
          widestStop: 2,
          narrowestStop: 22,
          closeFocusMetres: 0.3,
          ...(more.distortion ? { distortion: more.distortion } : {}),
        },
      ],
    },
    cast: [],
    gear: [],
    pieces: [
      {
        kind: 'box',
        id: 'box',
        label: 'Box',
        at: [0, 1, -10],
        headingDegrees: 0,
        size: [1, 1, 1],
        material: 'timber',
      },
    ],
    setups: [
      {
        ...setup,
        id: 'a',
        body: 'b',
        mode: 'm',
        lens: 'l',
        delivery: 4 / 3,
        focus: { metres: 5 },
        move: {
          ease: 'linear',
          keys: [
            {
              atSeconds: 0,
              position: [0, 1.5, 0],
              headingDegrees: 0,
              tiltDegrees: 0,
              rollDegrees: more.rollDegrees ?? 0,
            },
          ],
        },
      },
    ],
  };
}

const aligned = (plan: Plan, to: FrameLine, id = 'box'): Plan => {
  const result = alignToFrame(plan, { id, setupId: 'a', seconds: 0, to });
  if ('why' in result) throw new Error(result.why);
  return result.plan;
};
const boxAt = (plan: Plan): readonly number[] => {
  const [box] = plan.pieces;
  if (box.kind !== 'box') throw new Error('the box is gone');
  return box.at;
};
const extentOf = (plan: Plan, id = 'box') => {
  const report = setupReport(plan, plan.setups[0], { at: 0 });
  return report.items.find((item) => item.id === id)?.extent ?? null;
};

describe('with worked numbers', () => {
  // The near face is 9.5 m away: the frame is 9.5 m wide there, its half 4.75. The box reaches 0.5 m to either side.
  test.each([
    ['left', -4.25],
    ['right', 4.25],
    ['centre', 0],
    // Its outer edge is one of the near face, its inner edge one of the far face: their middle is at tangent 1/6.
    ['left third', -(1 / 3 - 0.5 / 9.5 + 0.5 / 10.5) / (1 / 9.5 + 1 / 10.5)],
    ['right third', (1 / 3 - 0.5 / 9.5 + 0.5 / 10.5) / (1 / 9.5 + 1 / 10.5)],
    // The far face decides outside: 10.5 m away, its half 5.25 and 5 % of a width of 10.5; then its own half metre.
    ['just outside left', -(5.25 + 0.525 + 0.5)],
    ['just outside right', 5.25 + 0.525 + 0.5],
  ] as const)('%s', (to, x) => {
    const [atX, atY, atZ] = boxAt(aligned(boxPlan(), to));
    expect(atX).toBeCloseTo(x, 5);
    expect(atY).toBe(1);
    expect(atZ).toBe(-10);
  });

  test('the margin in metres decides where it is the larger', () => {
    const plan = { ...boxPlan(), safety: { metres: 2, frameWidths: 0.01 } };
    expect(boxAt(aligned(plan, 'just outside right'))[0]).toBeCloseTo(5.25 + 2 + 0.5, 5);
  });

  test('only what is between top and bottom of the frame counts', () => {
    // A stand's legs spread by half a metre below the frame; its column and collars are what the line meets.
    const roof = smallRoof();
    const plan = boxPlan();
    const stand = roof.gear.find((gear) => gear.kind === 'stand');
    if (stand?.kind !== 'stand') throw new Error('the small roof has no stand');
    const low = {
      ...plan,
      gear: [{ ...stand, id: 'stand', at: [0, -1.2, -4] as [number, number, number], heightMetres: 2.4 }],
    };
    const moved = aligned(low, 'right', 'stand').gear[0];
    if (moved?.kind !== 'stand') throw new Error('the stand is gone');
    expect(2 - moved.at[0]).toBeGreaterThan(0);
    expect(2 - moved.at[0]).toBeLessThan(0.1);
  });
});

test.each(FRAME_LINES.filter((line) => !line.startsWith('just')))(
  'the report sees it on the %s line',
  (to) => {
    const extent = extentOf(aligned(boxPlan(), to));
    const [left, , right] = extent ?? [Number.NaN, 0, Number.NaN];
    const pixel = 1 / 1000;
    if (to === 'left') expect(Math.abs(left)).toBeLessThan(pixel);
    else if (to === 'right') expect(Math.abs(right - 1)).toBeLessThan(pixel);
    else {
      const line = { centre: 1 / 2, 'left third': 1 / 3, 'right third': 2 / 3 }[to as 'centre'];
      expect(Math.abs((left + right) / 2 - line)).toBeLessThan(pixel);
    }
  },
);

test.each(['just outside left', 'just outside right'] as const)(
  '%s is clear, and a centimetre back is close',
  (to) => {
    const plan = aligned(boxPlan(), to);
    const verdict = (each: Plan) =>
      setupReport(each, each.setups[0], { at: 0 }).items.find(({ id }) => id === 'box')?.verdict;
    expect(verdict(plan)).toBe('clear');
    const [x, y, z] = boxAt(plan);
    const back = x - Math.sign(x) * 0.01;
    const [box] = plan.pieces;
    if (box.kind !== 'box') throw new Error('the box is gone');
    expect(verdict({ ...plan, pieces: [{ ...box, at: [back, y, z] }] })).toBe('close');
  },
);

test('a barrel lens bends the box outwards most at half height, and that is what meets the line', () => {
  const distortion = { k1: -0.15, k2: 0.02, k3: 0, p1: 0.002, p2: -0.001 };
  const plan = boxPlan({ distortion });
  for (const to of ['left', 'right'] as const) {
    const extent = extentOf(aligned(plan, to));
    const edge = to === 'left' ? extent?.[0] : 1 - (extent?.[2] ?? Number.NaN);
    expect(Math.abs(edge ?? Number.NaN)).toBeLessThan(0.001);
  }
  const out = aligned(plan, 'just outside right');
  const outside = outsideOf(stageOf(formsAt(out, 0)), 0, cameraAt(out, out.setups[0], 0));
  expect(outside).toMatchObject({ edge: 'right' });
});

test('a rolled camera moves it on the level, and its distance along the axis stays', () => {
  const plan = boxPlan({ rollDegrees: 12 });
  const moved = aligned(plan, 'right');
  expect(boxAt(moved)[1]).toBe(1);
  expect(boxAt(moved)[2]).toBeCloseTo(-10, 9);
  expect(Math.abs((extentOf(moved)?.[2] ?? 0) - 1)).toBeLessThan(0.001);
});

test('what is far out of a bent picture comes back to its line', () => {
  const plan = boxPlan({ distortion: { k1: -0.3, k2: 0, k3: 0, p1: 0, p2: 0 } });
  const [box] = plan.pieces;
  if (box.kind !== 'box') throw new Error('the box is gone');
  const far = { ...plan, pieces: [{ ...box, at: [60, 1, -10] as [number, number, number] }] };
  expect(Math.abs((extentOf(aligned(far, 'right'))?.[2] ?? 0) - 1)).toBeLessThan(0.001);
});

describe('why not', () => {
  const why = (plan: Plan, to: FrameLine = 'right', setupId = 'a', id = 'box'): string => {
    const result = alignToFrame(plan, { id, setupId, seconds: 0, to });
    return 'why' in result ? result.why : 'it was put there';
  };
  const withBox = (change: object): Plan => {
    const plan = boxPlan();
    return { ...plan, pieces: plan.pieces.map((piece) => ({ ...piece, ...change })) };
  };
  test('it is locked', () => expect(why(withBox({ locked: true }))).toBe('Box is locked.'));
  test('it is behind the camera', () =>
    expect(why(withBox({ at: [0, 1, 4] }))).toBe('Box is behind the camera of setup A.'));
  test('it lies under the frame', () =>
    expect(why(withBox({ at: [0, -9, -10] }))).toBe(
      'Box passes above or below the frame of setup A, so it meets no line of it.',
    ));
  test('there is no setup', () =>
    expect(why({ ...boxPlan(), setups: [] })).toBe('There is no setup yet whose frame it could be put to.'));
  test('it is gone', () =>
    expect(why(boxPlan(), 'right', 'a', 'nobody')).toBe('It is no longer in the plan.'));
  test('the camera lies on its side', () =>
    expect(why(boxPlan({ rollDegrees: 90 }))).toMatch(/^The camera of setup A lies on its side/));
});
