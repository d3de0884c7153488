import { COILED_FACTOR, type CordSize, cordOf, cordOfDiameter } from '../kit/powerCords';
import type { Cable } from '../plan/edits/plugCable';
import { runLength } from '../plan/runs';
import type { Plan } from '../plan/schema/plan';
import type { Wire } from '../plan/schema/power';
import { mainsVoltsOf } from './mainsVolts';

/** A cable goes round corners and up to what it feeds: a tenth more than it measures. Source: common practice, no source */
export const SLACK = 1.1;

/** A cable as a conductor. */
export interface Cord {
  readonly id: string;
  readonly label: string;
  readonly wire: Wire;
  /** With its slack. */
  readonly lengthMetres: number;
  /** Of one of its conductors, from end to end. */
  readonly ohms: number;
  /** What it may carry as it lies. */
  readonly amps: number;
  readonly coiledShare: number;
  /** Whether its size is that of its diameter, since the plan says none. */
  readonly isAssumed: boolean;
}

/** What a cord of a size may carry, amps: less where some of it stays wound up. */
export const cordAmps = (size: CordSize, coiledShare: number): number =>
  size.amps * (coiledShare > 0 ? COILED_FACTOR : 1);

/** A cable of a plan as a conductor. */
export function cordOfCable(plan: Plan, cable: Cable): Cord {
  const { id, label, wire, path, diameterMetres, coiledShare = 0 } = cable;
  const size = wire ? cordOf(wire) : cordOfDiameter(diameterMetres, mainsVoltsOf(plan));
  // What is laid out is the rest of it, and what is wound up has its ohms all the same.
  const lengthMetres = (runLength(path, false) * SLACK) / (1 - coiledShare);
  return {
    id,
    label,
    wire: size.wire,
    lengthMetres,
    ohms: size.ohmsPerMetre * lengthMetres,
    amps: cordAmps(size, coiledShare),
    coiledShare,
    isAssumed: !wire,
  };
}
