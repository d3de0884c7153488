import type { PartWriter } from '../partWriter';
import { STANDING_WORDS } from '../standing';
import type { PartInput } from '../types';

/** Every place that is set by a tape, with the two distances that find it, how high the thing goes and where it looks. */
export function standingPart(writer: PartWriter, { standing }: PartInput, part: string): void {
  if (standing.length === 0) return;
  writer.newPage(part);
  writer.heading(part);
  writer.text(STANDING_WORDS, { grey: 0.3 });
  writer.gap(4);
  writer.table(
    [
      { name: 'what', share: 25 },
      { name: 'set', share: 17 },
      { name: 'one tape', share: 27 },
      { name: 'the other', share: 27 },
      { name: 'floor', share: 11, align: 'right' },
      { name: 'height', share: 11, align: 'right' },
      { name: 'looks to', share: 15 },
    ],
    standing.flatMap(({ label, carries, height, aim, places }) =>
      places.map(({ to, tapes: [one, other], side, level }, k) => [
        // The name again on every row: pages are given to different hands.
        k === 0 && carries.length > 0 ? `${label}, with ${carries.join(', ')}` : label,
        to,
        one,
        side === '' ? other : `${other}, ${side}`,
        level,
        k > 0 ? '' : height,
        k > 0 ? '' : aim,
      ]),
    ),
  );
}
