import { makeItem } from '../../kit/palette';
import { isLostAt } from '../../light/readsInTheDark';
import { standReach } from '../../plan/edits/setStandHeight';
import { tidyMetres } from '../../plan/edits/tidy';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { darkenedSteps } from '../../report/light/darkened';
import { mayBeLost } from '../../report/light/readsOver';
import { setupReport, setupReportSteps } from '../../report/setupReport';
import type { SetupReport, Verdict } from '../../report/types';
import { atan2, hypot } from '../../units/steadyMath';
import { type Case, type Finding, NO_COST, others, worstWatch } from './case';
import { judged, judgeMoved, stageIn } from './judge';
import { isFinding } from './known';
import { readItems } from './readItems';
import { type RemedyEdit, withRemedy } from './remedyEdits';
import { letterOf } from './words';

/** Whether what shows of a case's item is lost in the dark in a plan: a quick look first, then the report's. */
function* isLost({ one, report }: Case, plan: Plan): Generator<number, boolean, void> {
  if (!mayBeLost(plan, one.setup, report)) return false;
  const { items } = yield* darkenedSteps(plan, one.setup, { ...one.report, items: [report] });
  return items[0].verdict === 'lost in the dark';
}

/** Black tape or cloth over the item, where that makes it lost in the dark. */
function* blackings(of: Case): Finding {
  const { known, one, item, report } = of;
  if (item.section !== 'gear' || item.record.blacked || report.verdict !== 'showing') return [];
  const edits: readonly RemedyEdit[] = [
    { edit: 'blackItems', args: { ids: [item.record.id], blacked: true } },
  ];
  const after = withRemedy(known.plan, { edits });
  if (!(yield* isLost(of, after))) return [];
  return [
    {
      kind: 'black',
      edits,
      words: `Black tape loses it in the dark in ${letterOf(known.plan, one.setup.id)}, as long as the light stays as it is.`,
      cost: NO_COST,
      after: 'lost in the dark',
      relies: 'dark',
      proved: true,
    },
  ];
}

/** How far before the item, towards the camera, a flag stands, metres; an estimate, no source. */
const BEFORE_METRES = 0.6;

/** A flag on its stand before the item, square to the camera that sees most of it, as edits of the plan. */
function flagBefore(
  of: Case,
  entryId: string,
): { readonly edits: readonly RemedyEdit[]; readonly ids: readonly string[] } | null {
  const { known, one, item } = of;
  const stage = stageIn(known.plan, one, item.record.id);
  if (!stage || stage.parts.length === 0) return null;
  const middle = [0, 1, 2].map(
    (axis) => stage.parts.reduce((sum, { centre }) => sum + centre[axis], 0) / stage.parts.length,
  );
  const { position } = worstWatch(of).camera.pose;
  const [dx, dz] = [position[0] - middle[0], position[2] - middle[2]];
  const metres = hypot(dx, dz);
  if (metres < 2 * BEFORE_METRES) return null;
  const spot: Spot = [middle[0] + (dx / metres) * BEFORE_METRES, middle[2] + (dz / metres) * BEFORE_METRES];
  const headingDegrees = (atan2(dx, -dz) * 180) / Math.PI;
  const made = makeItem(known.plan, entryId, { spots: [spot], headingDegrees });
  if (!made) return null;
  const stands = made.plan.kit.stands.filter((each) => !known.plan.kit.stands.includes(each));
  const stand = made.plan.gear.find(({ id, kind }) => kind === 'stand' && made.ids.includes(id));
  const reach = stand && standReach(made.plan, stand.id);
  if (!reach) return null;
  const cloth = made.plan.gear.find(({ id }) => id === made.id);
  // On a spigot a cloth stands on the middle of its lower edge.
  const half = cloth?.kind === 'flag' ? cloth.size[1] / 2 : 0;
  const wanted = middle[1] + ((position[1] - middle[1]) * BEFORE_METRES) / metres - half;
  const heightMetres = tidyMetres(Math.min(Math.max(wanted, reach.lowestMetres), reach.highestMetres));
  const added = made.plan.gear.filter(({ id }) => made.ids.includes(id));
  const edits = added.map(
    (record): RemedyEdit => ({
      edit: 'addItem',
      args: {
        section: 'gear',
        record: record.kind === 'stand' ? { ...record, heightMetres } : record,
        kit: { stands },
      },
    }),
  );
  return { edits, ids: made.ids };
}

/** Verdicts of some items in a report that keep a flag from being of use. */
const seenOf = ({ items }: SetupReport, ids: readonly string[]): readonly Verdict[] =>
  items
    .filter(({ id, verdict }) => ids.includes(id) && isFinding('keep out', verdict))
    .map(({ verdict }) => verdict);

/**
 * A flag before the item, on a stand of its own. It is in the picture itself, so it is of use only where it is lost in
 * the dark there, and in no other setup's way.
 */
function* flagOf(of: Case, entryId: string): Finding {
  const { known, one, item, report } = of;
  const flag = flagBefore(of, entryId);
  if (!flag) return [];
  const after: Plan = withRemedy(known.plan, flag);
  const own = [item.record.id, ...flag.ids];
  const onlyOwn = (seen: SetupReport): SetupReport => ({
    ...seen,
    items: seen.items.filter(({ id }) => own.includes(id)),
  });
  // At the worst instant first, in the pixels of these alone and then by the report: mostly that settles it.
  const at = report.worstAtSeconds;
  const then = yield* readItems(after, { ...one, instants: Float64Array.of(at) }, [item.record.id]);
  if (isFinding(report.wish, then.get(item.record.id) ?? 'showing')) return [];
  if (own.some((id) => isLostAt(after, one.setup, at, id) === false)) return [];
  const instant = setupReport(after, one.setup, { at, briefly: true });
  yield 0.2;
  if (seenOf(instant, [item.record.id]).length > 0) return [];
  const darkNow = yield* darkenedSteps(after, one.setup, onlyOwn(instant));
  if (seenOf(darkNow, own).some((verdict) => verdict !== 'lost in the dark')) return [];
  const seen = yield* setupReportSteps(after, one.setup);
  const dark = yield* darkenedSteps(after, one.setup, onlyOwn(seen));
  const verdict = dark.items.find(({ id }) => id === item.record.id)?.verdict;
  if (!verdict || isFinding(report.wish, verdict)) return [];
  if (seenOf(dark, flag.ids).some((verdict) => verdict !== 'lost in the dark')) return [];
  const told = yield* judgeMoved(known, after);
  const elsewhere = judged(
    known,
    after,
    told.changes.filter(({ setupId }) => setupId !== one.setup.id),
  );
  if (elsewhere.news.length > 0) return [];
  const letter = letterOf(known.plan, one.setup.id);
  return [
    {
      kind: 'flag',
      edits: flag.edits,
      words: `A flag before it hides it in ${letter}; the flag is lost in the dark there.`,
      cost: { ...NO_COST, otherSetups: others(of, elsewhere.changes) },
      after: verdict,
      relies: 'dark',
      proved: true,
    },
  ];
}

/** The smaller of the flags that hide the item and are lost in the dark themselves. */
function* flags(of: Case): Finding {
  for (const entryId of ['flag', 'flag-4x4']) {
    const found = yield* flagOf(of, entryId);
    if (found.length > 0) return found;
  }
  return [];
}

/** What hides the item in the dark, where it shows and is not lost there already: a flag before it, or black tape. */
export function* darkWays(of: Case): Finding {
  if (of.report.verdict !== 'showing' || (yield* isLost(of, of.known.plan))) return [];
  return [...(yield* flags(of)), ...(yield* blackings(of))];
}
