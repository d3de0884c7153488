import { expect, test } from 'vitest';
import { pieceIn } from '../../../src/scene/crew/shownPiece';

const AREA = { width: 400, height: 300 };

test('a picture that fits is drawn whole, as fine as the screen', () => {
  const picture = { left: 0, top: 50, width: 400, height: 200 };
  expect(pieceIn(picture, AREA, 2, false)).toEqual({ box: picture, width: 800, height: 400, piece: null });
});

test('of an enlarged one what shows is drawn, where it lies in the whole', () => {
  const shown = pieceIn({ left: -600, top: -100, width: 1600, height: 800 }, AREA, 2, false);
  expect(shown).toMatchObject({ box: { left: 0, top: 0, width: 400, height: 300 }, width: 800, height: 600 });
  expect(shown?.piece).toMatchObject({
    drawn: { left: 1200, top: 200, width: 800, height: 600 },
    whole: [3200, 1600],
    aspect: 2,
  });
});

test('one that has to be drawn whole is coarser before it takes more than two million pixels', () => {
  const shown = pieceIn({ left: -600, top: -100, width: 3200, height: 1600 }, AREA, 2, true);
  expect(shown?.piece).toBeNull();
  expect((shown?.width ?? 0) * (shown?.height ?? 0)).toBeCloseTo(2e6, -4);
  expect((shown?.width ?? 0) / (shown?.height ?? 1)).toBeCloseTo(2, 2);
});

test('what lies beside the canvas is not drawn', () => {
  expect(pieceIn({ left: 401, top: 0, width: 100, height: 50 }, AREA, 1, false)).toBeNull();
});
