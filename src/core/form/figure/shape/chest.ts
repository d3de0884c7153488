import { sin } from '../../../units/steadyMath';
import { movedBy } from '../../build/placement';
import { ShapeBuilder } from '../../build/shapeBuilder';
import type { PartShape } from '../../types';
import { SIDES, type Skeleton } from '../skeleton';
import { limb, type Section, sectionAt } from './sections';
import { addCollar, addStrip, type Edges } from './trimmings';
import { chestSections, TRUNK_SIDES, type TrunkLook } from './trunk';

const fromWaist = ({ waist }: Skeleton) => movedBy([-waist[0], -waist[1], -waist[2]]);

/** Down to where a coat or jacket stands open, metres above the floor. */
const opensAt = (look: TrunkLook): number => (look.upper === 'coat' ? 0.7 : 0.735) * look.stature;

/** The clothed chest with its collar, in the frame of the waist's joint. */
export function chestShape(skeleton: Skeleton, look: TrunkLook, colour: string): PartShape {
  const builder = new ShapeBuilder();
  const chest = chestSections(look);
  const s = look.stature;
  limb(builder, chest, TRUNK_SIDES, { last: 0.004 * s, steps: 1 });
  const foot = sectionAt(chest, 0.843 * s);
  if (look.upper === 'jersey') {
    addCollar(builder, sectionAt(chest, 0.846 * s), {
      rise: 0.02 * s,
      fall: 0.004 * s,
      gap: 0,
      thick: 0.004 * s,
    });
  } else {
    const coat = look.upper === 'coat';
    addCollar(builder, foot, {
      rise: (coat ? 0.03 : 0.024) * s,
      fall: (coat ? 0.03 : 0.02) * s,
      gap: look.upper === 'shirt' ? 14 : 24,
      thick: (look.upper === 'shirt' ? 0.002 : 0.004) * s,
    });
  }
  if (look.upper === 'shirt') {
    addStrip(builder, chest, [0.567 * s, 0.838 * s], () => [-0.008 * s, 0.008 * s], 0.002);
  }
  if (look.upper === 'coat' || look.upper === 'jacket') {
    const lowest = opensAt(look);
    for (const side of SIDES) {
      const lapel: Edges = (share) => {
        const inner = 0.003 + 0.029 * share;
        const wide = 0.006 + 0.036 * sin(Math.PI * Math.min(1, share * 0.75)) * (1 - 0.45 * share);
        return [side * inner * s, side * (inner + wide) * s];
      };
      addStrip(builder, chest, [lowest, 0.84 * s], lapel, 0.009);
    }
    addStrip(builder, chest, [0.567 * s, lowest], () => [-0.002 * s, 0.012 * s], 0.005);
  }
  return builder.finish({ substance: 'upper', colour, smooth: true }, fromWaist(skeleton));
}

/** The shirt that shows in the opening of a coat or jacket. */
export function shirtFrontShape(skeleton: Skeleton, look: TrunkLook): PartShape {
  const builder = new ShapeBuilder();
  const chest = chestSections(look);
  const s = look.stature;
  const edges: Edges = (share) => [-(0.004 + 0.032 * share) * s, (0.004 + 0.032 * share) * s];
  addStrip(builder, chest, [opensAt(look), 0.852 * s], edges, 0.0065);
  return builder.finish({ substance: 'linen', colour: '#8b867d', smooth: true }, fromWaist(skeleton));
}

/** The neck, in the frame of its foot. */
export function neckShape(skeleton: Skeleton, feminine: boolean, girth: number, colour: string): PartShape {
  const builder = new ShapeBuilder();
  const s = skeleton.measures.statureMetres;
  const half = (feminine ? 0.0305 : 0.0345) * s * (1 + (girth - 1) * 0.7);
  const rise = skeleton.head[1] - skeleton.neck[1];
  const lean = skeleton.head[2] - skeleton.neck[2];
  const rows = [-0.2, 0.15, 0.45, 0.8, 1.25].map((share, k): Section => {
    const full = [0.86, 1, 1, 1, 0.9][k];
    return {
      y: rise * share,
      half: half * full,
      front: half * 1.02 * full,
      back: half * 1.08 * full,
      z: lean * share - 0.003 * s,
    };
  });
  limb(builder, rows, 10);
  return builder.finish({ substance: 'skin', colour, smooth: true });
}
