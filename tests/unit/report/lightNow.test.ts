import { describe, expect, test } from 'vitest';
import { continuityOf } from '../../../src/core/continuity/continuity';
import { subtract } from '../../../src/core/form/build/vector';
import { faceAt, faceLight } from '../../../src/core/light/face';
import { highlightAtFeet } from '../../../src/core/light/highlightAtFeet';
import { faceLevels } from '../../../src/core/light/levels';
import { lightScene } from '../../../src/core/light/lightScene';
import { highlightsAt } from '../../../src/core/light/wetFloor';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import { raiseItems } from '../../../src/core/plan/edits/raiseItems';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { keySummary } from '../../../src/core/report/light/keySummary';
import { lightNow } from '../../../src/core/report/light/lightNow';
import { lightOf } from '../../../src/core/report/light/lightOf';
import { keyedFace, keyOn } from '../../plans/keyedFace';

const wide = {
  id: 'wide',
  label: 'Wide',
  at: [0, 6] as [number, number],
  headingDegrees: 0,
  lens: 'wide' as const,
};
const key = keyOn('1', [-2.5, 2.5], [0, 0]);
const back = keyOn('2', [1, -4], [0, 0], 0.2);

describe('the light at an instant', () => {
  const plan = keyedFace({ gear: [...key, ...back], cameras: [wide] });
  const [setup] = plan.setups;

  test('has the levels of the face, the side of the frame, and what each lamp gives', () => {
    const scene = lightScene(plan, setup, 0);
    const now = lightNow(plan, setup, scene);
    const [face] = now.faces;
    const [levels] = faceLevels(plan, scene, now.askedLux);
    expect(face).toMatchObject(levels);
    expect(face.cameraSide).toBe('left');
    expect(face.given.map(({ itemId, isAhead }) => [itemId, isAhead])).toEqual([
      ['2', false],
      ['1', true],
    ]);
    expect(face.given.map(({ lux }) => lux)).toEqual([face.back?.lux, face.key?.lux]);
  });

  test('says of each lamp which share it gives, from which way off the face, how high and how far', () => {
    const scene = lightScene(plan, setup, 0);
    const [{ given, key: strongest }] = lightNow(plan, setup, scene).faces;
    const face = faceAt(plan.cast[0], plan, 0);
    if (!face) throw new Error('Vera is nowhere');
    for (const { itemId, metres, bearingDegrees, elevationDegrees } of given) {
      const lamp = scene.lamps.find(({ form }) => form.itemId === itemId);
      const [x, y, z] = subtract(lamp?.form.position ?? face.at, face.at);
      expect(metres).toBeCloseTo(Math.hypot(x, y, z), 6);
      // She faces +z: what is at +x is on her own left.
      const bearing = (Math.atan2(-x, z) * 180) / Math.PI;
      expect(bearingDegrees).toBeCloseTo(bearing, 1);
      expect(elevationDegrees).toBeCloseTo((Math.atan2(y, Math.hypot(x, z)) * 180) / Math.PI, 1);
    }
    const [backOne, keyOne] = given;
    // The head at −x is on her own right, the one at +x behind her on her left.
    expect(Math.abs(keyOne.bearingDegrees - 45)).toBeLessThan(3);
    expect(backOne.bearingDegrees).toBeLessThan(-150);
    expect([keyOne.plane, backOne.plane]).toEqual(['right', 'edge']);
    expect(keyOne.shadowEdgeMetres).toBe(strongest?.shadowEdgeMetres);
    const light = faceLight(scene, face);
    for (const each of given) {
      expect(each.share).toBe(each.lux / light.lux[each.plane]);
      expect(each.share).toBeLessThan(1);
    }
    const onPlane = light.sources.reduce((sum, source) => sum + source.lux.right, 0);
    expect(onPlane).toBeLessThan(light.lux.right);
  });

  test('has no side and no stops on the roof', () => {
    const [face] = lightNow(plan, null, lightScene(plan, null, 0)).faces;
    expect(face.cameraSide).toBeNull();
    expect(face.key?.stops).toBeNull();
  });
});

test('a lamp that is brought to somebody’s feet has its highlight half a metre before them', () => {
  const dry = keyedFace({ gear: back, cameras: [wide] });
  const setups = dry.setups.map((setup) => ({
    ...setup,
    move: { ...setup.move, keys: setup.move.keys.map((each) => ({ ...each, tiltDegrees: -12 })) },
  }));
  const plan: Plan = { ...dry, setups, ground: { ...dry.ground, wetness: 'wet down' } };
  const [setup] = plan.setups;
  const found = highlightAtFeet(plan, setup, '2', 'vera', 0);
  if (!('stand' in found) || !('move' in found.stand)) throw new Error(JSON.stringify(found));
  const moved = raiseItems(moveItem(plan, found.stand.move), found.stand.raise);
  // She stands in the lamp's way to that spot: what is asked is where the mirror has it.
  const without = { ...moved, cast: [] };
  const [highlight] = highlightsAt(without, setup, 0);
  expect(highlight.at[0]).toBeCloseTo(0, 1);
  expect(highlight.at[2]).toBeCloseTo(0.5, 1);
  expect(highlightAtFeet(plan, setup, '2', 'nobody', 0)).toEqual({
    refused: 'There is nobody on a mark to bring it to.',
  });
});

describe('what becomes of the keys', () => {
  const second = { ...wide, id: 'second', label: 'Second', at: [1, 6] as [number, number] };
  const third = { ...second, id: 'third', label: 'Third' };
  const turned = [{ performer: 'vera', mark: 'v1', at: [0.1, 0] as [number, number], headingDegrees: 260 }];
  const told = (plan: Plan, exposed: Plan = plan): readonly string[] =>
    keySummary(
      plan,
      continuityOf(plan),
      new Map(exposed.setups.map((setup) => [setup.id, lightOf(exposed, setup)])),
    );

  test('a side that is kept, in setups that follow each other', () => {
    const plan = keyedFace({ gear: key, cameras: [wide, second, third] });
    expect(told(plan)).toEqual(['Vera keeps the key side in A to C.']);
  });

  test('a side that changes', () => {
    const plan = keyedFace({ gear: key, cameras: [wide, { ...second, cheats: turned }] });
    expect(told(plan)[0]).toBe('Vera’s key changes sides in B.');
  });

  test('two stops between two setups are told with both', () => {
    const plan = keyedFace({ gear: key, cameras: [wide, second] });
    const setups = plan.setups.map((setup, k) => (k === 0 ? setup : { ...setup, iso: setup.iso / 4 }));
    expect(told(plan, { ...plan, setups })[1]).toMatch(
      /^Vera’s key is 2\.0\u00a0stops apart between B \(.*\) and A \(.*\) at the same beat\.$/,
    );
  });
});
