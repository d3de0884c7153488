import { cos, sin } from '../../units/steadyMath';
import { bearingOf } from '../runs';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';
import { tidyHeading, tidyPoint, tidySpot } from './tidy';

/** A place turned clockwise, as seen from above, about another. */
function turnedAbout(spot: Spot, about: Spot, degrees: number): Spot {
  const [cosine, sine] = [cos((degrees * Math.PI) / 180), sin((degrees * Math.PI) / 180)];
  const [x, z] = [spot[0] - about[0], spot[1] - about[1]];
  return [about[0] + x * cosine - z * sine, about[1] + x * sine + z * cosine];
}

/** Two places on the roof, and the bearing, clockwise from the top of the sheet, that runs from one to the other in truth. */
export interface TrueBearing {
  readonly from: Spot;
  readonly to: Spot;
  readonly bearingDegrees: number;
}

const isOne = ({ from, to }: TrueBearing): boolean => from[0] === to[0] && from[1] === to[1];

/**
 * Turns a model about the first of two places so that the way to the second takes a bearing. Where the second lies
 * north of the first, the plan's own north is that bearing. Places that are one leave the plan as it is.
 */
export function turnModelToNorth(plan: Plan, args: TrueBearing & { readonly id: string }): Plan {
  if (isOne(args)) return plan;
  const by = args.bearingDegrees - bearingOf(args.from, args.to);
  return editRecord(plan, args.id, {
    piece: (piece) => {
      if (piece.kind !== 'model') return piece;
      const headingDegrees = tidyHeading(piece.headingDegrees + by);
      const [x, z] = turnedAbout([piece.at[0], piece.at[2]], args.from, by);
      const at = tidyPoint([x, piece.at[1], z]);
      const isSame = headingDegrees === piece.headingDegrees && at.every((value, k) => value === piece.at[k]);
      return isSame ? piece : { ...piece, headingDegrees, at };
    },
  });
}

/** The same for the picture under the roof. */
export function turnUnderlayToNorth(plan: Plan, args: TrueBearing): Plan {
  const { underlay } = plan;
  if (!underlay || isOne(args)) return plan;
  const by = args.bearingDegrees - bearingOf(args.from, args.to);
  const headingDegrees = tidyHeading(underlay.headingDegrees + by);
  const at = tidySpot(turnedAbout(underlay.at, args.from, by));
  if (headingDegrees === underlay.headingDegrees && at[0] === underlay.at[0] && at[1] === underlay.at[1]) {
    return plan;
  }
  return { ...plan, underlay: { ...underlay, headingDegrees, at } };
}
