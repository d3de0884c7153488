import { useMemo } from 'react';
import { whereabouts } from '../../core/form/figure/whereabouts';
import { footprintOf } from '../../core/form/fromAbove/footprint';
import { itemNow } from '../../core/optics/riding';
import { carrierOf } from '../../core/plan/edits/anchorOf';
import { itemOf } from '../../core/plan/items';
import type { Plan } from '../../core/plan/schema/plan';
import type { SetupReport } from '../../core/report/types';
import type { LengthSystem } from '../../core/units/lengths';
import { type Finding, findingsOnRoof } from './findings';
import { type PlacedNote, placeNotes } from './geometry/notes';
import { type Bounds, boundsOf, halfWay, middleOf, type Spot } from './geometry/spots';
import { GLYPH, LINE, RING } from './layers/Findings';
import { textWidth } from './measureText';

/** The most that are marked; more would bury the drawing, and the list beside has them all. */
const MOST = 6;
/** Rings nearer to each other than this would be one another's shadow, pixels. */
const MERGED = 28;

export interface MarkedFinding {
  readonly finding: Finding;
  readonly at: Spot;
  readonly note: PlacedNote | null;
}

interface Options {
  readonly report: SetupReport | null;
  readonly plan: Plan;
  readonly seconds: number;
  readonly lengths: LengthSystem;
  readonly touch: boolean;
  readonly at: (spot: Spot) => Spot;
  readonly perMetre: number;
  /** The drawing with its dimensions, what is not to be covered besides, and the pane; pixels. */
  readonly drawing: Bounds;
  readonly blocked: readonly Bounds[];
  /** What a leader had better not cross: the figures of dimensions. */
  readonly crossed: readonly Bounds[];
  readonly pane: Bounds;
}

/** The chosen setup's findings with the places of their rings and their words. */
export function useFindings(options: Options): readonly MarkedFinding[] {
  const { report, plan, seconds, lengths, touch, at, perMetre, drawing, blocked, crossed, pane } = options;
  return useMemo(() => {
    if (!report) return [];
    const findings = findingsOnRoof(
      report,
      plan,
      (id) => placeOf(plan, id, seconds),
      lengths,
      MERGED / perMetre,
    ).slice(0, MOST);
    const marked = findings.map((finding) => ({ finding, at: at(finding.at) }));
    const seen = marked.filter(({ at: [x, y] }) => x > 0 && y > 0 && x < pane[2] && y < pane[3]);
    const notes = placeNotes(
      seen.map(({ finding, at: middle }) => ({
        id: finding.id,
        ring: { middle, radius: RING },
        width:
          GLYPH +
          6 +
          Math.max(textWidth(finding.words, 'strong', touch), textWidth(finding.detail, 'mark', touch)),
        height: finding.detail === '' ? LINE : 2 * LINE,
      })),
      drawing,
      { blocked, crossed },
      pane,
    );
    return seen.map(({ finding, at: middle }) => ({
      finding,
      at: middle,
      note: notes.find(({ id }) => id === finding.id) ?? null,
    }));
  }, [report, plan, seconds, lengths, touch, at, perMetre, drawing, blocked, crossed, pane]);
}

/** Where an item stands, metres: the middle of its ground; of what a stand carries the stand; a performer at the instant; null for what has no place. */
export function placeOf(plan: Plan, id: string, seconds: number): Spot | null {
  const item = itemOf(plan, carrierOf(plan, id) ?? id);
  if (!item) return null;
  if (item.section === 'cast') {
    const place = whereabouts(item.record, plan, seconds);
    return place ? [place.at[0], place.at[2]] : null;
  }
  if (item.section === 'gear' && item.record.kind === 'stand') return [item.record.at[0], item.record.at[2]];
  const { outline, closed } = footprintOf(itemNow(plan, item, seconds), plan);
  if (!closed) return halfWay(outline);
  const bounds = boundsOf(outline);
  return bounds ? middleOf(bounds) : null;
}
