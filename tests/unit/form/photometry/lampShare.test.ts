import { expect, test } from 'vitest';
import type { Vec3 } from '../../../../src/core/form/build/vector';
import { lampsAt } from '../../../../src/core/form/lamps';
import { lampFrame } from '../../../../src/core/form/photometry/lampFrame';
import { intensity } from '../../../../src/core/form/photometry/lampShare';
import { ownBeam, ownLumens } from '../../../../src/core/form/photometry/ownBeam';
import type { LampForm } from '../../../../src/core/form/types';
import { illuminance } from '../../../../src/core/light/illuminance';
import { lightScene } from '../../../../src/core/light/lightScene';
import type { Distribution } from '../../../../src/core/plan/schema/distribution';
import type { Gear } from '../../../../src/core/plan/schema/gear';
import type { HeadClass } from '../../../../src/core/plan/schema/kit';
import { darkRoof, LAMPS, lampAt, lampKit } from '../../../plans/darkRoof';

/** 1,000 cd ahead; at 45° off the axis 800 to the right, 400 up, 200 to the left, 100 down. */
const FOUR_WAYS: Distribution = {
  verticalDegrees: [0, 45, 90],
  horizontalDegrees: [0, 90, 180, 270, 360],
  candela: [
    [1000, 800, 0],
    [1000, 400, 0],
    [1000, 200, 0],
    [1000, 100, 0],
    [1000, 800, 0],
  ],
  source: 'four.ies',
};
const EVEN: Distribution = {
  verticalDegrees: [0, 180],
  horizontalDegrees: [0],
  candela: [[50, 50]],
  source: 'even.ies',
};

const of = (distribution: Distribution, more: Partial<HeadClass> = {}): HeadClass => ({
  ...LAMPS[0],
  id: 'measured',
  distribution,
  ...more,
});

function formOf(head: HeadClass, way: Vec3, more: Partial<Extract<Gear, { kind: 'head' }>> = {}): LampForm {
  const gear = { ...lampAt('a', head.id, [0, 0, 0], way, [head]), ...more };
  return lampsAt(darkRoof({ kit: lampKit([head]), gear: [gear] }), 0)[0];
}

test('a lamp is level in its yoke: its right and its top as seen from behind it', () => {
  const ahead = lampFrame([0, 0, -1]);
  expect(ahead.right[0]).toBeCloseTo(1, 12);
  expect(ahead.up[1]).toBeCloseTo(1, 12);
  const east = lampFrame([1, 0, 0]);
  expect(east.right[2]).toBeCloseTo(1, 12);
  expect(east.up[1]).toBeCloseTo(1, 12);
  // A street lamp that looks down has its kerb to its right and the road ahead of it on top.
  const down = lampFrame([0, -1, 0]);
  expect(down.right).toEqual([1, 0, 0]);
  expect(down.up[2]).toBeCloseTo(-1, 12);
});

test.each<[string, Vec3, number]>([
  ['ahead', [0, 0, -3], 1000],
  ['to the right', [2, 0, -2], 800],
  ['up', [0, 2, -2], 400],
  ['to the left', [-2, 0, -2], 200],
  ['down', [0, -2, -2], 100],
  ['behind', [0, 0.5, 1], 0],
])('a lamp that looks along −z sends its table %s', (_, way, candela) => {
  expect(intensity(formOf(of(FOUR_WAYS), [0, 0, -1]), way)).toBeCloseTo(candela, 6);
});

test('the table turns and tilts with the lamp', () => {
  const lamp = formOf(of(FOUR_WAYS), [1, 0, 0]);
  expect(intensity(lamp, [2, 0, 2])).toBeCloseTo(800, 6);
  expect(intensity(lamp, [2, 2, 0])).toBeCloseTo(400, 6);
  // Tilted down by 45°: half way between the axis and its top is level.
  const tilted = formOf(of(FOUR_WAYS), [0, -1, -1]);
  expect(intensity(tilted, [0, 0, -5])).toBeCloseTo(400, 6);
});

test('lux go by the table: I cos β ÷ d², dimmed like any', () => {
  const head = of(FOUR_WAYS, { size: [0.01, 0.01, 0.01] });
  const gear = { ...lampAt('a', head.id, [0, 0, 0], [0, 0, -1], [head]), dim: 0.5 };
  const scene = lightScene(darkRoof({ kit: lampKit([head]), gear: [gear] }), null, 0);
  const on = (point: Vec3, normal: Vec3): number => illuminance(scene, point, normal).shares[0]?.lux ?? 0;
  expect(on([0, 0, -4], [0, 0, 1])).toBeCloseTo(1000 / 2 / 16, 1);
  // 45° to the right at 4 √2 m, on a surface square to the axis: 800 ÷ 2 × cos 45° ÷ 32.
  expect(on([4, 0, -4], [0, 0, 1])).toBeCloseTo((400 * Math.SQRT1_2) / 32, 1);
  expect(on([-4, 0, -4], [0, 0, 1])).toBeCloseTo((100 * Math.SQRT1_2) / 32, 1);
});

test('barn doors leave the table; a softbox spreads its lumens and has none', () => {
  const doors = formOf(of(EVEN), [0, 0, -1], { modifier: 'barn doors' });
  expect(doors.distribution).toEqual(EVEN);
  const softbox = formOf(of(EVEN), [0, 0, -1], { modifier: 'softbox' });
  expect(softbox.distribution).toBeNull();
  // Even all round, 50 cd are 200 π lm; half of them pass, and a diffuse face sends its lumens ÷ π ahead.
  expect(softbox.peakCandela).toBeCloseTo(100, 6);
});

test('practicals and strings go by a table too', () => {
  const head = of(EVEN, { form: 'bulb' });
  const gear: Gear[] = [
    { kind: 'practical', id: 'p', label: 'P', at: [0, 2, 0], headingDegrees: 0, head: 'measured', dim: 1 },
    {
      kind: 'bulb string',
      id: 's',
      label: 'S',
      from: [0, 2, 0],
      to: [3, 2, 0],
      sagMetres: 0.1,
      bulbs: 2,
      head: 'measured',
      dim: 0.5,
    },
  ];
  const lamps = lampsAt(darkRoof({ kit: lampKit([head]), gear }), 0);
  expect(lamps.map(({ peakCandela }) => peakCandela)).toEqual([50, 25, 25]);
  for (const { distribution, beamDegrees } of lamps)
    expect({ distribution, beamDegrees }).toEqual({ distribution: EVEN, beamDegrees: 360 });
  const plain = lampsAt(darkRoof({ kit: lampKit([{ ...LAMPS[0], id: 'measured' }]), gear }), 0);
  expect(plain.map(({ distribution }) => distribution)).toEqual([null, null, null]);
  expect(plain[1].beamDegrees).toBe(360);
});

test('a reading says how strong the lamp is: 1,850 lx at 3 m are 16,650 cd', () => {
  const read: HeadClass = { ...LAMPS[1], reading: { lux: 1850, metres: 3 } };
  expect(ownBeam(read)).toEqual({
    peakCandela: 16650,
    beamDegrees: 40,
    fieldDegrees: 60,
    distribution: null,
  });
  expect(ownLumens(read) / ownLumens(LAMPS[1])).toBeCloseTo(1.665, 9);
  expect(formOf(read, [0, 0, -1]).peakCandela).toBe(16650);
});
