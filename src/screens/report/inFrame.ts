import { named } from '../../core/plan/named';
import { placeInFrame } from '../../core/report/sentences';
import type { ItemReport, SetupReport } from '../../core/report/types';
import { concernOf } from './concerns';

/** So many things are told one by one; a picture has more than anybody listens to. */
const MOST_TOLD = 6;

/** The cast first, from frame left to right; then the things, what should keep out before the rest, the largest first. */
function inOrder(items: readonly ItemReport[]): readonly ItemReport[] {
  const cast = items.filter(({ kind }) => kind === 'performer');
  const things = items.filter(({ kind }) => kind !== 'performer');
  return [
    ...cast.toSorted((a, b) => (a.extent?.[0] ?? 0) - (b.extent?.[0] ?? 0)),
    ...things.toSorted((a, b) => weight(b) - weight(a)),
  ];
}

/** A share is 1 at most: what should keep out comes before all else. */
const weight = (item: ItemReport): number => item.share + (concernOf(item) === null ? 0 : 1);

const listed = (words: readonly string[], more: number): string =>
  [...words, ...(more > 0 ? [`${more} more`] : [])].join(', ');

/**
 * What a frame holds, in words for whoever cannot see it: who is where, what should keep out, the largest things, and what
 * is seen in a reflection alone. `In frame: Vera in the left third, Nuno in the middle third, Pigeon loft at frame right, 5 more.`
 */
export function inFrameWords({ items }: SetupReport): string {
  const shown = inOrder(items.filter(({ verdict }) => verdict === 'showing'));
  const mirrored = items
    .filter(({ verdict }) => verdict === 'mirrored')
    .toSorted((a, b) => b.mirroredShare - a.mirroredShare);
  const told = shown
    .slice(0, MOST_TOLD)
    .map(({ label, extent, touches }) => `${named(label)} ${placeInFrame(extent, touches)}`);
  const reflected = mirrored.slice(0, MOST_TOLD).map(({ label }) => named(label));
  return [
    shown.length === 0
      ? 'Nothing of the plan is in frame.'
      : `In frame: ${listed(told, shown.length - told.length)}.`,
    ...(mirrored.length === 0
      ? []
      : [`Only in a reflection: ${listed(reflected, mirrored.length - reflected.length)}.`]),
  ].join(' ');
}
