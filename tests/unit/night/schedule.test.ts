import { expect, test } from 'vitest';
import { nightOf } from '../../../src/core/night/nightOf';
import { wallTime } from '../../../src/core/night/times/nightClock';
import type { Night } from '../../../src/core/night/types';
import { moveInOrder } from '../../../src/core/plan/edits/moveInOrder';
import { removeItems } from '../../../src/core/plan/edits/removeItems';
import { removeSetup } from '../../../src/core/plan/edits/removeSetup';
import { setNight } from '../../../src/core/plan/edits/setNight';
import { setNightSetup } from '../../../src/core/plan/edits/setNightSetup';
import type { NightPlan } from '../../../src/core/plan/schema/night';
import { EVEN_NIGHT, nightRoof } from '../../plans/nightRoof';

const told = ({ clock, schedule }: Night): string[] =>
  schedule.stretches.map(
    ({ doing, job, from, until }) =>
      `${wallTime(clock, from)}-${wallTime(clock, until)} ${doing}${job === null ? '' : ` ${job}`}`,
  );
const sentences = ({ notes }: Night): string[] => notes.map(({ sentence }) => sentence);
const night = (more: NightPlan = {}): Night => nightOf(nightRoof({ ...EVEN_NIGHT, ...more }));

test('one thing comes after the other', () => {
  expect(told(night())).toEqual([
    '18:00-18:10 rig 0',
    '18:10-18:20 light 0',
    '18:20-18:30 rehearse 0',
    '18:30-19:00 shoot 0',
    '19:00-19:05 change 1',
    '19:05-19:15 rig 1',
    '19:15-19:25 light 1',
    '19:25-19:35 rehearse 1',
    '19:35-20:05 shoot 1',
    '20:05-20:10 change 2',
    '20:10-20:20 rig 2',
    '20:20-20:30 light 2',
    '20:30-20:40 rehearse 2',
    '20:40-21:10 shoot 2',
    '21:10-21:40 strike',
  ]);
});

test('the meal is no later than it is due, and before what would end after it', () => {
  const at = (afterHours: number): string[] =>
    told(night({ meal: { afterHours, minutes: 45 } })).filter((line) => line.includes('meal'));
  expect(at(1)).toEqual(['19:00-19:45 meal']);
  // The rehearsal and the shot of the second are one: they would end at 20:05.
  expect(at(2)).toEqual(['19:25-20:10 meal']);
  expect(at(6)).toEqual([]);
  const long = night({ meal: { afterHours: 1, minutes: 45 } });
  expect(sentences(long)).toContain(
    'Work goes on for 2\u00a0h 10\u00a0min after the meal: another break is due by 20:45.',
  );
});

test('whether everyone wraps in time, by how much, and what to leave out', () => {
  const byNine = night({ wrapBy: '22:00' });
  expect(sentences(byNine)).toEqual(['Everyone wraps by 22:00: at 21:40, 20\u00a0min before it.']);
  const late = night({ wrapBy: '21:00', setups: [{ setup: 'single', shoot: 20 }] });
  expect(sentences(late)).toEqual([
    'Not everyone wraps by 21:00: it is 21:30, 30\u00a0min after it.',
    'Without B (Single on Ana) everyone wraps at 20:35; else 30\u00a0min have to be saved elsewhere.',
  ]);
  expect(late.notes[0].standing).toBe('breaks');
  expect(sentences(night({ wrapBy: '18:20' }))).toContain(
    'No setup that is left out would have everyone wrapped by 18:20.',
  );
  expect(sentences(night({ wrapBy: '17:30' }))).toContain('The wrap, 17:30, is asked for before the call.');
});

test('shots wait for the dark and for whoever is in later, and what is too late is told', () => {
  const asked = night({
    cast: [{ performer: 'ana', from: '19:20', until: '20:00' }],
    setups: [
      { setup: 'single', until: '19:50', cast: ['ana'] },
      { setup: 'master', cast: ['ana'] },
    ],
  });
  // Nobody rehearses with somebody who is not there.
  expect(told(asked)).toContain('18:20-19:20 wait 0');
  expect(told(asked)).toContain('19:20-19:30 rehearse 0');
  expect(sentences(asked)).toContain(
    'Single on Ana is to be shot by 19:50, and ends at 21:05, 1\u00a0h 15\u00a0min after 19:50.',
  );
  expect(sentences(asked)).toContain(
    'Ana is out by 20:00, and Single on Ana ends at 21:05, 1\u00a0h 5\u00a0min after 20:00.',
  );
  const dark = nightOf(
    nightRoof({ ...EVEN_NIGHT, call: '16:00', setups: [{ setup: 'master', when: 'after dark' }] }),
  );
  const dusk = Math.ceil(dark.sky.nauticalDusk ?? 0);
  const shot = dark.schedule.setups[0].shotFrom;
  expect(shot).toBe(dusk);
  // The rehearsal may be before it.
  expect(dark.schedule.stretches.find(({ doing }) => doing === 'rehearse')?.from).toBe(dusk - 10);
});

test('the ground is wetted before a wet setup, kept so to the next, and dries before a dry one', () => {
  const wet = { setup: 'single', ground: 'wet' } as const;
  const one = night({ costs: { ...EVEN_NIGHT.costs, wetDown: 15 }, dries: 60, setups: [wet] });
  expect(told(one)).toContain('19:25-19:40 wet down 1');
  const both = night({
    costs: { ...EVEN_NIGHT.costs, wetDown: 15 },
    dries: 60,
    wetOnce: true,
    setups: [{ setup: 'master', ground: 'wet' }, wet, { setup: 'still', ground: 'dry' }],
  });
  expect(both.schedule.end.wettings).toBe(1);
  // The second is done at 20:20 and the ground dry at 21:20.
  expect(told(both)).toContain('20:45-21:20 wait 2');
  const twice = night({
    wetOnce: true,
    order: ['master', 'still', 'single'],
    setups: [{ setup: 'master', ground: 'wet' }, wet],
  });
  expect(sentences(twice)).toContain('The ground is to be wetted once, and this order wets it 2 times.');
  const dry = night({ dries: 20, setups: [{ setup: 'master', ground: 'wet' }, wet] });
  expect(sentences(dry)).toContain(
    'Between Master from the stairs and Single on Ana lie 25\u00a0min, and the ground dries in 20\u00a0min: keep it wet.',
  );
});

test('what changes between neighbours is what the plan says, and costs what the night says', () => {
  const costs = {
    lens: 3,
    support: 8,
    lighting: 20,
    halfTurn: 20,
    tenMetres: 10,
    head: 1,
    filter: 2,
    body: 10,
  };
  const plan = nightRoof({ ...EVEN_NIGHT, costs, setups: [{ setup: 'single', lighting: 'blue' }] });
  const [, single, still] = nightOf(plan).schedule.setups;
  expect(single.changes?.list.map(({ kind }) => kind)).toEqual(['lens', 'lighting', 'tenMetres']);
  // From (−0.5, 5) to (0.2, 4), and from heading 0 to 356.
  expect(single.changes?.carriedMetres).toBeCloseTo(Math.hypot(0.7, 1), 9);
  expect(single.changes?.turnDegrees).toBeCloseTo(4, 9);
  expect(single.changes?.minutes).toBe(3 + 20 + 1);
  expect(still.changes?.list.map(({ kind }) => kind)).toEqual(['lighting', 'tenMetres']);
  // The lamps that begin at another level count each.
  const cued = {
    ...plan,
    gear: plan.gear.map((gear) =>
      gear.id === 'bulb' && gear.kind === 'practical'
        ? { ...gear, cues: [{ atSeconds: 1, dim: 0.2, fadeSeconds: 0 }] }
        : gear,
    ),
  };
  expect(nightOf(cued).schedule.setups[2].changes?.lampIds).toEqual(['bulb']);
});

test('an order is moved, and what the plan loses leaves the night too', () => {
  const plan = nightRoof({
    ...EVEN_NIGHT,
    cast: [{ performer: 'ana', until: '23:00' }],
    setups: [{ setup: 'single', cast: ['ana'] }],
  });
  const moved = moveInOrder(plan, { setupId: 'still', to: 0 });
  expect(moved.night?.order).toEqual(['still', 'master', 'single']);
  expect(nightOf(moved).schedule.setups.map(({ setupId }) => setupId)).toEqual(['still', 'master', 'single']);
  expect(moveInOrder(moved, { setupId: 'still', to: 0 })).toBe(moved);
  const without = removeSetup(moved, { setupId: 'single' });
  expect(without.night).toMatchObject({ order: ['still', 'master'] });
  expect(without.night).not.toHaveProperty('setups');
  const alone = removeItems(plan, { ids: ['ana'] });
  expect(alone.night).not.toHaveProperty('cast');
  expect(alone.night).not.toHaveProperty('setups');
  // What is not so is not in the file.
  const emptied = setNight(nightRoof({ call: '18:00' }), { patch: { call: undefined } });
  expect(emptied).not.toHaveProperty('night');
  expect(setNightSetup(plan, { setupId: 'single', patch: { shoot: 900 } })).toBe(plan);
});
