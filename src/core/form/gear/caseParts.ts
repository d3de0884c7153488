import type { ShapeBuilder } from '../build/shapeBuilder';
import type { OwnPart } from './part';
import { ownPart } from './part';
import { addLathe, addPipe } from './rounds';

/** A socket on the front of a case that is so deep, its middle at x and y, metres. */
export const addSocket = (
  builder: ShapeBuilder,
  [x, y]: readonly [number, number],
  depth: number,
  radius: number,
): void =>
  addLathe(
    builder,
    { at: [x, y, -depth * 0.45], along: [0, 0, -1] },
    [
      [0, radius],
      [depth * 0.05, radius * 0.9],
    ],
    8,
  );

/** A handle of tube over a case: from its foot up, across, and down, its tube's middle so far out and so high, metres. */
export const handleOver = (out: number, foot: number, top: number, tube: number): OwnPart =>
  ownPart('handle', { substance: 'dark metal' }, (builder) => {
    addPipe(
      builder,
      [
        [-out, foot, 0],
        [-out, top, 0],
        [out, top, 0],
        [out, foot, 0],
      ],
      tube,
    );
  });
