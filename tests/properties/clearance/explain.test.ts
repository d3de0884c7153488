import { describe, expect, it } from 'vitest';
import { explain } from '../../../src/core/clearance/explain/explain';
import type { Explanation } from '../../../src/core/clearance/explain/types';
import { add, dot, length, scale, subtract, unit, type Vec3 } from '../../../src/core/form/build/vector';
import { cameraAt, spanOf } from '../../../src/core/optics/camera';
import { projectPoint } from '../../../src/core/optics/project';
import { formsThrough } from '../../../src/core/optics/riding';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { Setup } from '../../../src/core/plan/schema/setup';
import { setupReport } from '../../../src/core/report/setupReport';
import { mirrorOf } from '../../../src/core/sight/mirrors';
import { meetsBefore } from '../../../src/core/sight/rays';
import { type SightStage, stageOf } from '../../../src/core/sight/stage';
import { randomPlan } from '../../plans/crowd';
import { drawFrom } from '../../plans/draw';
import { cases } from '../../thorough';
import { standAt, stillRoof } from '../../unit/clearance/remedies/remedied';
import { movingPlan } from '../sight/movingPlans';

const KINDS = {
  showing: ['showing'],
  mirrored: ['mirrored'],
  covered: ['covered'],
  close: ['outside'],
  clear: ['outside', 'behind'],
  'lost in the dark': ['showing'],
} as const;

/** So much of a way is left out at its end: a line ends on what it leads to. */
const ALMOST = 1 - 1e-4;

/** The solid parts, but of one name, that stand between two places, as `item: part`. */
function between(stage: SightStage, from: Vec3, to: Vec3, but: readonly string[]): readonly string[] {
  const ray = { origin: add(from, scale(subtract(to, from), 1e-6)), direction: subtract(to, from) };
  return stage.parts
    .filter((part) => part.shape.openness === null && meetsBefore(part, ray, ALMOST))
    .map(({ item, name }) => `${stage.forms[item].id}: ${name}`)
    .filter((each) => !but.includes(each));
}

/** What breaks the law that a line of sight goes by, for an explanation. */
function breaches(plan: Plan, setup: Setup, told: Explanation): readonly string[] {
  if (told.kind === 'behind') return [];
  const stage = stageOf(formsThrough(plan, setup, told.seconds));
  const camera = cameraAt(plan, setup, told.seconds);
  const { eye, end } = told;
  const found: string[] = [];
  if (length(subtract(eye, camera.pose.position)) > 0) found.push('it does not begin in the pupil');
  const first =
    told.kind === 'mirrored' ? told.mirror.at : told.kind === 'covered' ? told.coverer.at : end.at;
  const seen = projectPoint(camera, first);
  const off = seen ? Math.hypot(seen.x - told.frameAt[0], seen.y - told.frameAt[1]) : 1;
  if (off > 1e-9) found.push(`it crosses the frame ${off} from where it says`);
  const isIn = told.frameAt.every((share) => share >= -1e-3 && share <= 1 + 1e-3);
  if (isIn === (told.kind === 'outside')) found.push(`it crosses the frame at ${told.frameAt.join(', ')}`);
  if (told.kind === 'showing')
    found.push(...between(stage, eye, end.at, []).map((what) => `${what} stands before it`));
  if (told.kind === 'covered') {
    const [near, far] = [subtract(told.coverer.at, eye), subtract(end.at, eye)];
    if (length(near) >= length(far)) found.push('what hides it stands behind it');
    if (dot(unit(near), unit(far)) < 1 - 1e-9) found.push('what hides it is not on the line');
    if (told.coverer.itemId === told.itemId) found.push('it hides itself');
  }
  if (told.kind === 'mirrored') {
    const mirror = stage.parts.find(
      (part) =>
        stage.forms[part.item].id === told.mirror.itemId && part.name === told.mirror.part && mirrorOf(part),
    );
    const plane = mirror && mirrorOf(mirror);
    if (!plane) return [...found, `${told.mirror.itemId} mirrors nothing`];
    const [into, out] = [unit(subtract(first, eye)), unit(subtract(end.at, first))];
    const sum = Math.abs(dot(into, plane.normal) + dot(out, plane.normal));
    const across = length(
      subtract(
        subtract(into, scale(plane.normal, dot(into, plane.normal))),
        subtract(out, scale(plane.normal, dot(out, plane.normal))),
      ),
    );
    if (sum > 1e-6 || across > 1e-6) found.push(`it turns at unequal angles, by ${sum} and ${across}`);
    if (Math.abs(dot(subtract(first, plane.point), plane.normal)) > 1e-6)
      found.push('it turns beside the mirror');
    const own = `${told.mirror.itemId}: ${told.mirror.part}`;
    found.push(...between(stage, eye, first, []).map((what) => `${what} stands before the mirror`));
    found.push(...between(stage, first, end.at, [own]).map((what) => `${what} stands behind the mirror`));
  }
  return found;
}

describe('a line of sight', () => {
  it.each([
    ...[1, 2, 3, 4, 5, 6, 7, 8, 9]
      .slice(0, cases(9))
      .map((seed) => ['random', seed, randomPlan(seed)] as const),
    ...[1, 4, 7].slice(0, cases(3)).map((seed) => ['moving', seed, movingPlan(seed)] as const),
  ])('is told as the report has it, and holds, in a %s plan of seed %i', (_, __, plan) => {
    for (const setup of plan.setups) {
      const [from, to] = spanOf(plan, setup);
      const seconds = from + Math.floor((to - from) * 12) / 24;
      for (const { id, verdict } of setupReport(plan, setup, { at: seconds, briefly: true }).items) {
        const told = explain(plan, { setupId: setup.id, itemId: id, seconds });
        if (!told) continue;
        const where = `${setup.id}: ${id}, ${verdict}`;
        expect(KINDS[verdict] as readonly string[], where).toContain(told.kind);
        expect(breaches(plan, setup, told), where).toEqual([]);
      }
    }
  });

  it('turns in a wet deck at equal angles, wherever a stand is mirrored', () => {
    let mirrored = 0;
    for (let seed = 1; seed <= cases(30); seed += 1) {
      const draw = drawFrom(seed);
      const stand = standAt({
        at: [draw.between(-1.2, 1.2), 0, draw.between(-9, -6)],
        heightMetres: draw.between(2.2, 3.8),
        headingDegrees: draw.between(0, 360),
      });
      const dry = stillRoof([stand], {}, draw.between(-26, -20));
      const plan: Plan = { ...dry, ground: { surface: 'asphalt', wetness: 'wet down' } };
      const [setup] = plan.setups;
      const told = explain(plan, { setupId: setup.id, itemId: 'stand', seconds: 0 });
      if (told?.kind !== 'mirrored') continue;
      mirrored += 1;
      expect(breaches(plan, setup, told), `seed ${seed}`).toEqual([]);
    }
    expect(mirrored).toBeGreaterThan(cases(30) / 2);
  });
});
