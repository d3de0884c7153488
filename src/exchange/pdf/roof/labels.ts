import { meets } from '../boxes';
import type { At, Box, Setting } from '../marks';
import type { Drawing } from './drawing';

/** Something on the sheet that has a name. */
export interface Named {
  readonly text: string;
  /** What the name belongs to, points. */
  readonly around: Box;
  readonly setting: Setting;
}

/** What is larger than this does not keep names off it, and has its own inside, points. */
const LARGE = 46;
/** How far off a name may be put, points, the nearest first. */
const RINGS = [1.5, 9, 18, 28, 40, 56] as const;
/** Beyond this a thin line ties it to what it names. */
const TIED_FROM = 9;

const isLarge = ([left, top, right, bottom]: Box): boolean =>
  right - left > LARGE && bottom - top > LARGE / 2;
const inside = (a: Box, b: Box): boolean => a[0] >= b[0] && a[1] >= b[1] && a[2] <= b[2] && a[3] <= b[3];

/** The boxes in which a name of a size may be, around what it names, nearest first. */
function* placesOf(
  [left, top, right, bottom]: Box,
  width: number,
  height: number,
): Generator<{ box: Box; ring: number }> {
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  if (isLarge([left, top, right, bottom]))
    yield { box: [x - width / 2, y - height / 2, x + width / 2, y + height / 2], ring: 0 };
  for (const ring of RINGS) {
    const corners: readonly At[] = [
      [right + ring, y - height / 2],
      [left - ring - width, y - height / 2],
      [x - width / 2, top - ring - height],
      [x - width / 2, bottom + ring],
      [right + ring, top - ring - height],
      [right + ring, bottom + ring],
      [left - ring - width, top - ring - height],
      [left - ring - width, bottom + ring],
    ];
    for (const [atX, atY] of corners) yield { box: [atX, atY, atX + width, atY + height], ring };
  }
}

/** Letters names beside what they name so that none lies over another where there is room, tied by a line where they are farther off. */
export function letterNames(writer: Drawing, names: readonly Named[], box: Box): void {
  const taken: Box[] = names.map(({ around }) => around).filter((around) => !isLarge(around));
  for (const { text, around, setting } of names) {
    const width = writer.widthOf(text, setting);
    const height = writer.leading(setting) * 0.9;
    const places = [...placesOf(around, width, height)].filter((place) => inside(place.box, box));
    const free = places.find((place) => !taken.some((other) => meets(place.box, other)));
    const place = free ??
      places[0] ?? { box: [around[0], around[1], around[0] + width, around[1] + height] as Box, ring: 0 };
    taken.push(place.box);
    if (place.ring >= TIED_FROM) {
      const x =
        place.box[0] > around[2]
          ? place.box[0]
          : place.box[2] < around[0]
            ? place.box[2]
            : (place.box[0] + place.box[2]) / 2;
      const y =
        place.box[1] > around[3]
          ? place.box[1]
          : place.box[3] < around[1]
            ? place.box[3]
            : (place.box[1] + place.box[3]) / 2;
      writer.shape(
        [
          [(around[0] + around[2]) / 2, (around[1] + around[3]) / 2],
          [x, y],
        ],
        { line: 0.6, width: 0.3 },
      );
    }
    writer.line(text, [place.box[0], place.box[1]], setting);
  }
}
