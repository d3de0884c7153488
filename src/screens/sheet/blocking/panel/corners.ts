import { anchorOf } from '../../../../core/plan/edits/anchorOf';
import { metresBetween } from '../../../../core/plan/runs';
import type { Spot } from '../../../../core/plan/schema/numbers';
import type { Plan } from '../../../../core/plan/schema/plan';
import { nameInText } from '../../../overhead/words';

/** So far inside a corner somebody stands who comes from it, metres. Source: common practice, no source */
const INSIDE_METRES = 0.6;
/** What a roof is made of names no corner. */
const BUILT = new Set(['deck', 'parapet', 'skyline block', 'wall']);

export interface Corner {
  readonly at: Spot;
  readonly word: string;
}

const SIDES = [
  ['left', 'right'],
  ['far', 'near'],
] as const;

/** The corners of the roof's decks, each by its side of the plan and by what stands nearest to it. */
export function cornersOfRoof(plan: Plan): readonly Corner[] {
  const things = plan.pieces
    .filter(({ kind }) => !BUILT.has(kind))
    .flatMap(({ id, label }) => {
      const at = anchorOf(plan, id);
      return at ? [{ label, at }] : [];
    });
  const spots = plan.pieces.flatMap((piece) => (piece.kind === 'deck' ? piece.outline : []));
  if (spots.length === 0) return [];
  const middle = [0, 1].map((axis) => spots.reduce((sum, spot) => sum + spot[axis], 0) / spots.length);
  return spots.map((spot) => {
    const [across, along] = SIDES.map(([less, more], axis) => (spot[axis] < middle[axis] ? less : more));
    const inwards = (axis: 0 | 1): number => {
      const by = middle[axis] - spot[axis];
      return Math.round((spot[axis] + Math.sign(by) * Math.min(INSIDE_METRES, Math.abs(by))) * 100) / 100;
    };
    const [nearest] = things.toSorted((a, b) => metresBetween(a.at, spot) - metresBetween(b.at, spot));
    const by = nearest ? `, by ${nameInText(nearest.label)}` : '';
    return { at: [inwards(0), inwards(1)], word: `${along} ${across}${by}` };
  });
}
