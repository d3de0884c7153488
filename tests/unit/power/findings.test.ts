import { describe, expect, test } from 'vitest';
import { powerReport } from '../../../src/core/report/power/powerReport';
import { box, cable, drawing, generator, lamp, wired } from '../../plans/wired';

const said = (gear: readonly object[], about: string, more: object = {}) =>
  powerReport(wired(gear, more), 10)
    .sentences.filter((each) => each.about === about)
    .map(({ standing, sentence }) => `${standing}: ${sentence.replaceAll('\u00a0', ' ')}`);

test('a lamp on nothing and a ring are told by name', () => {
  expect(said([lamp('Head')], 'plugs')).toEqual([
    'breaks: Head hangs on no cord. Run one to it, or say that it has power of its own.',
  ]);
  expect(
    said(
      [generator('Genny'), lamp('Head'), cable('A', 'Genny', 'Head'), cable('B', 'Head', 'Genny')],
      'plugs',
    ),
  ).toEqual([
    'breaks: A and B make a ring, and nobody can say which way its current goes. Pull one of them.',
  ]);
});

test('a breaker trips, and one that holds for a moment is not for a night', () => {
  const on20 = (watts: number) => [
    generator('Genny', { circuits: [{ amps: 20, sockets: 1 }] }),
    drawing('Kettle', watts),
    cable('Cord', 'Genny', 'Kettle', 0.001),
  ];
  expect(said(on20(2640), 'breaker')).toEqual([
    'breaks: Circuit 1 of Genny carries 22.0 A on a breaker of 20 A, which trips. Take off 6.0 A.',
  ]);
  expect(said(on20(2160), 'breaker')).toEqual([
    'breaks: Circuit 1 of Genny carries 18.0 A; for three hours and more a breaker of 20 A is good for 16 A.',
  ]);
  expect(said(on20(1900), 'breaker')).toEqual([]);
});

test('a generator is asked for more than it gives for long, or when a motor starts', () => {
  const on = (watts: number, more: object = {}) => [
    generator('Genny', { continuousWatts: 1600, peakWatts: 2000 }),
    { ...drawing('Fan', watts), drawn: { watts, powerFactor: 1, ...more } },
    cable('Cord', 'Genny', 'Fan', 0.001),
  ];
  expect(said(on(1800), 'generator')).toEqual([
    'breaks: Genny is asked for 1800 VA and gives 1600 W for long. Move something to another supply.',
  ]);
  expect(said(on(2200), 'generator')[0]).toContain('2.0 kW for moments: it cuts out');
  expect(said([generator('Genny', { continuousWatts: 3000, peakWatts: 2000 })], 'generator')).toEqual([
    'said: Genny is said to give 3.0 kW for long and only 2.0 kW for moments. Look at its plate.',
  ]);
  expect(said(on(900, { startTimes: 3 }), 'generator')).toEqual([
    'breaks: Genny is asked for 2.7 kW when its hardest load starts last, and gives 2.0 kW for moments. Start that one first.',
  ]);
});

test('a cord overheats, one that is wound up sooner, and a breaker that would not see it is told', () => {
  const on = (watts: number, more: object) => [
    generator('Genny', { circuits: [{ amps: 30, sockets: 1 }] }),
    drawing('Kettle', watts),
    cable('Cord', 'Genny', 'Kettle', 0.001, more),
  ];
  expect(said(on(2400, { wire: { awg: 14 } }), 'cord')).toEqual([
    'breaks: Cord carries 20.0 A; 14 AWG (2.08 mm²) may carry 18 A. Take a thicker one.',
  ]);
  expect(said(on(1200, { wire: { awg: 14 }, coiledShare: 0.5 }), 'cord')).toEqual([
    'breaks: Cord carries 10.0 A; 14 AWG (2.08 mm²) may carry 7.2 A with some of it wound up. Unwind all of it, or take a thicker one.',
  ]);
  expect(said(on(1200, { wire: { awg: 12 } }), 'cord')).toEqual([
    'said: Cord of 12 AWG (3.31 mm²) may carry 25 A, and its breaker trips at 30 A only: nothing guards it against more load.',
  ]);
  expect(said(on(1200, { wire: { awg: 10 } }), 'cord')).toEqual([]);
});

test('volts at a lamp are said under 3 % and break under 5 %', () => {
  const on = (metres: number) => [
    generator('Genny'),
    drawing('Lamp', 1200),
    cable('Cord', 'Genny', 'Lamp', metres),
  ];
  expect(said(on(20), 'drop')).toEqual([]);
  expect(said(on(35), 'drop')[0]).toMatch(/^said: Lamp gets 115\.\d V of 120\.0 V: 3\.\d % is lost/);
  expect(said(on(60), 'drop')[0]).toMatch(
    /^breaks: Lamp gets 111\.\d V of 120\.0 V: 7\.\d % is lost .* with the feeder/,
  );
  expect(said(on(900), 'drop')[0]).toContain('no voltage holds there');
});

test('fuel and refills over the night; an engine with nothing to feed burns nothing', () => {
  const on = [
    generator('Genny', { tankLitres: 3, litresPerHour: [0.4, 0.6, 0.8, 1] }),
    drawing('Lamp', 2750),
    cable('Cord', 'Genny', 'Lamp', 0.001),
  ];
  expect(said(on, 'fuel')).toEqual([
    'said: Genny gives 2.8 kW and burns 0.6 L of petrol an hour, 6.0 L in 10 h. Fill it every 4 h 30 min, 2 times, and bring 3.3 L beside the tank.',
  ]);
  expect(
    powerReport(wired(on), 10).sources[0].fuel?.refillHours.map((hours) => Math.round(hours * 10)),
  ).toEqual([45, 90]);
  expect(said([generator('Genny')], 'fuel')).toEqual([]);
  expect(powerReport(wired([generator('Genny')]), 10).totals.litres).toBe(0);
});

test('a battery that runs out before the night does is told', () => {
  const on = (watts: number) => [
    {
      kind: 'battery',
      id: 'Cell',
      label: 'Cell',
      at: [0, 0, 0],
      headingDegrees: 0,
      size: [0.4, 0.3, 0.3],
      power: {
        wattHours: 2000,
        continuousWatts: 2000,
        peakWatts: 4000,
        volts: 120,
        circuits: [{ amps: 20, sockets: 2 }],
      },
    },
    drawing('Lamp', watts),
    cable('Cord', 'Cell', 'Lamp', 0.001),
  ];
  expect(said(on(340), 'battery')).toEqual([
    'breaks: Cell gives 340 W for 5 h, and everything is on for 10 h: bring another, or change it before then.',
  ]);
  expect(said(on(100), 'battery')).toEqual(['holds: Cell gives 100 W for 17 h, as long as it has to.']);
});

describe('when a generator stops', () => {
  const two = (more: object = {}) => [
    generator('One'),
    generator('Two', more),
    drawing('Big', 2000),
    drawing('Small', 300),
    cable('to-big', 'One', 'Big', 1),
    cable('to-small', 'One', 'Small', 1),
  ];

  test('what goes dark and where it would find room is told', () => {
    expect(said(two(), 'stop')).toEqual([
      'said: If One stops, Big and Small go dark. All of it would find room on Two.',
    ]);
    expect(said(two({ circuits: [{ amps: 15, sockets: 1 }] }), 'stop')).toEqual([
      'said: If One stops, Big and Small go dark. Small would find room on Two; Big would stay dark.',
    ]);
    expect(said(two().slice(0, 1).concat(two().slice(2)), 'stop')[0]).toContain('There is no other supply.');
  });

  test('generators that share unevenly are told', () => {
    expect(said(two(), 'balance')[0]).toMatch(
      /^said: One runs at 42 % of what it gives for long, Two at 0 %/,
    );
  });
});

test('a box takes no more through its inlet than that is good for, and legs that differ are told', () => {
  const on = [
    generator('Genny', {
      continuousWatts: 9000,
      peakWatts: 9000,
      circuits: [{ amps: 50, sockets: 1, legs: [1, 2] }],
    }),
    box('Box', { inputAmps: 20 }),
    drawing('A', 2040),
    cable('feeder', 'Genny', 'Box', 0.001, { wire: { awg: 4 } }),
    cable('a', 'Box', 'A', 0.001, { circuit: 1 }),
  ];
  expect(said(on, 'breaker')).toEqual([
    'breaks: Circuit 1 of Box carries 17.0 A; for three hours and more a breaker of 20 A is good for 16 A.',
    'breaks: Box takes 17.0 A through an inlet for 20 A, good for 16 A for three hours and more. Move a load to another supply.',
  ]);
  expect(said(on, 'balance')[0]).toMatch(/^said: The legs of Genny carry 17\.0 A and 0 A/);
});

test('wet ground under plugs and cables', () => {
  const wet = {
    ground: {
      surface: 'concrete',
      wetness: 'dry',
      areas: [
        {
          id: 'pool',
          wetness: 'wet down',
          outline: [
            [3, -1],
            [6, -1],
            [6, 6],
            [3, 6],
          ],
        },
      ],
    },
  };
  const gear = [
    generator('Genny'),
    lamp('Head'),
    cable('Cord', 'Genny', 'Head', 5, {
      path: [
        [0, 0],
        [4, 0],
        [4, 4],
      ],
    }),
  ];
  expect(said(gear, 'ground', wet)).toEqual([
    'said: Head is plugged in on wet ground. Keep plugs and sockets off it, on something dry and covered, behind ground-fault protection that was tested tonight.',
    'said: 5.0 m of Cord lies on wet ground. Lay it round, with no joint in the wet.',
  ]);
  expect(said(gear, 'ground')).toEqual([]);
});

test('with everything fed and nothing over, one sentence holds; cautions are always said', () => {
  const on = [generator('Genny'), drawing('Lamp', 500), cable('Cord', 'Genny', 'Lamp', 5)];
  expect(said(on, 'whole')[0]).toMatch(/^holds: The one load that is plugged in has power/);
  expect(said(on, 'caution').join(' ')).toContain('a licensed electrician decide');
  expect(said([], 'caution')).toEqual([]);
});

test('lamps that are switched on together are warned of on a generator that feeds more than two', () => {
  const on = (count: number) =>
    said(
      [
        generator('Genny'),
        ...Array.from({ length: count }, (_, k) => [
          lamp(`Head-${k}`),
          cable(`Cord-${k}`, 'Genny', `Head-${k}`),
        ]).flat(),
      ],
      'generator',
    ).filter((sentence) => sentence.includes('Switch them on one after another.'));
  expect(on(2)).toEqual([]);
  expect(on(3)).toHaveLength(1);
});
