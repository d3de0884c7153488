import { describe, expect, it } from 'vitest';
import { isFinding, isNewFinding } from '../../../src/core/clearance/remedies/known';
import { withRemedy } from '../../../src/core/clearance/remedies/remedyEdits';
import type { Remedy, RemedyKind } from '../../../src/core/clearance/remedies/types';
import { length, subtract, type Vec3 } from '../../../src/core/form/build/vector';
import { lampsAt } from '../../../src/core/form/lamps';
import { faceAt } from '../../../src/core/light/face';
import { played } from '../../../src/core/plan/played';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { setupReport } from '../../../src/core/report/setupReport';
import type { SetupReport } from '../../../src/core/report/types';
import { planFrom } from '../../plans/bare';
import { keyedFace, keyOn } from '../../plans/keyedFace';
import { remediesOf } from '../../unit/clearance/remedies/remedied';

const SMALL_BOX = { kind: 'distro', headingDegrees: 20, size: [0.5, 0.4, 0.3] };
const cable = (path: number[][]) => ({
  id: 'cable',
  label: 'Cable',
  kind: 'cable',
  path,
  baseMetres: 0,
  diameterMetres: 0.03,
});
const camera = (id: string, at: [number, number], headingDegrees: number) =>
  ({ id, label: id.toUpperCase(), at, headingDegrees, lens: 'long' }) as const;
const A = camera('a', [0, 4], 0);
const B = camera('b', [4, 3], -50);

/** Vera on a wet roof with some gear, each camera still and looking down by so much, seen for an instant. */
function roof(
  gear: readonly unknown[],
  cameras: readonly ReturnType<typeof camera>[],
  tiltDegrees: number,
): Plan {
  const made = keyedFace({ gear: [], cameras });
  return planFrom({
    ...made,
    gear,
    setups: made.setups.map((setup) => ({
      ...setup,
      span: { from: 'start', to: 'start' },
      move: { ...setup.move, keys: setup.move.keys.map((key) => ({ ...key, tiltDegrees })) },
    })),
  });
}

/** A stand beside the frame whose arm holds its end over the frame: the wet deck alone shows it. */
const BOOM = {
  id: 'boom',
  label: 'Boom',
  kind: 'stand',
  stand: 'tall',
  at: [2.6, 0, -2],
  headingDegrees: 0,
  heightMetres: 1.9,
  arm: { lengthMetres: 1.8, tiltDegrees: 0, headingDegrees: 270 },
};

/** Where an item is, and how it is turned: what a remedy may change of it. */
function setOf(plan: Plan, id: string) {
  const record = [...plan.gear, ...plan.pieces].find((each) => each.id === id);
  if (!record) throw new Error(`no item ${id}`);
  const at: readonly number[] =
    'at' in record ? record.at : 'path' in record ? [record.path[0][0], 0, record.path[0][1]] : [];
  return {
    at,
    heading: 'headingDegrees' in record ? record.headingDegrees : 0,
    high: record.kind === 'stand' ? record.heightMetres : 0,
    arm: record.kind === 'stand' ? (record.arm?.headingDegrees ?? 0) : 0,
  };
}

const apart = (a: readonly number[], b: readonly number[]): number =>
  Math.hypot(...a.map((each, axis) => each - b[axis]));
const turned = (a: number, b: number): number => Math.abs(((a - b + 540) % 360) - 180);

/** By how much a camera's first key went and turned. */
function cameraChange(before: Plan, after: Plan, setupId: string) {
  const [was, is] = [before, after].map((plan) => plan.setups.find(({ id }) => id === setupId)?.move.keys[0]);
  if (!was || !is) throw new Error(`no setup ${setupId}`);
  return { metres: apart(was.position, is.position), degrees: turned(was.headingDegrees, is.headingDegrees) };
}

/** How far somebody's first mark is cheated in a setup. */
function cheatedBy(before: Plan, after: Plan, setupId: string): number {
  const marks = [before, after].map((plan) => {
    const setup = plan.setups.find(({ id }) => id === setupId);
    return setup ? played(plan, setup).cast[0].marks[0].at : [];
  });
  return apart(marks[0], marks[1]);
}

/** What a remedy costs by the two plans alone: how far something went, and turned. */
function spentOn(before: Plan, after: Plan, kind: RemedyKind, setupId: string, itemId: string) {
  const [was, is] = [setOf(before, itemId), setOf(after, itemId)];
  const none = { metres: 0, degrees: 0 };
  if (kind === 'move') return { ...none, metres: apart(was.at, is.at) };
  if (kind === 'lower' || kind === 'raise') return { ...none, metres: Math.abs(is.high - was.high) };
  if (kind === 'turn') return { ...none, degrees: turned(was.heading, is.heading) };
  if (kind === 'swing the arm') return { ...none, degrees: turned(was.arm, is.arm) };
  if (kind === 'cheat in front') return { ...none, metres: cheatedBy(before, after, setupId) };
  if (kind === 'dry the floor' || kind === 'another lens') return none;
  return cameraChange(before, after, setupId);
}

/**
 * What a lamp that stays aimed at a face loses there when it is moved, by the inverse square alone, and how far its light
 * turns. Paper: our own sums, no source.
 */
function lampChange(before: Plan, after: Plan): { readonly stops: number; readonly degrees: number } {
  const face = faceAt(before.cast[0], before, 0);
  const [was, is] = [before, after].map((plan) => lampsAt(plan, 0)[0]?.position);
  if (!face || !was || !is || length(subtract(was, is)) < 1e-9) return { stops: 0, degrees: 0 };
  const [from, to] = [subtract(was, face.at), subtract(is, face.at)];
  const cosine = (a: Vec3, b: Vec3): number =>
    (a[0] * b[0] + a[1] * b[1] + a[2] * b[2]) / (length(a) * length(b));
  return {
    stops: 2 * Math.log2(length(to) / length(from)),
    degrees: (Math.acos(Math.min(1, cosine(from, to))) * 180) / Math.PI,
  };
}

/** What is wrong with a remedy once it is done, by the reports of the whole changed plan. */
function breachesOf(
  plan: Plan,
  seen: readonly SetupReport[],
  after: Plan,
  remedy: Remedy,
  setupId: string,
  itemId: string,
): string[] {
  return plan.setups.flatMap((setup, k) => {
    const now = setupReport(after, after.setups[k]).items;
    return seen[k].items.flatMap(({ id, wish, verdict }) => {
      const found = now.find((item) => item.id === id)?.verdict ?? 'clear';
      const where = `${remedy.words} ${id} in ${setup.id} is ${found}`;
      if (setup.id === setupId && id === itemId)
        return isFinding(wish, found) || found !== remedy.after ? [where] : [];
      const told = remedy.cost.otherSetups.find((each) => each.setupId === setup.id && each.itemId === id);
      if (told && (told.before !== verdict || told.after !== found)) return [`${where}, told ${told.after}`];
      // What showed already and is hidden now is not told; all else that keeps out and changes is.
      const isTold = told !== undefined || found === verdict || wish === 'either' || verdict === 'showing';
      return isTold && (told || !isNewFinding(wish, verdict, found)) ? [] : [`${where}, untold`];
    });
  });
}

/** All remedies for all findings of a plan, done and held to what they say; those that there were, by item. */
function triedOn(plan: Plan, itemId: string, setupId: string): readonly RemedyKind[] {
  const seen = plan.setups.map((setup) => setupReport(plan, setup));
  const remedies = remediesOf(plan, itemId, { setupId, seen }).filter(({ asksReason }) => !asksReason);
  for (const remedy of remedies) {
    const after = withRemedy(plan, remedy);
    const { cost, words, kind } = remedy;
    expect(breachesOf(plan, seen, after, remedy, setupId, itemId)).toEqual([]);
    const spent = spentOn(plan, after, kind, setupId, itemId);
    const lamp = lampChange(plan, after);
    // A place is rounded to a micrometre, and said so much farther.
    expect(Math.abs(cost.metres - spent.metres), words).toBeLessThan(5e-6);
    expect(cost.degrees, words).toBeCloseTo(Math.max(spent.degrees, lamp.degrees), 4);
    expect(Math.abs(cost.stops - lamp.stops), words).toBeLessThan(0.03);
    // What is said is what it costs, to the last digit that is said.
    const [, said = '0', digits = '', unit] = /(\d+(?:\.(\d+))?).(m|degrees?)\b/.exec(words) ?? [];
    const meant = unit === 'm' ? cost.metres : spent.degrees;
    if (unit && kind !== 'dry the floor')
      expect(Math.abs(Number(said) - meant), words).toBeLessThanOrEqual(0.5 * 10 ** -digits.length + 1e-5);
    const [, way, stops] = / (loses|gains) ([\d.]+).stop/.exec(words) ?? [];
    if (way) expect((way === 'loses' ? 1 : -1) * Number(stops), words).toBeCloseTo(cost.stops, 1);
    else expect(Math.abs(cost.stops), words).toBeLessThan(0.05);
  }
  return remedies.map(({ kind }) => kind);
}

describe('each remedy, done, takes its finding away, makes no other untold, and costs what the changed plan shows', () => {
  const two = roof(
    [
      { ...SMALL_BOX, id: 'box', label: 'Box', at: [-0.6, 0, -3] },
      cable([
        [-3, -3.4],
        [-0.35, -2.6],
      ]),
    ],
    [A, B],
    -9,
  );
  const lit = roof(keyOn('key', [0.7, -3], [0, 0], 0.5, 1.7), [A], -9);
  const mirrored = roof([BOOM], [A], -30);

  it.each<[string, Plan, string, string, readonly RemedyKind[]]>([
    ['a stand with the lamp that it carries', lit, 'key-stand', 'a', ['move']],
    ['a box behind somebody', two, 'box', 'a', ['cheat in front', 'move']],
    ['a cable', two, 'cable', 'b', ['pan', 'nudge the camera', 'move']],
    [
      'what is only mirrored',
      mirrored,
      'boom',
      'a',
      ['swing the arm', 'move', 'raise', 'dry the floor', 'nudge the camera'],
    ],
  ])('%s', (_, plan, itemId, setupId, kinds) => {
    const tried = triedOn(plan, itemId, setupId);
    for (const kind of kinds) expect(tried).toContain(kind);
  });
});
