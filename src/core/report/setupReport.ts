import { frameShapeOf, spanOf } from '../optics/camera';
import { angleDegrees } from '../optics/gate';
import { swayReach } from '../optics/sway';
import type { FrameShape } from '../optics/types';
import { reasonToShow } from '../plan/edits/shows';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { runsOf } from '../sight/frames';
import { moveOutOf, type Outside } from '../sight/margin';
import { type Reading, readSetup } from '../sight/reading';
import { INSIDE, type ItemTally, MIRRORED, SHOWS } from '../sight/tally';
import { inOneGo } from '../units/steps';
import type { FrameEdge, ItemReport, Margin, SetupReport, Span, Verdict } from './types';

/** Which seconds to report: the setup's whole span, or one instant inside it. */
export type Asked =
  | 'span'
  | {
      readonly at: number;
      /** Leave `coveredBy` empty for what has no wish: while something is dragged, only findings are read. */
      readonly briefly?: boolean;
    };

/** What has nothing in it is one and the same list: of most items most lists are empty, and a night has many of both. */
const NONE: readonly never[] = [];
const orNone = <Entry>(list: readonly Entry[]): readonly Entry[] => (list.length === 0 ? NONE : list);

const framesWith = (tally: ItemTally, bit: number): Uint8Array =>
  tally.states.map((state) => ((state & bit) === 0 ? 0 : 1));

function spansOf(tally: ItemTally, bit: number, instants: Float64Array): Span[] {
  return runsOf(framesWith(tally, bit)).map(([from, to]) => [instants[from], instants[to]] as const);
}

/** Parts with their shares, largest first; names break ties, so that the order never depends on chance. */
const ranked = (shares: ReadonlyMap<string, number>): { name: string; share: number }[] =>
  [...shares]
    .map(([name, share]) => ({ name, share }))
    .sort((a, b) => b.share - a.share || (a.name < b.name ? -1 : 1));

/** Within this share of the frame of an edge counts as touching it. */
const TOUCHING = 0.002;

function touches(extent: ItemReport['extent']): FrameEdge[] {
  if (!extent) return [];
  const [left, top, right, bottom] = extent;
  const edges: FrameEdge[] = [];
  if (left <= TOUCHING) edges.push('left');
  if (right >= 1 - TOUCHING) edges.push('right');
  if (top <= TOUCHING) edges.push('top');
  if (bottom >= 1 - TOUCHING) edges.push('bottom');
  return edges;
}

function verdictOf(tally: ItemTally, margin: Margin | null, plan: Plan): Verdict {
  const any = (bit: number) => tally.states.some((state) => (state & bit) !== 0);
  if (any(SHOWS)) return 'showing';
  if (any(MIRRORED)) return 'mirrored';
  if (any(INSIDE)) return 'covered';
  const isClose =
    margin !== null &&
    (margin.metres < Math.max(plan.safety.metres, margin.swayMetres ?? 0) ||
      margin.frameWidths < plan.safety.frameWidths);
  return isClose ? 'close' : 'clear';
}

/** How much nearer the sway may bring what lies so far outside the frame; nothing where it is not counted. */
export function swayOf(
  { sway }: Setup,
  { metres, frameWidths }: Outside,
  frame: FrameShape,
): Pick<Margin, 'swayMetres'> {
  if (!sway?.counted) return {};
  const { tanHalfWidth, tanHalfHeight } = frame;
  // Metres over frame widths is the frame's width at that depth; at the frame line itself the depth does not matter.
  const depth = frameWidths > 0 ? metres / frameWidths / (2 * tanHalfWidth) : 0;
  const slant = depth * Math.sqrt(1 + tanHalfWidth * tanHalfWidth + tanHalfHeight * tanHalfHeight);
  return { swayMetres: swayReach(sway, slant, Math.max(tanHalfWidth, tanHalfHeight)) };
}

/** What a reading says of one of its items, by number. */
export function reportOfItem(plan: Plan, setup: Setup, reading: Reading, item: number): ItemReport {
  const { stage, instants, tallies } = reading;
  const { id, label, kind, wish } = stage.forms[item];
  const tally = tallies[item];
  const nearest = reading.nearest[item];
  const margin: Margin | null = nearest
    ? {
        metres: nearest.outside.metres,
        frameWidths: nearest.outside.frameWidths,
        edge: nearest.outside.edge,
        atSeconds: instants[nearest.frame],
        ...swayOf(setup, nearest.outside, reading.at(nearest.frame).camera.frame),
      }
    : null;
  const idOf = (index: number) => stage.forms[index].id;
  const worst = [tally.share.frame, tally.mirrored.frame, tally.covered.frame, nearest?.frame ?? -1].find(
    (frame) => frame >= 0,
  );
  const worstFrame = worst ?? 0;
  const reason = reasonToShow(plan, id, setup.id);
  const isInside = tally.share.frame >= 0 || (tally.covered.frame >= 0 && !nearest);
  return {
    id,
    label,
    kind,
    wish,
    verdict: verdictOf(tally, margin, plan),
    share: tally.share.value,
    spans: orNone(spansOf(tally, SHOWS, instants)),
    parts: orNone(ranked(tally.parts)),
    coveredBy: orNone(tally.coveredBy.map(({ item: before, share }) => ({ id: idOf(before), share }))),
    through: orNone(tally.through.map(({ item: layer, share }) => ({ id: idOf(layer), share }))),
    mirroredShare: tally.mirrored.value,
    mirroredSpans: orNone(spansOf(tally, MIRRORED, instants)),
    mirroredParts: orNone(ranked(tally.mirroredParts)),
    mirroredExtent: tally.mirroredExtent,
    margin,
    extent: tally.extent,
    touches: orNone(touches(tally.extent)),
    worstAtSeconds: instants[worstFrame],
    moveOutMetres: isInside
      ? moveOutOf(reading.at(worstFrame).stage, item, reading.at(worstFrame).camera)
      : null,
    ...(reason !== null && { accepted: { reason } }),
  };
}

/**
 * Reads one setup and reports it. Yields the done share, 0..1; returns the report.
 * Throws a RangeError for an instant outside the setup's span.
 */
export function* setupReportSteps(
  plan: Plan,
  setup: Setup,
  asked: Asked = 'span',
): Generator<number, SetupReport, void> {
  const span = spanOf(plan, setup);
  if (asked !== 'span' && !(asked.at >= span[0] && asked.at <= span[1])) {
    throw new RangeError(
      `setupReport: ${asked.at} s is outside the span of setup "${setup.id}", ${span[0]} s to ${span[1]} s`,
    );
  }
  const seconds: Span = asked === 'span' ? span : [asked.at, asked.at];
  const reading = yield* readSetup(plan, setup, seconds, asked !== 'span' && asked.briefly === true);
  const { tanHalfWidth, tanHalfHeight, aspect } = frameShapeOf(plan, setup);
  return {
    id: setup.id,
    label: setup.label,
    seconds,
    angles: { horizontal: angleDegrees(tanHalfWidth), vertical: angleDegrees(tanHalfHeight) },
    aspect,
    items: reading.stage.forms.map((_, item) => reportOfItem(plan, setup, reading, item)),
  };
}

/** Reports one setup in one go. */
export const setupReport = (plan: Plan, setup: Setup, asked: Asked = 'span'): SetupReport =>
  inOneGo(setupReportSteps(plan, setup, asked));
