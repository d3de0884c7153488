import { moved } from '../form/build/placement';
import type { Vec3 } from '../form/build/vector';
import type { ItemForm, PartShape } from '../form/types';
import type { CameraPose } from '../optics/types';

/** A part as sight handles it: numbered, with a sphere around it in the world. */
export interface StagePart {
  readonly index: number;
  readonly item: number;
  readonly name: string;
  readonly shape: PartShape;
  readonly worldFromPart: readonly number[] | null;
  readonly centre: Vec3;
  readonly radius: number;
}

/** Everything there is to see at one instant. */
export interface SightStage {
  readonly forms: readonly ItemForm[];
  readonly parts: readonly StagePart[];
  /** Index of the first part of each item, and one past the last at the end. */
  readonly firstPart: Int32Array;
}

interface Ball {
  readonly centre: Vec3;
  readonly radius: number;
}

const BALLS = new WeakMap<PartShape, Ball>();

/** A sphere around a shape: the middle of its box, and the farthest corner from there. */
function ballAround(shape: PartShape): Ball {
  const known = BALLS.get(shape);
  if (known) return known;
  const { positions } = shape;
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let k = 0; k < positions.length; k += 1) {
    const axis = k % 3;
    low[axis] = Math.min(low[axis], positions[k]);
    high[axis] = Math.max(high[axis], positions[k]);
  }
  const centre: [number, number, number] =
    positions.length === 0
      ? [0, 0, 0]
      : [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
  let square = 0;
  for (let k = 0; k < positions.length; k += 3) {
    const x = positions[k] - centre[0];
    const y = positions[k + 1] - centre[1];
    const z = positions[k + 2] - centre[2];
    square = Math.max(square, x * x + y * y + z * z);
  }
  const ball = { centre, radius: Math.sqrt(square) };
  BALLS.set(shape, ball);
  return ball;
}

/** A place in a part's own coordinates, in the world. */
export const worldOf = ({ worldFromPart }: Pick<StagePart, 'worldFromPart'>, place: Vec3): Vec3 =>
  worldFromPart ? moved(worldFromPart, place) : place;

/**
 * The corners of a part as a camera has them, three numbers each ([right, up, forward], metres), into a list that is
 * long enough.
 */
export function cornersBefore(
  { shape, worldFromPart: m }: StagePart,
  pose: CameraPose,
  into: Float64Array,
): void {
  const { positions } = shape;
  const [ex, ey, ez] = pose.position;
  for (let axis = 0; axis < 3; axis += 1) {
    const way = axis === 0 ? pose.right : axis === 1 ? pose.up : pose.forward;
    const [x, y, z] = way;
    const a = m ? m[0] * x + m[4] * y + m[8] * z : x;
    const b = m ? m[1] * x + m[5] * y + m[9] * z : y;
    const c = m ? m[2] * x + m[6] * y + m[10] * z : z;
    const d = m ? (m[3] - ex) * x + (m[7] - ey) * y + (m[11] - ez) * z : -ex * x - ey * y - ez * z;
    for (let k = 0; k < positions.length; k += 3)
      into[k + axis] = a * positions[k] + b * positions[k + 1] + c * positions[k + 2] + d;
  }
}

/** A direction in the world, in a part's own coordinates; the motion is rigid, so its rows turn back. */
export function turnedInto({ worldFromPart: m }: Pick<StagePart, 'worldFromPart'>, way: Vec3): Vec3 {
  if (!m) return way;
  const [x, y, z] = way;
  return [m[0] * x + m[4] * y + m[8] * z, m[1] * x + m[5] * y + m[9] * z, m[2] * x + m[6] * y + m[10] * z];
}

/** A place in the world, in a part's own coordinates. */
export function placeIn(part: Pick<StagePart, 'worldFromPart'>, place: Vec3): Vec3 {
  const m = part.worldFromPart;
  return m ? turnedInto(part, [place[0] - m[3], place[1] - m[7], place[2] - m[11]]) : place;
}

/**
 * Numbers the parts of the forms of one instant. What has not changed since `before`, the stage of another instant of
 * the same plan, is taken over from it; where nothing has, that stage itself comes back.
 */
export function stageOf(forms: readonly ItemForm[], before: SightStage | null = null): SightStage {
  const isSame = (form: ItemForm, item: number) => before?.forms[item] === form;
  if (before && before.forms.length === forms.length && forms.every(isSame)) return before;
  const parts: StagePart[] = [];
  const firstPart = new Int32Array(forms.length + 1);
  forms.forEach((form, item) => {
    firstPart[item] = parts.length;
    if (before && isSame(form, item) && before.firstPart[item] === parts.length) {
      for (let k = before.firstPart[item]; k < before.firstPart[item + 1]; k += 1)
        parts.push(before.parts[k]);
      return;
    }
    for (const { name, shape, worldFromPart } of form.parts) {
      if (shape.indices.length === 0) continue;
      const ball = ballAround(shape);
      parts.push({
        index: parts.length,
        item,
        name,
        shape,
        worldFromPart,
        centre: worldOf({ worldFromPart }, ball.centre),
        radius: ball.radius,
      });
    }
  });
  firstPart[forms.length] = parts.length;
  return { forms, parts, firstPart };
}

/** The item of each part by number, and whether any is porous. */
interface Numbers {
  readonly itemOfPart: Int32Array;
  readonly hasLayers: boolean;
}

const NUMBERS = new WeakMap<SightStage, Numbers>();

/** The numbers of a stage, worked out once: one that stands still is looked at by hundreds of small looks. */
export function numbersOf(stage: SightStage): Numbers {
  let numbers = NUMBERS.get(stage);
  if (!numbers) {
    const itemOfPart = new Int32Array(stage.parts.length);
    for (const { index, item } of stage.parts) itemOfPart[index] = item;
    numbers = { itemOfPart, hasLayers: stage.parts.some((part) => part.shape.openness !== null) };
    NUMBERS.set(stage, numbers);
  }
  return numbers;
}
