import { describe, expect, test } from 'vitest';
import { box, DECK, itemIn, type PaperRoof } from './paperRoof';

/** Most that a share of the frame may differ from the one on paper. */
const CEILING = 0.001;

const isNear = (found: number, expected: number) =>
  expect(Math.abs(found - expected), `${found} against ${expected}`).toBeLessThanOrEqual(CEILING);

/** A place in the frame may differ by the pixel that it falls in, of 1,024 across and 512 down. */
const isThere = (found: number | undefined, expected: number) =>
  expect(Math.abs((found ?? Number.NaN) - expected), `${found} against ${expected}`).toBeLessThan(0.002);

/** Area of a picture with two level edges, square tangents. */
const trapezoid = (height: number, oneWidth: number, otherWidth: number) =>
  (height * (oneWidth + otherWidth)) / 2;

/** The frame has 2 × 1 square tangents. */
const FRAME = 2;

describe('the wet floor', () => {
  // The camera is 1 m up and looks 45 degrees down. With s = √½, a point d metres before it and e above it lies
  // at depth s (d − e) and, up the picture, at the tangent (d + e) / (d − e). The frame takes in ±0.5, so
  // −3 d < e < −d / 3: at 3 m everything higher than e = −1, the floor itself, is above the frame.
  const s = Math.SQRT1_2;
  const above: PaperRoof = {
    pieces: [DECK, box('crate', [0, 1, -3.1], [1, 1, 0.2])],
    from: [0, 1, 0],
    tiltDegrees: -45,
  };
  // The box, 1 m wide, stands in the air from y = 1 to 2, from d = 3 to 3.2: e = 0 to 1, above the frame. Its image has
  // y = −1 to −2, e = −2 to −3. The front, d = 3: at y = −1 depth 5 s, tangent 1/5, width 1 / (5 s); at y = −2 depth 6 s,
  // tangent 0, width 1 / (6 s). Its underside is seen too: at d = 3.2 depth 5.2 s, tangent 1.2/5.2, width 1 / (5.2 s).
  const front = trapezoid(1 / 5, 1 / (5 * s), 1 / (6 * s));
  const underside = trapezoid(1.2 / 5.2 - 1 / 5, 1 / (5 * s), 1 / (5.2 * s));

  test.each(['wet down', 'puddled'] as const)(
    '%s, shows a thing that is wholly above the frame',
    (wetness) => {
      const crate = itemIn({ ...above, wetness }, 'crate');
      expect(crate.verdict).toBe('mirrored');
      expect(crate.share).toBe(0);
      expect(crate.spans).toEqual([]);
      expect(crate.mirroredSpans).toEqual([[0, 0]]);
      isNear(crate.mirroredShare, (front + underside) / FRAME);
      // From left to right its image is as wide as its nearest edge, 1 / (5 s) of 2 tangents.
      isThere(crate.mirroredExtent?.[0], 0.5 - 1 / (5 * s) / 4);
      isThere(crate.mirroredExtent?.[2], 0.5 + 1 / (5 * s) / 4);
      // From top to bottom: tangents 1.2/5.2 and 0 of a frame 1 high.
      isThere(crate.mirroredExtent?.[1], 0.5 - 1.2 / 5.2);
      isThere(crate.mirroredExtent?.[3], 0.5);
    },
  );

  test('that is wet in a part alone shows of the image what lies on it', () => {
    const right = [
      [0, -9],
      [9, -9],
      [9, 9],
      [0, 9],
    ];
    const halved = itemIn(
      { ...above, wetness: 'dry', areas: [{ id: 'right', wetness: 'puddled', outline: right }] },
      'crate',
    );
    isNear(halved.mirroredShare, (front + underside) / FRAME / 2);
    isThere(halved.mirroredExtent?.[0], 0.5);
    // The floor, e = −1, lies at the tangent (d − 1) / (d + 1): as far as d = 1.25 up to 1/9. The front is (1 + t) / (6 s)
    // wide at a tangent t.
    const near = [
      [-9, -1.25],
      [9, -1.25],
      [9, 9],
      [-9, 9],
    ];
    const areas = [
      { id: 'all', wetness: 'damp', outline: DECK.outline },
      { id: 'near', wetness: 'wet down', outline: near },
    ];
    const cut = itemIn({ ...above, areas }, 'crate');
    isNear(cut.mirroredShare, trapezoid(1 / 9, 1 / (6 * s), 10 / 9 / (6 * s)) / FRAME);
    isThere(cut.mirroredExtent?.[1], 0.5 - 1 / 9);
  });

  test('says how far outside the frame a thing is that shows only in the floor', () => {
    const { margin } = itemIn(above, 'crate');
    // Its lowest nearest edge, e = 0 at d = 3: depth 3 s, 3 s above the axis where the frame ends at 1.5 s.
    // At the back, d = 3.2: depth 3.2 s, 3.2 s above, frame 1.6 s. So the front is nearer: 1.5 s metres.
    expect(margin?.edge).toBe('top');
    expect(margin?.metres).toBeCloseTo(1.5 * s, 5);
    // Every point of the underside is 1 tangent up the picture, half a tangent outside: a quarter of the width.
    expect(margin?.frameWidths).toBeCloseTo(0.25, 5);
  });

  test.each(['dry', 'damp'] as const)('%s, shows nothing', (wetness) => {
    const crate = itemIn({ ...above, wetness }, 'crate');
    expect(crate.verdict).toBe('clear');
    expect(crate.mirroredShare).toBe(0);
    expect(crate.mirroredSpans).toEqual([]);
    expect(crate.mirroredParts).toEqual([]);
    expect(crate.mirroredExtent).toBeNull();
  });

  test('shows a lamp in the air, part by part', () => {
    const lamp = {
      id: 'lamp',
      label: 'Lamp',
      kind: 'head',
      head: 'spot',
      place: { at: [0, 1.5, -3] },
      aim: [0, 1.5, 0],
      dim: 1,
    };
    const found = itemIn({ ...above, gear: [lamp] }, 'lamp');
    expect(found.verdict).toBe('mirrored');
    expect(found.mirroredParts.length).toBeGreaterThan(0);
    expect(itemIn({ ...above, gear: [lamp], wetness: 'dry' }, 'lamp').verdict).not.toBe('mirrored');
  });

  test('does not show what is below it', () => {
    // Wholly inside the body of the building, in the frame if that were made of air.
    const crate = itemIn({ ...above, pieces: [DECK, box('crate', [0, -2.5, -3], [1, 1, 1])] }, 'crate');
    expect(crate.mirroredShare).toBe(0);
    expect(crate.verdict).toBe('covered');
  });

  test('shows of a thing that goes through it the part above it alone', () => {
    const standing = itemIn({ ...above, pieces: [DECK, box('crate', [0, 0, -2], [0.5, 0.5, 0.5])] }, 'crate');
    const sunk = itemIn({ ...above, pieces: [DECK, box('crate', [0, -1, -2], [0.5, 1.5, 0.5])] }, 'crate');
    expect(standing.mirroredShare).toBeGreaterThan(0.005);
    isNear(sunk.mirroredShare, standing.mirroredShare);
    isNear(sunk.share, standing.share);
  });

  test('does not reflect towards a camera below it', () => {
    // A second deck, thin, 3 m up, over the camera's head; the thing stands on it, the camera looks up at its underside.
    const canopy = { ...DECK, id: 'canopy', topMetres: 3, dropMetres: 0.1 };
    const crate = box('crate', [0, 4, -3], [1, 1, 1]);
    const below = itemIn({ pieces: [canopy, crate], from: [0, 1, 0], tiltDegrees: 45 }, 'crate');
    expect(below.mirroredShare).toBe(0);
    expect(below.verdict).toBe('covered');
    const over = itemIn({ pieces: [canopy, crate], from: [0, 4, 0], tiltDegrees: -45 }, 'crate');
    expect(over.mirroredShare).toBeGreaterThan(0);
  });

  test('shows a thing that a flag hides from direct view', () => {
    // The camera is 1.5 m up and looks level. The box, 1 m wide, from y = 1 to 2, from d = 8 to 8.5: straight, its front
    // has ±1/16 by ±1/16 tangents; the flag at d = 2, 2 m by 0.5 m about the axis, has ±0.5 by ±0.125 and hides it all.
    const roof: PaperRoof = {
      pieces: [DECK, box('crate', [0, 1, -8.25], [1, 1, 0.5])],
      gear: [
        {
          id: 'flag',
          label: 'Flag',
          kind: 'flag',
          place: { at: [0, 1.5, -2] },
          headingDegrees: 180,
          tiltDegrees: 0,
          size: [2, 0.5],
        },
      ],
      from: [0, 1.5, 0],
    };
    const crate = itemIn(roof, 'crate');
    expect(crate.verdict).toBe('mirrored');
    expect(crate.share).toBe(0);
    // Behind the flag lies (1/8)² square tangents.
    expect(crate.coveredBy.map(({ id }) => id)).toEqual(['flag']);
    isNear(crate.coveredBy[0].share, 1 / 64 / FRAME);
    // Its image: the front from −2.5/8 to −3.5/8, 1/8 wide; the underside from −2.5/8.5, there 1/8.5 wide. The rays to it
    // pass the flag's depth at y = 1.5 − 2 × 2.5/8.5 = 0.91 and lower, below the flag's foot at 1.25.
    const image = trapezoid(1 / 8, 1 / 8, 1 / 8) + trapezoid(2.5 / 8 - 2.5 / 8.5, 1 / 8, 1 / 8.5);
    isNear(crate.mirroredShare, image / FRAME);
  });

  test('does not show what another thing hides on the way from the floor', () => {
    // A wall between: the rays leave the floor at d = 3.4 to 4.8, and at d = 6 they are at most 0.6 m up.
    const pieces = [DECK, box('crate', [0, 1, -8.25], [1, 1, 0.5]), box('wall', [0, 0, -6], [4, 1.5, 0.1])];
    const crate = itemIn({ pieces, from: [0, 1.5, 0] }, 'crate');
    expect(crate.mirroredShare).toBe(0);
    expect(crate.verdict).toBe('showing');
  });
});

describe('an upright mirror', () => {
  // A sheet 2 m by 2.5 m in bars of 4 cm, 4 m before the camera and facing it: the mirror itself is x = ±0.96, y = 0.04 to 2.46,
  // so with the camera 1.5 m up it takes in the tangents ±0.24 and −0.365 to 0.24.
  const pane = {
    id: 'pane',
    label: 'Mirror',
    kind: 'pane',
    at: [0, 0, -4],
    headingDegrees: 180,
    widthMetres: 2,
    heightMetres: 2.5,
    finish: 'mirror',
  };
  const from = [0, 1.5, 0] as const;

  test('shows what is behind the camera', () => {
    // Its near face 2 m behind the camera has its image at z = −10: 2 m by 2 m about the axis, ±0.1 by −0.1 to 0.1.
    const pieces = [pane, box('crate', [0, 0.5, 2.5], [2, 2, 1])];
    const crate = itemIn({ pieces, from }, 'crate');
    expect(crate.verdict).toBe('mirrored');
    expect(crate.margin).toBeNull();
    isNear(crate.mirroredShare, (0.2 * 0.2) / FRAME);
  });

  test('shows no more than its own sheet', () => {
    // The image spans ±0.5 and −0.1 to beyond the sheet's top. The bars stand 2 cm before the sheet, so a ray that has been
    // reflected clears them up to 0.96 / 4.02 = 0.2388: what is left is ±0.2388 by −0.1 to 0.2388.
    const edge = 0.96 / 4.02;
    const pieces = [pane, box('crate', [0, 0.5, 2.5], [10, 20, 1])];
    const crate = itemIn({ pieces, from }, 'crate');
    isNear(crate.mirroredShare, (2 * edge * (0.1 + edge)) / FRAME);
    isThere(crate.mirroredExtent?.[0], 0.5 - edge / 2);
    isThere(crate.mirroredExtent?.[2], 0.5 + edge / 2);
  });

  test('does not show what stands behind it, and reflects from its face alone', () => {
    const behind = itemIn({ pieces: [pane, box('crate', [0, 0.5, -6], [1, 1, 1])], from }, 'crate');
    expect(behind.mirroredShare).toBe(0);
    expect(behind.verdict).toBe('covered');
    expect(behind.coveredBy.map(({ id }) => id)).toEqual(['pane']);
    const turnedAway = { ...pane, headingDegrees: 0 };
    const away = itemIn({ pieces: [turnedAway, box('crate', [0, 0.5, 2.5], [2, 2, 1])], from }, 'crate');
    expect(away.mirroredShare).toBe(0);
  });

  test('of glass, shows what is before it and lets see what is behind it', () => {
    const pieces = [
      { ...pane, finish: 'glass' },
      box('before', [0, 0.5, 2.5], [2, 2, 1]),
      box('behind', [0, 1, -6], [1, 1, 1]),
    ];
    isNear(itemIn({ pieces, from }, 'before').mirroredShare, (0.2 * 0.2) / FRAME);
    const behind = itemIn({ pieces, from }, 'behind');
    // Its front, 5.5 m away: 1 m by 1 m.
    isNear(behind.share, 1 / 5.5 ** 2 / FRAME);
    expect(behind.through.map(({ id }) => id)).toEqual(['pane']);
    isNear(behind.through[0].share, behind.share);
  });
});
