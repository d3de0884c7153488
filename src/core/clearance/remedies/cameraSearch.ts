import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import type { Verdict } from '../../report/types';
import { type Case, NO_COST, others } from './case';
import { HeldCast } from './heldCast';
import { judgeCamera, stageIn } from './judge';
import { isFinding } from './known';
import { type RemedyEdit, withRemedy } from './remedyEdits';
import type { Remedy, RemedyCost, RemedyKind } from './types';
import { NO_BERTH, staysOut, watchesOf } from './watch';
import { doesWords, letterOf, newsWords } from './words';

/** Cameras of a move that are looked at while a change of it is sought. */
const MOST_TRIED = 12;

/** The one setup whose camera is changed to be rid of a finding. */
export class CameraSearch {
  readonly held: HeldCast;

  private readonly instants: readonly number[];

  constructor(private readonly of: Case) {
    const { known, one, report } = of;
    this.held = new HeldCast(known.plan, one.setup);
    const { watches } = one;
    const apart = Math.max(1, Math.ceil(watches.length / MOST_TRIED));
    const some = watches.filter((_, k) => k % apart === 0 || k === watches.length - 1);
    this.instants = [report.worstAtSeconds, ...some.map(({ seconds }) => seconds)];
  }

  private setupOf(after: Plan): Setup | null {
    return after.setups.find(({ id }) => id === this.of.one.setup.id) ?? null;
  }

  /** Whether a changed camera has the item out of its frame by the safety margin, what was out still out, and its cast. */
  mayHold(after: Plan): boolean {
    const { known, one, item } = this.of;
    const setup = this.setupOf(after);
    if (!setup || after === known.plan || !this.held.mayHold(after, setup)) return false;
    const watches = watchesOf(after, setup, this.instants);
    const stage = stageIn(after, one, item.record.id);
    if (!stage || !watches.every((watch) => staysOut(stage, watch, known.plan.safety))) return false;
    return [...one.items.values()].every(({ id, wish, verdict }) => {
      if (wish !== 'keep out' || (verdict !== 'clear' && verdict !== 'close')) return true;
      const other = stageIn(after, one, id);
      return !other || watches.every((watch) => staysOut(other, watch, NO_BERTH));
    });
  }

  /** Judges a change of the camera, and makes a remedy of it; null where the item stays a finding or somebody is lost. */
  *prove(draft: {
    readonly kind: RemedyKind;
    readonly edits: readonly RemedyEdit[];
    readonly what: string;
    readonly cost: Partial<RemedyCost>;
  }): Generator<number, Remedy | null, void> {
    const { known, one, item, report } = this.of;
    const after = withRemedy(known.plan, draft);
    const setup = this.setupOf(after);
    if (!setup || after === known.plan || !this.held.holds(after, setup)) return null;
    const told = yield* judgeCamera(known, after, one.setup.id, item.record.id);
    const verdict: Verdict | null = told.after(one.setup.id, item.record.id);
    if (verdict === null || isFinding(report.wish, verdict)) return null;
    const where = `in ${letterOf(known.plan, one.setup.id)}`;
    return {
      kind: draft.kind,
      edits: draft.edits,
      words: `${draft.what} ${doesWords(verdict, where)}.${newsWords(known.plan, told.news)}`,
      cost: { ...NO_COST, ...draft.cost, otherSetups: others(this.of, told.changes) },
      after: verdict,
      relies: 'geometry',
      proved: true,
    };
  }
}

const SEARCHES = new WeakMap<Case, CameraSearch>();

/** The search for a case, made once it is needed. */
export function cameraSearchOf(of: Case): CameraSearch {
  let search = SEARCHES.get(of);
  if (!search) {
    search = new CameraSearch(of);
    SEARCHES.set(of, search);
  }
  return search;
}
