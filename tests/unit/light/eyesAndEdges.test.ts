import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { catchLights } from '../../../src/core/light/catchLight';
import { edgeLights } from '../../../src/core/light/edgeLight';
import { askedLux } from '../../../src/core/light/exposure';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { flagAt } from '../../plans/darkRoof';
import { keyedFace, keyOn } from '../../plans/keyedFace';

/** Vera faces +z and a lens 3 m before her, whose right is +x. */
const FRONT = { id: 'front', label: 'Front', at: [0, 3] as [number, number], headingDegrees: 0 };
const roof = (gear: readonly Gear[], headingDegrees = 180): Plan =>
  keyedFace({ gear, headingDegrees, cameras: [FRONT] });
const inEyes = (plan: Plan) => catchLights(plan, plan.setups[0], 0)[0];
const onEdges = (plan: Plan) => edgeLights(plan, plan.setups[0], 0);

describe('catch lights', () => {
  test('stand in the eye where the lamp stands as the camera sees it', () => {
    const { seesEyes, lights } = inEyes(roof(keyOn('1', [-1.5, 3], [0, 0], 0.05, 2.6)));
    expect(seesEyes).toBe(true);
    expect(lights.map(({ eye }) => eye).sort()).toEqual(['left', 'right']);
    for (const { clock, itemId, stops } of lights) {
      expect(itemId).toBe('1');
      expect([10, 11]).toContain(clock);
      expect(stops).toBeGreaterThan(0);
    }
    const [right] = inEyes(roof(keyOn('1', [1.5, 3], [0, 0], 0.05, 2.6))).lights;
    expect([1, 2]).toContain(right.clock);
  });

  test('are as large as the mirror says, and go where a flag or a turned head takes them', () => {
    const key = keyOn('1', [-1.5, 3], [0, 0], 0.05, 2.6);
    const [light] = inEyes(roof(key)).lights;
    // Its lens of some 0.27 m, 3.5 m away: 0.3 mm of 11.7.
    expect(light.sizeShareOfIris).toBeCloseTo(0.026, 2);
    const flag = flagAt('flag', [-0.7, 2, 1.5], [1.2, 1.2]);
    expect(inEyes(roof([...key, flag])).lights).toEqual([]);
    expect(inEyes(roof(key, 20))).toEqual({ performerId: 'vera', seesEyes: false, lights: [] });
  });

  test('half the light is a stop less', () => {
    const bright = inEyes(roof(keyOn('1', [-1.5, 3], [0, 0], 0.05, 2.6))).lights[0];
    const dim = inEyes(roof(keyOn('1', [-1.5, 3], [0, 0], 0.025, 2.6))).lights[0];
    expect(bright.stops - dim.stops).toBeCloseTo(1, 6);
  });
});

describe('edges', () => {
  test('are lit on the side where the lamp stands behind', () => {
    const left = onEdges(roof(keyOn('1', [-2, -4], [0, 0], 0.05, 2.6)));
    expect(left.map(({ side, itemId }) => [side, itemId])).toEqual([['camera left', '1']]);
    const both = onEdges(
      roof([...keyOn('1', [-2, -4], [0, 0], 0.05, 2.6), ...keyOn('2', [2.5, -4], [0, 0], 0.05, 2.6)]),
    );
    expect(both.map(({ side, itemId }) => [side, itemId]).sort()).toEqual([
      ['camera left', '1'],
      ['camera right', '2'],
    ]);
  });

  test('from straight behind and high up lie on both sides or on the hair, from the front on none', () => {
    const [hair] = onEdges(roof(keyOn('1', [0, -2.5], [0, 0], 0.05, 4)));
    expect(hair.onTop).toBe(true);
    expect(onEdges(roof(keyOn('1', [-1.5, 3], [0, 0], 0.05, 2.6)))).toEqual([
      {
        performerId: 'vera',
        side: 'none',
        onTop: false,
        itemId: null,
        lux: 0,
        stops: null,
        stopsOverKey: null,
      },
    ]);
  });

  test('are told against the stop and against the key', () => {
    const plan = roof([
      ...keyOn('key', [-1.5, 3], [0, 0], 0.05, 2.6),
      ...keyOn('back', [2.5, -4], [0, 0], 0.2, 2.6),
    ]);
    const [edge] = onEdges(plan);
    expect(edge.stops).toBeCloseTo(Math.log2(edge.lux / askedLux(plan.setups[0])), 9);
    const dimmed = onEdges({
      ...plan,
      gear: plan.gear.map(
        (each): Gear => (each.id === 'key' && each.kind === 'head' ? { ...each, dim: 0.025 } : each),
      ),
    })[0];
    expect((dimmed.stopsOverKey ?? 0) - (edge.stopsOverKey ?? 0)).toBeCloseTo(1, 6);
    const shaded: Vec3 = [1.2, 2, -2];
    expect(onEdges({ ...plan, gear: [...plan.gear, flagAt('flag', shaded, [1.5, 2])] })[0].side).toBe('none');
  });
});
