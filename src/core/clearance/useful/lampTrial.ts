import { dot, length, subtract, type Vec3 } from '../../form/build/vector';
import { lampsAt } from '../../form/lamps';
import { clothLight } from '../../light/clothLight';
import {
  bearingOffFace,
  bestLux,
  type Face,
  type FacePlane,
  faceLight,
  planeNormals,
} from '../../light/face';
import { lampLight } from '../../light/lampLight';
import { type LightScene, lightScene, type SceneLamp, sceneLamp } from '../../light/lightScene';
import { withMovedGear } from '../../light/movedGear';
import { type SourceLight, sourceLux, vectorOf } from '../../light/sourceLight';
import { anchorOf } from '../../plan/edits/anchorOf';
import { setAim } from '../../plan/edits/setAim';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { atan2, hypot } from '../../units/steadyMath';

/** What a lamp does for a face from where it was put. */
interface Tried {
  /** Off the way that the face looks, positive to its own right, and above its eyes; degrees. */
  readonly bearing: number;
  readonly elevation: number;
  readonly metres: number;
  /** Whether it comes from before the plane of the face. */
  readonly isAhead: boolean;
  /** What it gives: from before to the best of the face's planes, from behind to its edge; lux. */
  readonly lux: number;
  /** No less than what the strongest other source on the same side gives; lux. */
  readonly othersLux: number;
}

type Normals = Readonly<Record<FacePlane, Vec3>>;

const onSide = (normals: Normals, isAhead: boolean, source: SourceLight): number =>
  isAhead
    ? Math.max(
        sourceLux(source, normals.front),
        sourceLux(source, normals.left),
        sourceLux(source, normals.right),
      )
    : sourceLux(source, normals.edge);

/**
 * Whether a lamp stands alone on top of a stand without an arm, with nothing before it that stands out: its light goes
 * outwards from there, past nothing of its own.
 */
function standsBare(plan: Plan, lampId: string, own: ReadonlySet<string>): boolean {
  return plan.gear.every((gear) => {
    if (!own.has(gear.id)) return true;
    if (gear.kind === 'stand') return gear.arm === undefined;
    return gear.id === lampId && gear.kind === 'head' && gear.modifier !== 'barn doors';
  });
}

/**
 * Tries one lamp in many places. All other light is worked out once, without the lamp and what moves with it; of a place
 * only the lamp's own light and what cloths make of it is. Where what moves with the lamp is in its own light, the
 * whole scene is asked anew.
 */
export class LampTrial {
  private readonly scene: LightScene;
  private readonly rest: LightScene;
  private readonly normals: Normals;
  private readonly ignore: ReadonlySet<string>;
  private readonly isBare: boolean;
  private readonly others: { readonly ahead: number; readonly behind: number };

  /** @param own the lamp, the stand under it and what else that carries */
  constructor(
    private readonly plan: Plan,
    setup: Setup,
    private readonly seconds: number,
    private readonly face: Face,
    private readonly lampId: string,
    private readonly own: ReadonlySet<string>,
  ) {
    this.scene = lightScene(plan, setup, seconds);
    this.isBare = standsBare(plan, lampId, own);
    this.rest = withMovedGear(this.scene, { ...plan, gear: plan.gear.filter(({ id }) => !own.has(id)) });
    this.normals = planeNormals(face);
    this.ignore = new Set([face.performerId]);
    const { sources } = faceLight(this.rest, face);
    this.others = {
      ahead: Math.max(0, ...sources.filter(({ isAhead }) => isAhead).map(bestLux)),
      behind: Math.max(0, ...sources.filter(({ isAhead }) => !isAhead).map(({ lux }) => lux.edge)),
    };
  }

  /** What the lamp does as it is in a plan that differs by where it is, its aim and its dim; null for no light. */
  in(there: Plan): Tried | null {
    const moved = this.lampOf(there);
    if (!moved) return null;
    if (!this.isBare && this.isInItsOwnLight(there)) return this.inWhole(there);
    const source = lampLight(this.rest, moved, this.face.at, { ignore: this.ignore });
    if (!source || source.rays.length === 0) return null;
    const vector = vectorOf([source]);
    const isAhead = dot(vector, this.face.forward) > 0;
    const fed = this.rest.cloths.map((cloth) => {
      const given = clothLight({ ...this.rest, lamps: [moved] }, cloth, this.face.at, {
        ignore: this.ignore,
      });
      return given ? onSide(this.normals, isAhead, given) : 0;
    });
    return {
      bearing: bearingOffFace(this.face, vector),
      elevation: (atan2(vector[1], hypot(vector[0], vector[2])) * 180) / Math.PI,
      metres: length(subtract(moved.form.position, this.face.at)),
      isAhead,
      lux: onSide(this.normals, isAhead, source),
      othersLux: (isAhead ? this.others.ahead : this.others.behind) + Math.max(0, ...fed),
    };
  }

  /** The lamp as it shines there, with nothing of the scene as its own. */
  private lampOf(there: Plan): SceneLamp | null {
    const gear = there.gear.filter(({ id }) => this.own.has(id));
    const plan = { ...there, gear };
    const form = lampsAt(plan, this.seconds).find(({ itemId }) => itemId === this.lampId);
    if (!form || form.peakCandela <= 0) return null;
    return sceneLamp(form, plan, new Map(gear.map((each) => [each.id, each])), new Map());
  }

  /**
   * Whether the lamp's light passes what moves with it. The face is brought to the lamp and not the lamp to the face,
   * so that what stands keeps its shapes.
   */
  private isInItsOwnLight(there: Plan): boolean {
    const [from, to] = [anchorOf(this.plan, this.lampId), anchorOf(there, this.lampId)];
    if (!from || !to) return true;
    const [x, y, z] = this.face.at;
    const at: Vec3 = [x + from[0] - to[0], y, z + from[1] - to[1]];
    const gear = setAim(this.plan, { id: this.lampId, aim: [...at] }).gear.filter(({ id }) =>
      this.own.has(id),
    );
    const alone = lightScene({ ...this.plan, pieces: [], cast: [], gear }, null, this.seconds);
    const lamp = alone.lamps.find(({ form }) => form.itemId === this.lampId);
    const light = lamp && lampLight(alone, lamp, at, { ignore: this.ignore });
    return !light || light.visible < 1 - 1e-9;
  }

  private inWhole(there: Plan): Tried | null {
    const { sources } = faceLight(withMovedGear(this.scene, there), this.face);
    const own = sources.find(({ itemId }) => itemId === this.lampId);
    const shining = lampsAt(there, this.seconds).find(({ itemId }) => itemId === this.lampId);
    if (!own || !shining) return null;
    const { isAhead } = own;
    const given = sources
      .filter((source) => source !== own && source.isAhead === isAhead)
      .map((source) => (isAhead ? bestLux(source) : source.lux.edge));
    return {
      bearing: own.bearingDegrees,
      elevation: own.elevationDegrees,
      metres: length(subtract(shining.position, this.face.at)),
      isAhead,
      lux: isAhead ? bestLux(own) : own.lux.edge,
      othersLux: Math.max(0, ...given),
    };
  }
}
