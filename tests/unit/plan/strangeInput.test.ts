import { describe, expect, test } from 'vitest';
import { parsePlanText } from '../../../src/core/plan/parse';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { reportOf } from '../../../src/core/report/report';
import { planToGlb } from '../../../src/exchange/glb';
import { brokenNumbers } from '../../plans/brokenNumbers';
import { smallRoofDocument } from '../smallRoof';
import { type Changes, spoilt } from './spoilt';

/** What is strange is so in half a second too. */
const END_SECONDS = 0.5;
const { pieces, gear, setups } = smallRoofDocument(END_SECONDS);
const FAR = [5000, 5000, -5000];
const bent = (k: number, p: number) => ({ k1: k, k2: k, k3: k, p1: p, p2: -p });
const post = {
  id: 'wall',
  label: 'Wall',
  kind: 'box',
  at: [0.2, 0, 4],
  headingDegrees: 0,
  size: [0.4, 3, 0.4],
  material: 'brick',
};

function readAnyway(changes: Changes): Plan {
  const parsed = parsePlanText(spoilt(changes, END_SECONDS));
  if (!parsed.ok) throw new Error(parsed.faults.map(({ sentence }) => sentence).join('\n'));
  return parsed.value;
}

/** All that the report lists: everything but performers who stand nowhere. */
const itemsIn = (plan: Plan): number =>
  plan.pieces.length + plan.gear.length + plan.cast.filter(({ marks }) => marks.length > 0).length;

const BESIDE = [1, 2].map(
  (number) => `Lamp stand ${number} stands on nothing, beside the deck. Move it on to the deck.`,
);

const OFF = ['Start', 'End'].map(
  (beat) => `The mark of Ana at “${beat}” lies off the deck, or over a hole in it. Move it on to the deck.`,
);

describe('a plan that is strange is read all the same, and reported', () => {
  test.each<[what: string, changes: Changes, ...notices: string[]]>([
    [
      'a camera inside a wall',
      { 'pieces.2': post },
      'The camera of Single on Ana stands inside Wall at 0 s. Move one of them.',
    ],
    [
      'a performer without marks',
      { 'cast.0.marks': [] },
      'Ana has no mark and is in no picture. Put a mark on the deck.',
    ],
    [
      'no setups',
      { setups: [] },
      'The plan has no setup yet, so there is nothing to report. Put a camera on the roof.',
    ],
    ['no deck', { pieces: pieces.slice(1) }],
    ['nothing but cameras', { pieces: [], cast: [], gear: [] }],
    [
      'a deck whose outline crosses itself',
      {
        'pieces.0.outline': [
          [-9, -9],
          [9, 9],
          [9, -9],
          [-9, 9],
        ],
      },
      'The outline of Deck crosses itself, so its surface is a guess. Draw it round the edge.',
      ...BESIDE,
      ...OFF,
      'Ana stands at “End” within 0.97\u00a0m of an edge of Deck without a guard of about 1.1\u00a0m. A warning line stands 1.8\u00a0m off; local code and a competent person decide.',
    ],
    [
      'a deck without area',
      {
        'pieces.0.outline': [
          [-5, -5],
          [0, -5],
          [5, -5],
        ],
      },
      ...BESIDE,
      ...OFF,
    ],
    [
      'a deck that is one point',
      {
        'pieces.0.outline': [
          [0, 0],
          [0, 0],
          [0, 0],
        ],
      },
      ...BESIDE,
      ...OFF,
    ],
    [
      'a fence without length',
      {
        'pieces.1.path': [
          [3, 3],
          [3, 3],
        ],
      },
    ],
    [
      'a fence that turns straight back',
      {
        'pieces.1.path': [
          [0, 0],
          [4, 0],
          [0, 0],
        ],
      },
    ],
    [
      'two beats at one time',
      { 'beats.1.atSeconds': 0 },
      'Start and Turn are at one moment, 0.0\u00a0s. Move one, or take it out.',
      'Single on Ana covers no time: “Start” and “Turn” are at one moment. Move a beat, or take another.',
    ],
    [
      'two marks at one time, in different places',
      { 'cast.0.marks.1.beat': 'start' },
      'Ana has to be at “Start” 0.45\u00a0m away with no time to get there. Give the walk some.',
    ],
    [
      'a span without length',
      { 'setups.0.span.to': 'start' },
      'A key of Master from the stairs lies at 0.5\u00a0s, outside of what it covers. The nearest moment is 0.0\u00a0s.',
    ],
    ['a camera key outside the span', { 'setups.2.move.keys.0.atSeconds': 3000 }],
    ['an aspect of 0.2', { 'setups.0.delivery': 0.2 }],
    ['an aspect of 5', { 'setups.0.delivery': 5 }],
    ['a lens of 1 mm', { 'kit.lenses.0.focalMm': 1 }],
    ['a lens of 3,000 mm', { 'kit.lenses.0.focalMm': 3000 }],
    ['a lens that bends inwards as much as may be', { 'kit.lenses.0.distortion': bent(-2, 0.5) }],
    ['a lens that bends outwards as much as may be', { 'kit.lenses.0.distortion': bent(2, -0.5) }],
    ['a camera that looks straight up', { 'setups.1.move.keys.0.tiltDegrees': 90 }],
    ['a camera upside down', { 'setups.1.move.keys.0.rollDegrees': 180 }],
    [
      'a stand a millimetre high',
      { 'gear.0.heightMetres': 0.001 },
      'Lamp stand 1 is set to 0.00\u00a0m, but its class, Tall stand, goes down to 1.20\u00a0m.',
    ],
    [
      'a stand of half a kilometre',
      { 'gear.0.heightMetres': 500 },
      'Lamp stand 1 is set to 500.00\u00a0m, but its class, Tall stand, goes up to 4.00\u00a0m.',
    ],
    [
      'a head aimed at itself',
      { 'gear.1.place': { at: [0, 2, 0] }, 'gear.1.aim': [0, 2, 0] },
      'Backlight is aimed at itself: found an aim 0.00\u00a0m from its housing, expected 0.05\u00a0m or more. Aim it at what it is to light.',
    ],
    [
      'a lamp inside a wall',
      { 'gear.1.place': { at: [-3, 1.2, -3] }, 'pieces.2': { ...post, at: [-3, 0, -3], size: [2, 3, 2] } },
      'Backlight shines inside Wall: found all of its light in there, expected it in the open. Move one of them.',
    ],
    ['lamps that are all off', { 'gear.1.dim': 0, 'gear.3.dim': 0 }],
    ['an exposure for the sun', { 'setups.0.iso': 1, 'setups.0.ndStops': 20, 'setups.0.filterLossStops': 5 }],
    [
      'a head behind all that there is',
      {
        'gear.1.before': {
          mired: -300,
          density: 4,
          diffusion: { transmission: 0, spreadDegrees: 120 },
          doubles: 4,
          singles: 4,
        },
      },
    ],
    ['an exposure for the stars', { 'setups.0.iso': 1e6, 'setups.0.framesPerSecond': 1 }],
    [
      'a sign on the mains',
      { 'kit.heads.1.form': 'sign' },
      'In all setups 180° at 24\u00a0fps flickers by up to 0.1\u00a0stops under Porch bulb. Safe on 50\u00a0Hz: 86.4°, 172.8° (nearest), 259.2°, 345.6°.',
    ],
    [
      'a sign on other mains, which no angle suits',
      { 'kit.heads.1.form': 'sign', 'place.mainsHertz': 60, 'setups.0.framesPerSecond': 200 },
      'In setup A 180° at 200\u00a0fps flickers by up to 3.7\u00a0stops under Porch bulb. No angle is safe on 60\u00a0Hz mains; 60\u00a0fps is.',
    ],
    ['gear in one place, far away', { 'gear.0.at': FAR, 'gear.2.at': FAR, 'gear.3.at': FAR }, ...BESIDE],
  ])('%s', (_, changes, ...notices) => {
    const plan = readAnyway(changes);
    const report = reportOf(plan);
    expect(report.setups.map(({ items }) => items.length)).toEqual(plan.setups.map(() => itemsIn(plan)));
    expect(brokenNumbers(report)).toEqual([]);
    expect(report.notices.map(({ sentence }) => sentence)).toEqual(notices);
    expect(planToGlb(plan, 0).length).toBeGreaterThan(0);
  });

  test('two thousand items', () => {
    const stand = (k: number) => ({
      ...gear[0],
      id: `more-${k}`,
      at: [(k % 50) * 0.4 - 10, 0, Math.floor(k / 50) * 0.4 - 8],
    });
    const crowd = Array.from({ length: 2000 - pieces.length }, (_, k) => stand(k));
    const plan = readAnyway({
      cast: [],
      gear: crowd,
      setups: [{ ...setups[1], span: { from: 'start', to: 'start' } }],
    });
    const report = reportOf(plan);
    expect(report.setups[0].items).toHaveLength(2000);
    expect(brokenNumbers(report)).toEqual([]);
  });
});
