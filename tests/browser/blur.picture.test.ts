import { expect, test } from 'vitest';
import { blurMm } from '../../src/core/optics/focus';
import { BULBS, smallBulbs } from '../plans/smallBulbs';
import { withFolder } from './chosenFolder';
import { openPage } from './harness';
import { lightAt } from './picture';
import { savedStills } from './savedStills';
import { withoutDemo } from './withoutDemo';
import { withoutReports } from './withoutReports';

/** Without a graphics card a page may take its time. */
const PATIENT = { timeout: 240_000 };

const FOCUS_METRES = 2;
const STOP = 2;
/** Millimetres of the gate that the delivered frame is high: 24.89 mm wide, unsqueezed, at 4 : 1. */
const LENSES = [
  { id: 'spherical', focalMm: 85, squeeze: 1, highMm: 24.89 / 4 },
  { id: 'squeezed', focalMm: 135, squeeze: 2, highMm: (2 * 24.89) / 4 },
] as const;

/** The picture in full, with its blur alone. */
function fullPictureBlurred(): void {
  if (location.protocol === 'about:') return;
  localStorage.setItem('standclear.picture', 'full');
  localStorage.setItem('standclear.shows', 'only blur');
}

/**
 * How long a disc is along a line of pixels through its middle, between where it is half as bright as its plateau, and
 * where the middle of that is; pixels.
 */
function across(
  values: readonly number[],
  middle: number,
  guess: number,
): { length: number; middle: number } {
  const inside = values
    .slice(Math.round(middle - guess / 4), Math.round(middle + guess / 4) + 1)
    .toSorted((a, b) => a - b);
  const half = inside[Math.floor(inside.length / 2)] / 2;
  const edge = (step: 1 | -1): number => {
    let k = Math.round(middle);
    while (values[k] > half) k += step;
    // Between the middles of two pixels, of which one is brighter and one darker.
    return k - step * ((half - values[k]) / (values[k - step] - values[k]));
  };
  const [low, high] = [edge(-1), edge(1)];
  return { length: high - low, middle: (low + high) / 2 + 0.5 };
}

test(
  'bulbs out of focus are discs as large as the blur on the gate, and ovals 1 : 2 through a 2x lens',
  PATIENT,
  async () => {
    const page = await openPage({
      width: 1000,
      height: 640,
      before: [fullPictureBlurred, withFolder, withoutReports, withoutDemo],
    });
    page.context().setDefaultTimeout(120_000);
    const pictures = await savedStills(page, smallBulbs());
    for (const { id, focalMm, squeeze, highMm } of LENSES) {
      const picture = pictures.get(id);
      if (!picture) throw new Error(`no picture of ${id}`);
      const { width, height } = picture;
      for (const { right, ahead } of BULBS) {
        // The frame is that of a lens focused far away: as shares of it blurs are those on the gate, less f/s.
        const onGateMm = blurMm({ focalMm, stop: STOP }, FOCUS_METRES, ahead);
        const high = ((onGateMm * (1 - focalMm / 1000 / FOCUS_METRES)) / highMm) * height;
        const x = width / 2 + ((right * focalMm) / highMm) * height;
        const y = height / 2;
        const row = Array.from({ length: width }, (_, k) => lightAt(picture, k, Math.floor(y)));
        const column = Array.from({ length: height }, (_, k) => lightAt(picture, Math.floor(x), k));
        const wide = across(row, x - 0.5, high / squeeze);
        const tall = across(column, y - 0.5, high);
        const said = `${id}, ${ahead} m: ${tall.length.toFixed(1)} high, ${wide.length.toFixed(1)} wide, expected ${high.toFixed(1)} and ${(high / squeeze).toFixed(1)}`;
        console.log(said);
        const near = (pixels: number) => Math.max(1, pixels * 0.05);
        expect(Math.abs(tall.length - high), said).toBeLessThan(near(high));
        expect(Math.abs(wide.length - high / squeeze), said).toBeLessThan(near(high / squeeze));
        expect(Math.abs(wide.middle - x), said).toBeLessThan(1.5);
        expect(Math.abs(tall.middle - y), said).toBeLessThan(1.5);
      }
    }
  },
);
