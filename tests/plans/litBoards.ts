import type { Vec3 } from '../../src/core/form/build/vector';
import { add, length, scale } from '../../src/core/form/build/vector';
import { greyLuminance } from '../../src/core/light/exposure';
import { finishOf } from '../../src/core/light/finishes';
import { illuminance } from '../../src/core/light/illuminance';
import { lightScene } from '../../src/core/light/lightScene';
import { throughHaze } from '../../src/core/light/surroundings';
import { cameraAt } from '../../src/core/optics/camera';
import type { Plan } from '../../src/core/plan/schema/plan';
import { meets } from '../../src/core/sight/rays';
import { BARE, BODY, lensOf, planFrom, stillSetup } from './bare';

/** Metres from one bay to the next: so far that no bay's lamp is seen in another's. */
const APART = 80;
const CAMERA: Vec3 = [0, 1.6, 4.6];
/** The boards' normal, and how far before them their light is read, metres. */
const FACING: Vec3 = [0, 0, 1];
const OFF_METRES = 0.003;

const LENS_DEGREES = { beamDegrees: 25, fieldDegrees: 38 };
const EVEN = { beamDegrees: 120, fieldDegrees: 168.5 };

/** A lamp that is measured, strong above its axis and weak to its left. */
const TABLE = {
  verticalDegrees: [0, 10, 20, 30, 45, 60],
  horizontalDegrees: [0, 90, 180, 270, 360],
  candela: [
    [1000, 900, 700, 400, 150, 0],
    [1000, 980, 900, 700, 300, 0],
    [1000, 700, 300, 100, 20, 0],
    [1000, 800, 500, 200, 50, 0],
    [1000, 900, 700, 400, 150, 0],
  ],
  source: 'made for the test',
};

interface Lamp {
  readonly id: string;
  readonly at: Vec3;
  readonly aim: Vec3;
  readonly size: Vec3;
  /** Beside the others of its bay. */
  readonly strength: number;
  readonly light: typeof LENS_DEGREES & { readonly distribution?: typeof TABLE };
}

interface Bay {
  readonly id: string;
  readonly lamps: readonly Lamp[];
  readonly gear: (x: number) => readonly object[];
}

const SMALL: Vec3 = [0.06, 0.06, 0.2];
const BROAD: Vec3 = [1.1, 1.1, 0.2];
const lamp = (id: string, at: Vec3, aim: Vec3, more: Partial<Lamp> = {}): Lamp => ({
  id,
  at,
  aim,
  size: SMALL,
  strength: 1,
  light: LENS_DEGREES,
  ...more,
});
const cloth = (kind: string, id: string, at: Vec3, size: readonly [number, number], more: object) => ({
  id,
  label: id,
  kind,
  place: { at },
  size,
  headingDegrees: 0,
  tiltDegrees: 0,
  ...more,
});

/** No part of sixteen, so that no soft edge looks like it. */
const NET = 0.53;

/** Grey boards that fill the frame, one for each way in which light comes: all that a picture has to get right. */
const BAYS: readonly Bay[] = [
  {
    id: 'flag',
    lamps: [
      lamp('key', [-3.4, 2.6, 3.4], [0.4, 1.6, 0], { strength: 0.3 }),
      lamp('fill', [3, 2.2, 4.4], [0, 1.6, 0], { light: EVEN, size: BROAD }),
    ],
    gear: () => [
      // Its lamp is the one of this bay that has a shadow: the light picture draws two, and a frame's lamp takes the other.
      cloth('flag', 'flag', [2.1, 2, 2], [0.9, 1.6], { headingDegrees: 334 }),
    ],
  },
  { id: 'beam', lamps: [lamp('spot', [-2.2, 2.8, 2.6], [0.2, 1.5, 0])], gear: () => [] },
  {
    id: 'table',
    lamps: [
      lamp('measured', [1.2, 2.4, 2.4], [0, 1.5, 0], { light: { ...LENS_DEGREES, distribution: TABLE } }),
    ],
    gear: () => [],
  },
  {
    id: 'broad',
    lamps: [lamp('soft', [-1.9, 2.2, 1.9], [0.2, 1.5, 0], { size: BROAD, light: EVEN })],
    gear: () => [],
  },
  {
    id: 'bounce',
    lamps: [lamp('up', [0.4, 1, 3.4], [-2.6, 2, 2.4], { light: EVEN })],
    gear: (x) => [
      cloth('bounce', 'bounce', [x - 2.6, 2, 2.4], [1.2, 1.2], { headingDegrees: 60, reflectance: 0.8 }),
    ],
  },
  {
    id: 'frame',
    lamps: [lamp('behind', [-2.9, 2.2, 4.2], [-1.4, 1.9, 2], { light: EVEN })],
    gear: (x) => [
      cloth('frame', 'frame', [x - 1.8, 2, 2.6], [1.2, 1.2], { headingDegrees: 34, transmission: 0.4 }),
    ],
  },
  {
    id: 'net',
    lamps: [lamp('netted', [-2.4, 2.4, 3.4], [0, 1.6, 0], { light: EVEN })],
    gear: (x) => [
      cloth('flag', 'net', [x - 1.1, 2, 2], [1.2, 1.6], { headingDegrees: 34, transmission: NET }),
    ],
  },
];

/** Whether all of a lamp is seen, and through one net. */
const isNetted = (visible: number): boolean => Math.abs(visible - NET) < 1e-9;

const moved = ([x, y, z]: Vec3, by: number): Vec3 => [x + by, y, z];

function documentOf(candela: ReadonlyMap<string, number>) {
  const bays = BAYS.map((bay, k) => ({ ...bay, x: k * APART }));
  return {
    ...BARE,
    title: 'Boards',
    kit: {
      bodies: [BODY],
      lenses: [lensOf('lens', 35)],
      heads: bays.flatMap(({ id, lamps }) =>
        lamps.map(({ id: own, size, light, strength }) => {
          const peakCandela = strength * (candela.get(id) ?? 1000);
          const { distribution } = light;
          const scaled = distribution && {
            ...distribution,
            candela: distribution.candela.map((row) => row.map((each) => (each * peakCandela) / 1000)),
          };
          return {
            id: own,
            label: own,
            form: 'panel',
            size,
            watts: 100,
            powerFactor: 1,
            kelvin: 5600,
            peakCandela,
            ...light,
            ...(scaled && { distribution: scaled }),
          };
        }),
      ),
      stands: [],
    },
    pieces: bays.map(({ id, x }) => ({
      id: `board-${id}`,
      label: id,
      kind: 'chart',
      at: [x, 0, 0],
      headingDegrees: 180,
      widthMetres: 6,
      heightMetres: 4,
      middleMetres: 2,
      tiltDegrees: 0,
      face: { kind: 'grey card' },
    })),
    gear: bays.flatMap(({ lamps, gear, x }) => [
      ...lamps.map(({ id, at, aim }) => ({
        id: `lamp-${id}`,
        label: id,
        kind: 'head',
        head: id,
        place: { at: moved(at, x) },
        aim: moved(aim, x),
        dim: 1,
      })),
      ...gear(x),
    ]),
    // Low frames have few pixels: without a graphics card each of them takes its time.
    setups: bays.map(({ id, x }) =>
      stillSetup(id, 'lens', { position: moved(CAMERA, x) }, { focus: { metres: CAMERA[2] }, delivery: 3.2 }),
    ),
  };
}

/** What core has for a place of a board. */
export interface OnBoard {
  /** cd/m² */
  readonly luminance: number;
  /** Whether some lamp is seen in part from there: the soft edge of a shadow. */
  readonly isSoft: boolean;
}

/** What core has for a place of a setup's frame, 0..1 from its upper left; null where it shows something else than the board. */
export function onBoard(plan: Plan, setupId: string): (x: number, y: number) => OnBoard | null {
  const setup = plan.setups.find(({ id }) => id === setupId);
  if (!setup) throw new Error(`no setup ${setupId}`);
  const scene = lightScene(plan, setup, 0);
  const { pose, frame } = cameraAt(plan, setup, 0);
  const { stage } = scene.blockers;
  return (x, y) => {
    const direction = add(
      pose.forward,
      add(
        scale(pose.right, (2 * x - 1) * frame.tanHalfWidth),
        scale(pose.up, (1 - 2 * y) * frame.tanHalfHeight),
      ),
    );
    const ray = { origin: pose.position, direction };
    const [first] = stage.parts.map((part) => ({ part, at: meets(part, ray) })).sort((a, b) => a.at - b.at);
    if (first?.part.name !== 'card') return null;
    const way = scale(direction, first.at);
    const place = add(add(pose.position, way), scale(FACING, OFF_METRES));
    const { lux, shares } = illuminance(scene, place, FACING);
    const luminance = (finishOf(first.part.shape).diffuse * lux) / Math.PI;
    return {
      luminance: throughHaze(scene.ambient, luminance, length(way)),
      isSoft: shares.some(({ visible }) => visible > 0 && visible < 1 && !isNetted(visible)),
    };
  };
}

/** The bays, each as bright as its exposure wants it in the middle of the frame. */
export function litBoardsPlan(): Plan {
  const even = planFrom(documentOf(new Map()));
  const candela = new Map(
    even.setups.map((setup) => {
      const inMiddle = onBoard(even, setup.id)(0.5, 0.5)?.luminance;
      if (!inMiddle) throw new Error(`nothing lights the board of ${setup.id}`);
      return [setup.id, (1000 * greyLuminance(setup)) / inMiddle] as const;
    }),
  );
  return planFrom(documentOf(candela));
}
