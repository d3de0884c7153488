import { beforeAll, expect, test } from 'vitest';
import { compose, moved, movedBy, standingAt, tiltedBy } from '../../src/core/form/build/placement';
import type { Vec3 } from '../../src/core/form/build/vector';
import { cameraAt } from '../../src/core/optics/camera';
import { projectPoint } from '../../src/core/optics/project';
import type { Piece } from '../../src/core/plan/schema/pieces';
import type { Plan } from '../../src/core/plan/schema/plan';
import type { Setup } from '../../src/core/plan/schema/setup';
import { fromOpenCv, poseFrom } from '../outside/optics/calibration';
import { chartsPlan, innerCorners } from '../plans/charts';
import { withFolder } from './chosenFolder';
import { openPage } from './harness';
import {
  calibrated,
  cornersIn,
  cornersStand,
  type Grey,
  greyOf,
  type Optics,
  poseOf,
  refined,
  type Sighting,
} from './pictureCorners';
import { savedStills } from './savedStills';
import { withoutDemo } from './withoutDemo';
import { withoutReports } from './withoutReports';

/** Without a graphics card a page may take its time. */
const PATIENT = { timeout: 240_000 };

/** The boards of the plan, ten by six squares of 0.08 m. */
const SQUARE_METRES = 0.08;
const [COLUMNS, ROWS] = [10, 6];

type Chart = Extract<Piece, { kind: 'chart' }>;

/** Corners of a board as they are found in a picture: those that OpenCV found next to where each should be. */
function boardIn(
  chart: Chart,
  plan: Plan,
  setup: Setup,
  picture: Grey,
  corners: readonly (readonly [number, number])[],
): Sighting[] {
  const world = compose(
    standingAt(chart.at, chart.headingDegrees),
    compose(movedBy([0, chart.middleMetres, 0]), tiltedBy(chart.tiltDegrees)),
  );
  const camera = cameraAt(plan, setup, 0);
  const inPicture = (own: Vec3) => {
    // As one faces the board its right is its own left.
    const point = moved(world, [-own[0], -own[1], own[2]]);
    const place = projectPoint(camera, point);
    if (!place) throw new Error('a corner is behind the camera');
    return { point, at: [place.x * picture.width, place.y * picture.height] as const, depth: place.depth };
  };
  return innerCorners(SQUARE_METRES, COLUMNS, ROWS).map(({ own }) => {
    const { point, at, depth } = inPicture(own);
    const square = (SQUARE_METRES * picture.width) / (2 * camera.frame.tanHalfWidth * depth);
    const [nearest] = corners.toSorted((a, b) => away(a, at) - away(b, at));
    if (away(nearest, at) > square / 3) throw new Error(`no corner within a third of a square of ${at}`);
    const pixel = refined(picture, nearest, Math.min(9, Math.round(square / 4)));
    return { point: fromOpenCv(point), pixel };
  });
}

const away = (a: readonly number[], b: readonly number[]): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Degrees between two directions. */
const between = (a: readonly number[], b: readonly number[]): number =>
  (Math.asin(Math.min(1, Math.hypot(...[0, 1, 2].map((k) => a[k] - b[k])) / 2)) * 360) / Math.PI;

/** The matrix that a gate and a lens make, by hand: a squeezed lens is half as long across. */
function opticsOf(plan: Plan, setup: Setup, { width, height }: Grey): Optics {
  const lens = plan.kit.lenses.find(({ id }) => id === setup.lens);
  const gate = plan.kit.bodies[0].modes.find(({ id }) => id === setup.mode)?.gateMm;
  if (!lens || !gate) throw new Error('the plan lacks its lens or its gate');
  // Of what the lens unsqueezes to, the delivery takes all the width, or all the height where it is narrower.
  const unsqueezed = gate[0] * lens.squeeze;
  const used = Math.min(unsqueezed, gate[1] * setup.delivery);
  const { k1, k2, k3, p1, p2 } = lens.distortion ?? { k1: 0, k2: 0, k3: 0, p1: 0, p2: 0 };
  return {
    fx: (lens.focalMm / used) * width,
    fy: (lens.focalMm / (used / setup.delivery)) * height,
    cx: width / 2,
    cy: height / 2,
    lens: [k1, k2, p1, p2, k3],
  };
}

beforeAll(cornersStand);

test(
  'from saved pictures of lens charts OpenCV finds each camera where the plan has it, and its focal length',
  PATIENT,
  async () => {
    const page = await openPage({
      width: 1000,
      height: 640,
      before: [withFolder, withoutReports, withoutDemo],
    });
    page.context().setDefaultTimeout(120_000);
    const plan = chartsPlan();
    const stills = await savedStills(page, plan);
    const charts = plan.pieces.filter((piece) => piece.kind === 'chart');
    for (const setup of plan.setups) {
      const still = stills.get(setup.id);
      if (!still) throw new Error(`no picture of ${setup.id}`);
      const picture = greyOf(still);
      expect(picture.width).toBe(1920);
      const corners = cornersIn(picture);
      const boards = charts.map((chart) => boardIn(chart, plan, setup, picture, corners));
      const optics = opticsOf(plan, setup, picture);

      const { rows, move } = poseOf(boards.flat(), optics);
      const pose = poseFrom(rows, move);
      const { position, right, forward } = cameraAt(plan, setup, 0).pose;
      const metres = Math.hypot(...[0, 1, 2].map((axis) => pose.position[axis] - position[axis]));
      const turn = Math.max(between(pose.forward, forward), between(pose.right, right));

      // The focal length, and how the lens bends, from a guess that is a tenth off and straight.
      const guess = { ...optics, fx: optics.fx * 1.1, fy: optics.fy * 1.1 };
      const solved = calibrated(boards.flat(), guess, [picture.width, picture.height], setup.id === 'bent');
      const [wide, high] = [solved.fx / optics.fx - 1, solved.fy / optics.fy - 1];
      console.log(
        `${setup.id}: ${(metres * 1000).toFixed(2)} mm and ${turn.toFixed(4)}° off, focal length ${(wide * 100).toFixed(3)} % and ${(high * 100).toFixed(3)} % off, mean miss ${solved.missPixels.toFixed(3)} pixels, k1 k2 p1 p2 ${solved.lens.slice(0, 4).map((each) => each.toFixed(4))}`,
      );
      // The boards stand some four metres away.
      expect(metres).toBeLessThan(0.002 * 4);
      expect(turn).toBeLessThan(0.1);
      expect(Math.abs(wide)).toBeLessThan(0.002);
      expect(Math.abs(high)).toBeLessThan(0.002);
      expect(solved.missPixels).toBeLessThan(0.2);
      // k2 can hardly be told from k1 in the middle of the field, where the boards are.
      [0.01, 0.1, 0.001, 0.001].forEach((near, k) => {
        expect(Math.abs(solved.lens[k] - optics.lens[k])).toBeLessThan(near);
      });
    }
  },
);
