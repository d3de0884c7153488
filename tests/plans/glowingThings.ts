import { add, scale, unit, type Vec3 } from '../../src/core/form/build/vector';
import { lightScene } from '../../src/core/light/lightScene';
import { partLuminance } from '../../src/core/light/partLuminance';
import { cameraAt } from '../../src/core/optics/camera';
import type { Plan } from '../../src/core/plan/schema/plan';
import type { Setup } from '../../src/core/plan/schema/setup';
import { meets, type Ray } from '../../src/core/sight/rays';
import type { StagePart } from '../../src/core/sight/stage';
import { BARE, BODY, lensOf, planFrom, stillSetup } from './bare';

/** Metres from one bay to the next: so far that nothing of one is seen in another. */
const APART = 400;
const EYE: Vec3 = [0, 1.6, 4.6];
/** What the faces glow with on their axis, cd/m²; middle grey is 24. */
const FACE_LUMINANCE = 60;
/** A face whose image in the deck is looked at is brighter: water turns back a tenth of it. */
const MIRRORED_LUMINANCE = 400;
const EVEN = { beamDegrees: 120, fieldDegrees: 168.5 };
const NARROW = { beamDegrees: 60, fieldDegrees: 100 };

/** Of a sign's width and height so much is frame, metres. */
const BORDER = 0.06;
const SIGN: Vec3 = [1.46, 0.96, 0.12];
const SIGN_AREA = (SIGN[0] - BORDER) * (SIGN[1] - BORDER);
const BULB: Vec3 = [0.5, 0.6, 0.5];
/** A bulb's glass is 0.72 of its height. */
const BULB_AREA = (Math.PI / 4) * BULB[0] * BULB[1] * 0.72;

interface Bay {
  readonly id: string;
  readonly form: 'sign' | 'bulb';
  readonly headingDegrees: number;
  readonly light?: typeof EVEN;
  readonly wetness?: 'wet down' | 'puddled';
}

/** Lamps of the place that are looked at: straight, from aside, as a ball, and in a wet deck. */
const BAYS: readonly Bay[] = [
  { id: 'straight', form: 'sign', headingDegrees: 180 },
  { id: 'aside', form: 'sign', headingDegrees: 140 },
  { id: 'narrow', form: 'sign', headingDegrees: 205, light: NARROW },
  { id: 'ball', form: 'bulb', headingDegrees: 180 },
  { id: 'puddled', form: 'sign', headingDegrees: 180, wetness: 'puddled' },
  { id: 'wet', form: 'sign', headingDegrees: 180, wetness: 'wet down' },
];

/** A front of several hundred windows, and a darker exposure, in which the lamps behind them do not burn out. */
const FRONT_X = BAYS.length * APART;

/** The deck that a lamp is mirrored in reaches well beyond both. */
const outline = (x: number) => [
  [x - 12, -14],
  [x + 12, -14],
  [x + 12, 8],
  [x - 12, 8],
];

/** A plan in which some of what glows is looked at: the front, and lamps by the ids of their bays. */
export function glowingThings(ids: readonly string[]): Plan {
  const bays = BAYS.map((bay, k) => ({ ...bay, x: k * APART })).filter(({ id }) => ids.includes(id));
  const hasFront = ids.includes('front');
  return planFrom({
    ...BARE,
    title: 'Glowing things',
    kit: {
      bodies: [BODY],
      lenses: [lensOf('lens', 35), lensOf('wide', 18)],
      heads: bays.map(({ id, form, light = EVEN, wetness }) => ({
        id,
        label: id,
        form,
        size: form === 'sign' ? SIGN : BULB,
        watts: 100,
        powerFactor: 1,
        kelvin: 5600,
        peakCandela:
          (wetness ? MIRRORED_LUMINANCE : FACE_LUMINANCE) * (form === 'sign' ? SIGN_AREA : BULB_AREA),
        ...(form === 'bulb' ? { beamDegrees: 360, fieldDegrees: 360 } : light),
      })),
      stands: [],
    },
    pieces: [
      ...bays.flatMap(({ id, x, wetness }) =>
        wetness
          ? [
              {
                id: `deck-${id}`,
                label: id,
                kind: 'deck',
                outline: outline(x),
                topMetres: 0,
                dropMetres: 1,
              },
            ]
          : [],
      ),
      ...(hasFront
        ? [
            {
              id: 'front',
              label: 'Front',
              kind: 'skyline block',
              at: [FRONT_X, -10, -61],
              headingDegrees: 0,
              size: [60, 24, 2],
              windows: { litShare: 1, seed: 3 },
            },
          ]
        : []),
    ],
    ground: {
      surface: 'concrete',
      wetness: 'dry',
      areas: bays.flatMap(({ id, x, wetness }) =>
        wetness ? [{ id: `area-${id}`, outline: outline(x), wetness }] : [],
      ),
    },
    gear: bays.map(({ id, form, headingDegrees, x, wetness }) => ({
      id: `lamp-${id}`,
      label: id,
      kind: 'practical',
      head: id,
      at: [x, form === 'bulb' ? 1.9 : wetness ? 0.7 : 1.1, wetness ? -3 : 1],
      headingDegrees,
      dim: 1,
    })),
    setups: [
      ...bays.map(({ id, x, wetness }) =>
        stillSetup(
          id,
          'lens',
          { position: [x, EYE[1], EYE[2]], ...(wetness && { tiltDegrees: -24 }) },
          { focus: { metres: wetness ? 8 : 3.6 }, ...(!wetness && { delivery: 3 }) },
        ),
      ),
      ...(hasFront
        ? [
            stillSetup(
              'front',
              'wide',
              { position: [FRONT_X, EYE[1], EYE[2]] },
              { iso: 100, focus: { metres: 60 } },
            ),
          ]
        : []),
    ],
  });
}

/** What core has for a place of a setup's frame, 0..1 from its upper left: the part that shows there, and how bright it is, cd/m². */
export function seenIn(
  plan: Plan,
  setup: Setup,
): (x: number, y: number) => { readonly part: StagePart; readonly luminance: number } | null {
  const scene = lightScene(plan, setup, 0);
  const { pose, frame } = cameraAt(plan, setup, 0);
  const parts = scene.blockers.stage.parts;
  return (x, y) => {
    const across = scale(pose.right, (2 * x - 1) * frame.tanHalfWidth);
    const direction = unit(add(pose.forward, add(across, scale(pose.up, (1 - 2 * y) * frame.tanHalfHeight))));
    const ray: Ray = { origin: pose.position, direction };
    const [first] = parts.map((part) => ({ part, at: meets(part, ray) })).sort((a, b) => a.at - b.at);
    if (!first || first.at === Number.POSITIVE_INFINITY) return null;
    const found = partLuminance(scene, first.part, ray);
    return found && { part: first.part, luminance: found.total };
  };
}
