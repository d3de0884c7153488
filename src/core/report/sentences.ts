import { named } from '../plan/named';
import { formatLength, type LengthSystem } from '../units/lengths';
import { NBSP } from '../units/numbers';
import { formatSeconds } from '../units/seconds';
import { formatShare } from '../units/shares';
import { isSeen } from './seen';
import type { Extent, FrameEdge, ItemReport, SetupReport, Span } from './types';

/** One finding in words: the item's name, and what is to be said of it. `${name}: ${text}` or `${name} ${text}`. */
export interface FindingSentence {
  readonly name: string;
  /** Starts in lower case, ends with a full stop. */
  readonly text: string;
  /** Whether a colon belongs after the name. */
  readonly colon: boolean;
}

/** Parts that end like several things and are one. */
const SINGULAR: ReadonlySet<string> = new Set(['lens', 'chassis']);
/** Whether a part's name stands for several things. */
export const isPlural = (part: string): boolean =>
  part.endsWith('s') && !part.endsWith('ss') && !SINGULAR.has(part);

/** A part counts as named when it makes up this share of the largest part. */
const WORTH_NAMING = 0.3;

/** The largest of some parts in words, at most two: `the column and legs`; null for none. */
export function partsInWords(
  parts: ItemReport['parts'],
): { readonly words: string; readonly plural: boolean } | null {
  const named = parts.filter((part) => part.share >= parts[0].share * WORTH_NAMING).slice(0, 2);
  if (named.length === 0) return null;
  return {
    words: `the ${named.map((part) => part.name).join(' and ')}`,
    plural: named.length > 1 || isPlural(named[0].name),
  };
}

const EDGE_WORDS: Readonly<Record<FrameEdge, string>> = {
  left: 'at frame left',
  right: 'at frame right',
  top: 'at the top of the frame',
  bottom: 'at the bottom of the frame',
};

/** Where in the frame, in words. */
export function placeInFrame(extent: Extent | null, touching: readonly FrameEdge[]): string {
  if (!extent) return 'in frame';
  const sides = touching.filter((edge) => edge === 'left' || edge === 'right');
  if (sides.length === 1) return EDGE_WORDS[sides[0]];
  if (sides.length === 2) return 'across the frame';
  if (touching.length === 1) return EDGE_WORDS[touching[0]];
  const middle = (extent[0] + extent[2]) / 2;
  if (middle < 1 / 3) return 'in the left third';
  if (middle > 2 / 3) return 'in the right third';
  return 'in the middle third';
}

/** When, in words with a space before them: empty for one instant. */
export function timeWords(spans: readonly Span[], [from, to]: Span): string {
  if (from === to || spans.length === 0) return '';
  const [first] = spans;
  if (spans.length === 1 && first[0] <= from && first[1] >= to) return ' all through';
  const stretch = ([start, end]: Span) =>
    end - start < 0.05
      ? `at ${formatSeconds(start)}`
      : `from ${formatSeconds(start)} to ${formatSeconds(end)}`;
  if (spans.length === 1) return ` ${stretch(first)}`;
  if (spans.length === 2) return ` ${stretch(first)} and ${stretch(spans[1])}`;
  return ` ${spans.length} times between ${formatSeconds(first[0])} and ${formatSeconds(spans[spans.length - 1][1])}`;
}

const ofFrame = (share: number): string => `${formatShare(share)} of the frame`;

/** Names of the items that do most of something, at most two. */
function namesOf(
  companions: readonly { readonly id: string; readonly share: number }[],
  setup: SetupReport,
): string {
  const worth = companions.filter(({ share }) => share >= companions[0].share * WORTH_NAMING).slice(0, 2);
  const labelOf = (id: string) => named(setup.items.find((item) => item.id === id)?.label ?? id);
  return worth.map(({ id }) => labelOf(id)).join(' and ');
}

/** Whether what shows is seen mostly through a porous layer. */
function layerWords(item: ItemReport, setup: SetupReport): string {
  const [most] = item.through;
  return most && most.share > item.share / 2 ? `, through ${namesOf(item.through, setup)}` : '';
}

function showing(item: ItemReport, setup: SetupReport): FindingSentence {
  const parts = partsInWords(item.parts);
  const verb = parts?.plural ? 'show' : 'shows';
  const subject = parts ? `${parts.words} ${verb}` : 'it shows';
  const mirror = item.mirroredShare > 0 ? ', and in a reflection' : '';
  const text =
    `${subject} ${placeInFrame(item.extent, item.touches)}${timeWords(item.spans, setup.seconds)}, ` +
    `${ofFrame(item.share)}${layerWords(item, setup)}${mirror}.`;
  return { name: item.label, text, colon: true };
}

/** How it reads is in the sentences about light; here, what of it is there where nobody sees it. */
function lost(item: ItemReport, setup: SetupReport): FindingSentence {
  const parts = partsInWords(item.parts);
  const verb = parts?.plural ? 'are' : 'is';
  const text =
    `${parts ? `${parts.words} ${verb}` : 'it is'} ${placeInFrame(item.extent, item.touches)}` +
    `${timeWords(item.spans, setup.seconds)}, lost in the dark.`;
  return { name: item.label, text, colon: true };
}

function mirrored(item: ItemReport, setup: SetupReport): FindingSentence {
  const parts = partsInWords(item.mirroredParts);
  const verb = parts?.plural ? 'show' : 'shows';
  const hidden = item.coveredBy.length > 0 ? `, itself behind ${namesOf(item.coveredBy, setup)}` : '';
  const text =
    `${parts ? `${parts.words} ${verb}` : 'it shows'} only in a reflection` +
    `${timeWords(item.mirroredSpans, setup.seconds)}, ${ofFrame(item.mirroredShare)}${hidden}.`;
  return { name: item.label, text, colon: true };
}

const OUTSIDE: Readonly<Record<FrameEdge, string>> = {
  left: 'outside frame left',
  right: 'outside frame right',
  top: 'above the frame',
  bottom: 'below the frame',
};

function outside(item: ItemReport, setup: SetupReport, lengths: LengthSystem): FindingSentence {
  const { margin } = item;
  if (!margin) return { name: item.label, text: 'is behind the camera.', colon: false };
  const when = setup.seconds[0] === setup.seconds[1] ? '' : ` at ${formatSeconds(margin.atSeconds)}`;
  const distance = formatLength(margin.metres, lengths);
  if (item.verdict === 'clear') {
    return { name: item.label, text: `is clear, ${distance} ${OUTSIDE[margin.edge]}.`, colon: false };
  }
  const widths = `${formatShare(margin.frameWidths)} of the frame’s width`;
  const sway = (margin.swayMetres ?? 0) > margin.metres ? ' The sway may bring it in.' : '';
  return {
    name: item.label,
    text: `${distance} ${OUTSIDE[margin.edge]}${when}, ${widths}.${sway}`,
    colon: true,
  };
}

/** Why it may be seen all the same, with a space before it; empty where nobody said so. */
function acceptedWords({ wish, verdict, accepted }: ItemReport): string {
  return accepted && wish === 'keep out' && isSeen(verdict)
    ? ` Let show: ${accepted.reason.replace(/\.$/, '')}.`
    : '';
}

/**
 * What the report says of an item in a setup, as a sentence of the house: what, where, when, how much, and the reason
 * where it was let show. Seconds are those of the action's clock.
 */
export function findingSentence(
  item: ItemReport,
  setup: SetupReport,
  lengths: LengthSystem = 'm',
): FindingSentence {
  const told = plainSentence(item, setup, lengths);
  return { ...told, text: `${told.text}${acceptedWords(item)}` };
}

function plainSentence(item: ItemReport, setup: SetupReport, lengths: LengthSystem): FindingSentence {
  if (item.verdict === 'showing') return showing(item, setup);
  if (item.verdict === 'mirrored') return mirrored(item, setup);
  if (item.verdict === 'lost in the dark') return lost(item, setup);
  if (item.verdict === 'covered') {
    const behind =
      item.coveredBy.length > 0 ? `wholly behind ${namesOf(item.coveredBy, setup)}` : 'wholly hidden';
    return { name: item.label, text: `in frame, ${behind}.`, colon: true };
  }
  return outside(item, setup, lengths);
}

/** What takes an item out of a setup's frame, said plainly; null when it is not in it. */
export function wayOut(item: ItemReport, lengths: LengthSystem = 'm'): string | null {
  const move = item.moveOutMetres;
  if (move === null || move === 0) return null;
  const direction = move > 0 ? 'right' : 'left';
  return `${formatLength(Math.abs(move), lengths)} to frame${NBSP}${direction} takes it out of this frame.`;
}
