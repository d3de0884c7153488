import type { Plan } from '../../src/core/plan/schema/plan';
import { planFrom } from '../plans/bare';

const key = (atSeconds: number, position: number[], headingDegrees: number, tiltDegrees = 0) => ({
  atSeconds,
  position,
  headingDegrees,
  tiltDegrees,
  rollDegrees: 0,
});

const setup = (id: string, label: string, lens: string, from: string, to: string, keys: unknown[]) => ({
  id,
  label,
  body: 'body-a',
  mode: 'full',
  lens,
  delivery: 2.39,
  stop: 2.8,
  iso: 800,
  shutterDegrees: 180,
  framesPerSecond: 24,
  ndStops: 0,
  balanceKelvin: 4300,
  focus: { metres: 6 },
  support: 'handheld',
  span: { from, to },
  move: { ease: 'eased', keys },
});

/**
 * A small invented roof as plain JSON: a wet deck, a fence, one performer, a stand in frame, one out of it, three setups.
 * Its action lasts two seconds; the less of it is asked for, the shorter the ways and the sooner it is read.
 */
export function smallRoofDocument(endSeconds = 2) {
  const far = endSeconds / 2;
  return {
    standclear: 1,
    title: 'Small roof',
    notes: '',
    place: {
      label: 'Somewhere',
      latitudeDegrees: 41,
      longitudeDegrees: -8,
      timeZone: 'Europe/Lisbon',
      date: '2026-11-20',
      northDegrees: 0,
    },
    ground: { surface: 'asphalt', wetness: 'wet down' },
    safety: { metres: 0.3, frameWidths: 0.03 },
    // So little is lost that tests of what shows need no lamps.
    dark: { contrastStops: 0.01, stopsUnder: 14 },
    kit: {
      bodies: [
        {
          id: 'body-a',
          label: 'Large sensor',
          modes: [{ id: 'full', label: 'Full', gateMm: [24.89, 18.66] }],
        },
      ],
      lenses: [
        {
          id: 'wide',
          label: '40 mm, 2x anamorphic',
          focalMm: 40,
          squeeze: 2,
          widestStop: 2.3,
          narrowestStop: 22,
          closeFocusMetres: 0.9,
        },
        {
          id: 'long',
          label: '85 mm',
          focalMm: 85,
          squeeze: 1,
          widestStop: 1.8,
          narrowestStop: 22,
          closeFocusMetres: 0.8,
        },
      ],
      heads: [
        {
          id: 'spot',
          label: 'Spot 1 kW',
          form: 'fresnel',
          size: [0.3, 0.35, 0.35],
          watts: 1000,
          powerFactor: 1,
          peakCandela: 60000,
          beamDegrees: 20,
          fieldDegrees: 38,
          kelvin: 3200,
        },
        {
          id: 'globe',
          label: 'Bulb 60 W',
          form: 'bulb',
          size: [0.06, 0.1, 0.06],
          watts: 60,
          powerFactor: 1,
          peakCandela: 65,
          beamDegrees: 360,
          fieldDegrees: 360,
          kelvin: 2700,
        },
      ],
      stands: [
        {
          id: 'tall',
          label: 'Tall stand',
          lowestMetres: 1.2,
          highestMetres: 4,
          footprintMetres: 1.1,
          sections: 3,
          baseTubeMetres: 0.035,
          tubeStepMetres: 0.005,
          legTubeMetres: 0.022,
          collarMetres: 0.5,
        },
      ],
    },
    pieces: [
      {
        id: 'deck',
        label: 'Deck',
        kind: 'deck',
        outline: [
          [-10, -8],
          [10, -8],
          [10, 8],
          [-10, 8],
        ],
        topMetres: 0,
        dropMetres: 6,
      },
      {
        id: 'fence',
        label: 'Fence',
        kind: 'fence',
        path: [
          [-8, -7],
          [8, -7],
        ],
        closed: false,
        baseMetres: 0,
        heightMetres: 1.8,
        postEveryMetres: 2,
        postMetres: 0.05,
        rails: 2,
        mesh: { cellMetres: 0.05, wireMetres: 0.003 },
      },
    ],
    beats: [
      { id: 'start', label: 'Start', atSeconds: 0 },
      { id: 'turn', label: 'Turn', atSeconds: far },
      { id: 'end', label: 'End', atSeconds: endSeconds },
    ],
    cast: [
      {
        id: 'ana',
        label: 'Ana',
        figure: 'female',
        statureMetres: 1.68,
        build: 'medium',
        clothes: {
          upper: 'coat',
          upperColour: '#303844',
          lowerColour: '#22252b',
          head: 'bun',
          headColour: '#2a1d16',
          skinColour: '#b98a6d',
        },
        marks: [
          {
            id: 'a1',
            beat: 'start',
            at: [0, -2],
            headingDegrees: 180,
            stance: 'stand',
            holdSeconds: far / 4,
          },
          {
            id: 'a2',
            beat: 'end',
            at: [1.5 * far, far - 2],
            headingDegrees: 180,
            stance: 'stand',
            holdSeconds: 0,
          },
        ],
      },
    ],
    gear: [
      {
        id: 'stand-in',
        label: 'Lamp stand 1',
        kind: 'stand',
        stand: 'tall',
        at: [1.2, 0, -4],
        headingDegrees: 0,
        heightMetres: 2.6,
      },
      {
        id: 'head-in',
        label: 'Backlight',
        kind: 'head',
        head: 'spot',
        place: { on: 'stand-in' },
        aim: [0, 1.5, -2],
        dim: 1,
      },
      {
        id: 'stand-out',
        label: 'Lamp stand 2',
        kind: 'stand',
        stand: 'tall',
        at: [-3, 0, 7.5],
        headingDegrees: 0,
        heightMetres: 2,
      },
      {
        id: 'bulb',
        label: 'Porch bulb',
        kind: 'practical',
        head: 'globe',
        at: [3, 2.2, -6.5],
        headingDegrees: 180,
        dim: 1,
        tint: '#ffb060',
      },
    ],
    setups: [
      setup('master', 'Master from the stairs', 'wide', 'start', 'end', [
        key(0, [-0.5, 1.5, 5], 0),
        key(endSeconds, [far - 0.5, 1.5 + 0.1 * far, 5 - far], 6 * far, -far),
      ]),
      setup('single', 'Single on Ana', 'long', 'start', 'turn', [key(0, [0.2, 1.6, 4], 356)]),
      setup('still', 'Insert of the bulb', 'long', 'end', 'end', [key(endSeconds, [3, 1.6, 2], 0, 3)]),
    ],
  };
}

/** The same as a plan. */
export function smallRoof(endSeconds = 2): Plan {
  return planFrom(smallRoofDocument(endSeconds));
}
