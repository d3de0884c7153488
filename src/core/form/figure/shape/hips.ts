import { movedBy } from '../../build/placement';
import { ShapeBuilder } from '../../build/shapeBuilder';
import type { PartShape } from '../../types';
import type { Skeleton } from '../skeleton';
import { limb, type Section, sectionAt } from './sections';
import { chestSections, hemSections, hipSections, TRUNK_SIDES, type TrunkLook } from './trunk';

/** To the frame of a hip joint, or, with no side, of the pelvis: the middle between the two. */
const fromHip = ({ hip }: Skeleton, side: number) => movedBy([-side * hip[0], -hip[1], -hip[2]]);

/** Hips and seat in trousers, in the frame of the pelvis (the middle between the hip joints). */
export function hipShape(skeleton: Skeleton, look: TrunkLook, colour: string): PartShape {
  const builder = new ShapeBuilder();
  limb(builder, hipSections(look), 14, { first: -0.006 * look.stature, steps: 1 });
  return builder.finish({ substance: 'lower', colour, smooth: true }, fromHip(skeleton, 0));
}

/** The belt that a coat is tied with. */
function addBelt(builder: ShapeBuilder, look: TrunkLook): void {
  const waist = sectionAt(chestSections(look), 0.59 * look.stature);
  const around = (share: number, more: number): Section => ({
    ...waist,
    y: share * look.stature,
    half: waist.half + more,
    front: waist.front + more,
    back: waist.back + more,
    square: 2.2,
  });
  limb(
    builder,
    [around(0.568, 0.008), around(0.571, 0.013), around(0.594, 0.013), around(0.597, 0.007)],
    TRUNK_SIDES,
  );
}

/** The upper garment about the hips, in the frame of the pelvis. */
export function hemShape(skeleton: Skeleton, look: TrunkLook, colour: string): PartShape {
  const builder = new ShapeBuilder();
  limb(builder, hemSections(look), TRUNK_SIDES);
  if (look.upper === 'coat') addBelt(builder, look);
  return builder.finish({ substance: 'upper', colour, smooth: true }, fromHip(skeleton, 0));
}

/** How a coat's skirts lie: straight down, or drawn up over the thighs of somebody who sits or crouches. */
export type Drape = 'hanging' | 'gathered';

/** One half of a coat's skirts, about one thigh, in the frame of that hip joint. The two overlap in the middle. */
export function skirtShape(
  skeleton: Skeleton,
  look: TrunkLook,
  side: number,
  drape: Drape,
  colour: string,
): PartShape {
  const builder = new ShapeBuilder();
  const s = look.stature;
  const hips = hipSections(look);
  const waist = sectionAt(hips, 0.55 * s);
  const seat = sectionAt(hips, 0.52 * s);
  const hanging = [
    { y: 0.592, like: waist, more: -0.003 },
    { y: 0.555, like: waist, more: 0.012 },
    { y: 0.5, like: seat, more: 0.016 },
    { y: 0.42, like: seat, more: 0.023 },
    { y: 0.33, like: seat, more: 0.03 },
    { y: 0.264, like: seat, more: 0.035 },
    { y: 0.261, like: seat, more: 0.03 },
  ];
  const gathered = [
    { y: 0.575, like: waist, more: -0.01 },
    { y: 0.54, like: waist, more: 0.01 },
    { y: 0.48, like: seat, more: 0.012 },
    { y: 0.4, like: seat, more: 0.004 },
    { y: 0.36, like: seat, more: -0.004 },
    { y: 0.357, like: seat, more: -0.01 },
  ];
  const tails = drape === 'hanging' ? hanging : gathered;
  const inner = -0.036 * s;
  const sections = tails.map(({ y, like, more }): Section => {
    const outer = like.half + more * s;
    return {
      y: y * s,
      half: (outer - inner) / 2,
      x: (side * (outer + inner)) / 2,
      front: like.front + more * s * 0.75,
      back: like.back + more * s * 0.75,
      square: 3,
    };
  });
  limb(builder, sections, 12);
  return builder.finish({ substance: 'upper', colour, smooth: true }, fromHip(skeleton, side));
}
