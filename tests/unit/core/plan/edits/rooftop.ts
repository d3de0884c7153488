import type { Plan } from '../../../../../src/core/plan/schema/plan';
import { planFrom } from '../../../../plans/bare';

const WHITE = '#ffffff';

/** A plan with one thing of each way to lie on a roof: standing, running, hanging, carried, walking. */
const DOCUMENT = {
  standclear: 1,
  title: 'Rooftop',
  notes: '',
  place: {
    label: 'A roof',
    latitudeDegrees: 38.7,
    longitudeDegrees: -9.1,
    timeZone: 'Europe/Lisbon',
    date: '2026-11-20',
    northDegrees: 0,
  },
  ground: { surface: 'concrete', wetness: 'wet down' },
  safety: { metres: 0.3, frameWidths: 0.02 },
  kit: {
    bodies: [{ id: 'body', label: 'Body', modes: [{ id: 'open', label: 'Open gate', gateMm: [36, 24] }] }],
    lenses: [
      {
        id: 'l50',
        label: '50 mm',
        focalMm: 50,
        squeeze: 2,
        widestStop: 2.3,
        narrowestStop: 22,
        closeFocusMetres: 0.8,
      },
      {
        id: 'l75',
        label: '75 mm',
        focalMm: 75,
        squeeze: 2,
        widestStop: 4,
        narrowestStop: 22,
        closeFocusMetres: 0.9,
      },
    ],
    heads: [
      {
        id: 'panel',
        label: 'Panel',
        form: 'panel',
        size: [0.6, 0.3, 0.1],
        watts: 300,
        powerFactor: 0.95,
        peakCandela: 20000,
        beamDegrees: 60,
        fieldDegrees: 90,
        kelvin: 3200,
      },
    ],
    stands: [
      {
        id: 'medium',
        label: 'Medium stand',
        lowestMetres: 1.2,
        highestMetres: 4.5,
        footprintMetres: 1.1,
        sections: 3,
        baseTubeMetres: 0.035,
        tubeStepMetres: 0.005,
        legTubeMetres: 0.022,
        collarMetres: 0.7,
      },
    ],
  },
  pieces: [
    {
      id: 'fence',
      label: 'Fence',
      kind: 'fence',
      path: [
        [-4, -6],
        [2, -6],
        [2, -3],
      ],
      closed: false,
      baseMetres: 0,
      heightMetres: 1.8,
      postEveryMetres: 1.2,
      postMetres: 0.05,
      rails: 2,
      mesh: null,
    },
    {
      id: 'tank',
      label: 'Tank',
      kind: 'tank',
      at: [8, 0, 4],
      headingDegrees: 0,
      diameterMetres: 2.4,
      drumMetres: 2,
      legMetres: 1,
    },
    {
      id: 'line',
      label: 'Washing line',
      kind: 'line',
      from: [-9, 2, 0],
      to: [-9, 2, 5],
      sagMetres: 0.2,
      diameterMetres: 0.004,
      cloths: 3,
    },
  ],
  beats: [
    { id: 'begin', label: 'Begin', atSeconds: 0 },
    { id: 'end', label: 'End', atSeconds: 8 },
  ],
  cast: [
    {
      id: 'abel',
      label: 'Abel',
      figure: 'male',
      statureMetres: 1.8,
      build: 'medium',
      clothes: {
        upper: 'coat',
        upperColour: WHITE,
        lowerColour: WHITE,
        head: 'cap',
        headColour: WHITE,
        skinColour: WHITE,
      },
      marks: [
        { id: 'm1', beat: 'begin', at: [0, 0], headingDegrees: 90, stance: 'stand', holdSeconds: 2 },
        { id: 'm2', beat: 'end', at: [1, 2], headingDegrees: 90, stance: 'stand', holdSeconds: 0 },
      ],
    },
  ],
  gear: [
    {
      id: 'stand',
      label: 'Lamp stand 1',
      kind: 'stand',
      stand: 'medium',
      at: [3, 0, -4],
      headingDegrees: 30,
      heightMetres: 3,
    },
    {
      id: 'lamp',
      label: 'Head 1',
      kind: 'head',
      head: 'panel',
      place: { on: 'stand' },
      aim: [0, 1.5, 0],
      dim: 1,
    },
    {
      id: 'cable',
      label: 'Cable',
      kind: 'cable',
      path: [
        [3, -4],
        [6, 0.1],
      ],
      baseMetres: 0,
      diameterMetres: 0.02,
    },
    {
      id: 'flag',
      label: 'Flag',
      kind: 'flag',
      place: { at: [4, 2, 1] },
      headingDegrees: 10,
      tiltDegrees: 0,
      size: [1, 1.2],
    },
  ],
  setups: [
    {
      id: 'a',
      label: 'Wide',
      body: 'body',
      mode: 'open',
      lens: 'l50',
      delivery: 2.39,
      stop: 2.8,
      iso: 800,
      shutterDegrees: 180,
      framesPerSecond: 24,
      ndStops: 0,
      balanceKelvin: 3200,
      focus: { follow: 'abel' },
      support: 'dolly',
      span: { from: 'begin', to: 'end' },
      move: {
        ease: 'eased',
        keys: [
          { atSeconds: 0, position: [0, 1.2, 7], headingDegrees: 350, tiltDegrees: 0, rollDegrees: 0 },
          { atSeconds: 8, position: [-1.6, 1.2, 7], headingDegrees: 370, tiltDegrees: 0, rollDegrees: 0 },
        ],
      },
    },
  ],
};

/** Fresh each time, so that a test that changed it could not hide from the next. */
export function rooftop(): Plan {
  const document: unknown = JSON.parse(JSON.stringify(DOCUMENT));
  return planFrom(document);
}
