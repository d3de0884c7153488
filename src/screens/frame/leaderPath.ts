import { distance, nearestOnSegment, type Spot } from '../overhead/geometry/spots';
import { type Box, overlap } from './pictureBox';

/** Closed outlines of something in the picture, pixels. */
export type Outlines = readonly (readonly Spot[])[];

/** Where a label's first and second line are, from its edges, pixels. */
const LINE = 10;
/** A line is looked along in steps of so many pixels. */
const STEP = 4;

interface Way {
  readonly from: Spot;
  readonly to: Spot;
}

const written = ([x, y]: Spot): string => `${x.toFixed(1)} ${y.toFixed(1)}`;

const longOf = ({ from, to }: Way): number => distance(from, to);

/** Whether a line from one place to another goes over a box. */
function goesOver(way: Way, box: Box): boolean {
  const { from, to } = way;
  const steps = Math.ceil(longOf(way) / STEP);
  return Array.from({ length: steps }, (_, k) => k / steps).some((share) =>
    overlap(box, {
      left: from[0] + share * (to[0] - from[0]),
      top: from[1] + share * (to[1] - from[1]),
      width: 1,
      height: 1,
    }),
  );
}

const inBox = ({ left, top, width, height }: Box, [x, y]: Spot): Spot => [
  Math.max(left, Math.min(x, left + width)),
  Math.max(top, Math.min(y, top + height)),
];

/**
 * The line from a label to the nearest place of what it speaks of: of its outlines, or of its boxes where it is marked
 * as a whole. It begins beside the label's first line, or its second where words lie in the way.
 * @param place of the label
 */
export function leaderPath(
  place: Box,
  { outlines, bits }: { readonly outlines: Outlines; readonly bits: readonly Box[] },
  words: readonly Box[],
): string {
  const nearestTo = (from: Spot): readonly Spot[] =>
    outlines.length === 0
      ? bits.map((bit) => inBox(bit, from))
      : outlines.flatMap((spots) =>
          spots.map((spot, k) => nearestOnSegment(from, spots.at(k - 1) ?? spot, spot)),
        );
  const ways = [place.top + LINE, place.top + place.height - LINE].map((y) =>
    [place.left, place.left + place.width]
      .flatMap((x) => nearestTo([x, y]).map((to): Way => ({ from: [x, y], to })))
      .reduce((best, way) => (longOf(way) < longOf(best) ? way : best)),
  );
  const { from, to } = ways.find((way) => !words.some((box) => goesOver(way, box))) ?? ways[0];
  return `M${written(from)}L${written(to)}`;
}
