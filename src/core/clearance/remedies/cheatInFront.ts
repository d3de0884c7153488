import { type ContinuityFinding, continuityOf } from '../../continuity/continuity';
import type { Vec3 } from '../../form/build/vector';
import { whereabouts } from '../../form/figure/whereabouts';
import { tidySpot } from '../../plan/edits/tidy';
import { named } from '../../plan/named';
import { played } from '../../plan/played';
import type { Mark, Performer } from '../../plan/schema/cast';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { unstandable } from '../../report/walkFaults';
import { hypot } from '../../units/steadyMath';
import { cameraSearchOf } from './cameraSearch';
import { type Case, type Finding, worstWatch } from './case';
import { mayHide, takenBy, takenInFrame } from './inPicture';
import { stageIn } from './judge';
import { isFinding } from './known';
import { readItems } from './readItems';
import { type RemedyEdit, withRemedy } from './remedyEdits';
import type { Remedy } from './types';
import { watchesOf } from './watch';
import { lengthWords, letterOf } from './words';

/** Nobody is cheated farther aside than this to hide something, metres. Source: common practice, no source */
const FARTHEST_CHEAT_METRES = 0.6;
/** Half of what somebody hides across: shoulders and arms in a coat, metres; an estimate, no source. */
const HALF_ACROSS_METRES = 0.35;
/** Two performers stand no nearer to each other than this, metres; an estimate, no source. */
const APART_METRES = 0.45;
/** Places round the line of sight that are tried too, metres aside. */
const ASIDE_METRES = [0, 0.08, -0.08, 0.16, -0.16, 0.24, -0.24] as const;
/** Somebody this near to a mark stands on it, metres. */
const ON_MARK_METRES = 0.05;

/** Somebody who stands on a mark while most of a finding is seen. */
interface Standing {
  readonly performer: Performer;
  readonly mark: Mark;
  readonly at: Vec3;
}

/** Who stands on a mark at the worst instant of a finding, as the setup plays it. */
function standingThen({ known: { plan }, one, item, report }: Case): readonly Standing[] {
  const acted = played(plan, one.setup);
  return acted.cast.flatMap((performer): Standing[] => {
    const where =
      performer.id === item.record.id ? null : whereabouts(performer, acted, report.worstAtSeconds);
    if (!where || where.isMoving) return [];
    const { at } = where;
    const mark = performer.marks.find(
      (each) => hypot(each.at[0] - at[0], each.at[1] - at[2]) < ON_MARK_METRES,
    );
    return mark ? [{ performer, mark, at }] : [];
  });
}

/** How far to the right of the camera somebody has to go to be before the item, metres; null where that hides nothing. */
function toTheLine(of: Case, { performer, at }: Standing): number | null {
  const { camera } = worstWatch(of);
  const stage = stageIn(of.known.plan, of.one, of.item.record.id);
  const behind = stage && takenInFrame(stage, camera);
  if (!stage || !behind) return null;
  const { position, forward, right } = camera.pose;
  const depthOf = (place: Vec3): number =>
    [0, 1, 2].reduce((sum, axis) => sum + (place[axis] - position[axis]) * forward[axis], 0);
  const metres = depthOf(at);
  if (stage.parts.every(({ centre }) => depthOf(centre) <= metres)) return null;
  const sides = [-HALF_ACROSS_METRES, HALF_ACROSS_METRES].flatMap((by) =>
    [0, performer.statureMetres].map(
      (up): Vec3 => [at[0] + right[0] * by, at[1] + up, at[2] + right[2] * by],
    ),
  );
  const before = takenBy(sides, camera);
  if (!before || !mayHide(before, behind)) return null;
  return ((behind[0] + behind[2] - before[0] - before[2]) / 2) * metres;
}

/** Setups in which something breaks the cut that did not before. */
function newlyBroken(before: Plan, after: Plan): readonly string[] {
  const keyOf = ({ kind, setupId, againstId, performerIds }: ContinuityFinding): string =>
    [kind, setupId, againstId, ...performerIds].join(' ');
  const breaks = (plan: Plan): ReadonlyMap<string, string> =>
    new Map(
      continuityOf(plan).flatMap(({ findings }) =>
        findings
          .filter(({ standing }) => standing === 'breaks')
          .map((finding): [string, string] => [keyOf(finding), finding.setupId]),
      ),
    );
  const was = breaks(before);
  return [...new Set([...breaks(after)].flatMap(([key, setupId]) => (was.has(key) ? [] : [setupId])))];
}

/** What a cheat breaks of how setups cut together, as a sentence with a space before it; empty where nothing. */
function brokenWords(before: Plan, after: Plan): string {
  const letters = newlyBroken(before, after).map((id) => letterOf(before, id));
  return letters.length === 0
    ? ''
    : ` It breaks how ${letters.join(', ')} ${letters.length > 1 ? 'cut' : 'cuts'}.`;
}

/** The least cheat of somebody that may hide the item at its worst instant, nearest first, each looked at there. */
function* cheatOf(of: Case, who: Standing): Generator<number, Remedy | null, void> {
  const { known, one, item, report } = of;
  const { performer, mark } = who;
  const line = toTheLine(of, who);
  if (line === null) return null;
  const { right } = worstWatch(of).camera.pose;
  const level = hypot(right[0], right[2]);
  const acted = played(known.plan, one.setup);
  const others = standingThen(of).filter((each) => each.performer.id !== performer.id);
  const ways = ASIDE_METRES.map((aside) => line + aside)
    .filter((by) => Math.abs(by) >= 0.01 && Math.abs(by) <= FARTHEST_CHEAT_METRES)
    .sort((a, b) => Math.abs(a) - Math.abs(b));
  for (const by of ways) {
    const at: Spot = tidySpot([mark.at[0] + (right[0] / level) * by, mark.at[1] + (right[2] / level) * by]);
    if (unstandable(acted, { ...mark, at }) !== null) continue;
    if (others.some((other) => hypot(other.at[0] - at[0], other.at[2] - at[1]) < APART_METRES)) continue;
    const edits: readonly RemedyEdit[] = [
      { edit: 'setCheat', args: { setupId: one.setup.id, performerId: performer.id, markId: mark.id, at } },
    ];
    const after = withRemedy(known.plan, { edits });
    const setup = after.setups.find(({ id }) => id === one.setup.id);
    if (!setup || after === known.plan) continue;
    const instants = Float64Array.of(report.worstAtSeconds);
    const watches = watchesOf(after, setup, instants);
    const then = yield* readItems(after, { setup, watches, instants }, [item.record.id]);
    if (isFinding(report.wish, then.get(item.record.id) ?? 'showing')) continue;
    const letter = letterOf(known.plan, one.setup.id);
    const remedy = yield* cameraSearchOf(of).prove({
      kind: 'cheat in front',
      edits,
      what: `${named(performer.label)} cheated ${lengthWords(Math.abs(by))} to frame ${by > 0 ? 'right' : 'left'} of ${letter}`,
      cost: { metres: Math.abs(by) },
    });
    if (remedy) return { ...remedy, words: `${remedy.words}${brokenWords(known.plan, after)}` };
  }
  return null;
}

/** Somebody who stands near the line of sight, cheated before the item for that setup alone. */
export function* cheatsInFront(of: Case): Finding {
  if (of.report.verdict !== 'showing') return [];
  const found: Remedy[] = [];
  for (const who of standingThen(of)) {
    const remedy = yield* cheatOf(of, who);
    if (remedy) found.push(remedy);
  }
  return found;
}
