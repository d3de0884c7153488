import { expect, test } from 'vitest';
import { spotWords } from '../../../../src/screens/frame/levels/FrameReading';
import { placeWords } from '../../../../src/screens/overhead/levels/RoofReading';

const plain = ({ figure, words }: { figure: string; words: string }) =>
  `${figure}. ${words}`.replace(/\u00a0/g, ' ');

test('a meter on the roof says how much, how far from what is asked, and from which lamps', () => {
  const reading = {
    lux: 84,
    shares: [
      { itemId: 'a', label: 'Head 2', lux: 61 },
      { itemId: 'b', label: 'Bulbs', lux: 20 },
      { itemId: 'c', label: 'Sign', lux: 2 },
    ],
  };
  expect(plain(placeWords(reading, 42, 'lx'))).toBe(
    '84 lx, +1.0 stop. Head 2 61 lx, Bulbs 20 lx, all else 3.0 lx',
  );
  expect(plain(placeWords(null, 42, 'lx'))).toBe('no deck. nothing is metered beside the roof');
});

test('a spot says its luminance against middle grey, and what it hits in which light', () => {
  const hit = { itemId: 'vera', label: 'Vera', part: 'coat', at: [0, 0, 0], metres: 5.4, lux: 84 } as const;
  expect(plain(spotWords({ luminance: 3.44, stops: -1.25, hit }, 'm'))).toBe(
    '−1.3 stops, 3.4 cd/m². Vera, coat, 5.40 m off, in 84 lx',
  );
  expect(plain(spotWords({ luminance: 0.3, stops: -4, hit: null }, 'm'))).toBe(
    '−4.0 stops, 0.300 cd/m². the sky',
  );
  expect(plain(spotWords(null, 'm'))).toBe('no picture. the lens shows nothing there');
  expect(plain(spotWords(undefined, 'm'))).toBe('metering. the light there');
});
