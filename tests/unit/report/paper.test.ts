import { describe, expect, test } from 'vitest';
import { reportOf } from '../../../src/core/report/report';
import type { Extent, ItemReport, SetupReport } from '../../../src/core/report/types';
import { PAPER, readPlan } from '../../plans/readPlan';
import { itemIn, setupIn } from './inReport';

/*
 * The plan `paper` is made so that each answer can be worked out on paper.
 *
 * Gate 24 × 12 mm, 24 mm lens, delivery 2: tan of half the width is 12/24 = 1/2, of half the height 6/24 = 1/4.
 * So at a distance d the frame is d wide and d/2 high, and its area in tangents is 1 × 1/2.
 * The camera of `level` stands 1.5 m high at x = 0 and looks along −z. A point at (x, y), d ahead of it, has the
 * tangents (x/d, (y − 1.5)/d); its place in the frame is (1/2 + x/d, 1/2 − 2 (y − 1.5)/d).
 * A face of w × h metres seen square on at d is w·h/d² in tangents: 2·w·h/d² of the frame.
 * All boxes stand square to the axis; what lies beside the axis shows its inner side as well.
 */
const report = reportOf(readPlan(PAPER));

const setupOf = (id: string): SetupReport => setupIn(report, id);
const itemOf = (setup: string, id: string): ItemReport => itemIn(setupOf(setup), id);

/** Shares are good for 0.1 % of the frame. */
const SHARE = 0.001;
/** Margins are exact but for rounding. */
const EXACT = 1e-6;
/** One pixel of the 1024 that a report counts along the frame. */
const PIXEL = 1 / 1024 + 1e-9;

function expectNear(found: number | null | undefined, expected: number, within: number): void {
  expect(found).toBeTypeOf('number');
  expect(Math.abs((found ?? Number.NaN) - expected), `${found} for ${expected}`).toBeLessThanOrEqual(within);
}

function expectExtent(found: Extent | null, expected: Extent): void {
  // Half as many pixels stand above each other, so a step in height is twice as large.
  found?.forEach((value, side) => {
    expectNear(value, expected[side], side % 2 === 0 ? PIXEL : 2 * PIXEL);
  });
  expect(found).not.toBeNull();
}

test('the angles of view are twice the arc tangents of 1/2 and 1/4', () => {
  const { angles, aspect } = setupOf('level');
  expectNear(angles.horizontal, 53.130102354, EXACT);
  expectNear(angles.vertical, 28.072486936, EXACT);
  expect(aspect).toBe(2);
});

describe('level', () => {
  test('a face of 1 × 2 m at 8 m is 1/16 of the frame, and half a metre of it is in the wet floor', () => {
    const item = itemOf('level', 'middle');
    expect(item.verdict).toBe('showing');
    // 2·1·2/8² = 1/16. Across ±0.5/8 = ±1/16; top (2 − 1.5)/8 = 1/16 up, foot 1.5/8 = 3/16 down.
    expectNear(item.share, 1 / 16, SHARE);
    expectExtent(item.extent, [7 / 16, 3 / 8, 9 / 16, 7 / 8]);
    expect(item.touches).toEqual([]);
    // The frame ends 8/4 = 2 m below the lens, at y = −0.5: 1 × 0.5 m of the image shows. 2·1·0.5/8² = 1/64.
    expectNear(item.mirroredShare, 1 / 64, SHARE);
    expectExtent(item.mirroredExtent, [7 / 16, 7 / 8, 9 / 16, 1]);
    // To the right: its left back edge has to go from −0.5 to 8.5/2. 0.5 + 4.25.
    expectNear(item.moveOutMetres, 4.75, EXACT);
    expect(item.margin).toBeNull();
  });

  test('a box whose back edge is at 4.5 m, 8 m ahead, is half a metre outside the right frame line', () => {
    const item = itemOf('level', 'right');
    expect(item.verdict).toBe('clear');
    // 4.5 − 8/2 at the back, more at the front. In widths: 4.5/8 − 1/2 = 1/16.
    expectNear(item.margin?.metres, 0.5, EXACT);
    expectNear(item.margin?.frameWidths, 1 / 16, EXACT);
    expect(item.margin?.edge).toBe('right');
    expect([item.share, item.extent, item.moveOutMetres]).toEqual([0, null, null]);
  });

  test('an eighth of a metre outside is close when the safety margin is a quarter', () => {
    const item = itemOf('level', 'left');
    expect(item.verdict).toBe('close');
    expectNear(item.margin?.metres, 1 / 8, EXACT);
    expectNear(item.margin?.frameWidths, 1 / 64, EXACT);
    expect(item.margin?.edge).toBe('left');
  });

  test('a low box near the camera is below the frame line, nearest at its back', () => {
    const item = itemOf('level', 'below');
    expect(item.verdict).toBe('clear');
    // At 2.5 m the frame ends at 1.5 − 2.5/4 = 0.875; the box ends at 0.5.
    expectNear(item.margin?.metres, 0.375, EXACT);
    // (1.5 − 0.5)/2.5 − 1/4 = 0.15 of a width of 1.
    expectNear(item.margin?.frameWidths, 0.15, EXACT);
    expect(item.margin?.edge).toBe('bottom');
  });

  test('a wall beside the axis shows its front and its inner side', () => {
    const item = itemOf('level', 'wall');
    // Front 2·2·2.5/12² = 0.069444. Its side, from 3/12 to 3/12.5 across, is 2.5/12 high at the front and
    // 2.5/12.5 at the back: 0.01 × 0.2041667 = 0.0020417, twice that of the frame.
    // The left post of the fence, 0.05 m thick, at −1.5 m, 6 m ahead, stands before the lower edge of that side:
    // from 1/12 below the lens, where the fence ends, to 1/8, where the wall does, 0.05/6 wide and almost all on the wall.
    expectNear(item.share, 0.069444 + 0.004083 - 2 * (0.05 / 6) * (1 / 24), SHARE);
    expectExtent(item.extent, [1 / 2 - 5 / 12, 1 / 2 - 1 / 6, 1 / 2 - 3 / 12.5, 3 / 4]);
    expectNear(item.moveOutMetres, 3 - 12.5 / 2, EXACT);
  });

  test('a box wholly behind the wall is covered by it, in the floor too', () => {
    const item = itemOf('level', 'hidden');
    expect(item.verdict).toBe('covered');
    expect(item.coveredBy.map(({ id }) => id)).toEqual(['wall']);
    // Front 2·1·1/14² = 0.010204. Side from 4/14 to 4/14.5 across, 1/14 and 1/14.5 high: 0.0098522 × 0.070197.
    // Top, seen from half a metre above: between 0.5/14 and 0.5/14.5 down, 1/14 and 1/14.5 wide: 0.0012315 × 0.070197.
    expectNear(item.coveredBy[0]?.share, 0.010204 + 2 * 0.070197 * (0.0098522 + 0.0012315), SHARE);
    expect([item.share, item.mirroredShare, item.margin]).toEqual([0, 0, null]);
  });

  test('of a box half behind a screen the other half shows', () => {
    const item = itemOf('level', 'half');
    expect(item.verdict).toBe('showing');
    // It spans 2/16 to 4/16 across; the screen covers up to 1.5/8 = 3/16. 1/16 wide and 2/16 high: 2/128 of the frame.
    expectNear(item.share, 1 / 64, SHARE);
    expectExtent(item.extent, [11 / 16, 7 / 16, 3 / 4, 11 / 16]);
    expect(item.coveredBy.map(({ id }) => id)).toEqual(['screen']);
    // The covered half of the front, and the inner side: from 2/16 to 2/16.5, 2/16 and 2/16.5 high.
    expectNear(item.coveredBy[0]?.share, 1 / 64 + 2 * (0.125 - 2 / 16.5) * 0.1231061, SHARE);
    // Its front edge at 2 m has to pass 8 m, its back edge at 2 m has to pass 8.25 m.
    expectNear(item.moveOutMetres, 6.25, EXACT);
    // Under the horizon by as much as it is over the floor: the image is as large as the box.
    expectNear(item.mirroredShare, 1 / 64, SHARE);
    expectExtent(item.mirroredExtent, [11 / 16, 11 / 16, 3 / 4, 15 / 16]);
  });

  test('a box across the left frame line touches it and has 1.25 m to go', () => {
    const item = itemOf('level', 'edge');
    // Of the front 1 m of 2 is inside, −8 to −7 at 16 m: 2·1·2/16² = 1/64. Side from 7/16 to 7/16.5 across.
    expectNear(item.share, 1 / 64 + 2 * (7 / 16 - 7 / 16.5) * 0.1231061, SHARE);
    expect(item.touches).toEqual(['left']);
    expectNear(item.moveOutMetres, -1.25, EXACT);
    expectExtent(item.extent, [0, 7 / 16, 1 / 2 - 7 / 16.5, 11 / 16]);
  });

  test('what is behind the camera is clear and has no margin', () => {
    const item = itemOf('level', 'behind');
    expect([item.verdict, item.margin, item.share]).toEqual(['clear', null, 0]);
  });

  test('a post behind mesh shows, all of it through the fence', () => {
    const post = itemOf('level', 'post');
    expect(post.verdict).toBe('showing');
    // 0.25 m thick, 0.8 m high at 8 m: 2·0.25·0.8/8² = 1/160; its round top, seen from 0.7 m above, adds little.
    expectNear(post.share, 1 / 160, SHARE);
    expect(post.through).toEqual([{ id: 'fence', share: post.share }]);
    const fence = itemOf('level', 'fence');
    // From 0.03 to 1 m high and, between two posts of 0.05 m, 0.7 m wide at 6 m: 2·0.7·0.97/6². It hides nothing.
    expectNear(fence.parts.find(({ name }) => name === 'mesh')?.share, (2 * 0.7 * 0.97) / 36, SHARE);
    expect(post.coveredBy).toEqual([]);
  });
});

test('an anamorphic lens of 2 × 20 mm across on 40 mm sees what the spherical one sees, to the bit', () => {
  // 2·20/(2·40) = 1/2 across, 20/(2·40) = 1/4 up.
  const squeezed = setupOf('squeezed');
  expect(squeezed.items).toEqual(setupOf('level').items);
  expect(squeezed.angles).toEqual(setupOf('level').angles);
});

describe('down', () => {
  /*
   * The camera stands 3 m high and looks down by arctan 3/4: forward (0, −3/5, −4/5), up (0, 4/5, −3/5).
   * The box hangs before it from 2.5 to 3.5 m, 8 to 8.5 m away, as high as the lens: above the frame.
   */
  test('a box above the frame is out by 2.725 m', () => {
    const item = itemOf('down', 'above');
    // A point dy above the lens and z away is 0.8 dy + 0.6 z over the axis, 0.8 z − 0.6 dy along it; over the frame line
    // it is 0.95 dy + 0.4 z. Least at dy = −0.5, z = 8: −0.475 + 3.2.
    expectNear(item.margin?.metres, 2.725, EXACT);
    // There the tangent is (4.8 − 0.4)/(6.4 + 0.3).
    expectNear(item.margin?.frameWidths, 4.4 / 6.7 - 1 / 4, EXACT);
    expect(item.margin?.edge).toBe('top');
    expect(item.share).toBe(0);
  });

  test('and its image is in the wet floor', () => {
    const item = itemOf('down', 'above');
    expect(item.verdict).toBe('mirrored');
    // The image lies 5.5 to 6.5 m below the lens. Front, lower edge: 0.8·−6.5 + 0.6·8 = −0.4 over the axis at 10.3 m;
    // upper edge: −4.4 + 4.8 = 0.4 at 9.7 m; both 1 m wide. Underside, far edge at 8.5 m: −4.4 + 5.1 = 0.7 at 10.1 m.
    const [low, high, far] = [-0.4 / 10.3, 0.4 / 9.7, 0.7 / 10.1];
    const front = ((1 / 10.3 + 1 / 9.7) / 2) * (high - low);
    const underside = ((1 / 9.7 + 1 / 10.1) / 2) * (far - high);
    expectNear(item.mirroredShare, 2 * (front + underside), SHARE);
    expectExtent(item.mirroredExtent, [0.5 - 0.5 / 9.7, 0.5 - 2 * far, 0.5 + 0.5 / 9.7, 0.5 - 2 * low]);
    expect(item.mirroredSpans).toEqual([[0, 0]]);
  });

  test('the floor fills the frame', () => expectNear(itemOf('down', 'deck').share, 1, EXACT));
});

describe('along, a metre a second to the right', () => {
  /** A frame at 24 frames per second. */
  const FRAME = 1 / 24 + EXACT;

  test('the box half a metre outside comes in after half a second and stays', () => {
    const { spans, verdict } = itemOf('along', 'right');
    expect(verdict).toBe('showing');
    expect(spans).toHaveLength(1);
    expectNear(spans[0]?.[0], 0.5, FRAME);
    expectNear(spans[0]?.[1], 4, EXACT);
  });

  test('the wall leaves when its inner back edge does, after 3.25 s', () => {
    // (3 + t)/12.5 = 1/2.
    const { spans } = itemOf('along', 'wall');
    expect(spans).toHaveLength(1);
    expectNear(spans[0]?.[0], 0, EXACT);
    expectNear(spans[0]?.[1], 3.25, FRAME);
  });

  test('the box across the left frame line goes behind the wall as the wall meets the frame line, after 1 s', () => {
    // (5 + t)/12 = 1/2: from then on the wall covers all that is left of it.
    expectNear(itemOf('along', 'edge').spans[0]?.[1], 1, FRAME);
  });

  test('the box on the left is nearest at the start, the hung one at the end', () => {
    expectNear(itemOf('along', 'left').margin?.metres, 1 / 8, EXACT);
    expect(itemOf('along', 'left').margin?.atSeconds).toBe(0);
    // 9.5 − 4 − 8.5/2.
    expectNear(itemOf('along', 'above').margin?.metres, 1.25, EXACT);
    expect(itemOf('along', 'above').margin?.atSeconds).toBe(4);
  });
});
