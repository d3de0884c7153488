import { describe, expect, test } from 'vitest';
import {
  dimForKey,
  gelForKey,
  isRefused,
  keyedFace as keyedOn,
  nearestThird,
  type Refused,
  scrimForKey,
  stopForKey,
  targetOf,
} from '../../../src/core/light/advice';
import { keyAdvice } from '../../../src/core/light/keyDistance';
import { addCue, setCue } from '../../../src/core/plan/edits/changeCues';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import { reshapeItem } from '../../../src/core/plan/edits/reshapeItem';
import { setBefore } from '../../../src/core/plan/edits/setBefore';
import { setStop } from '../../../src/core/plan/edits/setStop';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { flagAt } from '../../plans/darkRoof';
import { keyedFace, keyOn } from '../../plans/keyedFace';

const roof = (...gear: readonly Gear[]): Plan =>
  keyedFace({ gear, cameras: [{ id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0 }] });
function answer<Answer extends object>(found: Answer | Refused): Answer {
  if (isRefused(found)) throw new Error(found.refused);
  return found;
}
const keyed = (plan: Plan) => answer(keyedOn(plan, plan.setups[0], 'vera', 0));
const keyStops = (plan: Plan): number => keyed(plan).key.stops ?? Number.NaN;
const advise = (plan: Plan, stopsUnder: number) =>
  answer(keyAdvice(plan, plan.setups[0], 'vera', 0, stopsUnder));
const refusal = (found: object): string => (isRefused(found) ? found.refused : '');

describe('the stop for a key', () => {
  const plan = roof(...keyOn('key', [0, 3.5], [0, 0]));

  test('puts it where it is wanted', () => {
    for (const under of [0, 1.5]) {
      const { edit, key, stop, thirdStop } = answer(stopForKey(plan, plan.setups[0], 'vera', 0, under));
      expect(keyStops(setStop(plan, edit))).toBeCloseTo(-under, 6);
      expect(stop).toBeCloseTo(2.8 * 2 ** (((key.stops ?? 0) + under) / 2), 6);
      expect(Math.abs(2 * Math.log2(thirdStop / stop))).toBeLessThan(0.2);
    }
  });

  test('comes as the third of a stop that is engraved', () => {
    expect([2.83, 3.3, 4.6, 5.7, 8.1].map(nearestThird)).toEqual([2.8, 3.2, 4.5, 5.7, 8]);
  });

  test('is refused beyond what the lens has', () => {
    const dark = roof(...keyOn('key', [0, 3.5], [0, 0], 0.001));
    expect(refusal(stopForKey(dark, dark.setups[0], 'vera', 0))).toMatch(
      /^That asks for T0\.\d; the lens opens to T1\.8\.$/,
    );
    const bright = roof(...keyOn('key', [0, 2], [0, 0], 1));
    expect(refusal(stopForKey(bright, bright.setups[0], 'vera', 0, 4))).toContain('the lens closes to T22.');
  });
});

describe('a key that is to be some stops under', () => {
  const plan = roof(...keyOn('key', [0, 3.5], [0, 0]));

  test('is dimmed there', () => {
    const { key } = keyed(plan);
    const { edit, dim: share } = answer(dimForKey(plan, targetOf(keyed(plan), 2)));
    expect(keyStops(reshapeItem(plan, edit))).toBeCloseTo(-2, 6);
    expect(share).toBeCloseTo(0.05 * 2 ** -(2 + (key.stops ?? 0)), 9);
  });

  test('is dimmed by the cue that it is on, not by the lamp', () => {
    const on = addCue(plan, { id: 'key', cue: { atSeconds: 0, dim: 0.1, fadeSeconds: 0 } });
    const refused = refusal(dimForKey(on, targetOf(keyed(on), 2))).replaceAll('\u00a0', ' ');
    const percent = Number(/dim the cue to ([\d.]+) %, not the lamp\.$/.exec(refused)?.[1]);
    const dimmed = setCue(on, { id: 'key', cueIndex: 0, patch: { dim: percent / 100 } });
    // Told to a tenth of a per cent, of a lamp that needs but a few of them.
    expect(Math.abs(keyStops(dimmed) + 2)).toBeLessThan(0.2);
  });

  test('is backed off there, about as the inverse square has it', () => {
    const { distance, key } = advise(plan, 0.8);
    const { edit, metres, backMetres } = answer(distance);
    expect(keyStops(moveItem(plan, edit))).toBeCloseTo(-0.8, 2);
    const before = answer(advise(plan, -(key.stops ?? 0)).distance);
    expect(before.backMetres).toBe(0);
    expect(metres / before.metres).toBeCloseTo(2 ** ((0.8 + (key.stops ?? 0)) / 2), 1);
    expect(metres - before.metres).toBeCloseTo(backMetres, 1);
  });

  test('is brought nearer where it is too weak', () => {
    const weak = roof(...keyOn('key', [0, 6], [0, 0]));
    const { edit, backMetres } = answer(advise(weak, 0).distance);
    expect(backMetres).toBeLessThan(-0.5);
    expect(keyStops(moveItem(weak, edit))).toBeCloseTo(0, 2);
  });

  test('gets scrims: doubles of a stop, singles of a half, within a quarter of a stop', () => {
    const { key } = keyed(plan);
    const { edit, stops, takenStops, leftStops } = answer(scrimForKey(plan, targetOf(keyed(plan), 2)));
    expect(stops).toBeCloseTo(2 + (key.stops ?? 0), 6);
    expect(takenStops + leftStops).toBeCloseTo(stops, 9);
    expect(Math.abs(leftStops)).toBeLessThanOrEqual(0.25);
    const scrimmed = setBefore(plan, edit);
    expect(keyStops(scrimmed)).toBeCloseTo(leftStops - 2, 6);
    const more = answer(scrimForKey(scrimmed, targetOf(keyed(scrimmed), 4)));
    expect(more.takenStops, 'those in it stay').toBeLessThanOrEqual(2.5);
    expect(keyStops(setBefore(scrimmed, more.edit))).toBeCloseTo(more.leftStops - 4, 6);
    const least = answer(scrimForKey(scrimmed, targetOf(keyed(scrimmed), 0.1 - keyStops(scrimmed))));
    expect(least.takenStops).toBe(0);
    expect(setBefore(scrimmed, least.edit)).toBe(scrimmed);
  });

  test('gets neutral gel, of 0.3 a stop, that takes it exactly', () => {
    const { key } = keyed(plan);
    const gel = (of: Plan, under: number) => answer(gelForKey(of, targetOf(keyed(of), under)));
    // Source: [neutral-density]: 0.3, 0.6, 0.9, 1.2 take 1, 2, 3, 4 stops.
    for (const whole of [1, 2, 3, 4])
      expect(gel(plan, whole - (key.stops ?? 0)).density).toBeCloseTo(0.3 * whole, 1.9);
    const gelled = setBefore(plan, gel(plan, 2).edit);
    expect(keyStops(gelled)).toBeCloseTo(-2, 6);
    expect(keyStops(setBefore(gelled, gel(gelled, 3.3).edit))).toBeCloseTo(-3.3, 6);
    expect(refusal(gelForKey(plan, targetOf(keyed(plan), 20)))).toMatch(
      /^That asks for a density of \d\.\d\d; a plan takes up to 4\.$/,
    );
  });

  test('gets scrims and gel on a cue too', () => {
    const on = addCue(plan, { id: 'key', cue: { atSeconds: 0, dim: 0.1, fadeSeconds: 0 } });
    const { edit } = answer(gelForKey(on, targetOf(keyed(on), 2)));
    expect(keyStops(setBefore(on, edit))).toBeCloseTo(-2, 6);
  });

  test('is found no place in the shade: a flag before the one it would have leaves none', () => {
    const { backMetres } = answer(advise(plan, 0.8).distance);
    const shade = (at: number) =>
      advise(
        roof(
          ...keyOn('key', [0, 3.5], [0, 0]),
          flagAt('flag', [at, 2.2, 3.5 + backMetres - 0.35], [1.5, 1.5]),
        ),
        0.8,
      ).distance;
    expect(refusal(shade(0))).toBe('The deck ends before Head key is far enough back.');
    expect(answer(shade(3)).backMetres).toBeCloseTo(backMetres, 2);
  });
});

describe('what cannot be done is said', () => {
  test('too weak at full', () => {
    const { dim, scrim } = advise(roof(...keyOn('key', [0, 5], [0, 0], 0.05)), -6);
    expect(refusal(dim)).toMatch(/^Head key at full is still \d\.\d\u00a0stops? short\.$/);
    expect(refusal(scrim)).toBe('Head key is no stronger than that; scrims and gel only take away.');
  });

  test('too weak at full by a hair, and that full is enough', () => {
    const full = roof(...keyOn('key', [0, 5], [0, 0], 1));
    const wanted = (over: number) => advise(full, -keyStops(full) - over).dim;
    expect(refusal(wanted(0.02))).toBe('Head key at full is still 0.020\u00a0stops short.');
    expect(answer(wanted(0)).dim).toBeCloseTo(1, 3);
  });

  test('over the edge of the deck', () => {
    const { distance } = advise(roof(...keyOn('key', [0, 3.5], [0, 0])), 4);
    expect(refusal(distance)).toBe('The deck ends before Head key is far enough back.');
  });

  test('locked in its place', () => {
    const gear = keyOn('key', [0, 3.5], [0, 0]).map((each) => ({ ...each, locked: true as const }));
    expect(refusal(advise(roof(...gear), 1).distance)).toBe('Head key is locked in its place.');
  });

  test('no key, or nobody there', () => {
    const dark = roof();
    expect(refusal(keyAdvice(dark, dark.setups[0], 'vera', 0, 1))).toBe(
      'No lamp reaches the face of Vera from before it.',
    );
    expect(refusal(keyAdvice(dark, dark.setups[0], 'nobody', 0, 1))).toBe(
      'There is nobody on a mark to light.',
    );
  });
});

test('a key from a bounce is set by the lamp that feeds it', () => {
  const bounce: Gear = {
    id: 'bounce',
    label: 'Bounce',
    kind: 'bounce',
    place: { at: [0, 1.6, 2] },
    headingDegrees: 0,
    tiltDegrees: 0,
    size: [1.2, 1.2],
    reflectance: 0.8,
  };
  // From behind her, past her, onto the bounce before her.
  const plan = roof(...keyOn('lamp', [2.5, -3], [0, 2], 0.5), bounce);
  const { key, lampId, dim } = advise(plan, 4);
  expect([key.itemId, key.fedBy, lampId]).toEqual(['bounce', 'lamp', 'lamp']);
  expect(keyStops(reshapeItem(plan, answer(dim).edit))).toBeCloseTo(-4, 6);
});
