import { scale, type Vec3 } from '../../core/form/build/vector';
import { lengthText, numberText } from './text';

/** Centimetres of the stage to a metre of the plan. */
export const CENTIMETRES = 100;

/** Three axes and a place, as what they turn and move: x to the right, y up, z towards whoever is looked at from. */
export interface Axes {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly forward: Vec3;
  /** Metres. */
  readonly position: Vec3;
}

/** A matrix of the stage as text: its rows are the axes and the place, as a row vector is multiplied from the left. */
export function matrixText({ right, up, forward, position }: Axes): string {
  const rows = [right, up, scale(forward, -1)].map((axis) => `(${axis.map(numberText).join(', ')}, 0)`);
  const place = position.map((metres) => lengthText(metres * CENTIMETRES)).join(', ');
  return `( ${rows.join(', ')}, (${place}, 1) )`;
}

/** The attributes of a prim that stands by one matrix, with what it is at other times where it moves. */
export function placementLines(at: Axes, samples: ReadonlyMap<number, Axes> | null = null): string[] {
  return [
    ...valueLines('matrix4d xformOp:transform', at, samples, matrixText),
    'uniform token[] xformOpOrder = ["xformOp:transform"]',
  ];
}

/**
 * An attribute: its values by time code where it changes, then the one for who asks for no time. In this order, since
 * some readers keep but one of the two, the last.
 */
export function valueLines<Value>(
  attribute: string,
  now: Value,
  samples: ReadonlyMap<number, Value> | null,
  text: (value: Value) => string,
): string[] {
  return [
    ...(samples === null
      ? []
      : [
          `${attribute}.timeSamples = {`,
          ...[...samples].map(([time, value]) => `    ${numberText(time)}: ${text(value)},`),
          '}',
        ]),
    `${attribute} = ${text(now)}`,
  ];
}
