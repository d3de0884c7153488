import type { Framing } from '../../../core/continuity/framing';
import type { Holding } from '../../../core/continuity/holding';
import type { Reframing } from '../../../core/continuity/reframing';
import type { Lens } from '../../../core/plan/schema/kit';
import type { LensTry } from '../../../core/report/lensTries';
import type { ItemReport, SetupReport, Span } from '../../../core/report/types';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import { formatSeconds } from '../../../core/units/seconds';
import { concernOf, findingsOf } from '../../report/concerns';

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;

const fromTo = (from: string, to: string): string => (from === to ? from : `${from} to ${to}`);

const millimetres = (mm: number): string => formatNumber(mm, Number.isInteger(mm) ? 0 : 1);

/** What a lens is called among others: `50 mm`, `24 to 70 mm`; by its whole name where that is not enough. */
export function lensName(lens: Lens, lenses: readonly Lens[]): string {
  const words = ({ focalMm, longestMm }: Lens): string =>
    `${longestMm === undefined ? '' : `${millimetres(focalMm)} to `}${millimetres(longestMm ?? focalMm)}${NBSP}mm`;
  const name = words(lens);
  return lenses.some((other) => other !== lens && words(other) === name) ? lens.label : name;
}

/** How a zoom is tried, beside its name: `at its long end, 70 mm`. */
export const zoomWords = ({ label, lens }: LensTry): string => label.slice(lens.label.length + 1);

/** `close-up to mid shot`: the size of the shot at the first and the last frame, or where it is in frame at all. */
export function sizeWords({ first, last, sizes }: Holding): string {
  if (!sizes) return 'not in frame';
  const [from, to] = [first?.size, last?.size];
  return from && to ? fromTo(from, to) : fromTo(...sizes);
}

/** Where in frame somebody's eyes are: in which third of its width. */
function thirdOf(framing: Framing | null): string | null {
  if (!framing?.size) return null;
  const [x] = framing.eyes;
  return x < 1 / 3 ? 'left' : x > 2 / 3 ? 'right' : 'middle';
}

/** `left to middle`: where in frame somebody is at the first and the last frame; null where they are not. */
export function placeWords({ first, last }: Holding): string | null {
  const [from, to] = [thirdOf(first), thirdOf(last)];
  if (from && to) return fromTo(from, to);
  if (from) return `${from}, then out`;
  return to ? `comes in at ${to}` : null;
}

/** When somebody's whole head is inside the frame line, for those who hear it. */
export function heldWords({ heldSpans, heldThroughout }: Holding, [from, to]: Span): string {
  if (from === to) return heldThroughout ? 'held' : 'not held';
  if (heldThroughout) return 'held throughout';
  if (heldSpans.length === 0) return 'never held';
  return `held ${listed(heldSpans.map(([start, end]) => `from ${formatSeconds(start)} to ${formatSeconds(end)}`))}`;
}

/** What of a setup's items shows that should not. */
export const showingOf = (report: SetupReport): readonly ItemReport[] =>
  findingsOf(report).filter((item) => concernOf(item) === 'shows' || concernOf(item) === 'mirrored');

/** How far, which way, and what it does to the background, in two sentences. */
export function reframingWords(
  { same }: Reframing,
  who: string,
  towards: string | null,
  lengths: LengthSystem,
): string {
  const [before, after] = same.distanceMetres;
  const long = (metres: number, decimals = 2): string => formatLength(metres, lengths, { decimals });
  const way = after >= before ? 'back' : 'nearer';
  const [wide, then] = same.fieldBehindMetres;
  return (
    `From ${long(before)} to ${long(after)}, ${long(Math.abs(after - before))} ${way}` +
    `${towards === null ? '' : ` towards ${towards}`}. ` +
    `${long(same.behindMetres)} behind ${who} the frame takes ${long(then, 1)} instead of ${long(wide, 1)}.`
  );
}

/** What becomes of the findings: how many fewer or more, and what comes in. */
export function findingsWords(before: SetupReport, after: SetupReport): string {
  const [was, is] = [showingOf(before), showingOf(after)];
  if (was.length === 0 && is.length === 0) return 'Findings: none, as now.';
  const difference = is.length - was.length;
  const known = new Set(was.map(({ id }) => id));
  const fresh = is.filter(({ id }) => !known.has(id)).map(({ label }) => label);
  const count =
    difference === 0
      ? `as many as now, ${is.length}`
      : `${Math.abs(difference)} ${difference < 0 ? 'fewer' : 'more'}`;
  if (fresh.length === 0) return `Findings: ${count}.`;
  const named = fresh.length > 3 ? `${fresh.length} others` : listed(fresh);
  const verb = fresh.length === 1 ? 'shows' : 'show';
  const how = was.length === 0 ? '' : difference > 0 ? ' too' : ' instead';
  return `Findings: ${count}. ${named} ${verb}${how}.`;
}
