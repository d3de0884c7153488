import { expect, test } from 'vitest';
import { makeItem } from '../../../src/core/kit/palette';
import { setPower } from '../../../src/core/plan/edits/setPower';
import { setWire } from '../../../src/core/plan/edits/setWire';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { loadsOf } from '../../../src/core/power/loads';
import { nightHours } from '../../../src/core/power/nightHours';
import { powerOf } from '../../../src/core/power/powerOf';
import { sourcesOf } from '../../../src/core/power/supplies';
import { EMPTY_PLAN } from '../../../src/desk/emptyPlan';
import { cable, drawing, generator, lamp, wired } from '../../plans/wired';

const put = (plan: Plan, entryId: string, x: number): Plan => {
  const made = makeItem(plan, entryId, { spots: [[x, 0]] });
  if (!made) throw new Error(`${entryId} was not made`);
  return made.plan;
};

test('what the plan does not say of a supply is that of its size, in the volts of its place', () => {
  const entries = [
    'generator-1-kw',
    'generator-2-kw',
    'generator-3-kw',
    'generator-7-kw',
    'battery-2-kwh',
    'outlet',
  ];
  const plan = entries.reduce(put, EMPTY_PLAN);
  const at230 = sourcesOf(setPower(plan, { volts: 230 }));
  expect(at230.map(({ continuousWatts }) => continuousWatts)).toEqual([900, 1600, 2800, 5500, 2000, null]);
  for (const { volts, isAssumed } of at230) expect([volts, isAssumed]).toEqual([230, true]);
  for (const { volts } of sourcesOf(setPower(plan, { volts: 120 }))) expect(volts).toBe(120);
});

test('a dimmed lamp draws less, though not nothing; the place’s lamps and small ones have power of their own', () => {
  const practical = {
    kind: 'practical',
    id: 'sign',
    label: 'Sign',
    at: [0, 2, 0],
    headingDegrees: 0,
    head: 'lamp',
    dim: 1,
  };
  const cues = [{ atSeconds: 1, dim: 0.6, fadeSeconds: 0 }];
  const [full, half, cued, off, sign] = loadsOf(
    wired([
      lamp('full'),
      lamp('half', { dim: 0.5 }),
      lamp('cued', { dim: 0.1, cues }),
      lamp('off', { dim: 0 }),
      practical,
    ]),
  );
  expect(full.litWatts).toBe(350);
  expect(half.litWatts).toBeGreaterThan(175);
  expect(half.litWatts).toBeLessThan(200);
  expect(cued.litWatts).toBeGreaterThan(half.litWatts);
  expect(off.litWatts).toBeGreaterThan(0);
  expect(off.litWatts).toBeLessThan(35);
  expect([full.supply, sign.supply]).toEqual(['cord', 'own']);
});

test('hours are those asked for, those of the plan, from call to wrap, or from dusk to dawn', () => {
  const plan = wired([], {
    place: { ...EMPTY_PLAN.place, latitudeDegrees: 0, longitudeDegrees: 0, date: '2026-03-20' },
  });
  const dark = nightHours(plan);
  expect(dark.from).toBe('dusk to dawn');
  // Near the equator at an equinox: twelve hours, less two civil twilights of some twenty minutes.
  expect(dark.hours).toBeGreaterThan(11.1);
  expect(dark.hours).toBeLessThan(11.5);
  const called = { ...plan, night: { call: '18:30', wrapBy: '02:00' } };
  expect(nightHours(called)).toEqual({ hours: 7.5, from: 'call to wrap' });
  expect(nightHours(setPower(called, { hours: 6 }))).toEqual({ hours: 6, from: 'said' });
  expect(nightHours(setPower(called, { hours: 6 }), 3)).toEqual({ hours: 3, from: 'said' });
  const polar = { ...plan, place: { ...plan.place, latitudeDegrees: 80, date: '2026-06-21' } };
  expect(nightHours(polar).from).toBe('usual');
});

test('a cable is the cord of its diameter until it is said, and with slack a tenth longer than it lies', () => {
  const plan = wired([
    generator('genny'),
    drawing('a', 100),
    cable('cord', 'genny', 'a', 11, { wire: { mm2: 4 } }),
  ]);
  expect(powerOf(plan).cords.get('cord')).toMatchObject({ wire: { mm2: 4 }, isAssumed: false });
  expect(powerOf(plan).cords.get('cord')?.lengthMetres).toBeCloseTo(11, 9);
  const unsaid = setWire(plan, { id: 'cord', to: null });
  expect(powerOf(unsaid).cords.get('cord')).toMatchObject({ wire: { awg: 12 }, isAssumed: true });
  const at230 = powerOf(setPower(unsaid, { volts: 230 }));
  expect(at230.cords.get('cord')?.wire).toEqual({ mm2: 2.5 });
  const wound = {
    ...plan,
    gear: plan.gear.map((gear) => (gear.kind === 'cable' ? { ...gear, coiledShare: 0.5 } : gear)),
  };
  expect(powerOf(wound).cords.get('cord')?.lengthMetres).toBeCloseTo(22, 9);
});
