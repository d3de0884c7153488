import type { ItemForm, PartShape } from '../form/types';

/** A part as sight handles it: numbered, with a sphere around it in the world. */
export interface StagePart {
  readonly index: number;
  readonly item: number;
  readonly name: string;
  readonly shape: PartShape;
  readonly worldFromPart: readonly number[] | null;
  readonly centre: readonly [number, number, number];
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
  readonly centre: readonly [number, number, number];
  readonly radius: number;
}

const BALLS = new WeakMap<PartShape, Ball>();

/** A sphere around a shape: the middle of its box, and the farthest corner from there. */
export function ballAround(shape: PartShape): Ball {
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

function placedCentre(ball: Ball, m: readonly number[] | null): readonly [number, number, number] {
  if (!m) return ball.centre;
  const [x, y, z] = ball.centre;
  return [
    m[0] * x + m[1] * y + m[2] * z + m[3],
    m[4] * x + m[5] * y + m[6] * z + m[7],
    m[8] * x + m[9] * y + m[10] * z + m[11],
  ];
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
        centre: placedCentre(ball, worldFromPart),
        radius: ball.radius,
      });
    }
  });
  firstPart[forms.length] = parts.length;
  return { forms, parts, firstPart };
}
