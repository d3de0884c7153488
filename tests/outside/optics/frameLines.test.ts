import { expect, test } from 'vitest';
import { safeAreas } from '../../../src/core/optics/frameLines';

const DICTIONARY =
  'Illustrated dictionary of moving image technology, 4th ed., appendix B (the standard is SMPTE ST 2046-1:2009)';

/** Shares of width and height, exact. */
const AREAS: readonly {
  readonly name: string;
  readonly aspect: number;
  readonly action: number;
  readonly title: number;
  readonly from: string;
}[] = [
  { name: '16:9', aspect: 16 / 9, action: 0.93, title: 0.9, from: DICTIONARY },
  { name: '4:3', aspect: 4 / 3, action: 0.9, title: 0.8, from: DICTIONARY },
];

/** Title areas in pixels, arithmetic on the 90 %; EBU R 95 has the same for graphics. */
const TITLES: readonly {
  readonly picture: readonly [number, number];
  readonly title: readonly [number, number];
}[] = [
  { picture: [1920, 1080], title: [1728, 972] },
  { picture: [3840, 2160], title: [3456, 1944] },
];

let rows = 0;

test.each(AREAS)('safe action and title of $name are $action and $title of the picture ($from)', (row) => {
  rows += 1;
  const areas = safeAreas(row.aspect);
  for (const [[left, top, right, bottom], share] of [
    [areas.action, row.action],
    [areas.title, row.title],
  ] as const) {
    expect(right - left).toBeCloseTo(share, 12);
    expect(bottom - top).toBeCloseTo(share, 12);
    expect(left + right).toBeCloseTo(1, 12);
    expect(top + bottom).toBeCloseTo(1, 12);
  }
});

test.each(TITLES)('the title area of $picture is $title pixels', ({ picture, title }) => {
  rows += 1;
  const [left, top, right, bottom] = safeAreas(picture[0] / picture[1]).title;
  expect((right - left) * picture[0]).toBeCloseTo(title[0], 9);
  expect((bottom - top) * picture[1]).toBeCloseTo(title[1], 9);
});

test('every row of the tables was held against', () => {
  expect(rows).toBe(4);
});
