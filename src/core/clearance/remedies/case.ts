import type { Item } from '../../plan/items';
import type { Plan } from '../../plan/schema/plan';
import type { ItemReport } from '../../report/types';
import { type Judged, judgeMoved } from './judge';
import { isFinding, type Known, type KnownSetup } from './known';
import { keepsWithin, type LampChange, type LampWatch } from './lampOnSubject';
import { type RemedyEdit, withRemedy } from './remedyEdits';
import type { Remedy, RemedyCost, RemedyKind, Tolerance, VerdictChange } from './types';
import type { Watch } from './watch';
import { doesWords, lampWords, newsWords, whereWords } from './words';

/** A finding that is to be taken care of. */
export interface Case {
  readonly known: Known;
  readonly one: KnownSetup;
  readonly item: Item;
  readonly report: ItemReport;
  readonly tolerance: Tolerance;
  readonly lamps: LampWatch;
}

/** Remedies as they are found, and the done share, 0..1, while they are looked for. */
export type Finding = Generator<number, readonly Remedy[], void>;

/** The camera of the case's setup when most of the item is seen. */
export const worstWatch = ({ one: { watches }, report }: Case): Watch =>
  watches.findLast(({ seconds }) => seconds <= report.worstAtSeconds + 1e-9) ?? watches[0];

/** Nothing disturbed. */
export const NO_COST: RemedyCost = { metres: 0, stops: 0, degrees: 0, otherSetups: [] };

/** What an offer of a remedy is made of. */
export interface Draft {
  readonly kind: RemedyKind;
  readonly edits: readonly RemedyEdit[];
  readonly metres?: number;
  readonly degrees?: number;
  /** The beginning of its sentence: `0.4 m towards the stair house`. */
  readonly what: string;
}

/** Changes but that of the item in its setup. */
export const others = ({ one, item }: Case, changes: readonly VerdictChange[]): readonly VerdictChange[] =>
  changes.filter(({ setupId, itemId }) => setupId !== one.setup.id || itemId !== item.record.id);

/** Whether the item is a finding in no setup any more. */
const isClearEverywhere = ({ known, item, report }: Case, { after }: Judged): boolean =>
  known.setups.every(({ setup }) => !isFinding(report.wish, after(setup.id, item.record.id) ?? 'clear'));

const largestLoss = (changes: readonly LampChange[]): number =>
  changes.reduce((most, { lossStops }) => (Math.abs(lossStops) > Math.abs(most) ? lossStops : most), 0);

/**
 * Judges a change of things and makes a remedy of it; null where the item stays a finding in its setup, or a lamp leaves
 * its tolerance.
 */
export function* proveThings(
  of: Case,
  draft: Draft,
  judge: (known: Known, after: Plan) => Generator<number, Judged, void> = judgeMoved,
): Generator<number, Remedy | null, void> {
  const { known, one, item, tolerance } = of;
  const after: Plan = withRemedy(known.plan, draft);
  if (after === known.plan) return null;
  const lamps = of.lamps.changes(after);
  if (!keepsWithin(lamps, tolerance)) return null;
  const told = yield* judge(known, after);
  const verdict = told.after(one.setup.id, item.record.id);
  if (verdict === null || isFinding(of.report.wish, verdict)) return null;
  const where = whereWords(known.plan, one.setup.id, isClearEverywhere(of, told));
  return {
    kind: draft.kind,
    edits: draft.edits,
    words: `${draft.what} ${doesWords(verdict, where)}.${lampWords(lamps)}${newsWords(known.plan, told.news)}`,
    cost: {
      metres: draft.metres ?? 0,
      degrees: Math.max(draft.degrees ?? 0, ...lamps.map(({ degrees }) => degrees)),
      stops: largestLoss(lamps),
      otherSetups: others(of, told.changes),
    },
    after: verdict,
    relies: 'geometry',
    proved: true,
  };
}
