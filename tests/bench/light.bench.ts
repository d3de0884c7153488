import { readFileSync } from 'node:fs';
import { type Mesh, Raycaster, Vector3 } from 'three';
import { keySides } from '../../src/core/continuity/keySide';
import type { Vec3 } from '../../src/core/form/build/vector';
import { formsAt } from '../../src/core/form/formsAt';
import { placesOn } from '../../src/core/light/glowFace';
import { illuminance } from '../../src/core/light/illuminance';
import { levelGrid } from '../../src/core/light/levelGrid';
import { type LightScene, lightScene } from '../../src/core/light/lightScene';
import { parsePlanText } from '../../src/core/plan/parse';
import type { Gear } from '../../src/core/plan/schema/gear';
import type { Plan } from '../../src/core/plan/schema/plan';
import { meshesOf } from './naiveMeshes';
import { medianMs, ms, printTable, times } from './table';

/**
 * Levels with shadows over the demo's roof: lux on level ground at 2,000 places from twelve heads, beside a double loop
 * over the same places on the same lamps with three's own raycaster and its spheres and boxes.
 */
const parsed = parsePlanText(readFileSync('assets/loft-night.plan.json', 'utf8'));
if (!parsed.ok) throw new Error(parsed.faults[0].sentence);
const demo = parsed.value;
const HEADS = 12;
const POINTS = 2000;

/** The demo with twelve heads around the action and no other lamp. */
function withHeads(plan: Plan): Plan {
  const rest = plan.gear.filter(
    ({ kind }) => kind !== 'head' && kind !== 'practical' && kind !== 'bulb string',
  );
  const heads = Array.from({ length: HEADS }, (_, k): Gear => {
    const turn = (k / HEADS) * 2 * Math.PI;
    return {
      id: `head-of-bench-${k}`,
      label: `Head ${k}`,
      kind: 'head',
      head: 'led-fresnel-300',
      place: { at: [8 * Math.sin(turn), 3.5, 6 * Math.cos(turn)] },
      aim: [0, 1, 0],
      dim: 0.2,
    };
  });
  return { ...plan, gear: [...rest, ...heads] };
}

const points = Array.from(
  { length: POINTS },
  (_, k): Vec3 => [-11.5 + (k % 50) * 0.47, 0.005, -7.5 + Math.floor(k / 50) * 0.38],
);
const UP: Vec3 = [0, 1, 0];
const plan = withHeads(demo);
const scene: LightScene = lightScene(plan, null, 20);

/** Share of the light of each lamp that gets to a place, by three. */
class Naive {
  private readonly meshes: Mesh[];
  private readonly caster = new Raycaster();

  constructor() {
    const own = new Set(scene.lamps.map(({ form }) => form.itemId));
    const parts = formsAt(plan, 20)
      .filter(({ id }) => !own.has(id))
      .flatMap((form) => form.parts);
    this.meshes = meshesOf(parts).filter((mesh) => mesh !== null);
  }

  visible(lamp: LightScene['lamps'][number], point: Vec3): number {
    const to = new Vector3(...point);
    const places = placesOn(lamp.face, point);
    let open = 0;
    for (const place of places) {
      const from = new Vector3(...place);
      const way = to.clone().sub(from);
      this.caster.set(from, way.clone().normalize());
      this.caster.near = 0;
      this.caster.far = way.length() - 0.001;
      if (this.caster.intersectObjects(this.meshes, false).length === 0) open += 1;
    }
    return open / places.length;
  }
}

const naive = new Naive();

/** A map of the demo's deck, some 200 by 130 squares of level ground. */
const MAP_STEP_METRES = 0.12;
const makeMap = () =>
  levelGrid(plan, null, 20, { heightMetres: 0.005, stepMetres: MAP_STEP_METRES, of: 'level' });
/** Of so many squares one is asked of three. */
const EVERY = 500;
const few = points.filter((_, k) => k % 40 === 0);
const ours = (some: readonly Vec3[]): number =>
  some.reduce((sum, point) => sum + illuminance(scene, point, UP).lux, 0);
const theirs = (): number =>
  few.reduce((sum, point) => sum + scene.lamps.reduce((all, lamp) => all + naive.visible(lamp, point), 0), 0);

const [apart, asked] = few.reduce(
  ([most, count], point) => {
    const { shares } = illuminance(scene, point, UP);
    const porous = new Set(
      shares.filter(({ visible }) => visible > 0 && visible < 1).map(({ itemId }) => itemId),
    );
    const differences = scene.lamps
      .filter(({ form }) => !porous.has(form.itemId))
      .map((lamp) => {
        const share = shares.find(({ itemId }) => itemId === lamp.form.itemId);
        return share ? Math.abs(share.visible - naive.visible(lamp, point)) : 0;
      });
    return [Math.max(most, ...differences), count + differences.length];
  },
  [0, 0],
);

const map = makeMap();
if (!map) throw new Error('the demo has no deck');
const mapMs = medianMs(3, makeMap);
const squares = Array.from({ length: Math.floor((map.columns * map.rows) / EVERY) }, (_, k): Vec3 => {
  const square = k * EVERY + Math.floor(EVERY / 2);
  const [column, row] = [square % map.columns, Math.floor(square / map.columns)];
  return [
    map.corner[0] + (column + 0.5) * map.stepMetres,
    0.005,
    map.corner[1] + (row + 0.5) * map.stepMetres,
  ];
});
const loopMs =
  EVERY *
  medianMs(1, () =>
    squares.reduce(
      (sum, point) => sum + scene.lamps.reduce((each, lamp) => each + naive.visible(lamp, point), 0),
      0,
    ),
  );

const all = medianMs(5, () => ours(points));
const part = medianMs(5, () => ours(few));
const raycast = medianMs(1, theirs);
printTable([
  {
    what: `level map of ${map.columns} × ${map.rows} squares, ${HEADS} heads with shadows`,
    reach: 'a few seconds, and some of it at once',
    reached: ms(mapMs),
  },
  {
    what: `the same beside a double loop with three's raycaster, by ${squares.length} of its squares`,
    reach: '≥ 10 times as fast',
    reached: times(loopMs / mapMs),
  },
  {
    what: `${POINTS} places, ${HEADS} heads with shadows`,
    reach: 'one level map a moment, 1 s',
    reached: ms(all),
  },
  {
    what: `${few.length} of them beside three's raycaster`,
    reach: '≥ 10 times as fast',
    reached: times(raycast / part),
  },
  {
    what: `most that the two differ by, ${asked} lamps at places in full light or full shade`,
    reach: '0',
    reached: apart.toFixed(3),
  },
  {
    what: 'key sides of the demo night',
    reach: '≤ 200 ms',
    reached: ms(medianMs(9, () => keySides({ ...demo }))),
  },
]);
