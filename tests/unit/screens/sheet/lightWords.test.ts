import { describe, expect, test } from 'vitest';
import type { ScrimAdvice } from '../../../../src/core/light/advice';
import type { HighlightPlace } from '../../../../src/core/light/aimForHighlight';
import type { FaceNow } from '../../../../src/core/report/light/lightNow';
import { thresholdWords } from '../../../../src/screens/sheet/light/dark/darkWords';
import {
  distanceText,
  gelText,
  scrimSmall,
  scrimText,
  standsText,
  underText,
} from '../../../../src/screens/sheet/light/exposure/wayWords';
import { giversText } from '../../../../src/screens/sheet/light/faces/giversText';
import { BAR, barEnd, tickAt } from '../../../../src/screens/sheet/light/faces/levelBar';
import { placeText } from '../../../../src/screens/sheet/light/floor/floorWords';
import {
  beatText,
  dimSpoken,
  exposureText,
  keyFromText,
  lightingText,
  ratioText,
} from '../../../../src/screens/sheet/light/words';
import { keyedFace, keyOn } from '../../../plans/keyedFace';

const NBSP = '\u00a0';
const plan = keyedFace({
  gear: keyOn('1', [-2.5, 2.5], [0, 0]),
  cameras: [{ id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0 }],
});
const lamp = plan.gear.find((gear) => gear.kind === 'head');
const level = { lux: 20, footcandles: 20 / 10.76391, stops: -1 };
const face: FaceNow = {
  performerId: 'vera',
  from: 'left',
  key: { ...level, itemId: '1', fedBy: null, shadowEdgeMetres: 0.123 },
  fill: level,
  back: null,
  ratio: 2,
  ratioStops: 1,
  cameraSide: 'right',
  given: [
    {
      itemId: '1',
      fedBy: null,
      lux: 20,
      isAhead: true,
      plane: 'left',
      share: 0.384,
      metres: 4.2,
      bearingDegrees: -41.6,
      elevationDegrees: 25.2,
      shadowEdgeMetres: 0.123,
    },
  ],
};

describe('a face', () => {
  test.each([
    [1, '1 : 1'],
    [5.83, '5.8 : 1'],
    [12.4, '12 : 1'],
    [4000, 'over 99 : 1'],
  ])('a ratio of %d is %s', (ratio, text) => {
    expect(ratioText(ratio)).toBe(text.replaceAll(' ', NBSP));
  });

  test('says where its key comes from, in the frame where there is one', () => {
    expect(keyFromText(face, true)).toBe('key from camera right');
    expect(keyFromText(face, false)).toBe('key on their own left');
    expect(keyFromText({ ...face, cameraSide: null }, true)).toBe('key from near the lens');
    expect(keyFromText({ ...face, from: 'back' }, true)).toBe('lit from behind');
    expect(keyFromText({ ...face, from: 'back', key: null }, true)).toBe('lit from behind only');
    expect(keyFromText({ ...face, from: 'dark', key: null }, true)).toBe('no lamp on the face');
  });

  test('names what lights it, its edge and its eyes', () => {
    expect(giversText(plan, face, { eyes: [], edges: [] }, 'm')).toBe(
      'Key: Head 1. An edge 0.50\u00a0m before the face throws a shadow 0.12\u00a0m soft. Nothing from behind.',
    );
    const light = {
      itemId: '1',
      eye: 'left',
      clock: 10,
      outShare: 0.5,
      sizeShareOfIris: 0.1,
      stops: 2,
      count: 1,
    } as const;
    const eyes = [{ performerId: 'vera', seesEyes: true, lights: [light] }];
    const edge = {
      performerId: 'vera',
      side: 'camera left',
      onTop: false,
      itemId: '1',
      lux: 9,
      stops: 0,
      stopsOverKey: -1,
    } as const;
    expect(giversText(plan, face, { eyes, edges: [edge] }, 'm')).toBe(
      'Key: Head 1. An edge 0.50\u00a0m before the face throws a shadow 0.12\u00a0m soft. Edge camera left: Head 1, −1.0 against the key. Catch light: Head 1, at 10 o’clock.',
    );
    const none = [{ performerId: 'vera', seesEyes: true, lights: [] }];
    expect(
      giversText(plan, face, { eyes: none, edges: [{ ...edge, side: 'none', itemId: null }] }, 'm'),
    ).toBe(
      'Key: Head 1. An edge 0.50\u00a0m before the face throws a shadow 0.12\u00a0m soft. No edge is lit. No catch light.',
    );
  });
});

test('a bar ends at its level, and at six stops with a point beyond', () => {
  expect(barEnd(-1.2)).toEqual({ x: tickAt(-1.2), beyond: 0 });
  expect(barEnd(8)).toEqual({ x: tickAt(BAR.mostStops), beyond: 1 });
  expect(barEnd(-6.1)).toEqual({ x: tickAt(-BAR.mostStops), beyond: -1 });
});

describe('a lamp', () => {
  const named = { ...face, name: 'Vera' };

  test('says its white, what it gives, of how much and from where, in the light of the lengths', () => {
    if (!lamp) throw new Error('no lamp');
    const from = '38\u00a0%, 42° to their own left, 25° up';
    expect(lightingText(plan, lamp, named, 'm')).toMatch(
      new RegExp(`K, 20\u00a0lx on Vera, ${from}, 4\\.20\u00a0m$`),
    );
    expect(lightingText(plan, lamp, named, 'ft-in')).toMatch(
      new RegExp(`K, 1\\.9\u00a0fc on Vera, ${from}, 13′\u00a09¼″$`),
    );
    const [one] = face.given;
    const behind = {
      ...one,
      plane: 'edge',
      isAhead: false,
      bearingDegrees: 179.8,
      elevationDegrees: -0.2,
    } as const;
    expect(lightingText(plan, lamp, { ...named, given: [behind] }, 'm')).toMatch(
      /on Vera, 38\u00a0% on the edge, straight behind, level, 4\.20\u00a0m$/,
    );
    const low = { ...one, bearingDegrees: 0.3, elevationDegrees: -12.4 };
    expect(lightingText(plan, lamp, { ...named, given: [low] }, 'm')).toMatch(
      /on Vera, 38\u00a0%, straight ahead, 12° down, 4\.20\u00a0m$/,
    );
    expect(lightingText(plan, lamp, { ...named, given: [] }, 'm')).toMatch(/K, no light on Vera$/);
    expect(lightingText(plan, { ...lamp, dim: 0, modifier: 'grid' }, named, 'm')).toMatch(/K, with a grid$/);
    expect(lightingText(plan, { ...lamp, dim: 0 }, named, 'm', 0.5)).toMatch(/K, 20\u00a0lx on Vera, /);
  });

  test('is spoken with its stops', () => {
    expect(dimSpoken(0, '0')).toBe('off');
    expect(dimSpoken(1, '100 %')).toBe('100 %, full');
    expect(dimSpoken(0.5, '50 %')).toBe(`50 %, −1.0${NBSP}stop`);
  });
});

test('the head of the sheet has the beat and the exposure', () => {
  const [beat] = plan.beats;
  expect(beatText(plan, beat.atSeconds - 1)).toBe('');
  expect(beatText(plan, beat.atSeconds)).toBe(`beat 1, ${beat.label}`);
  const setup = {
    ...plan.setups[0],
    stop: 2.8,
    iso: 1600,
    shutterDegrees: 180,
    framesPerSecond: 24,
    ndStops: 0.9,
  };
  expect(exposureText(setup)).toBe(`T2.8, ISO${NBSP}1600, 1/48${NBSP}s, ND 0.9${NBSP}stops`);
  expect(exposureText({ ...setup, filterLossStops: 0.5 })).toMatch(
    /, ND 0\.9\u00a0stops, filters 0\.5\u00a0stops$/,
  );
});

describe('ways', () => {
  const scrim = (doubles: number, singles: number, leftStops = 0): ScrimAdvice => ({
    lampId: '1',
    edit: { id: '1', before: { doubles, singles } },
    stops: doubles + singles / 2 + leftStops,
    takenStops: doubles + singles / 2,
    doubles,
    singles,
    leftStops,
  });

  test.each([
    [scrim(2, 1), 'Two doubles and a single'],
    [scrim(1, 0), 'One double'],
    [scrim(0, 1), 'One single'],
    [scrim(4, 2), 'Four doubles and two singles'],
    [scrim(0, 0), null],
    [{ ...scrim(2, 1), takenStops: 0 }, null],
  ])('scrims %#', (advice, text) => {
    expect(scrimText(advice)).toBe(text);
  });

  test('what scrims leave is said, and the gel that leaves nothing', () => {
    expect(scrimSmall(scrim(1, 0, 0.2))).toBe(`0.2${NBSP}stops over it then.`);
    expect(scrimSmall(scrim(1, 0))).toBeNull();
    const gel = { lampId: '1', density: 0.75, edit: { id: '1', before: { density: 0.75 } } };
    expect(gelText(gel)).toBe('Neutral gel of 0.75');
    expect(gelText({ ...gel, density: 0.001 })).toBeNull();
  });

  test('a move, in metres and in feet', () => {
    const edit = { id: '1', to: [0, 0] as [number, number] };
    const back = { lampId: '1', metres: 5.2, backMetres: 1.3, edit };
    expect(distanceText(back, 'm')).toBe(`Back it off 1.30${NBSP}m, to 5.20${NBSP}m`);
    expect(distanceText({ ...back, backMetres: -0.3048 }, 'ft-in')).toBe(
      `Bring it 1′${NBSP}0″ nearer, to 17′${NBSP}¾″`,
    );
  });

  test('where a key stands', () => {
    expect([2, 1, 0, -0.5].map(underText)).toEqual([
      `2${NBSP}stops under`,
      `1${NBSP}stop under`,
      'on the exposure',
      `0.5${NBSP}stops over`,
    ]);
    expect([-0.92, 0.03].map(standsText)).toEqual([`0.9${NBSP}stops under`, 'on the exposure']);
  });

  test('where a highlight’s lamp goes', () => {
    const place = (movedMetres: number, byMetres: number): HighlightPlace => ({
      lampAt: [0, 2, 0],
      move: { id: '1', to: [0, 0] },
      raise: { ids: ['1'], byMetres },
      movedMetres,
      highlight: null,
    });
    expect(placeText(place(1.2, 0), 'm')).toBe(`Move it 1.20${NBSP}m`);
    expect(placeText(place(0.1, -0.4), 'm')).toBe(`Lower it 0.40${NBSP}m and move it 0.10${NBSP}m`);
    expect(placeText(place(0, 0.4), 'm')).toBe(`Raise it 0.40${NBSP}m`);
    expect(placeText(place(0, 0), 'm')).toBe('It lies there now');
  });
});

test('thresholds are said with where they come from', () => {
  expect(thresholdWords({ contrastStops: 1, stopsUnder: 3.5 })).toMatch(
    /^Lost is what is less than 2\.00 to 1 from .* \(just noticed is 1\.05 to 1\), .* 3\.5 stops under grey \(zone I, 4 under, is tone without texture\)\.$/,
  );
});
