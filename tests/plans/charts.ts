import type { Vec3 } from '../../src/core/form/build/vector';
import { askedLux } from '../../src/core/light/exposure';
import { cameraAt } from '../../src/core/optics/camera';
import type { Plan } from '../../src/core/plan/schema/plan';
import { BARE, BODY, lensOf, planFrom, stillSetup } from './bare';

const BENT = { k1: -0.12, k2: 0.03, k3: 0, p1: 0.003, p2: -0.002 };

/** From the lamp to the middle of the boards, metres. */
const LAMP_METRES = 6;

/** Boards by where they stand before the first camera: tangents right and up, metres ahead, and how they are turned. */
const BOARDS = [
  { right: -0.19, up: -0.085, ahead: 3.2, turn: 24, tilt: 12 },
  { right: 0.14, up: -0.09, ahead: 3.4, turn: -28, tilt: -8 },
  { right: -0.1, up: 0.09, ahead: 4.4, turn: -18, tilt: -26 },
  { right: 0.18, up: 0.09, ahead: 4.2, turn: 32, tilt: 10 },
] as const;

/** Four lens charts in an even light, and three cameras on them: spherical, 2x squeezed, and one that bends. */
export function chartsPlan(): Plan {
  const document = {
    ...BARE,
    title: 'Charts',
    kit: {
      bodies: [BODY],
      lenses: [
        lensOf('spherical', 35),
        lensOf('squeezed', 50, { label: '50 mm, 2x', squeeze: 2 }),
        lensOf('bent', 32, { label: '32 mm, bent', distortion: BENT }),
      ],
      heads: [
        {
          id: 'panel',
          label: 'Panel',
          form: 'panel',
          size: [1.2, 1.2, 0.1],
          watts: 1000,
          powerFactor: 1,
          peakCandela: 1,
          beamDegrees: 120,
          fieldDegrees: 168.5,
          kelvin: 5600,
        },
      ],
      stands: [],
    },
    gear: [
      {
        id: 'light',
        label: 'Panel',
        kind: 'head',
        head: 'panel',
        place: { at: [0, 3.2, 7] },
        aim: [0.5, 1.5, 1],
        dim: 1,
      },
    ],
    setups: [
      stillSetup(
        'spherical',
        'spherical',
        { position: [0.4, 1.6, 5], headingDegrees: 5, tiltDegrees: -3, rollDegrees: 4 },
        { delivery: 1.85 },
      ),
      stillSetup(
        'squeezed',
        'squeezed',
        { position: [0.9, 1.4, 5.2], headingDegrees: -1, tiltDegrees: -1, rollDegrees: -3 },
        { mode: 'high', delivery: 2.39 },
      ),
      stillSetup(
        'bent',
        'bent',
        { position: [0.2, 1.75, 4.9], headingDegrees: 7.5, tiltDegrees: -6, rollDegrees: 2 },
        { delivery: 1.85 },
      ),
    ],
  };
  const bare = planFrom(document);
  const { pose } = cameraAt(bare, bare.setups[0], 0);
  const pieces = BOARDS.map(({ right, up, ahead, turn, tilt }, k) => {
    const middle = ([0, 1, 2] as const).map(
      (axis): number =>
        pose.position[axis] + ahead * (pose.forward[axis] + right * pose.right[axis] + up * pose.up[axis]),
    );
    return {
      id: `chart-${k}`,
      label: `Chart ${k + 1}`,
      kind: 'chart',
      at: [middle[0], 0, middle[2]],
      // Towards the camera, and off it by the turn.
      headingDegrees: 185 + turn,
      widthMetres: 0.88,
      heightMetres: 0.56,
      middleMetres: middle[1],
      tiltDegrees: tilt,
      face: { kind: 'squares', columns: 10, rows: 6 },
    };
  });
  const peakCandela = askedLux(bare.setups[0]) * LAMP_METRES * LAMP_METRES;
  const heads = document.kit.heads.map((head) => ({ ...head, peakCandela }));
  return planFrom({ ...document, pieces, kit: { ...document.kit, heads } });
}

export type Corner = { readonly own: Vec3; readonly across: number; readonly down: number };

/** Where squares meet four and four on a board, in its own plane: to the right and down from its middle as one faces it. */
export function innerCorners(squareMetres: number, columns: number, rows: number): readonly Corner[] {
  return Array.from({ length: (columns - 1) * (rows - 1) }, (_, k) => {
    const [across, down] = [(k % (columns - 1)) + 1, Math.floor(k / (columns - 1)) + 1];
    return {
      across,
      down,
      own: [(across - columns / 2) * squareMetres, (down - rows / 2) * squareMetres, 0] as const,
    };
  });
}
