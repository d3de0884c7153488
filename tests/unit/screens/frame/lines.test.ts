import { describe, expect, test } from 'vitest';
import { deliveryWithin } from '../../../../src/core/optics/frameLines';
import { FIRST_GUIDES, guidesOfWords, wordsOfGuides } from '../../../../src/desk/guides';
import { unmasked } from '../../../../src/screens/frame/FrameLines';
import { dragged, sidesUnder } from '../../../../src/screens/frame/OwnLines';
import { frameIn, rectIn } from '../../../../src/screens/frame/pictureBox';

const BOX = frameIn(704, 704 / 2.39, 1.1);

describe('where a line lies', () => {
  test('9:16 within 2.39 is the whole height and its share of the width, in the middle', () => {
    const area = rectIn(BOX, deliveryWithin(2.39, 9 / 16));
    expect(area.height).toBeCloseTo(BOX.height, 9);
    expect(area.width).toBeCloseTo((BOX.height * 9) / 16, 9);
    expect(area.left + area.width / 2).toBeCloseTo(352, 9);
  });

  test('as on the sensor it is narrower by the squeeze, and as high', () => {
    const narrow = frameIn(704 / 2, 704 / 2.39, 1.1);
    const [wide, squeezed] = [BOX, narrow].map((box) => rectIn(box, deliveryWithin(2.39, 9 / 16)));
    expect(squeezed.width).toBeCloseTo(wide.width / 2, 9);
    expect(squeezed.height).toBeCloseTo(wide.height, 9);
  });

  test('the mask leaves the delivery free, or the second one where there is one', () => {
    const second = { ...FIRST_GUIDES, masked: 'second' as const };
    expect(unmasked(BOX, FIRST_GUIDES, { aspect: 2.39, second: 1 })).toEqual(BOX);
    expect(unmasked(BOX, second, { aspect: 2.39, second: null })).toEqual(BOX);
    expect(unmasked(BOX, second, { aspect: 2.39, second: 1 }).width).toBeCloseTo(BOX.height, 9);
  });
});

describe('a frame line under a hand', () => {
  const line = {
    id: 'line-1',
    label: 'Line 1',
    rect: [0.2, 0.2, 0.8, 0.8] as [number, number, number, number],
  };

  test('is held by its sides, its corners, or as a whole', () => {
    const box = { left: 100, top: 100, width: 400, height: 200 };
    expect(sidesUnder(box, 103, 200)).toEqual([true, false, false, false]);
    expect(sidesUnder(box, 498, 296)).toEqual([false, false, true, true]);
    expect(sidesUnder(box, 300, 200)).toEqual([true, true, true, true]);
  });

  test('keeps within the frame and the right way round', () => {
    const by = (sides: readonly [boolean, boolean, boolean, boolean], x: number, y: number) =>
      dragged({ line, at: [0, 0], sides }, [x, y]);
    expect(by([true, false, false, false], 0.1, 9)).toEqual([expect.closeTo(0.3), 0.2, 0.8, 0.8]);
    expect(by([true, false, false, false], 5, 0)[0]).toBeLessThan(0.8);
    expect(by([false, false, true, true], 5, -5)).toEqual([0.2, 0.2, 1, expect.closeTo(0.21)]);
    expect(by([true, true, true, true], 0.5, -0.5)).toEqual([expect.closeTo(0.4), 0, 1, expect.closeTo(0.6)]);
  });
});

describe('the guides as words', () => {
  test('come back as they went', () => {
    const guides = {
      ...FIRST_GUIDES,
      thirds: true,
      centre: false,
      mask: 'dark' as const,
      masked: 'second' as const,
    };
    expect(guidesOfWords(wordsOfGuides(guides))).toEqual(guides);
  });
  test('are as at first where nothing is kept, and whatever else is kept', () => {
    expect(guidesOfWords(null)).toEqual(FIRST_GUIDES);
    expect(guidesOfWords('mask-pink what')).toMatchObject({
      thirds: false,
      mask: 'light',
      masked: 'delivery',
    });
  });
});
