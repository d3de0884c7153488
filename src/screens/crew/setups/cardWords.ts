import type { PerformerReading } from '../../../core/continuity/cameraReading';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { listed } from '../../../core/report/listed';
import { placeInFrame } from '../../../core/report/sentences';
import type { ItemReport, SetupReport, Verdict } from '../../../core/report/types';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { NBSP } from '../../../core/units/numbers';
import type { SetupSheet } from '../../../desk/crew/setupSheet';
import { concernOf, findingsOf, isLetShow } from '../../report/concerns';

/** What a card says of what may show, with the verdict whose glyph stands before it. */
export interface CardSaying {
  readonly verdict: Verdict;
  readonly words: string;
  /** Of the glyph and its words, where it is not that of the verdict. */
  readonly tone?: string;
}

/** The lens of a setup: `75 mm`; a zoom from where it stands at the beginning to the end. */
export function lensWords({ kit }: Plan, setup: Setup, sheet: SetupSheet | undefined): string {
  const mm = (focal: number): string => String(Math.round(focal * 10) / 10);
  const lens = kit.lenses.find(({ id }) => id === setup.lens);
  const [from, until] = sheet
    ? [mm(sheet.start.focalMm), mm(sheet.end.focalMm)]
    : [mm(lens?.focalMm ?? 0), mm(lens?.focalMm ?? 0)];
  return from === until ? `${from}${NBSP}mm` : `${from} to ${until}${NBSP}mm`;
}

/** Whom a setup's distance is told to: whom its focus follows, else the nearest who is in frame; null for nobody. */
function firstPerformer(setup: Setup, sheet: SetupSheet): PerformerReading | null {
  const before = sheet.start.performers.filter(({ axisMetres }) => axisMetres > 0);
  const { focus } = setup;
  const followed =
    'follow' in focus ? before.find(({ performerId }) => performerId === focus.follow) : undefined;
  const framed = new Set(sheet.cast.map(({ performerId }) => performerId));
  const nearest = before
    .filter(({ performerId }) => framed.has(performerId))
    .toSorted((a, b) => a.tapeMetres - b.tapeMetres)[0];
  return followed ?? nearest ?? null;
}

/** What follows the lens height on a card: `6.71 m to Vera, dolly`. */
export function distanceWords(setup: Setup, sheet: SetupSheet, lengths: LengthSystem): string {
  const to = firstPerformer(setup, sheet);
  const distance = to ? [`${formatLength(to.tapeMetres, lengths)} to ${to.label}`] : [];
  return [...distance, setup.support].join(', ');
}

function wordsOf(item: ItemReport, lengths: LengthSystem): string {
  const concern = concernOf(item);
  if (concern === 'missing') return `${item.label} does not show`;
  if (concern === 'mirrored') return `${item.label} shows in a reflection`;
  if (concern === 'close' && item.margin)
    return `${item.label} is ${formatLength(item.margin.metres, lengths)} outside`;
  return `${item.label} shows ${placeInFrame(item.extent, item.touches)}`;
}

/** What a card says of what its setup sees: the worst of it, and how much more there is. */
export function cardSaying(report: SetupReport, lengths: LengthSystem): CardSaying {
  const findings = findingsOf(report);
  const [worst] = findings;
  if (worst) {
    const more = findings.length > 1 ? `, and ${findings.length - 1} more` : '';
    const verdict = concernOf(worst) === 'missing' ? 'covered' : worst.verdict;
    const tone = concernOf(worst) === 'missing' ? { tone: 'verm' } : {};
    return { verdict, words: `${wordsOf(worst, lengths)}${more}`, ...tone };
  }
  const letShow = report.items.filter(isLetShow).map(({ label }) => label);
  if (letShow.length > 0)
    return { verdict: 'showing', tone: 'q', words: `${listed(letShow.slice(0, 2))} may show` };
  const hidden = report.items.find(({ wish, verdict }) => wish === 'keep out' && verdict === 'covered');
  const [by] = hidden?.coveredBy ?? [];
  const before = report.items.find(({ id }) => id === by?.id);
  if (hidden && before) return { verdict: 'covered', words: `${hidden.label} is behind ${before.label}` };
  return { verdict: 'clear', words: 'Nothing shows' };
}
