import type { HeadClass } from '../../plan/schema/kit';
import { type OwnPart, ownPart } from './part';
import { addLathe, addPipe, addRod } from './rounds';

/** Half the thickness of the yoke's bar, and of the sleeve over the spigot. Source: common practice, no source */
const BAR_RADIUS = 0.008;
const SLEEVE_RADIUS = 0.014;
const SLEEVE_LENGTH = 0.07;

/**
 * The yoke in the frame of a head that is panned but not tilted: the axis that the housing tilts about is x through
 * the origin, the sleeve reaches down over the spigot, `drop` metres below.
 */
export function yokeOf(headClass: HeadClass, drop: number): OwnPart {
  return ownPart('yoke', { substance: 'dark metal' }, (builder) => {
    addRod(builder, [0, -drop - SLEEVE_LENGTH, 0], [0, -drop + BAR_RADIUS, 0], SLEEVE_RADIUS);
    if (headClass.form === 'tube' || headClass.form === 'bulb') {
      addRod(builder, [0, -drop, 0], [0, -drop * 0.4, 0], BAR_RADIUS, 6);
      return;
    }
    const reach = headClass.size[0] / 2 + 0.015;
    addPipe(
      builder,
      [
        [-reach, 0, 0],
        [-reach, -drop, 0],
        [reach, -drop, 0],
        [reach, 0, 0],
      ],
      BAR_RADIUS,
    );
    for (const side of [-1, 1]) {
      addLathe(
        builder,
        { at: [side * reach * 0.94, 0, 0], along: [side, 0, 0] },
        [
          [0, 0.018],
          [reach * 0.06 + 0.03, 0.018],
          [reach * 0.06 + 0.045, 0.01],
        ],
        6,
      );
    }
  });
}
