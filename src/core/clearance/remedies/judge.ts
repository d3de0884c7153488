import { cameraAt, spanOf } from '../../optics/camera';
import { formThrough } from '../../optics/riding';
import type { Camera } from '../../optics/types';
import { itemOf, wishOf } from '../../plan/items';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import type { Wish } from '../../plan/schema/texts';
import { swayOf } from '../../report/setupReport';
import type { ItemReport, Verdict } from '../../report/types';
import { instantsOf } from '../../sight/frames';
import { outsideOf } from '../../sight/margin';
import type { SightStage } from '../../sight/stage';
import { hypot } from '../../units/steadyMath';
import { isFinding, isNewFinding, type Known, type KnownSetup } from './known';
import { readItems, type Uncovering } from './readItems';
import type { VerdictChange } from './types';
import { NO_BERTH, stageOfOne, staysOut, type Watch, watchesOf } from './watch';

/** The verdicts that a change of the plan changes. */
export interface Judged {
  readonly changes: readonly VerdictChange[];
  /** Those that go against a wish and did not before. */
  readonly news: readonly VerdictChange[];
  /** The verdict of an item in a setup afterwards. */
  readonly after: (setupId: string, itemId: string) => Verdict | null;
}

/** Gear and set pieces that are not as they were, with what hangs on them. */
export function changedIds(before: Plan, after: Plan): readonly string[] {
  const was = new Map([...before.pieces, ...before.gear].map((record) => [record.id, record]));
  const direct = new Set(
    [...after.pieces, ...after.gear].filter((record) => was.get(record.id) !== record).map(({ id }) => id),
  );
  const hung = after.gear.filter(
    (gear) => 'place' in gear && 'on' in gear.place && direct.has(gear.place.on),
  );
  return [...new Set([...direct, ...hung.map(({ id }) => id)])];
}

const keepsOut = (plan: Plan, id: string): boolean => {
  const item = itemOf(plan, id);
  return item !== null && wishOf(item) === 'keep out';
};

/** Of those that changed, what has to keep out. */
export const changedKeepers = (before: Plan, after: Plan): readonly string[] =>
  changedIds(before, after).filter((id) => keepsOut(after, id));

/** An item as a setup has it around its camera, by itself; null where it is left out there. */
export function stageIn(plan: Plan, { setup }: KnownSetup, id: string): SightStage | null {
  const form = formThrough(plan, setup, id, spanOf(plan, setup)[0]);
  return form && stageOfOne(form);
}

/** Whether a thing is nearer to a camera's frame than the safety margin, or than a counted sway reaches. */
function isClose({ safety }: Plan, setup: Setup, stage: SightStage, camera: Camera): boolean {
  const outside = outsideOf(stage, 0, camera);
  if (outside === null) return false;
  if (outside === 'inside') return true;
  const { swayMetres = 0 } = swayOf(setup, outside, camera.frame);
  return outside.metres < Math.max(safety.metres, swayMetres) || outside.frameWidths < safety.frameWidths;
}

/** Close or clear, of what was never seen inside a frame; what a counted sway might reach is close. */
const besideFrame = (plan: Plan, { setup, watches }: KnownSetup, stage: SightStage): Verdict =>
  watches.some(({ camera }) => isClose(plan, setup, stage, camera)) ? 'close' : 'clear';

/** The same of somebody who acts. */
function besideActing(plan: Plan, setup: Setup, id: string): Verdict {
  for (const seconds of instantsOf(...spanOf(plan, setup))) {
    const form = formThrough(plan, setup, id, seconds);
    if (form && isClose(plan, setup, stageOfOne(form), cameraAt(plan, setup, seconds))) return 'close';
  }
  return 'clear';
}

/** The verdict on some of the cast in a setup, looked at in every frame. */
function* verdictsOnActing(
  plan: Plan,
  one: KnownSetup,
  ids: readonly string[],
): Generator<number, ReadonlyMap<string, Verdict>, void> {
  const looked = yield* readItems(plan, one, ids);
  return new Map(
    [...looked].map(([id, verdict]) => [
      id,
      verdict === 'clear' ? besideActing(plan, one.setup, id) : verdict,
    ]),
  );
}

/**
 * The verdict on what stays outside of a setup's frame and its mirrors all through, measured as the report measures it;
 * null where any of it comes inside, or may be seen in a mirror: then only the report itself can tell.
 */
function outsideVerdict(plan: Plan, one: KnownSetup, stage: SightStage): Verdict | null {
  const { safety } = plan;
  const { setup, watches } = one;
  if (setup.sway?.counted)
    return watches.every((watch) => staysOut(stage, watch, NO_BERTH)) ? besideFrame(plan, one, stage) : null;
  let nearest = { metres: Number.POSITIVE_INFINITY, frameWidths: Number.POSITIVE_INFINITY };
  for (const watch of watches) {
    if (staysOut(stage, watch, safety)) continue;
    if (!staysOut(stage, watch, NO_BERTH)) return null;
    const outside = outsideOf(stage, 0, watch.camera);
    if (outside && outside !== 'inside' && outside.metres < nearest.metres) nearest = outside;
  }
  const isClose = nearest.metres < safety.metres || nearest.frameWidths < safety.frameWidths;
  return isClose ? 'close' : 'clear';
}

/** Whether a thing could have stood before something in a setup's picture: whether their balls meet in any frame. */
function mayCover(watches: readonly Watch[], before: SightStage, behind: SightStage): boolean {
  return watches.some(({ around }) => {
    const { position } = around.pose;
    const wayTo = (stage: SightStage) =>
      stage.parts.map(({ centre, radius }) => {
        const [x, y, z] = [0, 1, 2].map((axis) => centre[axis] - position[axis]);
        const metres = hypot(x, y, z);
        return { way: [x / metres, y / metres, z / metres] as const, spread: radius / metres };
      });
    const far = wayTo(behind);
    return wayTo(before).some(({ way: a, spread }) =>
      far.some(({ way: b, spread: other }) => {
        const apart = hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
        // A camera inside a ball has it all round. Else a chord is at most as long as its angle, which of a ball is at
        // most 1.58 times its radius over its distance.
        return spread >= 1 || other >= 1 || apart <= 1.58 * (spread + other);
      }),
    );
  });
}

/** Things of a change that may be in a setup's picture as they were before, each by itself. */
const goneFrom = (known: Known, one: KnownSetup, moved: readonly string[]): readonly SightStage[] =>
  moved.flatMap((id) => {
    const before = one.items.get(id);
    const isOut = !before || before.verdict === 'clear' || before.verdict === 'close';
    return isOut ? [] : (stageIn(known.plan, one, id) ?? []);
  });

/**
 * What may come to light in a setup once things have gone out of its frame: they were inside, and may have hidden
 * something that has to keep out, itself or its image in a mirror.
 */
function mayComeToLight(
  known: Known,
  one: KnownSetup,
  moved: readonly string[],
  gone: readonly SightStage[],
): readonly string[] {
  if (gone.length === 0) return [];
  const hasMirrors = one.watches.some(({ images }) => images.length > 0);
  return [...one.items.values()].flatMap(({ id, wish, verdict }) => {
    if (wish !== 'keep out' || verdict === 'showing' || moved.includes(id)) return [];
    const stage = stageIn(known.plan, one, id);
    if (!stage) return [];
    if (verdict !== 'clear' && verdict !== 'close')
      return gone.some((thing) => mayCover(one.watches, thing, stage)) ? [id] : [];
    return hasMirrors && one.watches.some((watch) => !staysOut(stage, watch, NO_BERTH)) ? [id] : [];
  });
}

/**
 * Of what may come to light, what was hidden or in no frame all through, and stands still: where nothing has gone that
 * stays so.
 */
const hiddenBefore = (plan: Plan, one: KnownSetup, ids: readonly string[]): ReadonlyMap<string, Verdict> =>
  new Map(
    ids.flatMap((id): [string, Verdict][] => {
      const verdict = one.items.get(id)?.verdict ?? 'clear';
      return verdict === 'mirrored' || itemOf(plan, id)?.section === 'cast' ? [] : [[id, verdict]];
    }),
  );

/** The verdict on some items of a setup afterwards: measured where they stay outside, else looked at in every frame. */
export function* verdictsOn(
  after: Plan,
  one: KnownSetup,
  ids: readonly string[],
  uncovering?: Uncovering,
): Generator<number, ReadonlyMap<string, Verdict>, void> {
  const verdicts = new Map<string, Verdict>();
  const inside: string[] = [];
  for (const id of ids) {
    const stage = stageIn(after, one, id);
    const verdict = stage ? outsideVerdict(after, one, stage) : 'clear';
    if (verdict === null) inside.push(id);
    else verdicts.set(id, verdict);
  }
  const looked = yield* readItems(after, one, inside, uncovering);
  for (const [id, verdict] of looked) {
    const stage = verdict === 'clear' ? stageIn(after, one, id) : null;
    verdicts.set(id, stage ? besideFrame(after, one, stage) : verdict);
  }
  return verdicts;
}

/** What changed of some items, from what is known to what is found. */
function differences(one: KnownSetup, verdicts: ReadonlyMap<string, Verdict>): readonly VerdictChange[] {
  return [...verdicts].flatMap(([itemId, after]) => {
    const before = one.items.get(itemId)?.verdict ?? 'clear';
    return before === after ? [] : [{ setupId: one.setup.id, itemId, before, after }];
  });
}

const wishIn = (plan: Plan, id: string): Wish => {
  const item = itemOf(plan, id);
  return item ? wishOf(item) : 'either';
};

/** Puts together what changes; `before` for what did not. */
export function judged(known: Known, plan: Plan, changes: readonly VerdictChange[]): Judged {
  return {
    changes,
    news: changes.filter(({ itemId, before, after }) => isNewFinding(wishIn(plan, itemId), before, after)),
    after: (setupId, itemId) =>
      changes.find((each) => each.setupId === setupId && each.itemId === itemId)?.after ??
      known.setups.find(({ setup }) => setup.id === setupId)?.items.get(itemId)?.verdict ??
      null,
  };
}

/**
 * What all setups see once things stand elsewhere, cameras and cast staying as they are. What stays outside of a frame,
 * before and after, is measured; whatever else may change is looked at in every frame. Yields the done share, 0..1.
 */
export function* judgeMoved(known: Known, after: Plan): Generator<number, Judged, void> {
  const moved = changedIds(known.plan, after);
  const keepers = moved.filter((id) => wishIn(after, id) === 'keep out');
  const changes: VerdictChange[] = [];
  for (const one of known.setups) {
    const gone = goneFrom(known, one, moved);
    const maybe = mayComeToLight(known, one, moved, gone);
    const verdicts = yield* verdictsOn(after, one, [...keepers, ...maybe], {
      gone,
      hiddenBefore: hiddenBefore(known.plan, one, maybe),
    });
    changes.push(...differences(one, verdicts));
  }
  return judged(known, after, changes);
}

/** Whether any of a thing may come into a setup's frame or its mirrors. */
const comesIn = (one: KnownSetup, stage: SightStage): boolean =>
  one.watches.some((watch) => !staysOut(stage, watch, NO_BERTH));

/**
 * What may change in a setup where things stand in its frame, before a change of them or after: they may hide what was
 * seen, and bring to light what they hid.
 */
function mayChange(known: Known, after: Plan, one: KnownSetup, moved: readonly string[]): readonly string[] {
  const things = [known.plan, after]
    .flatMap((plan) => moved.map((id) => stageIn(plan, one, id)))
    .filter((stage) => stage !== null)
    .filter((stage) => comesIn(one, stage));
  if (things.length === 0) return [];
  return [...one.items.values()].flatMap(({ id, wish, verdict }) => {
    if (wish === 'either' || moved.includes(id)) return [];
    const stage = itemOf(after, id)?.section === 'cast' ? null : stageIn(after, one, id);
    if (!stage) return [id];
    if (verdict !== 'clear' && verdict !== 'close' && verdict !== 'mirrored')
      return things.some((thing) => mayCover(one.watches, thing, stage)) ? [id] : [];
    return comesIn(one, stage) ? [id] : [];
  });
}

/**
 * What all setups see once things are put into frames, before others: all that has a wish and may be hidden by them or
 * come to light is looked at anew. Nobody is asked on where the item stays a finding in its setup.
 */
export function* judgePlaced(
  known: Known,
  after: Plan,
  setupId: string,
  itemId: string,
): Generator<number, Judged, void> {
  const moved = changedIds(known.plan, after);
  const wished = moved.filter((id) => wishIn(after, id) !== 'either');
  const changes: VerdictChange[] = [];
  for (const one of known.setups.toSorted(
    (a, b) => Number(b.setup.id === setupId) - Number(a.setup.id === setupId),
  )) {
    const asked = [...new Set([...wished, ...mayChange(known, after, one, moved)])];
    const acting = asked.filter((id) => itemOf(after, id)?.section === 'cast');
    const still = asked.filter((id) => id !== itemId && !acting.includes(id));
    const own = asked.includes(itemId) ? yield* verdictsOn(after, one, [itemId]) : new Map<string, Verdict>();
    changes.push(...differences(one, own));
    if (one.setup.id === setupId && isFinding('keep out', own.get(itemId) ?? 'showing')) break;
    changes.push(...differences(one, yield* verdictsOn(after, one, still)));
    changes.push(...differences(one, yield* verdictsOnActing(after, one, acting)));
  }
  return judged(known, after, changes);
}

/** Whether a verdict cannot get any worse: then nobody has to look. */
const isWorst = (wish: Wish, verdict: Verdict): boolean => wish === 'keep out' && verdict === 'showing';

/**
 * What one setup sees of what has a wish once its own camera stands, looks or moves otherwise; no other setup is touched
 * by that. What shows already is not looked at, but for the item asked for: it is told only where it comes out of frame.
 */
export function* judgeCamera(
  known: Known,
  after: Plan,
  setupId: string,
  itemId: string,
): Generator<number, Judged, void> {
  const one = known.setups.find(({ setup }) => setup.id === setupId);
  const setup = after.setups.find(({ id }) => id === setupId);
  if (!one || !setup) return judged(known, after, []);
  const then: KnownSetup = { ...one, setup, watches: watchesOf(after, setup) };
  const wished = [...one.items.values()].filter(({ id, wish }) => id === itemId || wish !== 'either');
  const isLeft = ({ id, wish, verdict }: ItemReport): boolean => id !== itemId && isWorst(wish, verdict);
  const asked = wished.filter((item) => !isLeft(item));
  const still = asked.filter(({ id }) => itemOf(after, id)?.section !== 'cast').map(({ id }) => id);
  const acting = asked.filter(({ id }) => id !== itemId && !still.includes(id)).map(({ id }) => id);
  // Itself first: where it stays a finding nobody asks for the rest.
  const own = still.includes(itemId)
    ? yield* verdictsOn(after, then, [itemId])
    : yield* verdictsOnActing(after, then, [itemId]);
  const ownVerdict = own.get(itemId);
  if (ownVerdict === undefined || isFinding('keep out', ownVerdict))
    return judged(known, after, differences(one, own));
  const rest = still.filter((id) => id !== itemId);
  const verdicts = new Map([...own, ...(yield* verdictsOn(after, then, rest))]);
  for (const [id, verdict] of yield* verdictsOnActing(after, then, acting)) verdicts.set(id, verdict);
  for (const { id } of wished.filter(isLeft)) {
    const stage = itemOf(after, id)?.section === 'cast' ? null : stageIn(after, then, id);
    const verdict = stage && outsideVerdict(after, then, stage);
    if (verdict) verdicts.set(id, verdict);
  }
  return judged(known, after, differences(one, verdicts));
}
