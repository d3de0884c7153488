import { describe, expect, test } from 'vitest';
import { loadsOf } from '../../../src/core/power/loads';
import { powerReport } from '../../../src/core/report/power/powerReport';
import { planFrom } from '../../plans/bare';
import { cable, drawing, generator, lamp, wired } from '../../plans/wired';
import { smallRoofDocument } from '../smallRoof';

/** Two sockets on each of two circuits of 15 A in a wall. */
const outlet = {
  kind: 'outlet',
  id: 'wall',
  label: 'Wall',
  at: [0, 0.3, 0],
  headingDegrees: 0,
  size: [0.16, 0.32, 0.1],
  power: {
    volts: 120,
    circuits: [
      { amps: 15, sockets: 2 },
      { amps: 15, sockets: 2 },
    ],
  },
};
const monitor = {
  kind: 'monitor',
  id: 'screen',
  label: 'Screen',
  place: { at: [3, 1, 0] },
  headingDegrees: 0,
  diagonalMetres: 0.6,
};
const charger = drawing('charger', 300, 0.6);
/** Next to nothing is lost on so short a cord. */
const cord = (from: string, to: string, circuit?: number) =>
  cable(`to-${to}`, from, to, 0.001, circuit === undefined ? {} : { circuit });

describe('monitor, charger and house circuits', () => {
  test('a screen counts by its area, a charger by its plate, each on its circuit of the house', () => {
    const plan = wired([outlet, monitor, charger, cord('wall', 'screen'), cord('wall', 'charger')]);
    const { circuits, totals, loads } = powerReport(plan, 10);
    // 16 to 9 of 0.6 m: 0.523 by 0.294 m, 15.4 dm² of 4 W; and a factor of 0.6.
    expect(loads.map(({ id, watts }) => [id, watts])).toEqual([
      ['screen', 61],
      ['charger', 300],
    ]);
    const amps = circuits.filter(({ ownerId }) => ownerId === 'wall').map(({ legAmps }) => legAmps[0]);
    expect(amps).toHaveLength(2);
    // Watts by factor by volts, whichever circuit each is given.
    expect(amps[0] + amps[1]).toBeCloseTo((61 + 300) / 0.6 / 120, 2);
    expect(totals.watts).toBeCloseTo(361, 0);
  });

  test('more than a house circuit gives is told by its number, and one beside it goes on', () => {
    const plan = wired([
      outlet,
      drawing('heater', 1500),
      drawing('urn', 1200),
      charger,
      cord('wall', 'heater', 1),
      cord('wall', 'urn', 1),
      cord('wall', 'charger', 2),
    ]);
    const { circuits, sentences } = powerReport(plan, 10);
    expect(circuits.map(({ number, legAmps }) => [number, Number(legAmps[0].toFixed(1))])).toEqual([
      [1, 22.5],
      [2, 4.2],
    ]);
    const told = sentences.filter(({ about, standing }) => about === 'breaker' && standing === 'breaks');
    expect(told).toHaveLength(1);
    expect(told[0].sentence).toMatch(/Wall.*22\.5.A.*15.A/);
  });

  test('all that draws is a load: lamps, screens, carts, chargers; what only feeds is none', () => {
    const cart = {
      kind: 'cart',
      id: 'cart',
      label: 'Cart',
      at: [5, 0, 0],
      headingDegrees: 0,
      size: [0.6, 1.2, 0.5],
      monitors: 2,
    };
    const plan = wired([generator('genny'), lamp('head'), monitor, cart, charger, outlet]);
    expect(loadsOf(plan).map(({ id }) => id)).toEqual(['head', 'screen', 'cart', 'charger']);
  });
});

describe('who walks over a cable', () => {
  /** Ana walks from (0, −2) to (1.5, −1): a cable along z at x crosses her way between these. */
  const crossing = (x: number) =>
    planFrom({
      ...smallRoofDocument(),
      gear: [
        generator('Genny', { volts: 230 }, [x, 0, 6]),
        drawing('Kettle', 500, 1, {}, [x, 0, -6]),
        cable('Cord', 'Genny', 'Kettle', 1, {
          path: [
            [x, 6],
            [x, -6],
          ],
        }),
      ],
    });
  const walked = (x: number) =>
    powerReport(crossing(x), 10).sentences.filter(({ sentence }) => sentence.includes(' over Cord'));

  test('is named, with the cable, and told what to do', () => {
    expect(walked(0.7)).toEqual([
      {
        about: 'ground',
        standing: 'said',
        itemIds: ['Cord', 'ana'],
        sentence: 'Ana walks over Cord. Cover it and tape it down, or lay it round.',
      },
    ]);
  });

  test('not where the cable passes beside the way', () => {
    expect(walked(4)).toEqual([]);
    expect(walked(-3)).toEqual([]);
  });
});
